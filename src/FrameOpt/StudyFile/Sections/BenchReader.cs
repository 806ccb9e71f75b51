using FrameOpt.Model;
using FrameOpt.Model.Propulsion;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

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
            bench.DiagnosticBag.Add(
                bench.Owner, "This bench run gives more thrust than any propeller of that diameter can for that power.",
                "Check the units, and that torque and rpm are those of the propeller, not of the crank.");
        return curve;
    }

    private static double Torque(Section bench, double rpm)
    {
        if (bench.Has("torque") == bench.Has("power"))
        {
            bench.DiagnosticBag.Add(bench.KeyAt("power"), "machine.propeller.bench needs either a torque or a power.",
                bench.Has("power") ? "Remove one of the two." : "Add for example `torque: 60 N·m`, at the propeller.");
            return double.NaN;
        }

        if (bench.Has("torque"))
            return bench.Number("torque", Dimension.Torque, AllowedRange.PositiveUpTo(1000, "1000 N·m"));
        return PropellerLoads.TorqueFromPower(bench.Number("power", Dimension.Power, AllowedRange.PositiveUpTo(100_000, "100 kW")),
            rpm / 60);
    }

    /// <summary>As given; else from the pitch.</summary>
    private static double ZeroThrustAdvanceRatio(Section bench, double diameter)
    {
        var given = bench.OptionalNumber("zero_thrust_advance_ratio", Dimension.Number, AllowedRange.PositiveUpTo(5, "5"));
        var pitch = bench.OptionalNumber("pitch", Dimension.Length, AllowedRange.PositiveUpTo(5, "5 m"));
        if (given is not null)
            return given.Value;
        if (pitch is null)
        {
            bench.DiagnosticBag.Add(bench.Owner, "machine.propeller.bench needs the pitch, or the advance ratio at which the thrust ends.",
                "Add for example `pitch: 0.85 m`.");
            return double.NaN;
        }

        return FromPitch(bench, pitch.Value, diameter);
    }

    private static double FromPitch(Section bench, double pitch, double diameter)
    {
        var ratio = BenchPropeller.ZeroThrustFromPitch(pitch, diameter);
        bench.DiagnosticBag.AddAssumption("advance ratio at which the propeller's thrust ends",
            FormattableString.Invariant($"{ratio:0.###}"),
            FormattableString.Invariant(
                $"{BenchPropeller.PitchToZeroThrust} x pitch/diameter, mean of three propellers of the UIUC Propeller Database, volume 2; range {BenchPropeller.LowestPitchToZeroThrust} to {BenchPropeller.HighestPitchToZeroThrust}"));
        return ratio;
    }
}
