using FrameOpt.Fit;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Numerics;
using FrameOpt.Studies;

namespace FrameOpt.Forms;

/// <summary>A sheet of a form to fill in.</summary>
/// <param name="Name">Of the sheet.</param>
/// <param name="Headers">Of all columns.</param>
/// <param name="Choices">The words that may stand in each column; empty for any.</param>
/// <param name="SettingColumns">So many of them, from the left, say how to set the run.</param>
/// <param name="Rows">A run each, in the order to take them; the cells of the settings.</param>
public sealed record FormSheet(
    string Name, IReadOnlyList<string> Headers, IReadOnlyList<IReadOnlyList<string>> Choices, int SettingColumns,
    IReadOnlyList<IReadOnlyList<string>> Rows);

/// <summary>What to measure: a plan of runs on bench, hook and in flight, each run twice, in random order within each block but for
/// flights with lead.</summary>
/// <param name="Sheets">One for each kind of run.</param>
/// <param name="LeftOut">Flights that the model holds to be unsafe, and why, in words.</param>
public sealed record MeasurementForm(IReadOnlyList<FormSheet> Sheets, IReadOnlyList<string> LeftOut)
{
    private const double LeadKilograms = 6;
    private const double OtherHoleMetres = 0.020;
    private const int Replicates = 2;
    private static readonly double[] benchShares = [0.6, 0.75, 0.9];
    private static readonly double[] pullsKilograms = [0, 10, 20];

    /// <summary>A plan for a study and the frame that is built.</summary>
    /// <param name="study">Machine and mission; its flights are the settled phases of the mission.</param>
    /// <param name="frame">As built.</param>
    /// <param name="seed">Another seed gives another order.</param>
    public static MeasurementForm Of(Study study, FrameGeometry frame, uint seed)
    {
        var random = new Pcg32(seed);
        var tables = FormTable.Of(study.Machine);
        List<PlannedRun> bench = [.. Bench(study, tables[0], frame)];
        List<PlannedRun> hang = [PlannedRun.Hang(frame, false), PlannedRun.Hang(frame, true)];
        List<PlannedRun> angle = [.. pullsKilograms.Select(pull => PlannedRun.Angle(frame, pull))];
        var (flights, leftOut) = Flights(study, tables[3], frame, 0);
        var side = random.Next(2) == 0 ? -LeadKilograms : LeadKilograms;
        IEnumerable<PlannedRun> Lead(double lead) =>
            Flights(study, tables[3], frame, lead).Runs.Where(run => Fraction(run) == 0).Take(3);
        IEnumerable<PlannedRun> Twice(IEnumerable<PlannedRun> runs) => Enumerable.Range(1, Replicates).SelectMany(block =>
            random.Shuffled([.. runs]).Select(run => run with { Block = $"{block}" }));
        IEnumerable<PlannedRun> flown =
        [
            // Accelerated flight last: it is the hardest to hold.
            .. Enumerable.Range(1, Replicates).SelectMany(flight => random.Shuffled([.. flights]).OrderBy(run => Fraction(run) > 0)
                .Select(run => run with { Block = $"{flight}" })),
            // With lead by rising power, not at random: the pilot stops where it begins to pull.
            .. Lead(side).OrderBy(PropellerRpm).Select(run => run with { Block = $"{Replicates + 1}" }),
            .. Lead(-side).OrderBy(PropellerRpm).Select(run => run with { Block = $"{Replicates + 2}" }),
        ];
        return new MeasurementForm(
            [
                Sheet(tables[0], Twice(bench)), Sheet(tables[1], Twice(hang)), Sheet(tables[2], Twice(angle)), Sheet(tables[3], flown),
            ], leftOut);
    }

    /// <summary>The plan with the headers and rows of a form that was filled in, as far as that has the same sheets.</summary>
    public MeasurementForm With(FilledForm filled) => this with
    {
        Sheets = [.. Sheets.Select(sheet => filled.Sheet(sheet.Name) is { HeaderRow: >= 0 and var header } own ? sheet with
        {
            Headers = Cells(own, header, sheet.Headers.Count),
            Rows = [.. Enumerable.Range(header + 1, own.Rows.Count - header - 1).Select(row => Cells(own, row, sheet.Headers.Count))
                .Where(cells => cells.Any(cell => cell.Length > 0))],
        } : sheet)],
    };

    private static IReadOnlyList<string> Cells(FilledSheet sheet, int row, int columns) =>
        [.. Enumerable.Range(0, columns).Select(column => sheet.Cell(row, column))];

    /// <summary>Runs that may be proposed as the next one: those of the form, and the flights at a second hole, further left and further
    /// right, where the study has one.</summary>
    public static IReadOnlyList<MeasuredRun> Candidates(Study study, FrameGeometry frame)
    {
        var tables = FormTable.Of(study.Machine);
        var offset = study.Factors.FirstOrDefault(factor => factor is { IsSwept: true } && factor.Input == GeometryInput.LateralOffset);
        var holes = new[] { -OtherHoleMetres, OtherHoleMetres }.Select(by => OtherHole(study, offset, frame, by)).OfType<FrameGeometry>()
            .Prepend(frame).Distinct();
        return
        [
            .. Bench(study, tables[0], frame).Concat([PlannedRun.Hang(frame, false), PlannedRun.Hang(frame, true)])
                .Concat(pullsKilograms.Select(pull => PlannedRun.Angle(frame, pull)))
                .Concat(holes.SelectMany(hole => new[] { 0, -LeadKilograms, LeadKilograms }
                    .SelectMany(lead => Flights(study, tables[3], hole, lead).Runs.Where(run => lead == 0 || Fraction(run) == 0))))
                .Select(run => run.Run),
        ];
    }

    /// <summary>A hole further to one side that the study knows; null where it has none there.</summary>
    private static FrameGeometry? OtherHole(Study study, StudyFactor? offset, FrameGeometry frame, double byMetres)
    {
        var wanted = frame.OffsetMetres + byMetres;
        if (offset is null || wanted < offset.LevelsSi[0] || wanted > offset.LevelsSi[^1])
            return null;
        return study.Holes is { } holes ? holes.Nearest(frame with { OffsetMetres = wanted })
            : frame with
            {
                OffsetMetres = offset.IsContinuous ? wanted : offset.LevelsSi.MinBy(level => Math.Abs(level - wanted)),
            };
    }

    private static FormSheet Sheet(FormTable table, IEnumerable<PlannedRun> runs) => new(
        table.Name, [.. table.Columns.Select(column => column.Header)], [.. table.Columns.Select(column => column.Words)],
        table.Columns.Count(column => column.IsSetting),
        [.. runs.Select((run, i) => (IReadOnlyList<string>)
            [PlannedRun.Name(table, i + 1, run.Block, run.Settings), run.Block, .. run.Settings])]);

    /// <summary>Up to nine tenths of full power standing still; without an engine, of the fastest phase.</summary>
    private static IEnumerable<PlannedRun> Bench(Study study, FormTable table, FrameGeometry frame)
    {
        var state = MeasuredState.AsWritten(study);
        var top = StaticRun.Of(study.Machine, study.Mission)?.PropellerRpm ?? study.Mission
            .Where(phase => phase.Power is not PhasePower.FullThrottle)
            .Max(phase => FlownState.Of(new MeasuredRun.Flight("", frame, phase, 0), study.Machine, state)?.Rpm ?? 0);
        return benchShares.Select(share => PlannedRun.Bench(table, study.Machine, Rounded(study.Machine, share * top)));
    }

    /// <summary>The settled phases that are flown at a place of the speed system, each once, at the rpm that the model gives it.</summary>
    private static (IReadOnlyList<PlannedRun> Runs, IReadOnlyList<string> LeftOut) Flights(
        Study study, FormTable table, FrameGeometry frame, double lead)
    {
        var (runs, leftOut, state) = (new List<PlannedRun>(), new List<string>(), MeasuredState.AsWritten(study));
        var off = new Phase("engine off", 0, new FlightSpeed.AtFraction(0), new PhasePower.EngineOff(), study.Mission[0].AltitudeMetres);
        foreach (var phase in study.Mission.Where(CanBeRepeated).Append(off))
        {
            var rpm = FlownState.Of(new MeasuredRun.Flight("", frame, phase, lead), study.Machine, state)?.Rpm;
            var power = rpm > 0 ? (PhasePower)new PhasePower.AtRpm(Rounded(study.Machine, rpm.Value)) : new PhasePower.EngineOff();
            var flight = new MeasuredRun.Flight("", frame, phase with { Power = power }, lead);
            var planned = PlannedRun.Flight(table, study.Machine, flight);
            if (rpm is null || !NextMeasurements.IsSafe(flight, state, study.Machine.Pilot.LeanMetres))
                leftOut.Add($"{phase.Name}: by the model it takes more than half of the largest lean, or the risers come near to twisting");
            else if (runs.All(run => !run.Settings.SequenceEqual(planned.Settings)))
                runs.Add(planned);
        }

        return (runs, leftOut);
    }

    private static bool CanBeRepeated(Phase phase) => phase is
    {
        IsSettled: true, CarriedShare: 1, LoadFactor: 1, Speed: FlightSpeed.AtFraction, Power: not PhasePower.FullThrottle,
    };

    private static double Fraction(PlannedRun run) =>
        ((FlightSpeed.AtFraction)((MeasuredRun.Flight)run.Run).Phase.Speed).Fraction;

    private static double PropellerRpm(PlannedRun run) =>
        ((MeasuredRun.Flight)run.Run).Phase.Power is PhasePower.AtRpm power ? power.PropellerRpm : 0;

    /// <summary>To whole 50 rpm as the instrument shows them.</summary>
    private static double Rounded(Machine machine, double propellerRpm)
    {
        var reduction = machine.Engine?.Reduction ?? 1;
        return 50 * Math.Round(propellerRpm * reduction / 50) / reduction;
    }
}
