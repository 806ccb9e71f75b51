namespace FrameOpt.Numerics;

/// <summary>Sine, logarithm, power and the like, rounded to the nearest double. The libraries of mathematics of two systems differ in the
/// last digit now and then, and with it the files of a run would; these give the same digits everywhere.</summary>
/// <remarks>Series and identities in <see cref="DoubleDouble"/>: arguments are halved until the series is short, results doubled again. The
/// arc tangent, the logarithm and the power, which a search asks for by the million, begin from tables made in that way, so that what is
/// left is small and its series short.</remarks>
public static class Elementary
{
    private const double HalfPi = Math.PI / 2, HalfPiRest = 6.123233995736766e-17, HalfPiRestRest = -1.4973849048591833e-33;
    private const int Halvings = 3;

    /// <summary>Entries of the tables for 1 rad, for a factor of 2, and for the numbers from 0 to 1.</summary>
    private const int Fine = 128;

    private static readonly DoubleDouble ln2 = new(0.6931471805599453, 2.3190468138462996e-17);
    private static readonly DoubleDouble third = new(1 / 3.0, 1.850371707708594e-17);

    /// <summary>Sine and cosine of the angles i / <see cref="Fine"/>, to a little beyond half a turn.</summary>
    private static readonly (DoubleDouble Sine, DoubleDouble Cosine)[] turns =
        [.. Enumerable.Range(0, 404).Select(i => Turned((double)i / Fine))];

    /// <summary>2 to the power of i / <see cref="Fine"/>.</summary>
    private static readonly DoubleDouble[] roots = [.. Enumerable.Range(0, Fine).Select(i => Raised(((double)i / Fine) * ln2))];

    /// <summary>The logarithms of i / <see cref="Fine"/>, from about 1/sqrt(2) to sqrt(2).</summary>
    private static readonly DoubleDouble[] logarithms = [.. Enumerable.Range(0, 183).Select(i => i < 90 ? 0 : Corrected((double)i / Fine))];

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
        // Turned back by a tabled angle the point lies near the axis.
        var steps = (int)Math.Round(near * Fine);
        var (sine, cosine) = turns[Math.Abs(steps)];
        if (steps < 0)
            sine = -sine;
        var (along, across) = (x * cosine + y * sine, y * cosine - x * sine);
        var tangent = across / along;
        var (t, square) = (tangent.Value, tangent.Value * tangent.Value);
        var tail = -t * square * (1 / 3.0 - square * (1 / 5.0 - square * (1 / 7.0 - square / 9)));
        return ((double)steps / Fine + (tangent + tail)).Value;
    }

    /// <summary>The angle whose sine that is, rad.</summary>
    public static double Asin(double sine) => Atan2(sine, Math.Sqrt((1 - sine) * (1 + sine)));

    /// <summary>e to a power.</summary>
    public static double Exp(double power) => Math.Abs(power) < 700 ? Power(power).Value : Math.Exp(power);

    /// <summary>The natural logarithm.</summary>
    public static double Log(double number) => HasLogarithm(number) ? Logarithm(number).Value : Math.Log(number);

    /// <summary>A number to a power.</summary>
    public static double Pow(double number, double power)
    {
        if (!HasLogarithm(number))
            return Math.Pow(number, power);
        var exponent = power * Logarithm(number);
        return Math.Abs(exponent.Value) < 700 ? Power(exponent).Value : Math.Pow(number, power);
    }

    private static bool HasLogarithm(double number) => number is > 1e-300 and < 1e300;

    private static DoubleDouble Logarithm(double number)
    {
        var twos = Math.ILogB(number * 1.4142135623730951);
        var mantissa = Math.ScaleB(number, -twos);
        var near = (int)Math.Round(mantissa * Fine);
        var middle = (double)near / Fine;
        // The difference is exact: the two are close.
        var more = (DoubleDouble)(mantissa - middle) / middle;
        var (v, square) = (more.Value, more * more);
        var tail = v * v * v * (1 / 3.0 - v * (1 / 4.0 - v * (1 / 5.0 - v * (1 / 6.0 - v * (1 / 7.0 - v / 8)))));
        return twos * ln2 + logarithms[near] + (more - square.Scaled(0.5) + tail);
    }

    /// <summary>The logarithm by Newton's step of third order from the system's.</summary>
    private static DoubleDouble Corrected(double number)
    {
        var near = Math.Log(number);
        var back = Raised(-near) * number - 1;
        return near + (back - back.Value * back.Value / 2);
    }

    private static DoubleDouble Power(DoubleDouble power)
    {
        var steps = Math.Round(power.Value * (Fine / ln2.Value));
        var x = power - (steps * ln2).Scaled(1.0 / Fine);
        var (v, twos) = (x.Value, (int)Math.Floor(steps / Fine));
        var tail = v * v * v * (1 / 6.0 + v * (1 / 24.0 + v * (1 / 120.0 + v * (1 / 720.0 + v / 5040))));
        var root = roots[(int)steps - twos * Fine];
        var result = root + root * (x + (x * x).Scaled(0.5) + tail);
        return new DoubleDouble(Math.ScaleB(result.Value, twos), Math.ScaleB(result.Rest, twos));
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
