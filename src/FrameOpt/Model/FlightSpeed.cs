namespace FrameOpt.Model;

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
