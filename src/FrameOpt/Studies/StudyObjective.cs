using FrameOpt.Analysis;
using FrameOpt.Model.Mission;
using FrameOpt.Search;

namespace FrameOpt.Studies;

/// <summary>A response to minimise or maximise.</summary>
/// <param name="Response">The response.</param>
/// <param name="Maximise">True when more is better.</param>
/// <param name="Magnitude">True when the magnitude (absolute value) is used, as for residuals, leans and other signed quantities of a
/// phase.</param>
/// <param name="Resolution">Smaller differences are not shown as separate rows, in the response's unit; 0 for none.</param>
public sealed record StudyObjective(Response Response, bool Maximise, bool Magnitude, double Resolution)
{
    /// <summary>The objective in one case of the noise; null where that says nothing: a standard deviation, or a share of the
    /// cases.</summary>
    public StudyObjective? OfOneCase => Response switch
    {
        Response.OverCases { Statistic: CaseStatistic.StandardDeviation or CaseStatistic.Share } or Response.LimitsMet => null,
        Response.OverCases cases => this with { Response = cases.Single, Magnitude = cases.Magnitude },
        _ => this,
    };

    /// <summary>Value of a design that flies, in the response's unit; its magnitude where that counts.</summary>
    public double ValueOf(DesignEvaluation evaluation) => Magnitude ? Math.Abs(evaluation[Response]) : evaluation[Response];

    /// <summary>The value, less is better, of the one design that a row was prepared for, and that flies; not over cases.</summary>
    public double OrientedOf(MissionRow row) => Oriented(Response.Of(row, Magnitude));

    /// <summary>A value turned so that less is better; turned twice it is the value again.</summary>
    public double Oriented(double value) => Maximise ? -value : value;
}

/// <summary>A response with a bound.</summary>
/// <param name="Response">The response.</param>
/// <param name="Magnitude">True when the magnitude (absolute value) is bounded.</param>
/// <param name="AtLeast">Smallest value allowed, or null; in the response's unit.</param>
/// <param name="AtMost">Largest value allowed, or null; in the response's unit.</param>
public sealed record StudyLimit(Response Response, bool Magnitude, double? AtLeast, double? AtMost)
{
    /// <summary>The limit as a constraint of a search.</summary>
    public Constraint AsConstraint => Bound(Response.Name);

    /// <summary>Value of a design that flies, in the response's unit; the magnitude where the magnitude is bounded.</summary>
    public double ValueOf(DesignEvaluation evaluation) =>
        Magnitude ? Math.Abs(evaluation[Response]) : evaluation[Response];

    /// <summary>True for a design that flies and meets the limit.</summary>
    public bool IsMetBy(DesignEvaluation design) => design.Failure is null && IsMetBy(ValueOf(design));

    /// <summary>True when the one design that a row was prepared for, and that flies, meets the limit.</summary>
    public bool IsMetBy(MissionRow row) => IsMetBy(Response.IsOverCases
        ? SampledRow.Of(row.Mission, row.Geometry, Response) is var value && Magnitude ? Math.Abs(value) : value
        : Response.Of(row, Magnitude));

    /// <summary>True for a value within the bounds, in the response's unit.</summary>
    public bool IsMetBy(double value) => Bound("").IsSatisfiedBy(value);

    private Constraint Bound(string name) => new(name, AtLeast ?? double.NegativeInfinity, AtMost ?? double.PositiveInfinity);
}

/// <summary>How the front is ranked.</summary>
/// <param name="Method">Distance to the ideal, or TOPSIS.</param>
/// <param name="Weights">One for each objective, in their order, none negative, not all zero.</param>
public sealed record RankingSetting(RankingMethod Method, IReadOnlyList<double> Weights)
{
    /// <summary>The method it is not ranked by.</summary>
    public RankingMethod OtherMethod => Method == RankingMethod.Topsis ? RankingMethod.DistanceToIdeal : RankingMethod.Topsis;

    /// <summary>Designs in rank order, best first.</summary>
    /// <param name="objectives">For each design its objectives, less is better.</param>
    public IReadOnlyList<RankedDesign> Rank(IReadOnlyList<double[]> objectives) => Method switch
    {
        RankingMethod.DistanceToIdeal => Ranking.ByDistanceToIdeal(objectives, Weights),
        RankingMethod.Topsis => Ranking.ByTopsis(objectives, Weights),
        _ => throw new InvalidOperationException(),
    };
}

/// <summary>Ranking methods.</summary>
public enum RankingMethod
{
    /// <summary>Weighted Euclidean distance to the best of every objective, each scaled 0 to 1 on the feasible front.</summary>
    DistanceToIdeal,

    /// <summary>TOPSIS: closeness to the best and distance from the worst (Hwang and Yoon 1981).</summary>
    Topsis,
}
