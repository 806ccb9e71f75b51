using FrameOpt.Numerics;

namespace FrameOpt.Analysis;

/// <summary>Desirability of a value of one response, from 0 (not acceptable) to 1 (as good as can be used).</summary>
/// <remarks>Source: G. Derringer and R. Suich 1980, Simultaneous optimization of several response variables, J. Quality Technology 12,
/// 214-219.</remarks>
public sealed class Desirability
{
    private readonly double from;
    private readonly double fullFrom;
    private readonly double fullTo;
    private readonly double to;
    private readonly double riseExponent;
    private readonly double fallExponent;

    private Desirability(double from, double fullFrom, double fullTo, double to, double riseExponent, double fallExponent)
    {
        if (!(from <= fullFrom && fullFrom <= fullTo && fullTo <= to && from < to))
            throw new ArgumentException("the bounds of a desirability must rise");
        (this.from, this.fullFrom, this.fullTo, this.to) = (from, fullFrom, fullTo, to);
        (this.riseExponent, this.fallExponent) = (riseExponent, fallExponent);
    }

    /// <summary>0 up to a lower bound, rising to 1 at an upper one and beyond.</summary>
    /// <param name="low">In the response's unit.</param>
    /// <param name="high">In the response's unit.</param>
    /// <param name="exponent">1 for a linear rise; larger values favour values close to the upper bound.</param>
    public static Desirability Maximise(double low, double high, double exponent = 1) =>
        new(low, high, double.PositiveInfinity, double.PositiveInfinity, exponent, exponent);

    /// <summary>1 up to a lower bound, falling to 0 at an upper one and beyond.</summary>
    /// <param name="low">In the response's unit.</param>
    /// <param name="high">In the response's unit.</param>
    /// <param name="exponent">1 for a linear fall; larger values favour values close to the lower bound.</param>
    public static Desirability Minimise(double low, double high, double exponent = 1) =>
        new(double.NegativeInfinity, double.NegativeInfinity, low, high, exponent, exponent);

    /// <summary>0 outside two bounds, 1 at a target between them.</summary>
    /// <param name="low">In the response's unit.</param>
    /// <param name="target">In the response's unit.</param>
    /// <param name="high">In the response's unit.</param>
    /// <param name="lowExponent">Of the rise below the target.</param>
    /// <param name="highExponent">Of the fall above it.</param>
    public static Desirability Target(double low, double target, double high, double lowExponent = 1, double highExponent = 1) =>
        new(low, target, target, high, lowExponent, highExponent);

    /// <summary>0 to 1.</summary>
    public double Of(double value)
    {
        if (!(value >= from && value <= to))
            return 0;
        if (value < fullFrom)
            return Elementary.Pow((value - from) / (fullFrom - from), riseExponent);
        return value > fullTo ? Elementary.Pow((to - value) / (to - fullTo), fallExponent) : 1;
    }

    /// <summary>The geometric mean: 0 as soon as one is 0.</summary>
    public static double Overall(IReadOnlyCollection<double> desirabilities) =>
        desirabilities.Any(d => d == 0) ? 0 : Elementary.Exp(desirabilities.Average(Elementary.Log));
}

/// <summary>A response with its desirability.</summary>
/// <param name="Response">Its value at a design, as a fit's <see cref="RegressionFit.Predict"/> gives it.</param>
/// <param name="Desirability">Of that value.</param>
public sealed record ResponseDesirability(Func<IReadOnlyList<double>, double> Response, Desirability Desirability);

/// <summary>The design of largest overall desirability.</summary>
/// <param name="Design">The factors, in the units of the search.</param>
/// <param name="Overall">Geometric mean of the desirabilities; 0 when no design is acceptable in every response.</param>
/// <param name="Responses">The value of each response there.</param>
/// <param name="Desirabilities">Of each, 0 to 1.</param>
public sealed record DesirabilityOptimum(IReadOnlyList<double> Design, double Overall, IReadOnlyList<double> Responses,
    IReadOnlyList<double> Desirabilities);

/// <summary>Maximises the overall desirability over a box of fitted surfaces.</summary>
public static class DesirabilitySearch
{
    private const int PointsPerFactor = 200;
    private const int Starts = 5;
    private const int LinesPerFactor = 40;
    private const double SmallestStep = 1e-9;

    /// <summary>The largest overall desirability, from many starts.</summary>
    /// <param name="goals">One or more.</param>
    /// <param name="box">The range of each factor.</param>
    /// <param name="seed">The same seed gives the same answer.</param>
    /// <remarks>A desirability of 0 has no gradient, so random points come first and the best of them are improved, each along random
    /// lines: the surface has kinks, where axes and slopes mislead.</remarks>
    public static DesirabilityOptimum Maximise(IReadOnlyList<ResponseDesirability> goals, IReadOnlyList<Interval> box, ulong seed)
    {
        var random = new Pcg32(seed);
        var coding = FactorCoding.OfRanges(box);
        double Overall(double[] coded) => At(goals, coding.Uncoded(coded)).Overall;
        var best = Enumerable.Range(0, PointsPerFactor * box.Count)
            .Select(_ => box.Select(_ => (2 * random.NextDouble()) - 1).ToArray())
            .OrderByDescending(Overall).Take(Starts).ToArray()
            .Select(start => Improved(start, Overall, random))
            .MaxBy(Overall)!;
        return At(goals, coding.Uncoded(best));
    }

    private static DesirabilityOptimum At(IReadOnlyList<ResponseDesirability> goals, double[] design)
    {
        double[] responses = [.. goals.Select(goal => goal.Response(design))];
        double[] desirabilities = [.. goals.Zip(responses, (goal, value) => goal.Desirability.Of(value))];
        return new DesirabilityOptimum(design, Desirability.Overall(desirabilities), responses, desirabilities);
    }

    /// <summary>Steps along random lines, half as long after a round without a gain.</summary>
    private static double[] Improved(double[] start, Func<double[], double> overall, Pcg32 random)
    {
        var (best, value) = (start, overall(start));
        for (var step = 0.25; step > SmallestStep; step /= 2)
        {
            for (var failures = 0; failures < LinesPerFactor * start.Length; failures++)
            {
                double[] line = [.. start.Select(_ => (2 * random.NextDouble()) - 1)];
                var length = Math.Sqrt(line.Sum(part => part * part));
                double[] next = [.. best.Select((at, f) => Math.Clamp(at + (step * line[f] / length), -1, 1))];
                var gained = overall(next);
                if (gained > value)
                    (best, value, failures) = (next, gained, -1);
            }
        }

        return best;
    }
}

/// <summary>Factors on a common scale, -1 to 1 over their ranges: the scale on which directions and curvatures can be compared.</summary>
/// <param name="Centre">Middle of each factor, in its unit.</param>
/// <param name="HalfRange">Half of its range, over 0.</param>
public sealed record FactorCoding(IReadOnlyList<double> Centre, IReadOnlyList<double> HalfRange)
{
    /// <summary>The coding of ranges.</summary>
    public static FactorCoding OfRanges(IReadOnlyList<Interval> ranges) =>
        new([.. ranges.Select(range => (range.Low + range.High) / 2)], [.. ranges.Select(range => (range.High - range.Low) / 2)]);

    /// <summary>From the factors' units to -1..1.</summary>
    public double[] Coded(IReadOnlyList<double> design) => [.. design.Select((value, f) => (value - Centre[f]) / HalfRange[f])];

    /// <summary>From -1..1 to the factors' units.</summary>
    public double[] Uncoded(IReadOnlyList<double> coded) => [.. coded.Select((value, f) => Centre[f] + (value * HalfRange[f]))];
}
