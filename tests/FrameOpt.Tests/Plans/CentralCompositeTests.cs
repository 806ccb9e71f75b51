using FrameOpt.Numerics;
using FrameOpt.Plans;

namespace FrameOpt.Tests.Plans;

public class CentralCompositeTests
{
    private const string Digits = "printed digits";

    // (2^k)^(1/4) and the root of k: G. E. P. Box and J. S. Hunter 1957, Ann. Math. Stat. 28:195-241; table of Montgomery, Design and
    // Analysis of Experiments.
    [Theory]
    [InlineData(AxialRule.Rotatable, 2, 4, 1.41421356)]
    [InlineData(AxialRule.Rotatable, 3, 8, 1.68179283)]
    [InlineData(AxialRule.Rotatable, 4, 16, 2)]
    [InlineData(AxialRule.Rotatable, 5, 32, 2.37841423)]
    [InlineData(AxialRule.Rotatable, 6, 64, 2.82842712)]
    [InlineData(AxialRule.Rotatable, 7, 128, 3.36358566)]
    [InlineData(AxialRule.Rotatable, 5, 16, 2)]
    [InlineData(AxialRule.Rotatable, 6, 32, 2.37841423)]
    [InlineData(AxialRule.Rotatable, 7, 64, 2.82842712)]
    [InlineData(AxialRule.Spherical, 2, 4, 1.41421356)]
    [InlineData(AxialRule.Spherical, 3, 8, 1.73205081)]
    [InlineData(AxialRule.Spherical, 4, 16, 2)]
    [InlineData(AxialRule.Spherical, 5, 32, 2.23606798)]
    [InlineData(AxialRule.Spherical, 6, 64, 2.44948974)]
    [InlineData(AxialRule.Spherical, 7, 64, 2.64575131)]
    [InlineData(AxialRule.FaceCentred, 7, 64, 1)]
    public void Axial_distance_is_the_published_one(AxialRule rule, int factors, int cube, double distance) =>
        Check.Close(distance, CentralComposite.AxialDistance(rule, factors, cube, new CentrePoints(3, 0)), absolute: 5e-9, because: Digits);

    // Orthogonal distance, the root of (sqrt(F N) - F) / 2: Myers, Montgomery and Anderson-Cook, Response Surface Methodology; figures
    // worked from it.
    [Theory]
    [InlineData(2, 5, 1.2671034983)]
    [InlineData(3, 6, 1.5246492450)]
    [InlineData(4, 7, 1.7707424222)]
    [InlineData(3, 8, 1.6227290534)]
    public void Orthogonal_distance_leaves_the_squares_uncorrelated(int factors, int centre, double distance)
    {
        Check.Close(distance, CentralComposite.AxialDistance(AxialRule.Orthogonal, factors, 1 << factors, new CentrePoints(centre, 0)),
            absolute: 5e-11, because: Digits);
        var plan = CentralComposite.Build(PlanNames.Letters(factors), AxialRule.Orthogonal, new CentrePoints(centre, 0));
        var correlation = PlanCorrelation.Of(plan, PlanModel.Quadratic(factors));
        var terms = correlation.GetLength(0);
        for (var i = 1; i < terms; i++)
        {
            for (var j = 1; j < i; j++)
                Check.Close(0, correlation[i, j], absolute: 1e-12, because: "rounding of sums");
        }
    }

    // Plan of the two-block example of R. H. Myers, D. C. Montgomery and C. M. Anderson-Cook 2009, Table 7.6, in R. V. Lenth 2009, J. Stat.
    // Softw. 32(7): seven
    // runs each, axial runs at the root of two.
    [Fact]
    public void Two_blocks_that_do_not_touch_the_model_are_the_published_ones()
    {
        var plan = CentralComposite.Build(["time", "temperature"], AxialRule.BlockOrthogonal, new CentrePoints(3, 3), inBlocks: true);
        Assert.Equal(14, plan.Runs.Count);
        Assert.All(plan.Runs.Where(run => run.Block == 1), run => Assert.True(run.Kind is PointKind.Factorial or PointKind.Centre));
        Assert.Equal(7, plan.Runs.Count(run => run.Block == 2));
        Check.Close(Math.Sqrt(2), plan.Runs.Max(run => run.Coded[0]), absolute: 1e-12, because: "rounding of roots");
    }

    [Fact]
    public void Fractional_cube_of_resolution_five_estimates_the_quadratic_model()
    {
        var cube = FractionalFactorial.Build(PlanNames.Letters(5), ["E=ABCD"]);
        var plan = CentralComposite.Build(cube, AxialRule.Rotatable, new CentrePoints(6, 0));
        Assert.Equal(16 + 10 + 6, plan.Runs.Count);
        Assert.NotNull(PlanQuality.Of(plan, PlanModel.Quadratic(5)));
    }

    [Fact]
    public void Arguments_that_make_no_plan_are_refused_in_words()
    {
        var coarse = FractionalFactorial.Build(PlanNames.Letters(4), ["D=ABC"]);
        Assert.Contains("resolution 4", Assert.Throws<ArgumentException>(
            () => CentralComposite.Build(coarse, AxialRule.Rotatable, new CentrePoints(3, 0))).Message);
        Assert.Contains("in blocks", Assert.Throws<ArgumentException>(
            () => CentralComposite.Build(["a", "b"], AxialRule.BlockOrthogonal, new CentrePoints(3, 3))).Message);
        Assert.Contains("cannot be negative", Assert.Throws<ArgumentException>(() => new CentrePoints(-1, 0)).Message);
    }
}
