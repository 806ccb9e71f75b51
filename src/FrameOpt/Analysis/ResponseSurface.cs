using MathNet.Numerics.LinearAlgebra;

namespace FrameOpt.Analysis;

/// <summary>A second-order surface y = b0 + b'x + x'Bx, in the units of the fit: best made of coded factors.</summary>
public sealed class ResponseSurface
{
    private const double Level = 1e-10;
    private readonly double constant;
    private readonly Vector<double> linear;
    private readonly Matrix<double> curvature;

    private ResponseSurface(double constant, Vector<double> linear, Matrix<double> curvature, double error)
    {
        this.constant = constant;
        this.linear = linear;
        this.curvature = curvature;
        var axes = curvature.Evd(Symmetricity.Symmetric);
        var order = Enumerable.Range(0, linear.Count).OrderByDescending(i => axes.EigenValues[i].Real).ToArray();
        Eigenvalues = [.. order.Select(i => axes.EigenValues[i].Real)];
        Eigenvectors = [.. order.Select(i => axes.EigenVectors.Column(i).ToArray())];
        Shape = ShapeOf(Eigenvalues, [.. Eigenvectors.Select(axis => linear * Vector<double>.Build.DenseOfEnumerable(axis))], error);
        StationaryPoint = Shape is SurfaceShape.Maximum or SurfaceShape.Minimum or SurfaceShape.Saddle
            ? curvature.Solve(linear * -0.5).ToArray() : null;
    }

    /// <summary>Curvatures along the principal axes, largest first, in the response's unit.</summary>
    public IReadOnlyList<double> Eigenvalues { get; }

    /// <summary>The principal axes, each of length 1, in the order of the curvatures; the sign of one says nothing.</summary>
    public IReadOnlyList<IReadOnlyList<double>> Eigenvectors { get; }

    /// <summary>What the stationary point is.</summary>
    public SurfaceShape Shape { get; }

    /// <summary>Where the surface is level in every direction, in the factors of the fit, perhaps far outside the runs; null for a
    /// ridge or a plane.</summary>
    public IReadOnlyList<double>? StationaryPoint { get; }

    /// <summary>The shape in words.</summary>
    public string ShapeInWords => Shape switch
    {
        SurfaceShape.Maximum => "a maximum: the response falls in every direction from it",
        SurfaceShape.Minimum => "a minimum: the response rises in every direction from it",
        SurfaceShape.Saddle => "a saddle: the response rises in some directions and falls in others",
        SurfaceShape.Ridge => "a ridge: the response stays level in some direction, there is no single stationary point",
        SurfaceShape.RisingRidge => "a rising ridge: in some direction the response keeps rising without curvature, there is no stationary "
            + "point",
        _ => "a plane: no curvature beyond the error of the fit",
    };

    /// <summary>Direction in which the response rises fastest from the centre, of length 1; null when it is level there.</summary>
    /// <remarks>Source: G. E. P. Box and K. B. Wilson 1951, On the experimental attainment of optimum conditions (from memory).</remarks>
    public IReadOnlyList<double>? SteepestAscent => linear.L2Norm() > 0 ? linear.Normalize(2).ToArray() : null;

    /// <summary>The surface of a fit.</summary>
    /// <exception cref="ArgumentException">A term is of higher than second order.</exception>
    /// <remarks>Source: canonical analysis, R. H. Myers, D. C. Montgomery and C. M. Anderson-Cook 2009, Response Surface Methodology, ch. 6
    /// (from memory): xs = -B^-1 b / 2.</remarks>
    public static ResponseSurface Of(RegressionFit fit) => Of(fit, fit.Terms[0].Powers.Count, 0);

    /// <summary>The surface of a fit that is known to be off: curvatures and slopes within the error count as none.</summary>
    /// <param name="fit">Of second order.</param>
    /// <param name="error">Of the fit, in the response's unit.</param>
    public static ResponseSurface Of(RegressionFit fit, double error) => Of(fit, fit.Terms[0].Powers.Count, error);

    /// <summary>The surface over the first factors of a fit, the others at 0: those after them are blocks.</summary>
    internal static ResponseSurface Of(RegressionFit fit, int factors, double error)
    {
        var constant = 0.0;
        var linear = Vector<double>.Build.Dense(factors);
        var curvature = Matrix<double>.Build.Dense(factors, factors);
        foreach (var coefficient in fit.Coefficients.Where(one => one.Term.Powers.Skip(factors).All(power => power == 0)))
        {
            int[] of = [.. coefficient.Term.Powers.SelectMany((power, f) => Enumerable.Repeat(f, power))];
            if (of.Length > 2)
                throw new ArgumentException($"{coefficient.Term.Name} is of higher than second order", nameof(fit));
            if (of.Length == 0)
                constant = coefficient.Value;
            else if (of.Length == 1)
                linear[of[0]] = coefficient.Value;
            else
            {
                curvature[of[0], of[1]] += coefficient.Value / 2;
                curvature[of[1], of[0]] += coefficient.Value / 2;
            }
        }

        return new ResponseSurface(constant, linear, curvature, error);
    }

    /// <summary>The response at a point.</summary>
    public double Value(IReadOnlyList<double> point)
    {
        var x = Vector<double>.Build.DenseOfEnumerable(point);
        return constant + (linear * x) + (x * curvature * x);
    }

    /// <summary>The point of largest response on a sphere about the centre.</summary>
    /// <param name="radius">Of the sphere, at least 0, in the factors of the fit.</param>
    /// <remarks>Source: A. E. Hoerl 1959 and N. R. Draper 1963, "Ridge analysis" of response surfaces (from memory): (B - m I) x = -b/2
    /// with m above every curvature, m chosen so that x has the radius.</remarks>
    public double[] HighestAtRadius(double radius) => OnSphere(radius, 1);

    /// <summary>The point of smallest response on a sphere about the centre; otherwise as <see cref="HighestAtRadius"/>.</summary>
    public double[] LowestAtRadius(double radius) => OnSphere(radius, -1);

    private double[] OnSphere(double radius, int sign)
    {
        if (radius == 0)
            return new double[linear.Count];
        var axes = Eigenvectors.Select(axis => Vector<double>.Build.DenseOfEnumerable(axis)).ToArray();
        double[] curvatures = [.. Eigenvalues.Select(value => sign * value)];
        double[] slopes = [.. axes.Select(axis => sign * (axis * linear))];
        var top = Array.IndexOf(curvatures, curvatures.Max());
        double[] Along(double above) => [.. slopes.Select((slope, i) =>
            slope == 0 ? 0 : slope / 2 / (above + curvatures[top] - curvatures[i]))];

        // The length falls as m rises; so close to the top curvature as rounding allows, and no closer.
        var low = 1e-13 * curvatures.Max(Math.Abs);
        var high = Math.Max(low, linear.L2Norm() / radius);
        for (var i = 0; i < 200; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Along(middle).Sum(part => part * part) > radius * radius ? (middle, high) : (low, middle);
        }

        // A surface without slope along its top axis never gets long enough: the rest of the radius goes along that axis.
        var along = Along(high);
        var missing = (radius * radius) - along.Sum(part => part * part);
        if (missing > Level * radius * radius)
            along[top] = Math.CopySign(Math.Sqrt((along[top] * along[top]) + missing), along[top]);
        return [.. Enumerable.Range(0, linear.Count).Select(f => axes.Select((axis, i) => axis[f] * along[i]).Sum())];
    }

    private static SurfaceShape ShapeOf(IReadOnlyList<double> eigenvalues, double[] slopes, double error)
    {
        var level = Math.Max(error, Level * eigenvalues.Max(Math.Abs));
        var isFlat = eigenvalues.Select(value => Math.Abs(value) <= level).ToList();
        if (isFlat.Contains(true))
            return !isFlat.Contains(false) ? SurfaceShape.Plane
                : slopes.Where((slope, i) => isFlat[i] && Math.Abs(slope) > Math.Max(error, Level * slopes.Max(Math.Abs))).Any()
                    ? SurfaceShape.RisingRidge : SurfaceShape.Ridge;
        return eigenvalues.All(value => value < 0) ? SurfaceShape.Maximum
            : eigenvalues.All(value => value > 0) ? SurfaceShape.Minimum : SurfaceShape.Saddle;
    }
}

/// <summary>Kind of stationary point of a second-order surface.</summary>
public enum SurfaceShape
{
    /// <summary>The surface falls in every direction.</summary>
    Maximum,

    /// <summary>The surface rises in every direction.</summary>
    Minimum,

    /// <summary>It rises in some directions and falls in others.</summary>
    Saddle,

    /// <summary>It stays level in some direction: there is no single stationary point.</summary>
    Ridge,

    /// <summary>In some direction it rises without curvature: there is no stationary point.</summary>
    RisingRidge,

    /// <summary>No curvature in any direction.</summary>
    Plane,
}
