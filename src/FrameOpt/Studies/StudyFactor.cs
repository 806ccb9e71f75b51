using FrameOpt.Model;

namespace FrameOpt.Studies;

/// <summary>A geometry input of a study: swept over its levels, or fixed at one.</summary>
/// <param name="Input">Which geometry input.</param>
/// <param name="LevelsSi">One or more, increasing, in m or rad; one level is a fixed factor. Of a continuous factor the two ends of its
/// range.</param>
/// <param name="Unit">The unit the user typed.</param>
public sealed record StudyFactor(GeometryInput Input, IReadOnlyList<double> LevelsSi, DisplayUnit Unit)
{
    /// <summary>As the study file writes it.</summary>
    public string Name => Input.Name;

    /// <summary>True when any value between the ends is allowed; a search of the grid cannot take such a factor.</summary>
    public bool IsContinuous { get; init; }

    /// <summary>True when there is something to choose.</summary>
    public bool IsSwept => LevelsSi.Count > 1;

    /// <summary>Highest less lowest level, in m or rad.</summary>
    public double RangeSi => SweptRangeSi ?? LevelsSi[^1] - LevelsSi[0];

    /// <summary>The range that the study sweeps, where one frame of it is looked at alone; null otherwise. A distance from the baseline is
    /// measured in it.</summary>
    public double? SweptRangeSi { get; init; }

    /// <summary>The factor of one frame of the study.</summary>
    /// <param name="si">Its level, m or rad.</param>
    public StudyFactor At(double si) => this with { LevelsSi = [si], SweptRangeSi = RangeSi };
}

/// <summary>The unit a user typed for a factor, so that results come back in it.</summary>
/// <param name="Symbol">As shown, for example mm, in, deg.</param>
/// <param name="SiPerUnit">How many SI units (m, rad) one of these is.</param>
public sealed record DisplayUnit(string Symbol, double SiPerUnit)
{
    /// <summary>An SI value in this unit, rounded to 9 decimals so that no rounding error of the conversion shows.</summary>
    public double FromSi(double si) => Math.Round(si / SiPerUnit, 9);

    /// <summary>A value in this unit in SI.</summary>
    public double ToSi(double value) => value * SiPerUnit;

    /// <summary>A value with its unit, for people: to a hundredth of a millimetre or finer.</summary>
    public string Text(double si) => SiPerUnit < 0.005
        ? FormattableString.Invariant($"{FromSi(si):0.##} {Symbol}")
        : FormattableString.Invariant($"{FromSi(si):0.####} {Symbol}");
}
