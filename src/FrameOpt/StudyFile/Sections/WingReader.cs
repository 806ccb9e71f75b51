using FrameOpt.Model;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Reads the wing.</summary>
internal static class WingReader
{
    private static readonly AllowedRange length = AllowedRange.PositiveUpTo(50, "50 m");

    public static Wing? Read(Section? wing)
    {
        if (wing is null)
            return null;
        var mass = wing.Number("mass", Dimension.Mass, AllowedRange.NonNegativeUpTo(50, "50 kg"));
        var area = wing.Number("area", Dimension.Area, AllowedRange.PositiveUpTo(200, "200 m²"));
        var span = wing.Number("span", Dimension.Length, length);
        var lines = wing.Number("lines", Dimension.Length, length);
        var spread = wing.Number("line_spread", Dimension.Length, length);
        if (spread >= span)
            wing.DiagnosticBag.Add(
                wing.At("line_spread"), "wing.line_spread is between the middles of the two halves' lines: it must be less than the span.",
                "About a third of the span is usual (common practice, no source).");
        var polar = ReadPolar(wing.Child("polar", StudyKeys.Polar));
        var coupling = ReadCoupling(wing);
        var (restoring, leverage) = YawLeverageReader.Read(wing);
        return polar is null ? null : new Wing(mass, area, span, lines, spread, polar, coupling, restoring, leverage);
    }

    private static Polar? ReadPolar(Section? polar)
    {
        if (polar is null)
            return null;
        var at = polar.Child("at", StudyKeys.PolarAt);
        var mass = at?.Number("mass", Dimension.Mass, AllowedRange.PositiveUpTo(1000, "1000 kg")) ?? double.NaN;
        var density = at?.Number("density", Dimension.Density, AirDensity.AllowedRange) ?? double.NaN;
        var rows = Row.Table(polar, "rows",
            [
                new("fraction", "1", Dimension.Share, AllowedRange.NonNegativeUpTo(1, "1 (100 %)")),
                new("airspeed", "13.6 m/s", Dimension.Speed, AllowedRange.PositiveUpTo(50, "50 m/s")),
                new("glide ratio", "5.0", Dimension.Number, AllowedRange.PositiveUpTo(30, "30")),
            ], rising: 2);
        if (rows is null)
            return null;
        if (rows[0][0] != 0 || rows[^1][0] != 1)
            polar.DiagnosticBag.Add(
                polar.KeyAt("rows"), "wing.polar.rows must go from fraction 0 (trim) to fraction 1 (fully accelerated).",
                "Let the first row begin with 0 and the last with 1.");
        return new Polar(mass, density, [.. rows.Select(row => new PolarPoint(row[0], row[1], row[2]))]);
    }

    private static RiserCoupling ReadCoupling(Section wing)
    {
        if (!wing.Has("riser_coupling"))
        {
            wing.DiagnosticBag.AddAssumption("riser coupling length", "from the geometry of the lines, at the spacing of each design",
                "assumption: two straight lines to a rigid wing; range 0.1 to 0.4 m");
            return new RiserCoupling.FromLines();
        }

        if (wing.Child("riser_coupling", StudyKeys.RiserCoupling) is not { } coupling)
            return new RiserCoupling.FromLines();
        return new RiserCoupling.Measured(
            coupling.Number("length", Dimension.Length, AllowedRange.PositiveUpTo(3, "3 m")),
            coupling.Number("at_spacing", Dimension.Length, AllowedRange.PositiveUpTo(3, "3 m")));
    }
}

/// <summary>Reads how a wing turns: two coefficients, or the leverage itself, or neither.</summary>
internal static class YawLeverageReader
{
    private const double GenericRollRestoring = 0.05;

    /// <summary>The roll restoring coefficient and the yaw leverage.</summary>
    public static (double RollRestoring, YawLeverage Leverage) Read(Section wing)
    {
        var restoring = wing.OptionalNumber("roll_restoring", Dimension.Number, AllowedRange.PositiveUpTo(2, "2"));
        var damping = wing.OptionalNumber("yaw_damping", Dimension.Number, AllowedRange.PositiveUpTo(2, "2"));
        var leverage = wing.OptionalNumber("yaw_leverage", Dimension.Number, AllowedRange.NonNegativeUpTo(10, "10"));
        if (leverage is not null && damping is not null)
            wing.DiagnosticBag.Add(wing.At("yaw_leverage"), "wing gives both yaw_leverage and yaw_damping.",
                "Keep `yaw_leverage`, or `roll_restoring` and `yaw_damping`.");
        if (leverage is null && restoring is null != damping is null)
        {
            var (given, other) = damping is null ? ("roll_restoring", "yaw_damping: 0.07") : ("yaw_damping", "roll_restoring: 0.05");
            wing.DiagnosticBag.Add(wing.At(given), $"wing.{given} stands alone.",
                $"Add `{other}` to it, or give `yaw_leverage` in place of both.");
        }

        if (restoring is null)
            wing.DiagnosticBag.AddAssumption("roll restoring coefficient, for the indicative turn rate only", "0.05 per radian",
                "Toglia and Vendittelli 2010, Table 2 (generic)");
        return (restoring ?? GenericRollRestoring, Leverage(wing, restoring, damping, leverage));
    }

    private static YawLeverage Leverage(Section wing, double? restoring, double? damping, double? leverage)
    {
        if (leverage is { } given)
            return new YawLeverage.Constant(given);
        if (restoring is { } roll && damping is { } yaw)
            return new YawLeverage.FromCoefficients(roll, yaw);
        wing.DiagnosticBag.AddAssumption("yaw leverage", FormattableString.Invariant($"{YawLeverage.Assumed}"),
            FormattableString.Invariant($"assumption, range {YawLeverage.AssumedLowest} to {YawLeverage.AssumedHighest}"));
        return new YawLeverage.Constant(YawLeverage.Assumed);
    }
}
