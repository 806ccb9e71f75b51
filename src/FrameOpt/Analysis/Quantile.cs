using MathNet.Numerics.Distributions;

namespace FrameOpt.Analysis;

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
    public static double F(double probability, double degreesAbove, double degreesBelow) => FWithTail(1 - probability, degreesAbove, degreesBelow);

    /// <summary>Of chi-square.</summary>
    public static double ChiSquare(double probability, double degrees) => ChiSquared.InvCDF(degrees, probability);

    /// <summary>The F that is exceeded with a given probability: its logarithm, by halving an interval.</summary>
    private static double FWithTail(double tail, double degreesAbove, double degreesBelow)
    {
        double low = -700, high = 700;
        for (var i = 0; i < 64; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = UpperTail.F(Math.Exp(middle), degreesAbove, degreesBelow) > tail ? (middle, high) : (low, middle);
        }

        return Math.Exp((low + high) / 2);
    }
}
