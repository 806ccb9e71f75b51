namespace FrameOpt.Analysis;

/// <summary>The design liked best.</summary>
/// <param name="Design">The factors, in the units of the search.</param>
/// <param name="Overall">Geometric mean of the desirabilities; 0 when no design is acceptable in every response.</param>
/// <param name="Responses">The value of each response there.</param>
/// <param name="Desirabilities">Of each, 0 to 1.</param>
public sealed record DesirabilityOptimum(IReadOnlyList<double> Design, double Overall, IReadOnlyList<double> Responses,
    IReadOnlyList<double> Desirabilities);
