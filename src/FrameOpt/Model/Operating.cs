namespace FrameOpt.Model;

/// <summary>What a phase asks of propeller and engine.</summary>
public static class Operating
{
    /// <summary>The operating point of a phase for the design's thrust line.</summary>
    /// <param name="phase">Power and load factor.</param>
    /// <param name="conditions">Of that phase, without failure.</param>
    /// <param name="machine">Propeller and engine.</param>
    /// <param name="design">Thrust-line angle and tilt.</param>
    public static OperatingPoint Of(Phase phase, in PhaseConditions conditions, Machine machine, in FrameGeometry design)
    {
        if (phase.Power is PhasePower.EngineOff)
            return OperatingPoint.Off;
        var drive = new Drive(machine.Propeller, machine.Engine, conditions.AirspeedMetresPerSecond, conditions.Density);
        return phase.Power switch
        {
            PhasePower.Level => drive.ForThrust(
                ThrustDemand.Newtons(conditions, phase.LoadFactor, 0, design.AngleRadians, design.TiltRadians)),
            PhasePower.Climb climb => drive.ForThrust(
                ThrustDemand.Newtons(conditions, phase.LoadFactor, climb.MetresPerSecond, design.AngleRadians, design.TiltRadians)),
            PhasePower.FullThrottle => drive.FullThrottle(),
            PhasePower.AtRpm rpm => drive.AtRpm(rpm.PropellerRpm),
            _ => throw new InvalidOperationException(),
        };
    }
}
