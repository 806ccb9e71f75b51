namespace FrameOpt.Model;

/// <summary>A quantity that is straight in the lateral offset e.</summary>
/// <param name="AtZero">Its value at no offset.</param>
/// <param name="PerMetre">Its change for each metre of offset to the right.</param>
public readonly record struct OffsetLine(double AtZero, double PerMetre)
{
    /// <summary>Its value at an offset in metres.</summary>
    public double At(double offsetMetres) => AtZero + PerMetre * offsetMetres;

    /// <summary>Sum of two such quantities.</summary>
    public static OffsetLine operator +(OffsetLine a, OffsetLine b) => new(a.AtZero + b.AtZero, a.PerMetre + b.PerMetre);

    /// <summary>A multiple of such a quantity.</summary>
    public static OffsetLine operator *(double k, OffsetLine a) => new(k * a.AtZero, k * a.PerMetre);
}
