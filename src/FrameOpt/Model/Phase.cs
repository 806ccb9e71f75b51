namespace FrameOpt.Model;

/// <summary>One phase of a mission: a steady state, or the first seconds of one that has not settled.</summary>
/// <param name="Name">The study's word for it.</param>
/// <param name="Weight">Its share in weighted responses; 0 shows it without counting it.</param>
/// <param name="Speed">Fraction of the speed range, or an airspeed.</param>
/// <param name="Power">What the engine does.</param>
/// <param name="AltitudeMetres">Geopotential altitude in the standard atmosphere.</param>
/// <param name="TemperatureOffsetKelvin">Warmer than the standard day, +.</param>
/// <param name="LoadFactor">n, above 0.</param>
/// <param name="CarriedShare">Share c of the weight carried by the risers, above 0 to 1.</param>
/// <param name="PitchRateRadiansPerSecond">q, nose up +; for the gyroscopic moment.</param>
/// <param name="Settled">Whether the wing has had time to bank; null: not at full throttle, in all others.</param>
public sealed record Phase(
    string Name,
    double Weight,
    FlightSpeed Speed,
    PhasePower Power,
    double AltitudeMetres = 0,
    double TemperatureOffsetKelvin = 0,
    double LoadFactor = 1,
    double CarriedShare = 1,
    double PitchRateRadiansPerSecond = 0,
    bool? Settled = null)
{
    /// <summary>False when the wing is still overhead, as in the first seconds of a launch.</summary>
    public bool IsSettled => Settled ?? Power is not PhasePower.FullThrottle;
}

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

/// <summary>How a phase's airspeed is given.</summary>
public abstract record FlightSpeed
{
    private FlightSpeed()
    {
    }

    /// <summary>A fraction of the speed range at the phase's own mass, load factor and density: 0 trim, 1 fully accelerated.</summary>
    public sealed record AtFraction(double Fraction) : FlightSpeed;

    /// <summary>A true airspeed in m/s.</summary>
    public sealed record AtAirspeed(double MetresPerSecond) : FlightSpeed;
}
