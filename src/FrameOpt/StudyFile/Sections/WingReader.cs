using FrameOpt.Model;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Reads the wing.</summary>
internal static class WingReader
{
    private const double GenericRollRestoring = 0.05;

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
        var restoring = ReadRollRestoring(wing);
        var leverage = YawLeverageReader.Read(wing);
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
                new("fraction", Dimension.Share, AllowedRange.NonNegativeUpTo(1, "1 (100 %)")),
                new("airspeed", Dimension.Speed, AllowedRange.PositiveUpTo(50, "50 m/s")),
                new("glide ratio", Dimension.Number, AllowedRange.PositiveUpTo(30, "30")),
            ], rising: 2);
        if (rows is null)
            return null;
        if (rows[0][0] != 0 || rows[^1][0] != 1)
            polar.DiagnosticBag.Add(
                polar.KeyAt("rows"), "wing.polar.rows must go from fraction 0 (trim) to fraction 1 (fully accelerated).",
                "Let the first row begin with 0 and the last with 1.");
        return new Polar(mass, density, [.. rows.Select(row => new PolarPoint(row[0], row[1], row[2]))]);
    }

    private static double ReadRollRestoring(Section wing)
    {
        if (wing.OptionalNumber("roll_restoring", Dimension.Number, AllowedRange.PositiveUpTo(2, "2")) is { } given)
            return given;
        wing.DiagnosticBag.AddAssumption("roll restoring coefficient, for the indicative turn rate only",
            FormattableString.Invariant($"{GenericRollRestoring} per radian"), "Toglia and Vendittelli 2010, Table 2 (generic)");
        return GenericRollRestoring;
    }

    private static RiserCoupling ReadCoupling(Section wing)
    {
        if (!wing.Has("riser_coupling"))
        {
            wing.DiagnosticBag.AddAssumption("riser coupling length", "from the geometry of the lines, at the spacing of each design",
                "assumption: two straight lines to a rigid wing; range 0.05 to 1 m, even in its logarithm");
            return new RiserCoupling.FromLines();
        }

        if (wing.Child("riser_coupling", StudyKeys.RiserCoupling) is not { } coupling)
            return new RiserCoupling.FromLines();
        return new RiserCoupling.Measured(
            coupling.Number("length", Dimension.Length, AllowedRange.PositiveUpTo(3, "3 m")),
            coupling.Number("at_spacing", Dimension.Length, AllowedRange.Between(0.1, 3, "100 mm", "3 m")));
    }
}

/// <summary>Reads how a wing answers a yaw moment: a number, two factors, or the slopes of a sideslip.</summary>
internal static class YawLeverageReader
{
    private static readonly AllowedRange share = AllowedRange.NonNegativeUpTo(1, "1 (each half follows its riser)");

    /// <summary>The yaw leverage; what is assumed in it is listed.</summary>
    public static YawLeverage Read(Section wing)
    {
        if (wing.Has("yaw_leverage") && wing.Has("sideslip"))
            wing.DiagnosticBag.Add(wing.At("sideslip"), "wing gives both yaw_leverage and sideslip.", "Keep one of the two.");
        if (wing.Has("sideslip"))
            return FromSideslip(wing);
        if (wing.Value("yaw_leverage") is Node.Scalar)
            return new YawLeverage.Constant(wing.Number("yaw_leverage", Dimension.Number, AllowedRange.NonNegativeUpTo(10, "10")));
        var factors = wing.Has("yaw_leverage") ? wing.Child("yaw_leverage", StudyKeys.YawLeverage) : null;
        return new YawLeverage.FromSpeed(SpeedFactor(wing, factors), TwistShare(wing, factors));
    }

    private static YawLeverage FromSideslip(Section wing)
    {
        if (wing.Child("sideslip", StudyKeys.Sideslip) is not { } slopes)
            return new YawLeverage.FromSpeed(YawLeverage.AssumedSpeedFactor, YawLeverage.AssumedTwistShare);
        var roll = slopes.Number("roll", Dimension.Number, AllowedRange.Within(10, "10"));
        var yaw = slopes.Number("yaw", Dimension.Number, AllowedRange.Within(10, "10"));
        if (yaw <= 0)
            slopes.DiagnosticBag.Add(slopes.At("yaw"),
                "wing.sideslip.yaw must be above 0: a wing that does not turn its nose into a sideslip holds no course, so no "
                    + "leverage follows.",
                "Give Cn_beta per radian about the hang points, nose right in a sideslip from the right, or leave sideslip out.");
        return new YawLeverage.FromSideslip(roll, yaw, TwistShare(wing, slopes));
    }

    private static double SpeedFactor(Section wing, Section? factors)
    {
        if (factors?.OptionalNumber("speed_factor", Dimension.TimePerLength, AllowedRange.PositiveUpTo(2, "2 s/m")) is { } given)
            return given;
        wing.DiagnosticBag.AddAssumption("speed factor of the yaw leverage",
            FormattableString.Invariant($"{YawLeverage.AssumedSpeedFactor} s/m"),
            FormattableString.Invariant($"assumption, range {YawLeverage.LowestSpeedFactor} to {YawLeverage.HighestSpeedFactor} s/m; ")
                + "Belloc 2015 gives 0.11 to 0.16 s/m");
        return YawLeverage.AssumedSpeedFactor;
    }

    private static double TwistShare(Section wing, Section? factors)
    {
        if (factors?.OptionalNumber("twist_share", Dimension.Share, share) is { } given)
            return given;
        wing.DiagnosticBag.AddAssumption("twist share of the yaw leverage", FormattableString.Invariant($"{YawLeverage.AssumedTwistShare}"),
            "assumption, range 0 (wing rigid in torsion) to 1 (each half follows its riser)");
        return YawLeverage.AssumedTwistShare;
    }
}
