using System.Text;
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
        Assert.Contains("A and B are designs of the same run.", Lines(comparison));
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
            FrontEvaluations =
            [
                report.FrontEvaluations[0].With(1, PhaseQuantity.Effort, 1.25).With(1, PhaseQuantity.Residual, -12.5)
                    .With(0, PhaseQuantity.Effort, 1.5),
                report.FrontEvaluations[1],
            ],
        };
        var comparison = RunJsonFolder.Read(RunJsonFolder.Write(folder, "a", unheld), RunJsonFolder.Write(folder, "b", report));
        Assert.Contains(Lines(comparison), line => line.StartsWith("A: THE PILOT CANNOT HOLD IT in climb (effort 1.25). ",
            StringComparison.Ordinal));
        var cells = ComparisonTables.Phases(comparison).Rows.SelectMany(row => row).ToList();
        Assert.Contains("12.5 N·m, steers left", cells);
        Assert.Contains("1.25 (CANNOT BE HELD)", cells);
    }

    // Worked balance: the residual of the cruise is -0.4472503 + 2.849967 - 2.837395 N·m.
    [Fact]
    public void Parts_of_the_residual_stand_beside_it_and_a_launch_has_no_effort()
    {
        var run = RunJsonFolder.Write(folder, "run", ReportFixture.Report(2));
        var rows = ComparisonTables.Phases(RunJsonFolder.Read(run, $"{run}:2")).Rows;
        string Of(string row) => rows.Single(cells => cells[0] == row)[1];
        Assert.Equal("0.4 N·m left, 2.8 N·m right, 2.8 N·m left", Of("cruise: roll part, yaw part, wing weight"));
        Assert.Equal("not settled: judge it by the twist", Of("launch: effort"));
        Assert.DoesNotContain("not settled", Of("cruise: effort"));
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
            Assert.StartsWith($"NOT COMPARABLE: B differs from A in {part}.", Assert.Single(comparison.Warnings));
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
        Assert.Contains("B comes from a run that was stopped early (stopped after 3 of 10 designs)",
            Assert.Single(RunJsonFolder.Read(RunJsonFolder.Write(folder, "whole", report), cut).Warnings));
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
        string Residual(int design) => PlainNumber.Text(report.FrontEvaluations[design][MissionQuantity.ResidualRms]);
        Assert.Contains($"mission,residual_rms,N·m,{Residual(2)},{Residual(0)}", lines);
        Assert.Contains(lines, line => line.StartsWith("difference of the studies,title", StringComparison.Ordinal)
            && line.EndsWith("One frame for one engine,Another", StringComparison.Ordinal));
    }

    private static string Which(Comparison comparison, string response) =>
        ComparisonTables.Mission(comparison).Rows.Single(row => row[0] == response)[^1];

    private static IReadOnlyList<string> Lines(Comparison comparison) =>
        [.. ComparisonSections.Of(comparison).SelectMany(section => section.Lines)];
}
