using FrameOpt.StudyFile;
using MathNet.Numerics.Distributions;

namespace FrameOpt.Tests.StudyFile;

public class ProductLineSampleTests
{
    private const int Many = 40_000;

    [Fact]
    public void The_same_seed_draws_the_same_customers_and_another_seed_others()
    {
        var sample = new ProductLineSample(200, 5, 85, 12, 55, 125, [[0.6, 0.4]]);
        Assert.Equal(sample.Draw(), sample.Draw());
        Assert.NotEqual(sample.Draw(), (sample with { Seed = 6 }).Draw());
        Assert.Equal(sample.Draw().Take(50), (sample with { Count = 50 }).Draw());
    }

    [Theory]
    [InlineData(85, 12, 55, 125)]
    [InlineData(70, 15, 65, 130)]
    [InlineData(80, 30, 78, 82)]
    public void Masses_have_mean_and_deviation_of_the_cut_normal_distribution(double mean, double deviation, double from, double to)
    {
        double[] masses = [.. new ProductLineSample(Many, 1, mean, deviation, from, to, []).Draw()
            .Select(customer => customer.PilotMassKilograms)];
        Assert.All(masses, mass => Assert.InRange(mass, from, to));

        // Johnson, Kotz and Balakrishnan 1994, Continuous Univariate Distributions 1, 13.10.1 (from memory): alpha and beta are the ends, Z
        // what lies between.
        var (alpha, beta) = ((from - mean) / deviation, (to - mean) / deviation);
        var inside = Normal.CDF(0, 1, beta) - Normal.CDF(0, 1, alpha);
        var (atAlpha, atBeta) = (Normal.PDF(0, 1, alpha), Normal.PDF(0, 1, beta));
        var shift = (atAlpha - atBeta) / inside;
        var variance = deviation * deviation * (1 + (alpha * atAlpha - beta * atBeta) / inside - shift * shift);
        Check.Close(mean + deviation * shift, masses.Average(), absolute: 5 * Math.Sqrt(variance / Many) + 0.005,
            because: "five standard errors of the mean, and what rounding to 0.1 kg moves at the ends");
        var average = masses.Average();
        var found = masses.Sum(mass => Math.Pow(mass - average, 2)) / (Many - 1);
        Check.Close(variance, found, relative: 0.06,
            because: "five standard errors of the variance of 40,000 draws are 3.5 % for a normal distribution, less for a cut one; "
                + "rounding adds 0.1 kg of width to a range of 4 kg");
    }

    [Fact]
    public void Options_are_drawn_by_their_shares()
    {
        var customers = new ProductLineSample(Many, 2, 85, 12, 55, 125, [[3, 1], [0, 0.5, 0.5]]).Draw();
        foreach (var (configuration, part) in new[] { (0, 0.0), (1, 0.375), (2, 0.375), (3, 0.0), (4, 0.125), (5, 0.125) })
        {
            Check.Close(part, customers.Count(customer => customer.Configuration == configuration) / (double)Many,
                absolute: 5 * Math.Sqrt(part * (1 - part) / Many) + 1e-12,
                because: "five standard errors of a share");
        }
    }
}
