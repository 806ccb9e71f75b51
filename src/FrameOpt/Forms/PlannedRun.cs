using FrameOpt.Fit;
using FrameOpt.Model;
using static System.FormattableString;

namespace FrameOpt.Forms;

/// <summary>A run of the plan before it has its place on the form.</summary>
/// <param name="Table">The sheet it belongs on.</param>
/// <param name="Block">Runs of one day or one flight, or empty.</param>
/// <param name="Settings">Its cells, as many as the sheet has settings less run and block.</param>
/// <param name="Run">How it is set; its readings are those that can be taken there, without values.</param>
internal sealed record PlannedRun(FormTable Table, string Block, IReadOnlyList<string> Settings, MeasuredRun Run)
{
    /// <summary>The name on the form: letter, number, and two letters that follow from the settings, so that a row or a cell that was moved
    /// is noticed.</summary>
    public static string Name(FormTable table, int number, string block, IEnumerable<string> settings) =>
        Invariant($"{table.Letter}{number:00}-{Mark([block, .. settings])}");

    /// <summary>Two letters that follow from the settings of a run.</summary>
    /// <remarks>Source: G. Fowler, L. C. Noll, K.-P. Vo, FNV-1a hash, 32 bits; from memory.</remarks>
    public static string Mark(IEnumerable<string> settings)
    {
        const string Letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";
        var hash = 2166136261u;
        foreach (var letter in string.Join('|', settings.Select(setting => setting.Trim())))
            hash = (hash ^ letter) * 16777619u;
        return $"{Letters[(int)(hash % 24)]}{Letters[(int)(hash / 24 % 24)]}";
    }

    public static PlannedRun Bench(FormTable table, Machine machine, double propellerRpm) => new(table, "", [Rpm(machine, propellerRpm)],
        new MeasuredRun.Bench("", propellerRpm, Atmosphere.SeaLevelDensityKgPerM3)
        {
            Readings = [(ReadingKind.Thrust, 0), (ReadingKind.Torque, 0)],
        });

    public static PlannedRun Hang(FrameGeometry frame, bool isChangedOver) => new(FormTable.Hang, "",
        [SideWords(frame.OffsetMetres), isChangedOver ? FormTable.ChangedOver : FormTable.AsMarked],
        new MeasuredRun.Hang("", frame, isChangedOver) { Readings = [(ReadingKind.LeftScale, 0), (ReadingKind.RightScale, 0)] });

    public static PlannedRun Angle(FrameGeometry frame, double pullKilograms) => new(FormTable.HangAngle, "",
        [SideWords(frame.OffsetMetres), Invariant($"{pullKilograms:0.#}")],
        new MeasuredRun.Angle("", frame, pullKilograms * Constants.NewtonsPerKilogramForce) { Readings = [(ReadingKind.HangAngle, 0)] });

    public static PlannedRun Flight(FormTable table, Machine machine, MeasuredRun.Flight flight)
    {
        var power = flight.Phase.Power is PhasePower.AtRpm at ? $"{Rpm(machine, at.PropellerRpm)} rpm" : FormTable.Off;
        var fraction = ((FlightSpeed.AtFraction)flight.Phase.Speed).Fraction;
        return new(table, "",
            [
                SideWords(flight.Flown.OffsetMetres), power, Invariant($"{100 * fraction:0.#}"),
                Invariant($"{Math.Abs(flight.LeadKilograms):0.#}"),
                flight.LeadKilograms == 0 ? "none" : flight.LeadKilograms < 0 ? "left" : "right",
            ],
            flight with
            {
                Readings =
                [
                    (ReadingKind.Airspeed, 0), (ReadingKind.Climb, 0),
                    .. flight.LeadKilograms == 0 ? [(ReadingKind.Lean, 0)]
                        : new[] { (ReadingKind.Turn, 0.0), (ReadingKind.BarTilt, 0.0) },
                ],
            });
    }

    /// <summary>A lateral offset with its side: "20 mm left".</summary>
    public static string SideWords(double metres)
    {
        var size = Invariant($"{Math.Abs(1000 * metres):0.##} mm");
        return size == "0 mm" ? size : $"{size} {(metres < 0 ? "left" : "right")}";
    }

    /// <summary>What the instrument shows: engine rpm where an engine is described.</summary>
    private static string Rpm(Machine machine, double propellerRpm) => Invariant($"{propellerRpm * (machine.Engine?.Reduction ?? 1):0}");
}
