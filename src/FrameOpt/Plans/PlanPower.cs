using FrameOpt.Numerics;
using MathNet.Numerics;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;

namespace FrameOpt.Plans;

/// <summary>Power of a plan.</summary>
public static class PlanPower
{
    /// <summary>Power of the two-sided t test of one coefficient.</summary>
    /// <param name="quality">The plan's quality for the model.</param>
    /// <param name="term">Index of the term in the model, from 0.</param>
    /// <param name="coefficient">True coefficient, in the unit of the response: half the change from low to high for a main effect, the
    /// change from the middle to an end for a square.</param>
    /// <param name="noise">The standard deviation of the noise of one run, in the same unit; greater than 0.</param>
    /// <param name="significance">Significance level: probability of finding an effect where there is none, between 0 and 1.</param>
    /// <exception cref="ArgumentException">Noise or significance out of range, or no degrees of freedom left to estimate the
    /// noise.</exception>
    public static double Of(PlanQuality quality, int term, double coefficient, double noise, double significance = 0.05)
    {
        if (!(noise > 0))
            throw new ArgumentException($"the noise must be greater than 0, but is {noise}");
        if (!(significance > 0 && significance < 1))
            throw new ArgumentException($"the significance must be between 0 and 1, but is {significance}");
        var degrees = quality.TermDegreesOfFreedom[term];
        if (degrees < 1)
            throw new ArgumentException(
                "the plan leaves no degrees of freedom for error; add runs, such as centre runs, or leave out terms");
        var shift = coefficient / (noise * quality.StandardErrors[term]);
        return BeyondCritical(Math.Abs(shift), degrees, significance);
    }

    /// <summary>P(|T| > t) for a noncentral T: the mean over the estimated noise s of the normal probability of exceeding t s.</summary>
    private static double BeyondCritical(double shift, int degrees, double significance)
    {
        var critical = StudentT.InvCDF(0, 1, degrees, 1 - (significance / 2));
        var reach = 12 / Math.Sqrt(2.0 * degrees);
        return GaussLegendreRule.Integrate(
            s => NoiseDensity(s, degrees) * (Normal.CDF(0, 1, shift - (critical * s)) + Normal.CDF(0, 1, -shift - (critical * s))),
            Math.Max(0, 1 - reach), 1 + reach, 256);
    }

    /// <summary>The density of the estimated over the true standard deviation: the root of chi-squared over its degrees of
    /// freedom.</summary>
    private static double NoiseDensity(double s, int degrees)
    {
        var half = degrees / 2.0;
        return Elementary.Exp(Elementary.Log(2) + (half * Elementary.Log(half)) - SpecialFunctions.GammaLn(half)
            + ((degrees - 1) * Elementary.Log(s)) - (half * s * s));
    }
}
