using System.Runtime.Intrinsics;

namespace FrameOpt.Numerics;

/// <summary>A quantity that is straight in the lateral offset e.</summary>
public readonly record struct LinearFunction
{
    private readonly Vector128<double> both;

    /// <summary>A line from its two numbers.</summary>
    /// <param name="atZero">Its value at no offset.</param>
    /// <param name="perMetre">Its change for each metre of offset to the right.</param>
    public LinearFunction(double atZero, double perMetre)
        : this(Vector128.Create(atZero, perMetre))
    {
    }

    private LinearFunction(Vector128<double> both) => this.both = both;

    /// <summary>Its value at no offset.</summary>
    public double AtZero => both[0];

    /// <summary>Its change for each metre of offset to the right.</summary>
    public double PerMetre => both[1];

    /// <summary>Its value at an offset in metres.</summary>
    public double At(double offsetMetres) => AtZero + PerMetre * offsetMetres;

    /// <summary>Sum of two such quantities.</summary>
    public static LinearFunction operator +(LinearFunction a, LinearFunction b) => new(a.both + b.both);

    /// <summary>Difference of two such quantities.</summary>
    public static LinearFunction operator -(LinearFunction a, LinearFunction b) => new(a.both - b.both);

    /// <summary>The same everywhere more by a constant.</summary>
    public static LinearFunction operator +(LinearFunction a, double k) => new(a.both + Vector128.CreateScalar(k));

    /// <summary>The same everywhere less by a constant.</summary>
    public static LinearFunction operator -(LinearFunction a, double k) => new(a.both - Vector128.CreateScalar(k));

    /// <summary>A multiple of such a quantity.</summary>
    public static LinearFunction operator *(double k, LinearFunction a) => new(k * a.both);
}
