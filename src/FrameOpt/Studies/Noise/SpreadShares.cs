namespace FrameOpt.Studies.Noise;

/// <summary>How much of the spread of one number over the cases comes from each source.</summary>
/// <param name="Phase">Whose residual torque it is, by its place in the mission.</param>
/// <param name="StandardDeviation">Of that residual over the cases, N·m.</param>
/// <param name="Shares">One a source, the largest first.</param>
public sealed record SpreadShares(int Phase, double StandardDeviation, IReadOnlyList<SourceShare> Shares);

/// <summary>What a source has in the spread of a number.</summary>
/// <param name="Source">Which.</param>
/// <param name="Total">Share of the variance that remains when every other source is known (total Sobol index).</param>
/// <param name="Shapley">Its part when all of the variance is divided among the sources; all of them add up to 1.</param>
public sealed record SourceShare(NoiseSource Source, double Total, double Shapley);
