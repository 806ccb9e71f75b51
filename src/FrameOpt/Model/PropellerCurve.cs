namespace FrameOpt.Model;

/// <summary>Placeholder until the propeller branch lands.</summary>
public abstract record PropellerCurve
{
    private protected PropellerCurve()
    {
    }

    /// <summary>CT.</summary>
    public abstract double ThrustCoefficient(double advanceRatio);

    /// <summary>CP.</summary>
    public abstract double PowerCoefficient(double advanceRatio);

    /// <summary>Lowest J.</summary>
    public abstract double SmallestAdvanceRatio { get; }

    /// <summary>Largest J.</summary>
    public abstract double LargestAdvanceRatio { get; }
}
