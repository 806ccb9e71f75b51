using System.Globalization;
using FrameOpt.Model;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Studies;

/// <summary>Where a figure of machine or wing comes from, as the study says.</summary>
/// <param name="Path">Of the figure, or of a group of them: "machine.pilot.drag_area", "wing.polar".</param>
/// <param name="Word">One of <see cref="Names"/>.</param>
public sealed record FigureOrigin(string Path, string Word)
{
    /// <summary>Measured by the builder.</summary>
    public const string Measured = "measured";

    /// <summary>Nobody knows it well.</summary>
    public const string Guess = "guess";

    private static readonly NoiseSource[] ofBody =
        [NoiseSource.SeatRight, NoiseSource.SeatForward, MeasurableSource.SeatUp, NoiseSource.PilotMass];

    private static readonly (string Path, NoiseSource[] Sources)[] sources =
    [
        ("machine.propeller.bench.thrust", [NoiseSource.PropellerThrust]),
        ("machine.propeller.bench.torque", [NoiseSource.PropellerTorque]),
        ("machine.propeller.bench.power", [NoiseSource.PropellerTorque]),
        ("machine.propeller.bench.pitch", [MeasurableSource.PropellerPitch]),
        ("machine.propeller.bench.zero_thrust_advance_ratio", [MeasurableSource.PropellerPitch]),
        ("machine.propeller.coefficients",
            [NoiseSource.PropellerThrust, NoiseSource.PropellerTorque, MeasurableSource.PropellerPitch]),
        ("machine.propeller.hub.forward", [NoiseSource.HubForwardBuilt]),
        ("machine.propeller.hub.right", [NoiseSource.HubRightBuilt]),
        ("machine.propeller.hub.up", [NoiseSource.HubUpBuilt]),
        ("machine.propeller.tilt", [NoiseSource.TiltBuilt]),
        ("machine.pilot.drag_area", [NoiseSource.DragArea]),
        ("wing.polar", [NoiseSource.GlideRatio]),
        ("wing.riser_coupling", [NoiseSource.RiserCouplingOfWing]),
        ("wing.yaw_leverage", [NoiseSource.YawLeverageOfWing, MeasurableSource.SpeedFactor, MeasurableSource.TwistShare]),
        ("wing.sideslip", [NoiseSource.YawLeverageOfWing, MeasurableSource.SpeedFactor, MeasurableSource.TwistShare]),
        ("wing.roll_restoring", [MeasurableSource.RollRestoring]),
    ];

    /// <summary>The words for it, in order of trust; the last says nothing.</summary>
    public static IReadOnlyList<string> Names { get; } = [Measured, "maker", Guess, "unknown"];

    /// <summary>True when an uncertain number of the study is this figure, or one of the group.</summary>
    /// <param name="source">The uncertain number.</param>
    /// <param name="machine">Of the same study.</param>
    public bool IsOf(NoiseSource source, Machine machine)
    {
        const string Masses = "machine.masses.";
        if (Path.StartsWith(Masses, StringComparison.Ordinal) && Path[Masses.Length..].Split('.') is [var index, .. var keys]
            && int.TryParse(index, NumberStyles.None, CultureInfo.InvariantCulture, out var item) && item < machine.Masses.Count)
        {
            return (machine.Masses[item].IsBody, keys.FirstOrDefault()) switch
            {
                (true, null) => ofBody.Contains(source),
                (false, null) => source == NoiseSource.FrameRight || source == NoiseSource.LoadMass,
                (true, "right") => source == NoiseSource.SeatRight,
                (true, "forward") => source == NoiseSource.SeatForward,
                (true, "up") => source == MeasurableSource.SeatUp,
                (true, "mass") => source == NoiseSource.PilotMass,
                (false, "right") => source == NoiseSource.FrameRight,
                (false, "mass" or "volume" or "density") => source == NoiseSource.LoadMass,
                _ => false,
            };
        }

        return sources.Any(row => row.Sources.Contains(source) && (Covers(Path, row.Path) || Covers(row.Path, Path)));
    }

    private static bool Covers(string group, string path) =>
        path == group || path.StartsWith(group, StringComparison.Ordinal) && path[group.Length] == '.';
}
