using FrameOpt.Fit;
using FrameOpt.Model;
using static System.FormattableString;

namespace FrameOpt.Reports.Text;

/// <summary>Runs on bench, hook and in flight, and what was read there, in words.</summary>
public static class MeasuredRunText
{
    /// <summary>How a run is set: "flight with the engine off, hands up, 6 kg of lead on the right".</summary>
    /// <param name="run">The run.</param>
    /// <param name="machine">For the rpm that the instrument shows.</param>
    /// <param name="builtOffset">Lateral offset of the frame as built: another hole is named.</param>
    public static string Of(MeasuredRun run, Machine machine, double builtOffset) => run switch
    {
        MeasuredRun.Bench bench => $"static bench at {RpmText.Of(machine, bench.PropellerRpm)}",
        MeasuredRun.Hang hang => $"hang check, straps {(hang.IsChangedOver ? "changed over" : "as marked")}{Hole(hang.Hung, builtOffset)}",
        MeasuredRun.Angle { PullNewtons: 0 } angle => $"hang angle without a pull{Hole(angle.Hung, builtOffset)}",
        MeasuredRun.Angle angle =>
            $"hang angle with a pull of {NumberFormat.Load(angle.PullNewtons)} at the hub{Hole(angle.Hung, builtOffset)}",
        MeasuredRun.Flight flight => Flight(flight, machine) + Hole(flight.Flown, builtOffset),
        _ => throw new ArgumentOutOfRangeException(nameof(run)),
    };

    /// <summary>A reading with its unit, and its side in words: "35.2 mm left".</summary>
    public static string Reading(ReadingKind kind, double value)
    {
        if (double.IsNaN(value))
            return "no answer";
        var (size, isSided) = (Math.Abs(value), IsSided(kind));
        var text = kind == ReadingKind.LeftScale || kind == ReadingKind.RightScale || kind == ReadingKind.Thrust
            ? Invariant($"{size / Constants.NewtonsPerKilogramForce:0.0} kgf")
            : Invariant($"{size:0.0} {kind.Unit}");
        return !isSided ? text : $"{text} {Way(kind, value)}";
    }

    private static bool IsSided(ReadingKind kind) => kind == ReadingKind.HangAngle || kind == ReadingKind.Climb || kind == ReadingKind.Lean
        || kind == ReadingKind.Turn || kind == ReadingKind.BarTilt;

    private static string Way(ReadingKind kind, double value) => kind == ReadingKind.HangAngle ? value < 0 ? "forward" : "back"
        : kind == ReadingKind.Climb ? value < 0 ? "down" : "up" : SideText.Side(value);

    private static string Flight(MeasuredRun.Flight flight, Machine machine)
    {
        var power = flight.Phase.Power is PhasePower.AtRpm at ? $"at {RpmText.Of(machine, at.PropellerRpm)}" : "with the engine off";
        var fraction = flight.Phase.Speed is FlightSpeed.AtFraction { Fraction: > 0 and var part }
            ? Invariant($", speed system at {100 * part:0} %") : ", hands up";
        var lead = flight.LeadKilograms == 0 ? ""
            : Invariant($", {Math.Abs(flight.LeadKilograms):0.#} kg of lead on the {SideText.Side(flight.LeadKilograms)}");
        return $"flight {power}{fraction}{lead}";
    }

    private static string Hole(FrameGeometry frame, double builtOffset) => Math.Abs(frame.OffsetMetres - builtOffset) < 5e-4 ? ""
        : Invariant($", hole at {1000 * Math.Abs(frame.OffsetMetres):0} mm {SideText.Side(frame.OffsetMetres)}");
}
