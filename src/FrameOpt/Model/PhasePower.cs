namespace FrameOpt.Model;

/// <summary>What the engine does in a phase.</summary>
public abstract record PhasePower
{
    private PhasePower()
    {
    }

    /// <summary>Just enough thrust for level flight.</summary>
    public sealed record Level : PhasePower;

    /// <summary>Enough thrust to climb.</summary>
    /// <param name="MetresPerSecond">Rate of climb.</param>
    public sealed record Climb(double MetresPerSecond) : PhasePower;

    /// <summary>All the engine gives.</summary>
    public sealed record FullThrottle : PhasePower;

    /// <summary>A given propeller speed.</summary>
    /// <param name="PropellerRpm">In rpm of the propeller, not the crank.</param>
    public sealed record AtRpm(double PropellerRpm) : PhasePower;

    /// <summary>Engine off: no thrust, no torque; the stopped propeller's drag is part of the measured polar.</summary>
    public sealed record EngineOff : PhasePower;
}
