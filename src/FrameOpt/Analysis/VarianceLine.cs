namespace FrameOpt.Analysis;

/// <summary>One line of an analysis of variance. Sums of squares are in the square of the response's unit.</summary>
/// <param name="Source">The effect or model term.</param>
/// <param name="Degrees">Degrees of freedom.</param>
/// <param name="SequentialSumOfSquares">Of this line after those above it; the lines add up to the model's.</param>
/// <param name="AdjustedSumOfSquares">Of this line after every other that does not contain it; the same whatever the order of lines and the units
/// of factors.</param>
/// <param name="ContributionPercent">The adjusted sum as a part of the total, %. Adds up to 100 with the residual's in an orthogonal plan only.</param>
/// <param name="F">Adjusted mean square over the residual's, infinite for an exact fit; null where nothing can be tested.</param>
/// <param name="P">Probability of a larger F by chance alone; null where nothing can be tested.</param>
public sealed record VarianceLine(string Source, int Degrees, double SequentialSumOfSquares, double AdjustedSumOfSquares,
    double ContributionPercent, double? F, double? P);
