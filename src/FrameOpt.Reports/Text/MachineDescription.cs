using FrameOpt.Model;

namespace FrameOpt.Reports.Text;

/// <summary>The machine and the wing in words.</summary>
internal static class MachineDescription
{
    private const string Group = "Machine";

    /// <summary>A row for each mass and each property of the machine.</summary>
    public static IEnumerable<DescriptionRow> Of(Machine machine) =>
    [
        .. machine.Masses.Select(item => new DescriptionRow(Group, item.Name,
            $"{Plain(item.MassKilograms)} kg; {At(item.At)}{(item.IsBody ? "; leans with the pilot" : "")}")
        {
            Paths = [$"machine.masses[{item.Name}]"],
        }),
        new(Group, "total suspended mass", $"{Plain(Math.Round(machine.MassKilograms, 6))} kg; centre of gravity "
            + $"{At(machine.CentreOfGravity)}"),
        new(Group, "hang line", ForeAft(machine.HangLineForwardMetres)),
        new(Group, "datum", machine.Datum.Length > 0 ? machine.Datum : DatumText.Unnamed),
        new(Group, "hang point", machine.HangPoint.Length > 0 ? machine.HangPoint : DatumText.Unnamed),
        new(Group, "arms", machine.Arms == RiserArms.Moving ? "moving: the hang points are their pivots" : "rigid, or none"),
        .. PropellerRows(machine.Propeller),
        .. machine.Engine is { } engine ? [EngineRow(engine)] : Array.Empty<DescriptionRow>(),
        new(Group, "pilot's largest lean", Length(machine.Pilot.LeanMetres)),
        new(Group, "drag area", $"{Plain(machine.Pilot.DragAreaSquareMetres)} m²; centre {At(machine.Pilot.DragCentre)}"),
    ];

    /// <summary>A row for each property of the wing.</summary>
    public static IEnumerable<DescriptionRow> Of(Wing wing)
    {
        DescriptionRow Row(string what, string value) => new("Wing", what, value);
        yield return Row(
            "mass, area, span", $"{Plain(wing.MassKilograms)} kg; {Plain(wing.AreaSquareMetres)} m² flat; {Plain(wing.SpanMetres)} m flat");
        yield return Row(
            "lines", $"{Plain(wing.LineLengthMetres)} m from the hang line to the wing; "
                + $"{Plain(wing.LineSpreadMetres)} m between the centroids of the two halves");
        yield return Row("polar", $"at {Plain(wing.Polar.ReferenceMassKilograms)} kg and {Plain(wing.Polar.ReferenceDensity)} kg/m³: "
            + string.Join("; ", wing.Polar.Points.Select(
            point => $"fraction {Plain(point.Fraction)}: {Plain(point.AirspeedMetresPerSecond)} m/s, "
                + $"glide ratio {Plain(point.GlideRatio)}")));
        yield return Row("riser coupling", wing.RiserCoupling switch
        {
            RiserCoupling.Measured measured =>
                $"{Millimetres(measured.LengthMetres)} at a spacing of {Millimetres(measured.AtSpacingMetres)}, proportional to the "
                    + $"square of the spacing",
            RiserCoupling.Constant constant => $"{Millimetres(constant.LengthMetres)} at every spacing",
            _ => "from the geometry of the lines, at the spacing of each design",
        });
        yield return Row("roll restoring", $"{Plain(wing.RollRestoring)} per radian of bank (for the indicative turn rate)");
        yield return Row("yaw leverage", wing.YawLeverage switch
        {
            YawLeverage.Constant constant => $"{Plain(constant.Value)} in every phase",
            YawLeverage.FromSpeed speed =>
                $"{Plain(speed.SpeedFactor)} s/m times the airspeed, less the wing's twist (twist share {Plain(speed.TwistShare)})",
            YawLeverage.FromSideslip sideslip =>
                $"from a sideslip (roll {Plain(sideslip.Roll)}, yaw {Plain(sideslip.Yaw)} per radian), less the wing's twist "
                    + $"(twist share {Plain(sideslip.TwistShare)})",
            _ => throw new InvalidOperationException(),
        });
    }

    private static IEnumerable<DescriptionRow> PropellerRows(Propeller propeller)
    {
        yield return new(
            Group, "propeller",
            $"diameter {Plain(propeller.DiameterMetres)} m; turns {StudyText.RotationText(propeller.Rotation)} seen from behind");
        yield return new(
            Group, "hub",
                $"{At(propeller.Hub)}; tilted {Plain(Math.Round(Math.Abs(propeller.TiltRadians) * 180 / Math.PI, 6))} "
                    + $"deg {(propeller.TiltRadians < 0 ? "downward" : "upward")}");
        yield return new(Group, "propeller's polar inertia", $"{Plain(propeller.PolarInertia)} kg·m²");
        yield return new(Group, "propeller's coefficients", propeller.Curve switch
        {
            PropellerTable table => "J: CT, CP  " + string.Join("; ", table.Rows
                .Select(row => $"{Plain(row.AdvanceRatio)}: {Plain(row.ThrustCoefficient)}, {Plain(row.PowerCoefficient)}")),
            BenchPropeller bench =>
                FormattableString.Invariant($"from the bench: static CT {bench.StaticThrustCoefficient:0.0000}, ")
                + FormattableString.Invariant($"static CP {bench.StaticPowerCoefficient:0.0000}, ")
                + FormattableString.Invariant($"zero thrust at J {bench.ZeroThrustAdvanceRatio:0.000}"),
            _ => throw new InvalidOperationException(),
        });
    }

    private static DescriptionRow EngineRow(Engine engine)
    {
        var rows = engine.CrankTorque.Arguments.Zip(engine.CrankTorque.Values, (rpm, torque) => $"{Plain(rpm)} rpm {Plain(torque)} N·m");
        return new(Group, "engine",
            $"reduction {Plain(engine.Reduction)}; efficiency {Plain(engine.Efficiency)}; full-throttle torque at the crank "
                + $"{string.Join("; ", rows)}");
    }

    private static string At(FramePoint point) =>
        $"{ForeAft(point.ForwardMetres)}, {Length(Math.Abs(point.RightMetres))} {SideText.Side(point.RightMetres)}, "
        + $"{Length(Math.Abs(point.UpMetres))} {(point.UpMetres < 0 ? "below" : "above")} the datum";

    private static string ForeAft(double metres) => $"{Length(Math.Abs(metres))} {(metres < 0 ? "behind" : "forward")}";

    private static string Length(double metres) => $"{Plain(Math.Round(1000 * metres, 3))} mm";

    private static string Millimetres(double metres) => $"{Plain(Math.Round(1000 * metres, 6))} mm";

    private static string Plain(double value) => PlainNumber.Text(Math.Round(value, 9));
}
