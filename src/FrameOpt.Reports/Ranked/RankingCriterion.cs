using FrameOpt.Model;
using FrameOpt.Studies;

namespace FrameOpt.Reports;

/// <summary>A response that the sheet Ranking weighs, limits, or both.</summary>
/// <param name="Response">Which.</param>
/// <param name="Magnitude">True when its size counts whatever the sign.</param>
/// <param name="Objective">As the study has it, or null for a response that is limited only.</param>
/// <param name="Weight">Of the objective.</param>
/// <param name="AtLeast">The study's limit, or null; in the response's unit.</param>
/// <param name="AtMost">The study's limit, or null; in the response's unit.</param>
internal sealed record RankingCriterion(Response Response, bool Magnitude, StudyObjective? Objective, double Weight, double? AtLeast, double? AtMost)
{
    public bool Maximise => Objective?.Maximise == true;

    /// <summary>Name and unit, as in the header of a column.</summary>
    public string Header => Response.Unit.Length == 0 ? StudyWords.Name(Response, Magnitude) : $"{StudyWords.Name(Response, Magnitude)} [{Response.Unit}]";

    public string NumberFormat => Figures.NumberFormat(Response.Unit);

    /// <summary>NaN for a design that cannot fly.</summary>
    public double ValueOf(DesignEvaluation evaluation) => evaluation.Failure is not null ? double.NaN
        : Magnitude ? Math.Abs(evaluation[Response])
        : evaluation[Response];

    /// <summary>The study's objectives in their order, then what it limits besides.</summary>
    public static IReadOnlyList<RankingCriterion> Of(Study study)
    {
        var criteria = study.Objectives
            .Select((objective, i) => new RankingCriterion(objective.Response, objective.Magnitude, objective, study.Ranking.Weights[i], null, null))
            .ToList();
        foreach (var limit in study.Limits)
        {
            var at = criteria.FindIndex(criterion => criterion.Response == limit.Response && criterion.Magnitude == limit.Magnitude);
            if (at < 0)
                criteria.Add(new RankingCriterion(limit.Response, limit.Magnitude, null, 0, limit.AtLeast, limit.AtMost));
            else
                criteria[at] = criteria[at] with { AtLeast = Tighter(criteria[at].AtLeast, limit.AtLeast, Math.Max), AtMost = Tighter(criteria[at].AtMost, limit.AtMost, Math.Min) };
        }

        return criteria;
    }

    private static double? Tighter(double? one, double? other, Func<double, double, double> pick) => one is { } a && other is { } b ? pick(a, b) : one ?? other;
}
