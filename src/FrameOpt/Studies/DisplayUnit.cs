namespace FrameOpt.Studies;

/// <summary>The unit a user typed for a factor, so that results come back in it.</summary>
/// <param name="Symbol">As shown, for example mm, in, deg.</param>
/// <param name="SiPerUnit">How many SI units (m, rad) one of these is.</param>
public sealed record DisplayUnit(string Symbol, double SiPerUnit)
{
    /// <summary>An SI value in this unit, with the dust of the conversion brushed off.</summary>
    public double FromSi(double si) => Math.Round(si / SiPerUnit, 9);

    /// <summary>A value in this unit in SI.</summary>
    public double ToSi(double value) => value * SiPerUnit;

    /// <summary>A value with its unit, for people: to a hundredth of a millimetre or finer.</summary>
    public string Text(double si) => SiPerUnit < 0.005
        ? FormattableString.Invariant($"{FromSi(si):0.##} {Symbol}")
        : FormattableString.Invariant($"{FromSi(si):0.####} {Symbol}");
}
