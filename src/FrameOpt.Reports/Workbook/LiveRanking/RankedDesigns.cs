using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook.LiveRanking;

/// <summary>What the sheet Ranking ranks, and what its formulas give before anything on it is changed.</summary>
internal sealed class RankedDesigns
{
    /// <summary>Of <see cref="Evaluations"/> and <see cref="Baseline"/>: the wing as in the study.</summary>
    public const int AsInStudy = (int)WingCase.AsGiven;

    public RankedDesigns(RunReport report)
    {
        var result = report.Result;
        Study = result.Study;
        Criteria = RankingCriterion.Of(Study);
        Designs = [.. result.Front.Take(DisplayedDesigns.Most(Study))];
        (Best, Worst, Norm) = Scale(result);
        WeightShare = [.. Study.Objectives.Select((_, o) => Best[o] == Worst[o] ? 0 : Criteria[o].Weight / Study.Ranking.Weights.Sum())];
        var models = WingCases.All.Select(wingCase => result.Mission.With(wingCase.Of(Study.Wing))).ToList();
        Evaluations = [.. models.Select((model, w) => (IReadOnlyList<DesignEvaluation>)(w == AsInStudy
            ? [.. report.FrontEvaluations.Take(Designs.Count)]
            : [.. Designs.Select(design => model.Evaluate(design.Geometry))]))];
        Baseline = Study.Baseline is { } baseline ? [.. models.Select(model => model.Evaluate(baseline))] : [];
        Scores = [.. Designs.Select(Score)];
        Ranks = [.. Scores.Select(score => 1 + Scores.Count(other => IsTopsis ? other > score : other < score))];
        Positions = [.. Ranks.Select((rank, i) => rank + Ranks.Take(i).Count(other => other == rank))];
    }

    /// <summary>The cases of the wing that a user may switch between in the workbook, in order.</summary>
    public static IReadOnlyList<string> WingLabels { get; } = [.. WingCases.All.Select(StudyText.Name)];

    public Study Study { get; }

    public IReadOnlyList<RankingCriterion> Criteria { get; }

    /// <summary>The best of the front.</summary>
    public IReadOnlyList<FrontDesign> Designs { get; }

    /// <summary>By case of the wing, then design.</summary>
    public IReadOnlyList<IReadOnlyList<DesignEvaluation>> Evaluations { get; }

    /// <summary>The study's baseline by case of the wing; empty when it has none.</summary>
    public IReadOnlyList<DesignEvaluation> Baseline { get; }

    public IReadOnlyList<double> Scores { get; }

    public IReadOnlyList<int> Ranks { get; }

    /// <summary>Each design's place in the table, equal ranks one after the other.</summary>
    public IReadOnlyList<int> Positions { get; }

    public bool IsTopsis => Study.Ranking.Method == RankingMethod.Topsis;

    /// <summary>Of each objective over the whole front with the wing as in the study.</summary>
    public IReadOnlyList<double> Best { get; }

    /// <summary>Of each objective over the whole front with the wing as in the study.</summary>
    public IReadOnlyList<double> Worst { get; }

    /// <summary>Root of the sum of squares of each objective over the whole front.</summary>
    public IReadOnlyList<double> Norm { get; }

    /// <summary>Each objective's part of all weights; 0 for one without range.</summary>
    public IReadOnlyList<double> WeightShare { get; }

    /// <summary>A number, or a word that no formula takes for one.</summary>
    public static object Cell(double value) => double.IsFinite(value) ? value : double.IsNaN(value) ? "cannot fly" : "unbounded";

    private static (double[] Best, double[] Worst, double[] Norm) Scale(StudyResult result)
    {
        var values = result.Study.Objectives.Select((objective, o) =>
            (objective.Maximise, All: result.Front.Select(design => design.Objectives[o]).ToList())).ToList();
        return (
            [.. values.Select(value => value.Maximise ? value.All.Max() : value.All.Min())],
            [.. values.Select(value => value.Maximise ? value.All.Min() : value.All.Max())],
            [.. values.Select(value => Math.Sqrt(value.All.Sum(each => each * each)))]);
    }

    private double Score(FrontDesign design)
    {
        double toBest = 0, toWorst = 0;
        for (var o = 0; o < Study.Objectives.Count; o++)
        {
            double best = Best[o], worst = Worst[o];
            var divisor = IsTopsis ? Norm[o] : worst - best;
            if (best == worst || divisor == 0)
                continue;
            var fromBest = WeightShare[o] * ((design.Objectives[o] - best) / divisor);
            var fromWorst = WeightShare[o] * ((worst - design.Objectives[o]) / divisor);
            toBest += fromBest * fromBest;
            toWorst += fromWorst * fromWorst;
        }

        if (!IsTopsis)
            return Math.Sqrt(toBest);
        var both = Math.Sqrt(toBest) + Math.Sqrt(toWorst);
        return both > 0 ? Math.Sqrt(toWorst) / both : 1;
    }
}
