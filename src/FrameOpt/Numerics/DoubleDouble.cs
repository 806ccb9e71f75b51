using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics.X86;

namespace FrameOpt.Numerics;

/// <summary>A number as the sum of two doubles, the second at most half a last digit of the first: some 32 digits.</summary>
/// <remarks>Source: T. J. Dekker, A floating-point technique for extending the available precision, Numer. Math. 18 (1971) 224-242, from
/// memory. Only sums and products of doubles, which every processor rounds alike.</remarks>
internal readonly record struct DoubleDouble(double Value, double Rest)
{
    private const double Splitter = 134217729; // 2^27 + 1

    public static implicit operator DoubleDouble(double value) => new(value, 0);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static DoubleDouble operator +(in DoubleDouble a, in DoubleDouble b)
    {
        var sum = Sum(a.Value, b.Value);
        return Ordered(sum.Value, sum.Rest + a.Rest + b.Rest);
    }

    public static DoubleDouble operator -(in DoubleDouble a) => new(-a.Value, -a.Rest);

    public static DoubleDouble operator -(in DoubleDouble a, in DoubleDouble b) => a + -b;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static DoubleDouble operator *(in DoubleDouble a, in DoubleDouble b)
    {
        var product = Product(a.Value, b.Value);
        return Ordered(product.Value, product.Rest + a.Value * b.Rest + a.Rest * b.Value);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static DoubleDouble operator /(in DoubleDouble a, in DoubleDouble b)
    {
        var near = a.Value / b.Value;
        var left = a - near * b;
        return Ordered(near, left.Value / b.Value);
    }

    /// <summary>Times a power of two, which is exact.</summary>
    public DoubleDouble Scaled(double power) => new(Value * power, Rest * power);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static DoubleDouble Sum(double a, double b)
    {
        var sum = a + b;
        var added = sum - a;
        return new DoubleDouble(sum, a - (sum - added) + (b - added));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static DoubleDouble Product(double a, double b)
    {
        var product = a * b;
        if (Fma.IsSupported) // exact as the halves below, and quicker
            return new DoubleDouble(product, Math.FusedMultiplyAdd(a, b, -product));
        var (aHigh, aLow) = Halves(a);
        var (bHigh, bLow) = Halves(b);
        return new DoubleDouble(product, aHigh * bHigh - product + aHigh * bLow + aLow * bHigh + aLow * bLow);
    }

    private static (double High, double Low) Halves(double number)
    {
        var large = Splitter * number;
        var high = large - (large - number);
        return (high, number - high);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static DoubleDouble Ordered(double value, double rest)
    {
        var sum = value + rest;
        return new DoubleDouble(sum, rest - (sum - value));
    }
}
