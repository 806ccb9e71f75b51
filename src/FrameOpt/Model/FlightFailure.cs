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
}
