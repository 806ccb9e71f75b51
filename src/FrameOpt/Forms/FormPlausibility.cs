using FrameOpt.Fit;
using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;
using FrameOpt.StudyFile.Syntax;
using static System.FormattableString;

namespace FrameOpt.Forms;

/// <summary>Readings that look as if they were in another unit, or in another's column.</summary>
internal static class FormPlausibility
{
    /// <summary>So near a ratio of units must lie to be named, as a share.</summary>
    private const double Near = 0.12;

    private static readonly (ReadingKind Kind, double Factor, string Words)[] mistakes =
    [
        (ReadingKind.Thrust, Constants.NewtonsPerKilogramForce, "newtons in a column of kgf"),
        (ReadingKind.Thrust, 1 / Constants.NewtonsPerKilogramForce, "kgf in a column of newtons"),
        (ReadingKind.Thrust, 2.2046, "pounds in a column of kgf"),
        (ReadingKind.LeftScale, Constants.NewtonsPerKilogramForce, "newtons in a column of kgf"),
        (ReadingKind.LeftScale, 2.2046, "pounds in a column of kgf"),
        (ReadingKind.Airspeed, 3.6, "km/h in a column of m/s"),
        (ReadingKind.Airspeed, 1 / 3.6, "m/s in a column of km/h"),
    ];

    /// <summary>What looks wrong; a whole column of the same mistake is one finding.</summary>
    public static IEnumerable<Diagnostic> Of(IReadOnlyList<MeasuredRun> runs, Study study)
    {
        var state = new MeasuredState(
            new NoiseCase(study.Machine, [.. study.Machine.Masses], study.Wing, study.Mission, default), 0, 0);
        var read = runs.SelectMany(run =>
        {
            var expected = MeasurementModel.Predict(run, [.. run.Readings.Select(reading => reading.Kind)], state);
            return run.Readings.Select((reading, r) => (Run: run, reading.Kind, Ratio: reading.Value / expected[r]));
        }).Where(reading => double.IsFinite(reading.Ratio)).ToList();
        foreach (var (kind, factor, words) in mistakes)
        {
            var wrong = read.Where(reading => reading.Kind == kind && IsNear(reading.Ratio, factor)).ToList();
            if (wrong.Count > 0)
                yield return new Diagnostic($"{kind.Name} of {Names(wrong.Select(reading => reading.Run.Name))}", 0, 0, "",
                    Invariant($"This is {wrong[0].Ratio:0.##} times what the study expects, as {words} would be."),
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
