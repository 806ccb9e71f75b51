using FrameOpt.Model;
using static System.FormattableString;

namespace FrameOpt.Reports.Text;

/// <summary>Speeds of the propeller with those of the engine beside them: a pilot's instrument shows the engine's.</summary>
internal static class RpmText
{
    /// <summary>"1,823 rpm (engine 6,380 rpm)"; the propeller's alone where no reduction is known or the engine turns with it.</summary>
    public static string Of(Machine machine, double propellerRpm) => NumberFormat.Text(propellerRpm, "rpm")
        + (Reduction(machine) is { } reduction ? $" (engine {NumberFormat.Text(propellerRpm * reduction, "rpm")})" : "");

    /// <summary>"1,796 to 2,772 rpm (engine 5,029 to 7,762 rpm)".</summary>
    public static string Range(Machine machine, double fromRpm, double toRpm) => Invariant($"{fromRpm:#,0} to {toRpm:#,0} rpm")
        + (Reduction(machine) is { } reduction ? Invariant($" (engine {fromRpm * reduction:#,0} to {toRpm * reduction:#,0} rpm)") : "");

    /// <summary>The name of an axis.</summary>
    public static string Axis(Machine machine) => "propeller speed [rpm]"
        + (Reduction(machine) is { } reduction ? Invariant($"; engine speed: times {reduction:0.###}") : "");

    /// <summary>Engine speed over propeller speed, or null where there is nothing to show beside the propeller's.</summary>
    public static double? Reduction(Machine machine) => machine.Engine is { Reduction: not 1 and var reduction } ? reduction : null;
}
