using System.Runtime.Intrinsics;

namespace FrameOpt.Numerics;

/// <summary>A quantity that is linear in the lateral offset e.</summary>
public readonly record struct LinearFunction
{
    private readonly Vector128<double> both;

    /// <summary>A linear function from its two coefficients.</summary>
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

    /// <summary>The sum of two.</summary>
    public static LinearFunction operator +(LinearFunction a, LinearFunction b) => new(a.both + b.both);

    /// <summary>The difference of two.</summary>
    public static LinearFunction operator -(LinearFunction a, LinearFunction b) => new(a.both - b.both);

    /// <summary>The sum with a constant.</summary>
    public static LinearFunction operator +(LinearFunction a, double k) => new(a.both + Vector128.CreateScalar(k));

    /// <summary>The difference from a constant.</summary>
    public static LinearFunction operator -(LinearFunction a, double k) => new(a.both - Vector128.CreateScalar(k));

    /// <summary>A multiple.</summary>
    public static LinearFunction operator *(double k, LinearFunction a) => new(k * a.both);
}
