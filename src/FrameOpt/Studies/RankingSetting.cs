namespace FrameOpt.Studies;

/// <summary>How the front is put in order.</summary>
/// <param name="Method">Distance to the ideal, or TOPSIS.</param>
/// <param name="Weights">One for each objective, in their order, none negative, not all zero.</param>
public sealed record RankingSetting(RankingMethod Method, IReadOnlyList<double> Weights);

/// <summary>The ways to put a front in order.</summary>
public enum RankingMethod
{
    /// <summary>Weighted Euclidean distance to the best of every objective, each scaled 0 to 1 on the feasible front.</summary>
    DistanceToIdeal,

    /// <summary>TOPSIS: closeness to the best and distance from the worst (Hwang and Yoon 1981).</summary>
    Topsis,
}
