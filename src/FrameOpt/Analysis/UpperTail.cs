using MathNet.Numerics;

namespace FrameOpt.Analysis;

/// <summary>Probabilities of a larger value, worked from the tail itself so that small ones keep their digits.</summary>
/// <remarks>Source: incomplete beta and gamma functions, Abramowitz and Stegun 1964, 26.4.19, 26.5.27 and 26.6.2 (from memory).</remarks>
public static class UpperTail
{
    /// <summary>P(F > ratio); 0 at infinity.</summary>
    public static double F(double ratio, double degreesAbove, double degreesBelow) =>
        SpecialFunctions.BetaRegularized(degreesBelow / 2, degreesAbove / 2, degreesBelow / (degreesBelow + (degreesAbove * Math.Max(0, ratio))));

    /// <summary>P(|t| > value), both tails together.</summary>
    public static double StudentBothSides(double value, double degrees) =>
        SpecialFunctions.BetaRegularized(degrees / 2, 0.5, degrees / (degrees + (value * value)));

    /// <summary>P(chi-square > value).</summary>
    public static double ChiSquare(double value, double degrees) => SpecialFunctions.GammaUpperRegularized(degrees / 2, value / 2);
}
