namespace FrameOpt.Analysis;

/// <summary>How much a value of one response is liked, from 0 (not acceptable) to 1 (as good as can be used).</summary>
/// <remarks>Source: G. Derringer and R. Suich 1980, Simultaneous optimization of several response variables, J. Quality Technology 12, 214-219.</remarks>
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
    /// <param name="exponent">1 for a straight rise; more asks for values close to the upper bound.</param>
    public static Desirability Maximise(double low, double high, double exponent = 1) =>
        new(low, high, double.PositiveInfinity, double.PositiveInfinity, exponent, exponent);

    /// <summary>1 up to a lower bound, falling to 0 at an upper one and beyond.</summary>
    /// <param name="low">In the response's unit.</param>
    /// <param name="high">In the response's unit.</param>
    /// <param name="exponent">1 for a straight fall; more asks for values close to the lower bound.</param>
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
            return Math.Pow((value - from) / (fullFrom - from), riseExponent);
        return value > fullTo ? Math.Pow((to - value) / (to - fullTo), fallExponent) : 1;
    }

    /// <summary>The geometric mean: 0 as soon as one is 0.</summary>
    public static double Overall(IReadOnlyCollection<double> desirabilities) =>
        desirabilities.Any(d => d == 0) ? 0 : Math.Exp(desirabilities.Average(Math.Log));
}
