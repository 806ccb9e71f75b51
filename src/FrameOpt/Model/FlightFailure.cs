namespace FrameOpt.Model;

/// <summary>A failure and the phase it happens in.</summary>
/// <param name="Kind">What.</param>
/// <param name="PhaseIndex">Where in the mission, from 0.</param>
public readonly record struct FlightFailure(FailureKind Kind, int PhaseIndex)
{
    private const int Kinds = 32;

    /// <summary>Nothing failed.</summary>
    public static FlightFailure None => default;

    /// <summary>One small number for storage; 0 when nothing failed.</summary>
    public ushort Code => (ushort)((int)Kind + (Kind == FailureKind.None ? 0 : Kinds * PhaseIndex));

    /// <summary>The failure a <see cref="Code"/> stands for.</summary>
    public static FlightFailure FromCode(ushort code) => new((FailureKind)(code % Kinds), code / Kinds);

    /// <summary>True for 0 and for what is the <see cref="Code"/> of some failure in a mission of so many phases.</summary>
    public static bool IsCode(double value, int phases)
    {
        if (value is not (>= 0 and <= ushort.MaxValue) || value != Math.Floor(value))
            return false;
        var failure = FromCode((ushort)value);
        return failure.PhaseIndex < phases && Enum.IsDefined(failure.Kind) && failure.Code == value;
    }
}

/// <summary>Why a design cannot fly in a phase.</summary>
public enum FailureKind
{
    /// <summary>It can.</summary>
    None,

    /// <summary>The airspeed lies outside the wing's polar where a glide ratio is needed.</summary>
    SpeedOutsidePolar,

    /// <summary>The propeller's table starts at too large an advance ratio for the thrust needed.</summary>
    ThrustAbovePropeller,

    /// <summary>The propeller's table ends at too small an advance ratio for the thrust needed.</summary>
    ThrustBelowPropeller,

    /// <summary>A given propeller speed lies outside the propeller's table at this airspeed.</summary>
    RpmOutsidePropeller,

    /// <summary>The engine turns slower or faster than its table covers.</summary>
    RpmOutsideEngine,

    /// <summary>The phase needs more torque than the engine gives.</summary>
    EngineTooWeak,

    /// <summary>At full throttle the tables of propeller and engine have no speed in common.</summary>
    NoFullThrottleBalance,

    /// <summary>At full throttle the propeller takes less than the engine gives, up to the last speed that both tables cover.</summary>
    PropellerTooLight,

    /// <summary>At full throttle the propeller takes more than the engine gives, from the first speed that both tables cover.</summary>
    PropellerTooHeavy,

    /// <summary>The pitching moment of the thrust is more than the hung weight can balance.</summary>
    NoPitchEquilibrium,

    /// <summary>Upright the body tips over: it comes to rest only more than 90 degrees over, as when hung below its centre of
    /// gravity.</summary>
    TurnedOver,

    /// <summary>The thrust carries all the weight: no load is left in the risers.</summary>
    NoRiserLoad,

    /// <summary>The hang points are as far apart as the lines of the two half-wings.</summary>
    SpacingBeyondLines,

    /// <summary>The body is not stable in roll and yaw under the hang points.</summary>
    Unstable,

    /// <summary>The yaw moment is more than the two risers can hold: they twist.</summary>
    RiserTwist,

    /// <summary>The roll moment lifts all load off one riser.</summary>
    SlackRiser,

    /// <summary>It flies, but some case of the noise does not, and the study asks for the worst.</summary>
    SomeCase,
}
