namespace FrameOpt.Studies;

/// <summary>How the front is put in order.</summary>
/// <param name="Method">Distance to the ideal, or TOPSIS.</param>
/// <param name="Weights">One for each objective, in their order, none negative, not all zero.</param>
public sealed record RankingSetting(RankingMethod Method, IReadOnlyList<double> Weights);
