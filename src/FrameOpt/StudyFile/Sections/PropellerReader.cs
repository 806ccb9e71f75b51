using FrameOpt.Model;
using FrameOpt.Model.Propulsion;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Reads the propeller.</summary>
internal static class PropellerReader
{
    public static Propeller? Read(Section? propeller)
    {
        if (propeller is null)
            return null;
        var diameter = propeller.Number("diameter", Dimension.Length, AllowedRange.PositiveUpTo(3, "3 m"));
        var rotation = ReadRotation(propeller);
        var hub = propeller.Child("hub", StudyKeys.Hub)?.Point() ?? default;
        var tilt = propeller.OptionalNumber("tilt", Dimension.Angle, AllowedRange.Within(Math.PI / 4, "45 deg"));
        var inertia = propeller.OptionalNumber("polar_inertia", Dimension.Inertia, AllowedRange.NonNegativeUpTo(5, "5 kg·m²"));
        var curve = ReadCurve(propeller, diameter);
        if (tilt is null)
            propeller.DiagnosticBag.AddAssumption("tilt of the thrust line", "0 deg",
                "assumption: thrust at a right angle to the frame; range -5 to 10 deg");
        if (inertia is null)
            propeller.DiagnosticBag.AddAssumption("polar inertia of the propeller", "0 kg·m²",
                "assumption: the gyroscopic moment of pitching is left out; range 0 to 0.15 kg·m²");
        return curve is null ? null : new Propeller(diameter, rotation, hub, tilt ?? 0, inertia ?? 0, curve);
    }

    /// <summary>How a propeller turns, under the key turns; clockwise after an error.</summary>
    public static Rotation ReadRotation(Section propeller)
    {
        var turns = propeller.Text("turns");
        switch (turns)
        {
            case null or "clockwise":
                return Rotation.Clockwise;
            case "counter-clockwise":
                return Rotation.CounterClockwise;
            default:
                propeller.DiagnosticBag.Add(propeller.At("turns"), "turns is clockwise or counter-clockwise, seen from behind.",
                    NearestName.Of(turns, ["clockwise", "counter-clockwise", "anticlockwise"]) switch
                    {
                        "clockwise" => "Did you mean `clockwise`?",
                        not null => "Did you mean `counter-clockwise`?",
                        null => "Write `turns: clockwise` or `turns: counter-clockwise`.",
                    });
                return Rotation.Clockwise;
        }
    }

    private static PropellerCurve? ReadCurve(Section propeller, double diameter)
    {
        if (propeller.Has("coefficients") == propeller.Has("bench"))
        {
            propeller.DiagnosticBag.Add(propeller.KeyAt("bench"), "machine.propeller needs either coefficients or a bench run.",
                propeller.Has("bench") ? "Remove one of the two."
                    : StudyKeys.Propeller.Find("bench")!.FixWhenMissing("under machine.propeller"));
            return null;
        }

        return propeller.Has("coefficients") ? CoefficientReader.Read(propeller)
            : BenchReader.Read(propeller.Child("bench", StudyKeys.Bench), diameter);
    }
}

/// <summary>Reads a propeller's rows of coefficients.</summary>
internal static class CoefficientReader
{
    public static PropellerCurve? Read(Section propeller)
    {
        var rows = Row.Table(propeller, "coefficients",
            [
                new("advance ratio J", Dimension.Number, AllowedRange.NonNegativeUpTo(5, "5")),
                new("thrust coefficient CT", Dimension.Number, AllowedRange.Within(1, "1")),
                new("power coefficient CP", Dimension.Number, AllowedRange.Within(1, "1")),
            ], rising: 1);
        if (rows is null)
            return null;
        var nodes = propeller.List("coefficients");
        for (var i = 0; i < rows.Length; i++)
        {
            if (ExceedsActuatorDiscLimit(rows[i][0], rows[i][1], rows[i][2]))
                propeller.DiagnosticBag.Add(nodes[i], "This row gives more thrust than any propeller can for that power.",
                    "Check the order of the columns: J, CT, CP.");
        }

        return new PropellerTable([.. rows.Select(row => new PropellerRow(row[0], row[1], row[2]))]);
    }

    /// <summary>True when the power is below the ideal power by more than the rounding of a printed table.</summary>
    private static bool ExceedsActuatorDiscLimit(double advanceRatio, double thrust, double power) =>
        thrust > 0 && power < 0.999 * ActuatorDisc.IdealPowerCoefficient(thrust, advanceRatio);
}

/// <summary>Reads a static bench run of a propeller.</summary>
internal static class BenchReader
{
    public static PropellerCurve? Read(Section? bench, double diameter)
    {
        if (bench is null)
            return null;
        var rpm = bench.Number("rpm", Dimension.Revolutions, AllowedRange.PositiveUpTo(10000, "10000 rpm"));
        var thrust = bench.Number("thrust", Dimension.Force, AllowedRange.PositiveUpTo(5000, "5000 N"));
        var torque = Torque(bench, rpm);
        var density = bench.OptionalNumber("density", Dimension.Density, AirDensity.AllowedRange);
        if (density is null)
            bench.DiagnosticBag.AddAssumption("air density of the bench run", "1.225 kg/m³",
                "assumption: standard day at sea level (ISO 2533:1975); range 1.0 to 1.3 kg/m³");
        var zeroThrust = ZeroThrustAdvanceRatio(bench, diameter);
        double[] figures = [rpm, thrust, torque, density ?? 0, diameter, zeroThrust];
        if (figures.Any(double.IsNaN))
            return null;
        var curve = BenchPropeller.FromStaticBench(rpm, thrust, torque, density ?? Atmosphere.SeaLevelDensityKgPerM3, diameter, zeroThrust);
        if (ActuatorDisc.SmallestPowerOverIdeal(curve) < 1)
        {
            var ideal = ActuatorDisc.IdealPowerWatts(thrust, 0, density ?? Atmosphere.SeaLevelDensityKgPerM3, diameter) / 1000;
            bench.DiagnosticBag.Add(
                bench.Owner, "This bench run gives more thrust than any propeller of that diameter can for that power: "
                    + FormattableString.Invariant($"it took {torque * 2 * Math.PI * rpm / 60_000:0.0} kW, ")
                    + FormattableString.Invariant($"and an ideal propeller takes {ideal:0.0} kW at standstill (momentum theory)."),
                "Check the units, and that torque and rpm are those of the propeller, not of the crank.");
        }

        return curve;
    }

    private static double Torque(Section bench, double rpm)
    {
        if (bench.Has("torque") == bench.Has("power"))
        {
            bench.DiagnosticBag.Add(bench.KeyAt("power"), "machine.propeller.bench needs either a torque or a power.",
                bench.Has("power") ? "Remove one of the two."
                    : "Add the torque or the power that the run took, at the propeller, not at the crank.");
            return double.NaN;
        }

        if (bench.Has("torque"))
            return bench.Number("torque", Dimension.Torque, AllowedRange.PositiveUpTo(1000, "1000 N·m"));
        return PropellerLoads.TorqueFromPower(bench.Number("power", Dimension.Power, AllowedRange.PositiveUpTo(100_000, "100 kW")),
            rpm / 60);
    }

    /// <summary>As given, otherwise from the pitch.</summary>
    private static double ZeroThrustAdvanceRatio(Section bench, double diameter)
    {
        var given = bench.OptionalNumber("zero_thrust_advance_ratio", Dimension.Number, AllowedRange.PositiveUpTo(5, "5"));
        var pitch = bench.OptionalNumber("pitch", Dimension.Length, AllowedRange.PositiveUpTo(5, "5 m"));
        if (given is not null)
            return given.Value;
        if (pitch is null)
        {
            bench.DiagnosticBag.Add(bench.Owner, "machine.propeller.bench needs the pitch, or the advance ratio at which the thrust ends.",
                "Add the pitch that is stamped on the propeller, or zero_thrust_advance_ratio.");
            return double.NaN;
        }

        return FromPitch(bench, pitch.Value, diameter);
    }

    private static double FromPitch(Section bench, double pitch, double diameter)
    {
        var ratio = BenchPropeller.ZeroThrustFromPitch(pitch, diameter);
        bench.DiagnosticBag.AddAssumption("advance ratio at which the propeller's thrust ends",
            FormattableString.Invariant($"{ratio:0.###}"),
            FormattableString.Invariant($"{BenchPropeller.PitchToZeroThrust} x pitch/diameter, ")
                + "mean of three propellers of the UIUC Propeller Database, volume 2; "
                + FormattableString.Invariant(
                    $"range {BenchPropeller.LowestPitchToZeroThrust} to {BenchPropeller.HighestPitchToZeroThrust}"));
        return ratio;
    }
}
