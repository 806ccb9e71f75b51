using CsCheck;
using FrameOpt.Analysis;
using FrameOpt.Numerics;
using FrameOpt.Plans;

namespace FrameOpt.Tests.Analysis;

public class ResponseSurfaceTests
{
    private static readonly double[][] grid =
        [.. from a in new[] { -1.0, 0, 1 } from b in new[] { -1.0, 0, 1 } from c in new[] { -1.0, 0, 1 } select new[] { a, b, c }];

    private static readonly Gen<ResponseSurface> surfaces = Spread.Within(1).Array[27].Select(y =>
        ResponseSurface.Of(Regression.Fit(ModelTerms.Quadratic(3), grid, y, ErrorKind.Deterministic)));

    /// <summary>y = 3 + 2 x1 - x1² written out: axes along the factors, level along the others.</summary>
    [Fact]
    public void A_surface_level_in_some_factor_is_a_ridge_without_stationary_point()
    {
        var surface = ResponseSurface.Of(Regression.Fit(ModelTerms.Quadratic(3), grid,
            [.. grid.Select(x => 3 + (2 * x[0]) - (x[0] * x[0]))], ErrorKind.Deterministic));
        Assert.Equal(SurfaceShape.Ridge, surface.Shape);
        Assert.Null(surface.StationaryPoint);
        Check.Close(1, surface.SteepestAscent![0], relative: 1e-12, because: "rounding");
    }

    [Fact]
    public void Curvature_within_the_error_of_the_fit_is_none()
    {
        // y = x1 + x2² / 1000: by hand curvatures of 0.001 and 0, a slope of 1 along x1.
        var fit = Regression.Fit(ModelTerms.Quadratic(3), grid, [.. grid.Select(x => x[0] + (x[1] * x[1] / 1000))],
            ErrorKind.Deterministic);
        Assert.Equal(SurfaceShape.RisingRidge, ResponseSurface.Of(fit).Shape);
        Assert.Equal(SurfaceShape.Plane, ResponseSurface.Of(fit, 0.002).Shape);
        Assert.Null(ResponseSurface.Of(fit, 0.002).StationaryPoint);
    }

    [Fact]
    public void At_the_stationary_point_the_surface_is_level() => surfaces.Sample(surface =>
    {
        if (surface.StationaryPoint is not { } point || point.Any(x => Math.Abs(x) > 100))
            return;
        for (var f = 0; f < 3; f++)
        {
            double[] ahead = [.. point], behind = [.. point];
            ahead[f] += 1e-3;
            behind[f] -= 1e-3;
            Check.Close(surface.Value(ahead), surface.Value(behind), absolute: 1e-9,
                because: "a second-order surface is even about it; rounding of values up to 1e4");
        }
    }, iter: 100);

    [Fact]
    public void Principal_axes_carry_their_curvatures() => surfaces.Sample(surface =>
    {
        var centre = surface.Value([0, 0, 0]);
        foreach (var (axis, curvature) in surface.Eigenvectors.Zip(surface.Eigenvalues))
        {
            double[] back = [.. axis.Select(x => -x)];
            Check.Close(curvature, ((surface.Value(axis) + surface.Value(back)) / 2) - centre, absolute: 1e-11, because: "rounding");
        }
    }, iter: 100);

    [Fact]
    public void No_point_of_a_sphere_is_higher_or_lower_than_the_ridge_path() =>
        Gen.Select(surfaces, Gen.Double[0.01, 3], Spread.Within(1).Array[3].Array[200]).Sample((surface, radius, directions) =>
        {
            var highest = surface.HighestAtRadius(radius);
            var lowest = surface.LowestAtRadius(radius);
            Check.Close(radius, Length(highest), relative: 1e-9, because: "rounding");
            Check.Close(radius, Length(lowest), relative: 1e-9, because: "rounding");
            foreach (var direction in directions.Where(direction => Length(direction) > 0))
                Assert.InRange(surface.Value([.. direction.Select(x => x * radius / Length(direction))]),
                    surface.Value(lowest) - 1e-9, surface.Value(highest) + 1e-9);
        }, iter: 50);

    /// <summary>y = x1² + x2²/2 has no slope at the centre: the highest points are along x1.</summary>
    [Fact]
    public void The_ridge_path_of_a_surface_without_slope_goes_along_its_top_axis()
    {
        var surface = ResponseSurface.Of(Regression.Fit(ModelTerms.Quadratic(3), grid,
            [.. grid.Select(x => (x[0] * x[0]) + (x[1] * x[1] / 2))], ErrorKind.Deterministic));
        Check.Close(2, Math.Abs(surface.HighestAtRadius(2)[0]), relative: 1e-9, because: "rounding");
        Check.Close(0, surface.Value(surface.LowestAtRadius(2)), absolute: 1e-9, because: "rounding");
    }

    [Fact]
    public void A_third_order_fit_is_refused() =>
        Assert.Throws<ArgumentException>(() => ResponseSurface.Of(Regression.Fit(
            ModelTerms.Parse(1, "1", "x1^3"), [[0], [1], [2]], [0, 1, 9], ErrorKind.Measured)));

    private static double Length(double[] x) => Math.Sqrt(x.Sum(value => value * value));
}
