using FrameOpt.Model.Propulsion;

namespace FrameOpt.Model.Mission;

/// <summary>Full power standing still, as in a tied-down run.</summary>
/// <param name="PropellerRpm">Of the propeller.</param>
/// <param name="AltitudeMetres">Where it stands: at the altitude of the first phase at full throttle, else of the first phase.</param>
public sealed record StaticRun(double PropellerRpm, double AltitudeMetres)
{
    /// <summary>In m/s; the powertrain needs an airspeed above 0, and at this one the propeller's figures are those at rest.</summary>
    private const double AtRest = 1e-6;

    /// <summary>What to expect, or null where the study does not describe the engine, or its tables do not reach that far.</summary>
    public static StaticRun? Of(Machine machine, IReadOnlyList<Phase> mission)
    {
        if (machine.Engine is not { } engine)
            return null;
        var phase = mission.FirstOrDefault(any => any.Power is PhasePower.FullThrottle) ?? mission[0];
        var density = Atmosphere.DensityKgPerM3(phase.AltitudeMetres, phase.TemperatureOffsetKelvin);
        var point = new Powertrain(machine.Propeller, engine, AtRest, density).FullThrottle();
        return point.Failure == FailureKind.None ? new StaticRun(point.Rpm, phase.AltitudeMetres) : null;
    }
}
