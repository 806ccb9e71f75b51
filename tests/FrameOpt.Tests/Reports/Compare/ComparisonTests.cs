using System.Text;
using System.Xml.Linq;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Compare;
using FrameOpt.Reports.Text;
using FrameOpt.Search.Stopping;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Reports.Compare;

public sealed class ComparisonTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Designs_of_one_run_are_the_same_study_and_fair_and_the_better_one_is_named()
    {
        var report = ReportFixture.Report();
        var run = RunJsonFolder.Write(folder, "run", report);
        var comparison = RunJsonFolder.Read(run, $"{run}:5");
        Assert.Empty(comparison.Warnings);
        Assert.Contains("A and B are designs of one run.", Lines(comparison));
        var (a, b) = (report.FrontEvaluations[0][MissionQuantity.ResidualRms], report.FrontEvaluations[4][MissionQuantity.ResidualRms]);
        Assert.NotEqual(NumberFormat.Text(a, "N·m"), NumberFormat.Text(b, "N·m"));
        Assert.Equal(a < b ? "A better" : "B better", Which(comparison, "residual rms"));
        var (twistA, twistB) = (report.FrontEvaluations[0][MissionQuantity.TwistMarginWorst],
            report.FrontEvaluations[4][MissionQuantity.TwistMarginWorst]);
        Assert.Equal(twistA > twistB ? "A better" : "B better", Which(comparison, "twist margin worst"));
    }

    [Fact]
    public void Sides_and_what_cannot_be_held_are_told_in_words()
    {
        var report = ReportFixture.Report(2);
        var unheld = report with
        {
            FrontEvaluations = [report.FrontEvaluations[0].With(0, PhaseQuantity.Effort, 1.25).With(
            0, PhaseQuantity.Residual, -12.5), report.FrontEvaluations[1]]
        };
        var comparison = RunJsonFolder.Read(RunJsonFolder.Write(folder, "a", unheld), RunJsonFolder.Write(folder, "b", report));
        var phase = report.FrontEvaluations[0].Phases[0].Phase.Name;
        Assert.Contains(Lines(comparison), line => line.StartsWith($"A: THE PILOT CANNOT HOLD IT in {phase} (effort 1.25)",
            StringComparison.Ordinal));
        var cells = ComparisonTables.Phases(comparison).Rows.SelectMany(row => row).ToList();
        Assert.Contains("12.5 N·m, steers left", cells);
        Assert.Contains("1.25 (CANNOT BE HELD)", cells);
    }

    [Fact]
    public void Another_mission_machine_wing_or_yaw_leverage_makes_another_question_and_lower_is_not_called_better()
    {
        var study = ReportFixture.Study();
        var first = RunJsonFolder.Write(folder, "first", ReportFixture.Report(3));
        foreach (var (part, other) in new (string, Study)[]
        {
            ("mission", study with { Mission = [study.Mission[0] with { Weight = study.Mission[0].Weight + 0.1 },
                .. study.Mission.Skip(1)] }),
            ("machine", study with { Machine = study.Machine with { Pilot = study.Machine.Pilot with { LeanMetres = 0.09 } } }),
            ("wing", study with { Wing = study.Wing with { MassKilograms = study.Wing.MassKilograms + 1 } }),
            ("yaw leverage", study with { Wing = study.Wing with { YawLeverage = new YawLeverage.Constant(1.1) } }),
        })
        {
            var comparison = RunJsonFolder.Read(first, RunJsonFolder.Write(folder, part, ReportFixture.Report(3, other)));
            Assert.StartsWith($"NOT THE SAME QUESTION: B has another {part} than A.", Assert.Single(comparison.Warnings));
            Assert.DoesNotContain("better", string.Join(' ', ComparisonTables.Mission(comparison).Rows.Select(row => row[^1])));
        }
    }

    [Fact]
    public void Other_strength_settings_make_other_measures_of_load_and_moment_only()
    {
        var study = ReportFixture.Study();
        static RunReport Run(Study study) => ReportFixture.Report(3, study) is var report
            ? report with
            {
                FrontEvaluations = [.. report.FrontEvaluations
                .Select(design => design with { Mission = [.. design.Mission
                .Select((value, q) => ResponseCatalogue.OfMissions[q].Needs == ResponseNeed.Strength ? 500 : value)] })]
            }
            : report;
        var comparison = RunJsonFolder.Read(
            RunJsonFolder.Write(folder, "a", Run(study with { Strength = new StrengthSetting(3.5, 0.1) })),
            RunJsonFolder.Write(folder, "b", Run(study with { Strength = new StrengthSetting(4, 0.1) })));
        Assert.Equal(["hang point load of B", "arm moment of B"], comparison.Warnings
            .Select(warning => warning[..(warning.IndexOf(" B", StringComparison.Ordinal) + 2)]));
        Assert.Contains("strength: limit load factor 3.5 -> 4", Lines(comparison));
    }

    [Fact]
    public void A_run_cut_short_is_told()
    {
        var report = ReportFixture.Report(2);
        var cut = RunJsonFolder.Write(folder, "cut", report with
        {
            Result = report.Result with { StopReason = new StopReason.StoppedEarly(3, 10) }
        });
        Assert.Contains("B comes from a run that was cut short (stopped after 3 of 10 designs)",
            Assert.Single(RunJsonFolder.Read(RunJsonFolder.Write(folder, "whole", report), cut).Warnings));
    }

    [Fact]
    public void The_page_holds_every_word_needs_no_script_and_lets_nothing_act()
    {
        var (first, other) = (RunJsonFolder.Write(folder, "first", ReportFixture.Report()),
            RunJsonFolder.Write(folder, "other", ReportFixture.Report(12, ReportFixture.Study("Another", "dash"))));
        var comparison = RunJsonFolder.Read(first, $"{first}:2", other);
        var page = new PageText(ComparisonPage.Of(comparison));
        foreach (var section in ComparisonSections.Of(comparison))
            Assert.All([.. section.Lines.Where(line => line != Cautions.FirstPage[0]), .. section.Table?.Headers ?? [],
                .. section.Table?.Rows.SelectMany(row => row).Where(cell => cell.Length > 0) ?? []], text =>
                Assert.Contains(text, page.Words));
        Assert.Empty(page.Scripts);
        var hash = Convert.ToBase64String(System.Security.Cryptography.SHA256.HashData(Encoding.UTF8.GetBytes(page.Style)));
        var policy = page.Tree.Descendants("meta").Single(meta => meta.Attribute("http-equiv") is not null).Attribute("content")!.Value;
        Assert.Equal($"default-src 'none'; style-src 'sha256-{hash}'; base-uri 'none'; form-action 'none'", policy);
        Assert.DoesNotContain(page.Tree.Descendants().Attributes(), attribute =>
            attribute.Name == "style" || attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
        Assert.All(page.Tree.Descendants().Attributes().Where(attribute => attribute.Name.LocalName is "href" or "src"), link =>
            Assert.StartsWith("#", link.Value));
        var ids = page.Tree.Descendants().Attributes("id").Select(id => id.Value).ToList();
        Assert.Equal(ids.Count, ids.Distinct().Count());
        // Three frames and the bars, each with words for those who do not see it.
        var pictures = page.Tree.Descendants("svg").ToList();
        Assert.Equal(4, pictures.Count);
        Assert.All(pictures, picture => Assert.All(picture.Attribute("aria-labelledby")!.Value.Split(' '), id =>
            Assert.NotEmpty(page.ById(id).Value)));
        Assert.Equal("h1", page.Tree.Descendants().First(element => element.Name.LocalName is "h1" or "h2" or "h3").Name.LocalName);
    }

    [Fact]
    public void Bars_stand_left_or_right_of_the_middle_in_the_proportion_of_the_residuals()
    {
        var run = RunJsonFolder.Write(folder, "run", ReportFixture.Report());
        var comparison = RunJsonFolder.Read(run, $"{run}:5");
        var bars = new PageText(ComparisonPage.Of(comparison)).ById("bars");
        var middle = PageText.Number(PageText.Of(bars, "zero").Single(), "x1");
        var perNewtonMetre = new List<double>();
        foreach (var (c, column) in comparison.Columns.Index())
        {
            // The first of each look is its key.
            var drawn = PageText.Of(bars, $"bar-{c + 1}").Skip(1).ToList();
            Assert.Equal(column.Phases.Count, drawn.Count);
            foreach (var (phase, bar) in column.Phases.Zip(drawn).Where(pair => Math.Abs(pair.First.ResidualNewtonMetres) > 1))
            {
                Check.Close(middle, PageText.Number(bar, "x") + (phase.ResidualNewtonMetres < 0 ? PageText.Number(bar, "width") : 0),
                    absolute: 0.11, because: "coordinates are rounded to a tenth");
                perNewtonMetre.Add(PageText.Number(bar, "width") / Math.Abs(phase.ResidualNewtonMetres));
            }
        }

        Assert.All(perNewtonMetre, scale => Check.Close(perNewtonMetre[0], scale, absolute: 0.12,
            because: "widths are rounded to a tenth, of residuals above 1"));
    }

    [Fact]
    public void A_user_s_text_stays_text_on_the_page_and_no_formula_in_the_table()
    {
        const string title = "=cmd|' /C calc'!A0", pilot = "</style><script>alert(1)</script>";
        var first = RunJsonFolder.Write(folder, "first", ReportFixture.Report(2));
        var other = RunJsonFolder.Write(folder, "other", ReportFixture.Report(2, ReportFixture.Study(title, null, pilot)));
        var comparison = RunJsonFolder.Read(first, other);
        var page = new PageText(ComparisonPage.Of(comparison));
        Assert.Empty(page.Scripts);
        Assert.DoesNotContain("<script", page.Raw);
        Assert.Contains(page.Words, words => words.Contains(pilot, StringComparison.Ordinal));
        using var stream = new MemoryStream();
        ComparisonTable.Write(comparison, stream);
        Assert.Contains($"'{title}", Encoding.UTF8.GetString(stream.ToArray()));
        Assert.DoesNotMatch("(^|,|\n)\"?=", Encoding.UTF8.GetString(stream.ToArray()));
    }

    [Fact]
    public void The_table_holds_the_figures_with_their_units_and_every_difference()
    {
        var report = ReportFixture.Report(3);
        var first = RunJsonFolder.Write(folder, "first", report);
        var other = RunJsonFolder.Write(folder, "other", ReportFixture.Report(3, ReportFixture.Study("Another")));
        using var stream = new MemoryStream();
        ComparisonTable.Write(RunJsonFolder.Read($"{first}:3", other), stream);
        var lines = Encoding.UTF8.GetString(stream.ToArray()).Split('\n');
        Assert.Equal("part,what,unit,A,B", lines[0]);
        Assert.Contains(
            $"mission,residual_rms,N·m,{PlainNumber.Text(report.FrontEvaluations[2][MissionQuantity.ResidualRms])},{PlainNumber.Text(report.FrontEvaluations[0][MissionQuantity.ResidualRms])}", lines);
        Assert.Contains(lines, line => line.StartsWith("difference of the studies,title", StringComparison.Ordinal)
            && line.EndsWith("One frame for one engine,Another", StringComparison.Ordinal));
    }

    private static string Which(Comparison comparison, string response) =>
        ComparisonTables.Mission(comparison).Rows.Single(row => row[0] == response)[^1];

    private static IReadOnlyList<string> Lines(Comparison comparison) =>
        [.. ComparisonSections.Of(comparison).SelectMany(section => section.Lines)];
}
