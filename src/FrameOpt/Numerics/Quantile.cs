using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace FrameOpt.Numerics;

/// <summary>The value below which a given part of a distribution lies. Probabilities are over 0 and under 1.</summary>
/// <remarks>F and t are found from their own tails: the library's F quantile ends at 1000 and its t keeps nine digits.</remarks>
public static class Quantile
{
    /// <summary>Of the standard normal distribution.</summary>
    public static double Normal(double probability) => MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, probability);

    /// <summary>Of Student's t.</summary>
    /// <remarks>t² is an F of 1 and the same degrees of freedom.</remarks>
    public static double Student(double probability, double degrees) => probability == 0.5 ? 0
        : Math.Sign(probability - 0.5) * Math.Sqrt(FWithTail(2 * Math.Min(probability, 1 - probability), 1, degrees));

    /// <summary>Of F.</summary>
    public static double F(double probability, double numeratorDegrees, double denominatorDegrees) =>
        FWithTail(1 - probability, numeratorDegrees, denominatorDegrees);

    /// <summary>Of chi-square.</summary>
    public static double ChiSquare(double probability, double degrees) => ChiSquared.InvCDF(degrees, probability);

    /// <summary>The F that is exceeded with a given probability: its logarithm, by halving an interval.</summary>
    private static double FWithTail(double tail, double numeratorDegrees, double denominatorDegrees)
    {
        double low = -700, high = 700;
        for (var i = 0; i < 64; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = UpperTail.F(Elementary.Exp(middle), numeratorDegrees, denominatorDegrees) > tail ? (middle, high) : (low, middle);
        }

        return Elementary.Exp((low + high) / 2);
    }
}

/// <summary>Probabilities of a larger value, worked from the tail itself so that small ones keep their digits.</summary>
/// <remarks>Source: incomplete beta and gamma functions, Abramowitz and Stegun 1964, 26.4.19, 26.5.27 and 26.6.2 (from memory).</remarks>
public static class UpperTail
{
    /// <summary>P(F > ratio); 0 at infinity.</summary>
    public static double F(double ratio, double numeratorDegrees, double denominatorDegrees) =>
        SpecialFunctions.BetaRegularized(denominatorDegrees / 2, numeratorDegrees / 2,
            denominatorDegrees / (denominatorDegrees + (numeratorDegrees * Math.Max(0, ratio))));

    /// <summary>P(|t| > value), both tails together.</summary>
    public static double StudentTwoSided(double value, double degrees) =>
        SpecialFunctions.BetaRegularized(degrees / 2, 0.5, degrees / (degrees + (value * value)));

    /// <summary>P(chi-square > value).</summary>
    public static double ChiSquare(double value, double degrees) => SpecialFunctions.GammaUpperRegularized(degrees / 2, value / 2);
}
