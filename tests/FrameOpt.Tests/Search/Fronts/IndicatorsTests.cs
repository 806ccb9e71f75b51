using CsCheck;
using FrameOpt.Search.Fronts;

namespace FrameOpt.Tests.Search.Fronts;

/// <summary>Sources of the figures: moocore, test_igd and test_epsilon, and pymoo, tests/test_indicators.py; each also from its
/// definition.</summary>
public sealed class IndicatorsTests
{
    private const string Printed = "digits printed";

    private static readonly double[] reference = [10, 0, 6, 1, 2, 2, 1, 6, 0, 10];
    private static readonly double[] three = [4, 2, 3, 3, 2, 4];
    private static readonly double[] wide = [8, 2, 4, 4, 2, 8];

    [Fact]
    public void Published_distances_of_the_first_set()
    {
        Check.Close(3.707092031609239, Indicators.InvertedGenerationalDistance(three, reference, 2), relative: 1e-14, because: Printed);
        Check.Close(1.482842712474619, Indicators.InvertedGenerationalDistancePlus(three, reference, 2), relative: 1e-14, because: Printed);
        Check.Close(1.804737854124365, Indicators.GenerationalDistance(three, reference, 2), relative: 1e-14, because: Printed);
        Check.Close(1.138071187457698, Indicators.GenerationalDistancePlus(three, reference, 2), relative: 1e-14, because: Printed);
    }

    [Fact]
    public void Published_distances_of_the_second_set()
    {
        Check.Close(2.591483465847630, Indicators.InvertedGenerationalDistance(wide, reference, 2), relative: 1e-14, because: Printed);
        Check.Close(2.260112615949154, Indicators.InvertedGenerationalDistancePlus(wide, reference, 2), relative: 1e-14, because: Printed);
        Check.Close(2.433521026581923, Indicators.GenerationalDistance(wide, reference, 2), relative: 1e-14, because: Printed);
        Check.Close(2.276142374915397, Indicators.GenerationalDistancePlus(wide, reference, 2), relative: 1e-14, because: Printed);
    }

    [Fact]
    public void Published_epsilons()
    {
        double[] above = [10, 1, 6, 1, 2, 2, 1, 6, 1, 10];
        Assert.Equal(1, Indicators.AdditiveEpsilon(three, above, 2));
        Assert.Equal(2, Indicators.MultiplicativeEpsilon(three, above, 2));
    }

    [Fact]
    public void A_front_is_no_distance_from_itself() =>
        Gen.Double[0.5, 1].Array[3].Array[1, 20].Select(points => points.SelectMany(p => p).ToArray()).Sample(points =>
        {
            Assert.Equal(0, Indicators.GenerationalDistance(points, points, 3));
            Assert.Equal(0, Indicators.InvertedGenerationalDistance(points, points, 3));
            Assert.True(Indicators.AdditiveEpsilon(points, points, 3) <= 0);
            Assert.True(Indicators.MultiplicativeEpsilon(points, points, 3) <= 1);
        });

    /// <summary>After all is lessened by the epsilon, every reference point is covered, and with less than that some is not.</summary>
    [Fact]
    public void The_additive_epsilon_just_suffices_to_cover_the_reference() =>
        Gen.Int[0, 20].Select(k => (double)k).Array[3].Array[1, 12]
            .Select(Gen.Int[0, 20].Select(k => (double)k).Array[3].Array[1, 12]).Sample((points, front) =>
        {
            var epsilon = Indicators.AdditiveEpsilon([.. points.SelectMany(p => p)], [.. front.SelectMany(p => p)], 3);
            bool Covered(double by) => front.All(r => points.Any(a => a.Zip(r).All(pair => pair.First - by <= pair.Second)));
            Assert.True(Covered(epsilon));
            Assert.False(Covered(epsilon - 1));
        });

    [Fact]
    public void Empty_sets_and_factors_of_nothing_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Indicators.GenerationalDistance([], reference, 2));
        Assert.Throws<ArgumentException>(() => Indicators.InvertedGenerationalDistance(three, [], 2));
        Assert.Throws<ArgumentException>(() => Indicators.MultiplicativeEpsilon(three, reference, 2));
        Assert.Throws<ArgumentException>(() => Indicators.AdditiveEpsilon([1, double.NaN], reference, 2));
    }
}
