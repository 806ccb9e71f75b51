using System.Text;
using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.StudyFile;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.Tests.Plans;
using FrameOpt.Tests.Reports;
using FrameOpt.Tests.Running;

namespace FrameOpt.Tests.StudyFile;

/// <summary>A variant is the file with what it names written over.</summary>
public class VariantTests
{
    [Fact]
    public void A_mass_is_changed_by_its_name_and_the_rest_stays()
    {
        var study = Read("heavy", "variants: { heavy: { machine: { masses: { pilot: { mass: 100 kg } } } } }");
        var plain = WorkedStudyText.Right(WorkedStudyText.Text);
        Assert.Equal("heavy", study.Variant);
        Assert.Equal(
            plain.Machine.Masses.Select(item => item.Name == "pilot" ? item with { MassKilograms = 100 } : item),
            study.Machine.Masses);
        Assert.Equal(plain.Wing with { Polar = study.Wing.Polar }, study.Wing);
        Assert.Equal(plain.Mission, study.Mission);
    }

    [Fact]
    public void Groups_are_entered_and_lists_and_values_take_the_place_of_the_old_ones()
    {
        var study = Read("other", """
            variants:
              other:
                title: Another title
                mission: { cruise: { weight: 0.1 } }
                factors: { lateral_offset: 25 mm, hang_point_spacing: { step: 10 mm } }
                limits: [{ response: effort_worst, at_most: 0.5 }]
            """);
        Assert.Equal("Another title - other", study.FullTitle);
        Assert.Equal(0.1, study.Mission[2].Weight);
        Assert.Equal([11, 1, 31, 5], study.Factors.Select(factor => factor.LevelsSi.Count));
        Assert.Equal(0.5, Assert.Single(study.Limits).AtMost);
    }

    [Fact]
    public void Without_a_choice_the_file_as_it_stands_is_read_and_the_variants_are_named()
    {
        var study = Read("", "variants: { b: { title: B }, a: { title: A } }");
        Assert.Equal("", study.Variant);
        Assert.Equal("One frame for one engine", study.FullTitle);
        Assert.Equal(["b", "a"], study.Variants);
        Assert.Empty(WorkedStudyText.Right(WorkedStudyText.Text).Variants);
    }

    [Theory]
    [InlineData("variants: { heavy: { machine: { masses: { pilto: { mass: 100 kg } } } } }", "There is no mass named `pilto`.",
        "Did you mean `pilot`?")]
    [InlineData("variants: { heavy: { machine: { masses: { pilot: { mass: 100 } } } } }", "100 has no unit", "kg")]
    [InlineData("variants: { heavy: { machine: { masses: { pilot: 100 kg } } } }", "wants keys",
        "Write under `pilot` its keys that are different")]
    [InlineData("variants: { heavy: { machnie: { hang_line: { forward: 0 mm } } } }", "There is no key `machnie`", "")]
    [InlineData("variants: { heavy: { mission: { cruse: { weight: 1, power: level } } } }", "The mission has no phase `cruse`.",
        "Did you mean `cruise`?")]
    [InlineData("variants: { heavy: { format: 1 } }", "format is the same for the whole file.", "Remove it")]
    [InlineData("variants: { heavy: { variants: { a: { title: A } } } }", "variants is the same for the whole file.", "Remove it")]
    [InlineData("variants: { heavy: { } }", "changes nothing", "different")]
    [InlineData("variants: { heavy: }", "changes nothing", "different")]
    [InlineData("variants: [heavy]", "wants a name for each variant", "Write each variant's name")]
    [InlineData("variants: heavy", "wants a name for each variant", "Write each variant's name")]
    [InlineData("variants: { heavy: { title: A, title: B } }", "Duplicate key", "Remove one")]
    public void Slip_in_a_variant_is_told_with_its_place_though_it_was_not_chosen(string variants, string what, string fix)
    {
        var diagnostic = WorkedStudyText.OneDiagnostic(WorkedStudyText.Text.TrimEnd() + "\n" + variants + "\n");
        Assert.Equal(WorkedStudyText.Text.TrimEnd().Split('\n').Length + 1, diagnostic.Line);
        Assert.True(diagnostic.Column > 1 || diagnostic.Message.StartsWith("variants"), diagnostic.Text);
        Assert.Contains(what, diagnostic.Message);
        Assert.Contains(fix, diagnostic.Fix);
    }

    [Fact]
    public void Mistake_that_only_a_variant_makes_names_it()
    {
        var diagnostic = WorkedStudyText.OneDiagnostic(
            WorkedStudyText.Text
                + "\nvariants: { idle: { mission: { launch: { weight: 0 }, climb: { weight: 0 }, "
                + "cruise: { weight: 0 }, accelerated: { weight: 0 } } } }\n");
        Assert.Equal("In variant `idle`: Every phase of the mission has weight 0.", diagnostic.Message);
    }

    [Fact]
    public void Mistake_of_the_file_is_told_once_however_many_variants_there_are()
    {
        var text = WorkedStudyText.With("mass: 6 kg", "mass: 6") + "\nvariants: { a: { title: A }, b: { title: B } }\n";
        WorkedStudyText.OneDiagnostic(text);
    }

    [Fact]
    public void Unknown_variant_is_told_with_the_nearest_or_with_all()
    {
        Assert.Contains("Did you mean `heavy`?", Mistake("hevy", "variants: { heavy: { title: A } }").Fix);
        Assert.Contains("Its variants are heavy, light.", Mistake("tandem seat",
            "variants: { heavy: { title: A }, light: { title: B } }").Fix);
        Assert.Contains("leave --variant out", Mistake("heavy", "").Fix);
    }

    [Fact]
    public void Variants_are_combined_in_order_and_what_two_of_them_set_is_remarked()
    {
        const string variants = "variants: { full: { machine: { masses: { fuel: { mass: 9 kg } } }, title: F }, "
            + "heavy: { machine: { masses: { pilot: { mass: 100 kg }, fuel: { mass: 2 kg } } } } }";
        var both = Combined(variants, "full", "heavy");
        Assert.Equal("F - full + heavy", both.FullTitle);
        Assert.Equal((100.0, 2.0), (Mass(both, "pilot"), Mass(both, "fuel")));
        Assert.Contains("`full` and `heavy` both set machine.masses.fuel.mass: 2 kg of `heavy` is used, not 9 kg.",
            Assert.Single(both.Warnings, IsNotAboutTheDatum));
        Assert.Equal(9, Mass(Combined(variants, "heavy", "full"), "fuel"));
    }

    [Fact]
    public void A_choice_of_an_option_of_the_line_is_a_variant_too()
    {
        const string line = "line:\n  variants: 1\n  candidates: grid\n  options: { engine: { light: { machine: { masses: "
            + "{ frame and engine: { mass: 20 kg } } } } } }\n  customers: [{ pilot_mass: 70 kg, engine: light }]";
        var text = ProductLineStudy.Grid + "\n" + line + "\nvariants: { heavy: { machine: { masses: { pilot: { mass: 100 kg } } } } }\n";
        var study = StudyReader.Parse(Encoding.UTF8.GetBytes(text), "study.yaml", "heavy", "engine=light").Study!;
        Assert.Equal((100.0, 20.0), (Mass(study, "pilot"), Mass(study, "frame and engine")));
        var wrong = Assert.Single(StudyReader.Parse(Encoding.UTF8.GetBytes(text), "study.yaml", "engine=big").Diagnostics);
        Assert.Equal(("engine has no choice `big`.", "Its choices are light."), (wrong.Message, wrong.Fix));
    }

    [Fact]
    public void A_variant_adds_and_drops_masses_and_turns_a_range_into_values_and_back()
    {
        const string variants = """
            variants:
              trolley:
                machine: { masses: { trolley: { mass: 14 kg, forward: -100 mm, right: 0 mm, up: -400 mm }, clothing: none } }
                factors: { lateral_offset: { values: [20 mm, 30 mm] }, thrust_line_angle: { from: 0 deg, to: 2 deg, step: 1 deg } }
            """;
        var study = Read("trolley", variants);
        Assert.Equal(["pilot", "frame and engine", "fuel", "trolley"], study.Machine.Masses.Select(item => item.Name));
        Assert.Equal((14.0, -0.4), (Mass(study, "trolley"), study.Machine.Masses[^1].At.UpMetres));
        Assert.Equal([21, 2, 31, 3], study.Factors.Select(factor => factor.LevelsSi.Count));
        Assert.DoesNotContain(study.Warnings, IsNotAboutTheDatum);
        Assert.Contains("a mass `pilto` is added beside `pilot`", Assert.Single(Read("typo",
            "variants: { typo: { machine: { masses: { pilto: { mass: 9 kg, forward: 0 mm, right: 0 mm, up: 0 mm } } } } }").Warnings,
            IsNotAboutTheDatum));
        Assert.Contains("There is no mass named `ballast`.",
            Mistake("", "variants: { a: { machine: { masses: { ballast: none } } } }").Message);
    }

    private static double Mass(Study study, string name) => study.Machine.Masses.Single(item => item.Name == name).MassKilograms;

    private static Study Combined(string variants, params string[] asked) =>
        StudyReader.Parse(Encoding.UTF8.GetBytes($"{WorkedStudyText.Text}\n{variants}\n"), "study.yaml", asked).Study!;

    [Fact]
    public void More_variants_than_can_be_checked_are_refused()
    {
        var variants = string.Join(", ", Enumerable.Range(1, 51).Select(i => $"v{i}: {{ title: T }}"));
        Assert.Contains("There are 51 variants; 50 is the most.", WorkedStudyText.OneDiagnostic(
            $"{WorkedStudyText.Text}\nvariants: {{ {variants} }}\n").Message);
    }

    private static Study Read(string variant, string variants)
    {
        var reading = Reading(variant, variants);
        Assert.True(reading.Study is not null, string.Join("\n", reading.Diagnostics.Select(diagnostic => diagnostic.Text)));
        return reading.Study!;
    }

    /// <summary>The worked study names no datum, which is remarked each time.</summary>
    private static bool IsNotAboutTheDatum(string warning) => !warning.Contains("does not give datum", StringComparison.Ordinal);

    private static Diagnostic Mistake(string variant, string variants) => Assert.Single(Reading(variant, variants).Diagnostics);

    private static StudyReadResult Reading(string variant, string variants) =>
        StudyReader.Parse(Encoding.UTF8.GetBytes($"{WorkedStudyText.Text}\n{variants}\n"), "study.yaml", variant);
}
