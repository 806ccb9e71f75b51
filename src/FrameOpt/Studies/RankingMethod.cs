namespace FrameOpt.Studies;

/// <summary>The ways to put a front in order.</summary>
public enum RankingMethod
{
    /// <summary>Weighted Euclidean distance to the best of every objective, each scaled 0 to 1 on the feasible front.</summary>
    DistanceToIdeal,

    /// <summary>TOPSIS: closeness to the best and distance from the worst (Hwang and Yoon 1981).</summary>
    Topsis,
}
