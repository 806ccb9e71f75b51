using System.Text;
using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.StudyFile;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.Tests.Plans;
using FrameOpt.Tests.Reports;

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

    private static Diagnostic Mistake(string variant, string variants) => Assert.Single(Reading(variant, variants).Diagnostics);

    private static StudyReadResult Reading(string variant, string variants) =>
        StudyReader.Parse(Encoding.UTF8.GetBytes($"{WorkedStudyText.Text}\n{variants}\n"), "study.yaml", variant);
}
