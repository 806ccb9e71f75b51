namespace FrameOpt.Numerics;

/// <summary>Sine, logarithm, power and the like, rounded to the nearest double. The libraries of mathematics of two systems differ in the
/// last digit now and then, and with it the files of a run would; these give the same digits everywhere.</summary>
/// <remarks>Series and identities in <see cref="DoubleDouble"/>: arguments are halved until the series is short, results doubled again.
/// What has no short series is a correction of the system's own answer.</remarks>
public static class Elementary
{
    private const double HalfPi = Math.PI / 2, HalfPiRest = 6.123233995736766e-17, HalfPiRestRest = -1.4973849048591833e-33;
    private const int Halvings = 3;

    private static readonly DoubleDouble ln2 = new(0.6931471805599453, 2.3190468138462996e-17);
    private static readonly DoubleDouble third = new(1 / 3.0, 1.850371707708594e-17);

    /// <summary>The sine and the cosine of an angle of some thousand turns at most, rad.</summary>
    public static (double Sine, double Cosine) SinCos(double radians)
    {
        var (sine, cosine) = Turned(radians);
        return (sine.Value, cosine.Value);
    }

    /// <summary>The sine of such an angle.</summary>
    public static double Sin(double radians) => Turned(radians).Sine.Value;

    /// <summary>The cosine of such an angle.</summary>
    public static double Cos(double radians) => Turned(radians).Cosine.Value;

    /// <summary>The angle of the point (x, y), rad.</summary>
    public static double Atan2(double y, double x)
    {
        var near = Math.Atan2(y, x);
        if (!(Math.Abs(y) > 1e-100) || !double.IsFinite(near + x * y))
            return near;
        var (sine, cosine) = Turned(near);
        return near + (y * cosine - x * sine).Value / (x * cosine.Value + y * sine.Value);
    }

    /// <summary>The angle whose sine that is, rad.</summary>
    public static double Asin(double sine) => Atan2(sine, Math.Sqrt((1 - sine) * (1 + sine)));

    /// <summary>e to a power.</summary>
    public static double Exp(double power) => Math.Abs(power) < 700 ? Raised(power).Value : Math.Exp(power);

    /// <summary>The natural logarithm.</summary>
    public static double Log(double number) => HasLogarithm(number) ? Logarithm(number).Value : Math.Log(number);

    /// <summary>A number to a power.</summary>
    public static double Pow(double number, double power)
    {
        if (!HasLogarithm(number))
            return Math.Pow(number, power);
        var exponent = power * Logarithm(number);
        return Math.Abs(exponent.Value) < 700 ? Raised(exponent).Value : Math.Pow(number, power);
    }

    private static bool HasLogarithm(double number) => number is > 1e-300 and < 1e300;

    /// <summary>Newton's step of third order from the system's logarithm.</summary>
    private static DoubleDouble Logarithm(double number)
    {
        var near = Math.Log(number);
        var back = Raised(-near) * number - 1;
        return near + (back - back.Value * back.Value / 2);
    }

    private static DoubleDouble Raised(DoubleDouble power)
    {
        var twos = Math.Round(power.Value / ln2.Value);
        var x = (power - twos * ln2).Scaled(1.0 / (1 << Halvings));
        var v = x.Value;
        var tail = v * v * v * v * (1 / 24.0 + v * (1 / 120.0 + v * (1 / 720.0 + v * (1 / 5040.0 + v * (1 / 40320.0 + v * (1 / 362880.0
            + v * (1 / 3628800.0 + v * (1 / 39916800.0 + v * (1 / 479001600.0)))))))));
        var square = x * x;
        // e^x - 1, so that doubling loses nothing.
        var grown = x + square.Scaled(0.5) + ((square * x * third).Scaled(0.5) + tail);
        for (var i = 0; i < Halvings; i++)
            grown = grown.Scaled(2) + grown * grown;
        var result = 1 + grown;
        return new DoubleDouble(Math.ScaleB(result.Value, (int)twos), Math.ScaleB(result.Rest, (int)twos));
    }

    private static (DoubleDouble Sine, DoubleDouble Cosine) Turned(double radians)
    {
        var quarters = Math.Round(radians / HalfPi);
        DoubleDouble left = (DoubleDouble)radians - quarters * (DoubleDouble)HalfPi - quarters * (DoubleDouble)HalfPiRest
            - quarters * HalfPiRestRest;
        var x = left.Scaled(1.0 / (1 << Halvings));
        var square = x * x;
        var s = square.Value;
        // The sine, and what the cosine lacks to 1, so that doubling loses nothing.
        var sine = x - x * (square * third).Scaled(0.5) + x.Value * s * s
            * (1 / 120.0 - s * (1 / 5040.0 - s * (1 / 362880.0 - s * (1 / 39916800.0 - s * (1 / 6227020800.0)))));
        var lack = square.Scaled(0.5) - (square * square * third).Scaled(0.125)
            + s * s * s
            * (1 / 720.0 - s * (1 / 40320.0 - s * (1 / 3628800.0 - s * (1 / 479001600.0 - s * (1 / 87178291200.0)))));
        for (var i = 0; i < Halvings; i++)
            (sine, lack) = (sine.Scaled(2) * (1 - lack), (sine * sine).Scaled(2));
        var cosine = 1 - lack;
        return ((int)quarters & 3) switch
        {
            0 => (sine, cosine),
            1 => (cosine, -sine),
            2 => (-sine, -cosine),
            _ => (-cosine, sine),
        };
    }
}
