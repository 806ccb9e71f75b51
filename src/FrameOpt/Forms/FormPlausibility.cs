using FrameOpt.Fit;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;
using static System.FormattableString;

namespace FrameOpt.Forms;

/// <summary>Readings that look as if they were in another unit, or in another's column.</summary>
internal static class FormPlausibility
{
    /// <summary>So near a ratio of units must lie to be named, as a share.</summary>
    private const double Near = 0.12;

    private static readonly (ReadingKind Kind, Dimension Dimension, string Typed, string Header)[] mistakes =
    [
        (ReadingKind.Thrust, Dimension.Force, "N", "kgf"),
        (ReadingKind.Thrust, Dimension.Force, "kgf", "N"),
        (ReadingKind.Thrust, Dimension.Force, "lbf", "kgf"),
        (ReadingKind.LeftScale, Dimension.Force, "N", "kgf"),
        (ReadingKind.LeftScale, Dimension.Force, "lbf", "kgf"),
        (ReadingKind.Airspeed, Dimension.Speed, "km/h", "m/s"),
        (ReadingKind.Airspeed, Dimension.Speed, "m/s", "km/h"),
    ];

    /// <summary>What looks wrong; a whole column of the same mistake is one finding.</summary>
    public static IEnumerable<Diagnostic> Of(IReadOnlyList<MeasuredRun> runs, Study study)
    {
        var state = MeasuredState.AsWritten(study);
        var read = runs.SelectMany(run =>
        {
            var expected = MeasurementModel.Predict(run, [.. run.Readings.Select(reading => reading.Kind)], state);
            return run.Readings.Select((reading, r) => (Run: run, reading.Kind, Ratio: reading.Value / expected[r]));
        }).Where(reading => double.IsFinite(reading.Ratio)).ToList();
        foreach (var (kind, dimension, typed, header) in mistakes)
        {
            var factor = dimension.FindUnit(header)!.ToBase(1) / dimension.FindUnit(typed)!.ToBase(1);
            var wrong = read.Where(reading => reading.Kind == kind && IsNear(reading.Ratio, factor)).ToList();
            if (wrong.Count > 0)
                yield return new Diagnostic($"{kind.Name} of {Names(wrong.Select(reading => reading.Run.Name))}", 0, 0, "",
                    Invariant($"This is {wrong[0].Ratio:0.##} times what the study expects, as {typed} in a column of {header} would be."),
                    "Correct the numbers, write their unit behind them, or correct the unit in the header.");
        }

        if (study.Machine.Engine?.Reduction is not { } reduction || Math.Abs(reduction - 1) < Near)
            yield break;
        var slow = read.Where(reading => reading.Kind == ReadingKind.Thrust && IsNear(reading.Ratio, reduction * reduction)).ToList();
        if (slow.Count > 0)
            yield return new Diagnostic($"engine rpm of {Names(slow.Select(reading => reading.Run.Name))}", 0, 0, "",
                Invariant($"The thrust is {slow[0].Ratio:0.#} times what those engine rpm give: they look like rpm of the propeller."),
                Invariant($"Fill in engine rpm: {reduction:0.###} times those of the propeller."));
    }

    private static bool IsNear(double ratio, double factor) => ratio / factor is > 1 - Near and < 1 + Near;

    private static string Names(IEnumerable<string> names) => string.Join(", ", names);
}
