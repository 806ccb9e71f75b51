using FrameOpt.Model;

namespace FrameOpt.Reports.Text;

/// <summary>Which points a height is measured between: it stands wherever a height does.</summary>
public static class DatumText
{
    /// <summary>In place of a name that the study does not give.</summary>
    public const string Unnamed = "not named in the study";

    /// <summary>"Datum: rear edge of the seat board."</summary>
    public static string Datum(Machine machine) => $"Datum: {(machine.Datum.Length > 0 ? machine.Datum : Unnamed)}";

    /// <summary>"Hang point: centre of the carabiner hole."</summary>
    public static string HangPoint(Machine machine) =>
        $"Hang point{(machine.Arms == RiserArms.Moving ? " (pivot)" : "")}: "
            + (machine.HangPoint.Length > 0 ? machine.HangPoint : Unnamed);

    /// <summary>Both, in a sentence.</summary>
    public static string Sentence(Machine machine) => $"{Datum(machine)}. {HangPoint(machine)}.";

    /// <summary>What must be read first on moving arms; empty on rigid ones.</summary>
    public static string MovingArms(Machine machine) => machine.Arms == RiserArms.Moving
        ? "THE ARMS MOVE: every hang point here is the PIVOT of an arm, not the hook; measure and drill the pivots, and check that the "
            + "arms swing freely over their whole travel. "
        : "";
}
