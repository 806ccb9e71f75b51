using FrameOpt.Analysis;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Search.Fronts;
using FrameOpt.Studies;
using FrameOpt.Tests.Model;

namespace FrameOpt.Tests.Reports.Workbook;

/// <summary>What LibreOffice makes of the live sheets when an input is changed.</summary>
public class RecalculationTests(RecalculationTests.Workbooks books) : IClassFixture<RecalculationTests.Workbooks>
{
    [SofficeFact]
    public void Unchanged_it_ranks_as_the_tool_does()
    {
        var front = LiveRun.Report.Result.Front;
        var rows = books[0].Table("Ranking", "position").Rows;
        Assert.Equal(front.Select(design => ((double)design.Rank, (double)design.Number)),
            rows.Select(row => ((double)row[1]!, (double)row[3]!)));
    }

    [SofficeFact]
    public void With_other_weights_it_ranks_as_the_tool_would()
    {
        var result = LiveRun.Report.Result;
        double[][] designs = [.. result.Front.Select(design => (double[])[
            .. design.Objectives.Select((value, o) => result.Study.Objectives[o].Maximise ? -value : value)])];
        var expected = Ranking.ByDistanceToIdeal(designs, [3, 6, 1]);
        var rows = books[1].Table("Ranking", "position").Rows;
        Assert.Equal(expected.Select(place => (double)place.Rank), rows.Select(row => (double)row[1]!));
        Assert.Equal(expected.Select(place => (double)result.Front[place.Index].Number), rows.Select(row => (double)row[3]!));
        Assert.NotEqual((double)result.Front[0].Number, (double)rows[0][3]!);
    }

    [SofficeFact]
    public void With_another_wing_and_limit_only_designs_within_it_are_ranked()
    {
        var result = LiveRun.Report.Result;
        var here = result.Front.Select(design => Workbooks.OtherWing.Evaluate(design.Geometry)).ToList();
        var within = here.Count(design => design.Failure is null && design[MissionQuantity.TwistMarginWorst] >= 3
            && design[MissionQuantity.EffortWorst] <= Workbooks.TighterEffort);
        var rows = books[2].Table("Ranking", "position").Rows;
        Assert.InRange(within, 1, result.Front.Count - 1);
        Assert.Equal(within, rows.Count(row => row[1] is double));
        var first = (double)rows[0][3]!;
        var best = result.Front.Select((design, i) => (design.Number, Score: Score(result.Study, here, i)))
            .Where((_, i) => here[i][MissionQuantity.EffortWorst] <= Workbooks.TighterEffort
                && here[i][MissionQuantity.TwistMarginWorst] >= 3).MinBy(design => design.Score);
        Assert.Equal((double)best.Number, first);
    }

    [SofficeFact]
    public void What_if_gives_the_figures_of_the_model_at_a_level_and_near_them_between()
    {
        foreach (var (book, geometry, tolerance) in (IEnumerable<(int, FrameGeometry, double)>)[
            (1, WorkedMachine.Geometry(440, 12.5, 200, -1.5), 1e-9), (2, WorkedMachine.Geometry(445, 12.5, 212.5, -0.75), 0.5)])
        {
            var design = LiveRun.Report.Result.Mission.Evaluate(geometry);
            var rows = books[book].Table("What if", "phase").Rows;
            for (var p = 0; p < design.Phases.Count; p++)
            {
                var because = tolerance < 1e-6 ? "exact at the levels of the table" : "straight lines between the levels";
                Check.Close(design.Phases[p][PhaseQuantity.Residual], (double)rows[p][7]!, absolute: tolerance, because: because);
                foreach (var (part, column) in (IEnumerable<(PhaseQuantity, int)>)[
                    (PhaseQuantity.WingRollMoment, 2), (PhaseQuantity.YawPart, 3), (PhaseQuantity.WingWeightPart, 4)])
                    Check.Close(design.Phases[p][part], (double)rows[p][column]!, absolute: tolerance, because: because);
                if (design.Phases[p].Phase.IsSettled)
                {
                    Check.Close(design.Phases[p][PhaseQuantity.Effort], (double)rows[p][14]!, absolute: tolerance / 10, because: because);
                    Check.Close(design.Phases[p][PhaseQuantity.Lean], (double)rows[p][12]!, absolute: tolerance * 10, because: because);
                }
                else
                {
                    Assert.Equal(("not settled", "not settled"), (rows[p][12], rows[p][14]));
                }

                if (tolerance < 1e-6)
                    Check.Close(design.Phases[p][PhaseQuantity.TwistMargin], (double)rows[p][18]!, relative: 1e-9, because: because);
                Assert.Equal(design.Phases[p].Steers, rows[p][11]);
            }
        }
    }

    [SofficeFact]
    public void What_if_gives_residual_and_effort_with_every_wing_and_says_where_no_lean_cures_the_turn()
    {
        var (_, rows) = books[1].Table("What if", "phase");
        var unbounded = 0;
        foreach (var wingCase in WingCases.All)
        {
            var mission = LiveRun.Report.Result.Mission;
            var design = mission.With(wingCase.Of(mission.Wing)).Evaluate(WorkedMachine.Geometry(440, 12.5, 200, -1.5));
            var (residual, effort) = (6 + (int)wingCase, 13 + (int)wingCase);
            const string because = "exact at the levels of the table";
            for (var p = 0; p < design.Phases.Count; p++)
            {
                Check.Close(design.Phases[p][PhaseQuantity.Residual], (double)rows[p][residual]!, absolute: 1e-9, because: because);
                if (!design.Phases[p].Phase.IsSettled)
                    continue;
                if (design.Phases[p].IsBeyondLean)
                    Assert.Equal("unbounded", rows[p][effort]);
                else
                    Check.Close(design.Phases[p][PhaseQuantity.Effort], (double)rows[p][effort]!, absolute: 1e-9, because: because);
                unbounded += design.Phases[p].IsBeyondLean ? 1 : 0;
            }

            var whole = rows[design.Phases.Count];
            Check.Close(design[MissionQuantity.ResidualRms], (double)whole[residual]!, absolute: 1e-9, because: because);
            Assert.Equal(double.IsInfinity(design[MissionQuantity.EffortWorst]), whole[effort] is "unbounded");
        }

        Assert.True(unbounded > 0, "no wing of the test is soft enough");
    }

    private static double Score(Study study, IReadOnlyList<DesignEvaluation> designs, int index)
    {
        var sum = 0.0;
        for (var o = 0; o < study.Objectives.Count; o++)
        {
            var values = designs.Where(design => design.Failure is null).Select(design => design[study.Objectives[o].Response]).ToList();
            var (best, worst) = study.Objectives[o].Maximise ? (values.Max(), values.Min()) : (values.Min(), values.Max());
            sum += Math.Pow(study.Ranking.Weights[o] / study.Ranking.Weights.Sum() * (
                designs[index][study.Objectives[o].Response] - best) / (worst - best), 2);
        }

        return sum;
    }

    /// <summary>The workbook recomputed: as it is; with a weight and a design changed; with another wing, limit and design.</summary>
    public sealed class Workbooks
    {
        /// <summary>The wing of the case chosen in the last one.</summary>
        public static MissionModel OtherWing { get; } =
            LiveRun.Report.Result.Mission.With(WingCase.SoftCoupling.Of(LiveRun.Report.Result.Mission.Wing));

        /// <summary>Half of the designs keep it with that wing.</summary>
        public static double TighterEffort { get; } = LiveRun.Report.Result.Front
            .Select(design => OtherWing.Evaluate(design.Geometry))
            .Where(design => design.Failure is null && design[MissionQuantity.TwistMarginWorst] >= 3)
            .Select(design => design[MissionQuantity.EffortWorst])
            .Order()
            .ElementAt(LiveRun.Report.Result.Front.Count / 2);

        private readonly IReadOnlyList<WorkbookReader> books = [];

        public Workbooks()
        {
            if (Soffice.Path is null)
                return;
            var workbook = WorkbookReader.Written(LiveRun.Report);
            var written = new WorkbookReader(workbook);
            var criteria = written.RowOf("Ranking", "response [unit]");
            books = Soffice.Recomputed(workbook,
            [
                [],
                [("Ranking", $"F{criteria + 2}", 6), .. Design(440, 12.5, 200, -1.5)],
                [
                    ("Ranking", "E3", "soft coupling"), ("Ranking", $"H{written.RowOf("Ranking", "effort_worst")}", TighterEffort),
                        .. Design(445, 12.5, 212.5, -0.75),
                ],
            ]);
        }

        public WorkbookReader this[int index] => books[index];

        private static IEnumerable<(string Sheet, string Cell, object? Value)> Design(
            double spacing, double offset, double height, double angle) =>
            [("What if", "B4", spacing), ("What if", "B5", offset), ("What if", "B6", height), ("What if", "B7", angle)];
    }
}
