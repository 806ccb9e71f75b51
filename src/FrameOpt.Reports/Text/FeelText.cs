using FrameOpt.Model.Mission;

namespace FrameOpt.Reports.Text;

/// <summary>What the pilot feels in a phase, in one plain sentence. The steps are our own (docs/model.md, "What the pilot
/// feels").</summary>
public static class FeelText
{
    /// <summary>Each step up to this effort, with its word for the pull.</summary>
    private static readonly (double Effort, string Pull)[] steps =
    [
        (0.15, "a faint pull"), (0.35, "a light pull"), (0.6, "a clear pull"), (0.8, "a strong pull"),
        (1, "a very strong pull, close to all you can hold,"), (double.PositiveInfinity, "a pull that YOU CANNOT HOLD"),
    ];

    /// <summary>Turned or tilted by less than this, in degrees, nobody notices it (own estimate).</summary>
    private const double NoticedDegrees = 0.75;

    /// <summary>"Climb: a light pull to the left; 14 mm of hip to the right holds it; you sit turned 2 deg to the left, leant back
    /// 12 deg."</summary>
    public static string Of(PhaseResult phase) =>
        $"{StudyText.Capitalised(phase.Phase.Name)}: {string.Join("; ", phase.Phase.IsSettled ? Settled(phase) : FirstSeconds(phase))}.";

    /// <summary>The same for a phase that both designs have: what another design leaves there, without how the pilot sits.</summary>
    public static string Pull(PhaseResult phase)
    {
        if (phase.Steers == "straight")
            return "hardly any pull";
        var side = phase.Steers;
        return phase.IsBeyondLean ? $"a pull to the {side} that NO LEAN HOLDS"
            : $"{steps.First(step => phase[PhaseQuantity.Effort] <= step.Effort).Pull} to the {side}";
    }

    private static IEnumerable<string> Settled(PhaseResult phase)
    {
        yield return Pull(phase);
        if (phase.Steers != "straight" && !phase.IsBeyondLean)
        {
            var hip = phase[PhaseQuantity.Lean];
            yield return phase.CannotBeHeld
                ? $"it would take {Millimetres(hip)} of hip to the {SideText.Side(hip)}, more than you have"
                : $"{Millimetres(hip)} of hip to the {SideText.Side(hip)} holds it";
        }

        if (string.Join(", ", Seat(phase)) is { Length: > 0 } seat)
            yield return $"you sit {seat}";
    }

    private static IEnumerable<string> FirstSeconds(PhaseResult phase)
    {
        yield return Math.Abs(phase.TwistDegrees) < NoticedDegrees ? "in the first seconds the risers do not twist"
            : $"in the first seconds the risers twist by {Degrees(phase.TwistDegrees)}, "
                + $"your nose to the {SideText.Side(phase.TwistDegrees)}";
        yield return SideText.LoadDifference(phase[PhaseQuantity.LoadDifference]);
        yield return $"{Pull(phase)} as it settles";
    }

    private static IEnumerable<string> Seat(PhaseResult phase)
    {
        double yaw = phase[PhaseQuantity.BodyYaw], roll = phase[PhaseQuantity.BodyRoll], pitch = phase[PhaseQuantity.BodyPitch];
        if (Math.Abs(yaw) >= NoticedDegrees)
            yield return $"turned {Degrees(yaw)} to the {SideText.Side(yaw)}";
        if (Math.Abs(roll) >= NoticedDegrees)
            yield return $"{Degrees(roll)} down on the {SideText.Side(roll)}";
        if (Math.Abs(pitch) >= NoticedDegrees)
            yield return $"leant {(pitch > 0 ? "back" : "forward")} {Degrees(pitch)}";
    }

    private static string Millimetres(double value) => FormattableString.Invariant($"{Math.Abs(value):0} mm");

    private static string Degrees(double value) => FormattableString.Invariant($"{Math.Abs(value):0} deg");
}
