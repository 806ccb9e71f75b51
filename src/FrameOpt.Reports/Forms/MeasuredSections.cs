using FrameOpt.Fit;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.Studies.Noise;
using static System.FormattableString;

namespace FrameOpt.Reports.Forms;

/// <summary>What a filled form says: predicted beside measured, what was learnt, what cannot be told apart, what to measure next.</summary>
public static class MeasuredSections
{
    private const int MostPairs = 4;

    /// <summary>Numbers of pilot and frame that hang on the same two scales.</summary>
    private static readonly NoiseSource?[] onScales =
    [
        NoiseSource.SeatRight, NoiseSource.SeatForward, NoiseSource.FrameRight, NoiseSource.PilotMass, NoiseSource.LoadMass,
    ];

    private const double LeastLearnt = 0.9;

    /// <summary>A misfit above this says that model or readings are worse than taken.</summary>
    private const double LargeMisfit = 1.5;

    /// <summary>Everything in reading order, less the hole and the corrected study.</summary>
    public static IEnumerable<AnswerSection> Of(MeasuredAnswer answer, IReadOnlyList<string> notMeasured, double builtOffset)
    {
        yield return Compared(answer.Fit, notMeasured);
        yield return Learnt(answer.Fit);
        yield return Apart(answer, builtOffset);
    }

    /// <summary>Sides that look changed over: nothing is corrected then.</summary>
    public static string Suspicion(SignSuspicion wrong) =>
        $"A SIGN CONVENTION LOOKS WRONG: with {wrong.What} changed over, the readings fit far better "
            + Invariant($"(misfit {wrong.MisfitChangedOver:0.0} in place of {wrong.Misfit:0.0}; 1 is perfect). Nothing was corrected: ")
            + "nothing is guessed. Left and right are the pilot's, seen from behind; back is the pilot reclining; up is climbing. "
            + "Check the "
            + "form, and the rotation of the propeller in the study.";

    /// <summary>Predicted beside measured, before and after.</summary>
    private static AnswerSection Compared(MeasuredFit fit, IReadOnlyList<string> notMeasured)
    {
        var outliers = fit.Readings.Where(reading => reading.IsOutlier).ToList();
        var misfit = fit.Misfit(reading => reading.After);
        return new AnswerSection("Predicted beside measured",
        [
            Invariant($"{fit.Readings.Count} readings of {fit.Runs.Count} runs. Misfit (root mean square, in errors of the readings; 1 is ")
                + Invariant($"perfect): {fit.Misfit(reading => reading.Before):0.0} by the study as written, {misfit:0.0} now.")
                + (misfit > LargeMisfit ? " THE MODEL DOES NOT EXPLAIN THESE READINGS well: look at the largest ones before believing "
                + "the rest." : ""),
            outliers.Count == 0 ? "No reading is unlike the others."
                : $"LOOK AGAIN AT {string.Join(", ", outliers.Select(reading => $"{reading.Kind.Name} of {reading.Run.Name}"))}: "
                    + "unlike all other "
                    + "readings. Measure again, or clear the cell when it was a slip.",
            .. notMeasured.Count == 0 ? [] : new[] { $"Not measured: {string.Join(", ", notMeasured)}." },
        ],
            new AnswerTable(["run", "reading", "measured", "by the study", "now", "off, in errors"],
                [.. fit.Readings.Select(reading => (IReadOnlyList<string>)
                [
                    reading.Run.Name, reading.Kind.Name, MeasuredRunText.Reading(reading.Kind, reading.Measured.Value),
                    MeasuredRunText.Reading(reading.Kind, reading.Before), MeasuredRunText.Reading(reading.Kind, reading.After),
                    Invariant($"{reading.Strangeness:0.0}{(reading.IsOutlier ? " OUTLIER" : "")}"),
                ])]));
    }

    /// <summary>The numbers, with their spreads before and after.</summary>
    private static AnswerSection Learnt(MeasuredFit fit)
    {
        var order = Enumerable.Range(0, fit.Numbers.Count).OrderBy(fit.SpreadLeft).ToList();
        var open = order.Where(i => fit.SpreadLeft(i) > LeastLearnt).Select(i => fit.Numbers[i].Title).ToList();
        var bounds = order.Where(i => fit.Least.IsAtBound[i]).Select(i => fit.Numbers[i].Title).ToList();
        return new AnswerSection("What was learnt",
        [
            "Deviation from the study as written, most likely, each with one standard deviation (19 of 20 lie within two).",
            .. bounds.Count == 0 ? [] : new[] { $"AT THE END OF WHAT IS POSSIBLE: {string.Join(", ", bounds)}. Something else is wrong." },
            .. open.Count == 0 ? [] : new[] { $"These readings say next to nothing of: {string.Join("; ", open)}." },
        ],
            new AnswerTable(["number", "usual spread", "most likely now", "spread now", "left of it"],
                [.. order.Where(i => fit.SpreadLeft(i) <= LeastLearnt).Select(i => (IReadOnlyList<string>)
                [
                    fit.Numbers[i].Title, $"±{Size(fit.Numbers[i], fit.Numbers[i].Before.StandardDeviation)}",
                    Deviation(fit.Numbers[i], fit.Least.Unknowns[i].Value),
                    $"±{Size(fit.Numbers[i], fit.Least.Unknowns[i].StandardDeviation)}",
                    NumberFormat.Share(fit.SpreadLeft(i)),
                ])]));
    }

    /// <summary>What cannot be told apart, and what to measure next.</summary>
    private static AnswerSection Apart(MeasuredAnswer answer, double builtOffset)
    {
        var (fit, next) = (answer.Fit, answer.Next);
        string Words(MeasuredRun run) => MeasuredRunText.Of(run, fit.Study.Machine, builtOffset);
        var pairs = answer.Pairs.Take(MostPairs).Select(pair =>
            $"These readings do not tell {fit.Numbers[pair.First].Title} from {fit.Numbers[pair.Second].Title} "
                + Invariant($"(correlation {pair.Correlation:0.00}): ") + (pair.Cure is { } cure
                    ? Invariant($"one more {Words(cure)} would ({pair.CorrelationThen:0.00}).")
                    : onScales.Contains(fit.Numbers[pair.First].Source) && onScales.Contains(fit.Numbers[pair.Second].Source)
                        ? "weighing and hanging the frame alone, without the pilot, would."
                        : "none of the safe measurements of the form would alone."));
        return new AnswerSection("What to measure next",
        [
            .. pairs,
            $"What decides on the hole: {string.Join(", ", next.Deciding.Select(i => fit.Numbers[i].Title))}. The offset of least "
                + "torque is "
                + Invariant($"{1000 * Math.Abs(next.OffsetMetres):0.0} mm {SideText.Side(next.OffsetMetres)}, known to ±")
                + Invariant($"{1000 * next.DeviationNow:0.0} mm (one standard deviation); before these readings ±")
                + Invariant($"{1000 * next.DeviationBefore:0.0} mm."),
            "Of the measurements that stay within half of the pilot's largest lean and a twist margin of 3 by the corrected model, "
                + "never above "
                + "the power of the mission, these tell most of those numbers (D-optimal):",
        ],
            new AnswerTable(["next measurement", "offset known to", "gain"], [.. next.Best.Select(best => (IReadOnlyList<string>)
            [
                Words(best.Run), Invariant($"±{1000 * best.OffsetDeviation:0.0} mm"), Invariant($"{best.Gain:0.00}"),
            ])]));
    }

    private static string Deviation(MeasuredNumber number, double value) =>
        number.Source is { } source ? NoiseText.Deviation(source, value)
        : IsTorque(number) ? SideText.Moment(value)
        : Invariant($"{1000 * Math.Abs(value):0.0} mm longer on the {SideText.Side(value)}");

    private static string Size(MeasuredNumber number, double size) => number.Source is { } source ? NoiseText.Size(source, size)
        : IsTorque(number) ? Invariant($"{size:0.0} N·m") : Invariant($"{1000 * size:0.0} mm");

    /// <summary>The wing's own turn is a torque, the straps are a length.</summary>
    private static bool IsTorque(MeasuredNumber number) => number.Before.StandardDeviation > 1;
}
