using FrameOpt.Fit;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.Studies;
using static System.FormattableString;

namespace FrameOpt.Reports.Answer;

/// <summary>What two scale readings say: where the centre of gravity is, why, and which hole fits then.</summary>
public static class HangCheckFitSections
{
    /// <summary>A difference in the total of more than this share of it is a mass left out or a wrong fuel level.</summary>
    private const double UnexplainedShare = 0.02;

    /// <summary>Causes that would have to be further off than this, in standard deviations, are left out, after the first few.</summary>
    private const double MaxUnlikely = 6;

    private const int LeastCauses = 4;

    /// <summary>Beyond so many standard deviations the usual spreads do not explain a reading.</summary>
    private const double Surprising = 2;

    /// <summary>The readings, and the centre of gravity they put somewhere.</summary>
    public static AnswerSection Readings(HangCheckFit fit, Machine machine)
    {
        var (reading, expected) = (fit.Reading, fit.Expected);
        var missing = reading.TotalNewtons - expected.TotalNewtons;
        return new AnswerSection("What the scales say",
        [
            $"Left {NumberFormat.Load(reading.LeftNewtons)}, right {NumberFormat.Load(reading.RightNewtons)}; the study expected left "
                + $"{NumberFormat.Load(expected.LeftNewtons)}, right {NumberFormat.Load(expected.RightNewtons)}.",
            $"Together {NumberFormat.Load(reading.TotalNewtons)}, {NumberFormat.Load(Math.Abs(missing))} "
                + $"{(missing < 0 ? "less" : "more")} than the masses of the study add up to."
                + (Math.Abs(missing) > UnexplainedShare * expected.TotalNewtons
                    ? " WEIGH PILOT, FRAME AND FUEL FIRST: a mass is wrong or left out, and where it sits matters." : ""),
            $"The centre of gravity of all that hangs is {Sideways(fit.CentreRight.Value)}, "
                + Invariant($"good to ±{2000 * fit.CentreRight.StandardDeviation:0.0} mm (95 of 100); the study has it ")
                + $"{Sideways(machine.CentreOfGravity.RightMetres)}.",
            Math.Abs(fit.Surprise) < Surprising
                ? Invariant($"That is within the usual spreads: {Math.Abs(fit.Surprise):0.0} standard deviations from what was expected.")
                : Invariant($"THE USUAL SPREADS HARDLY EXPLAIN IT: {Math.Abs(fit.Surprise):0.0} standard deviations from what was ")
                    + "expected. Hang again with the straps changed over left for right before believing it.",
        ]);
    }

    /// <summary>The likeliest single cause, with what it would have to be alone: "pilot's seat, 14 mm to the right".</summary>
    internal static string LikeliestCause(HangCheckFit fit) => $"{Title(fit.Causes[0])}, {Deviation(fit.Causes[0], fit.Causes[0].Alone)}";

    /// <summary>Why, the likeliest single cause first.</summary>
    public static AnswerSection Causes(HangCheckFit fit) => new("Why: the likeliest single cause first",
        ["All of them may be off a little at once: the last column is what is most likely together, and how well it is known now. Check "
            + "the first ones by hand: sit centred and read again, measure straps and holes."],
        new AnswerTable(
            ["cause", "alone it would have to be", "usual spread", "most likely now"],
            [.. fit.Causes.Where((cause, i) => i < LeastCauses || cause.Unlikely < MaxUnlikely).Select(cause => (IReadOnlyList<string>)
            [
                Title(cause), Deviation(cause, cause.Alone),
                $"±{Size(cause, cause.Before.StandardDeviation)}",
                $"{Deviation(cause, cause.After.Value)}, ±{Size(cause, cause.After.StandardDeviation)}",
            ])]));

    /// <summary>The frame as hung under both machines, and the hole that fits the measured one.</summary>
    /// <param name="hung">Every factor of the frame at its one level.</param>
    /// <param name="corrected">The frame on the machine of the study and on the machine as measured, and the hole.</param>
    /// <param name="frame">What the frame is called: "hung" or "built".</param>
    public static AnswerSection Hole(IReadOnlyList<StudyFactor> hung, CorrectedFrame corrected, string frame = "hung")
    {
        var (before, after, hole) = (corrected.Before, corrected.After, corrected.Hole);
        var best = hole?.Design;
        string Residual(DesignEvaluation? design, int phase) =>
            design is { Failure: null } ? SideText.Residual(design.Phases[phase]) : "cannot fly";
        List<string> headers =
            ["residual torque", $"as {frame}, by the study", $"as {frame}, by the {(frame == "hung" ? "scales" : "measurements")}"];
        if (best is not null)
            headers.Add("with the hole that fits");
        var flown = after.Failure is null ? after : before;
        var rows = flown.Failure is not null ? [] : flown.Phases.Select((phase, p) => (IReadOnlyList<string>)
        [
            phase.Phase.Name, Residual(before, p), Residual(after, p), .. best is null ? Array.Empty<string>() : [Residual(best, p)],
        ]).ToList();
        return new AnswerSection("The hole that fits", [.. Sentences(hung, hole, frame)],
            rows.Count == 0 ? null : new AnswerTable(headers, rows));
    }

    private static IEnumerable<string> Sentences(IReadOnlyList<StudyFactor> hung, HoleForFrame? hole, string frame)
    {
        if (hung.FirstOrDefault(factor => factor.Input == GeometryInput.LateralOffset) is not { } offset || hole is null)
        {
            yield return "No offset of the study fits: it sweeps none, or none lets this frame fly every phase. Give lateral_offset a "
                + "range or a list of holes.";
            yield break;
        }

        var geometry = hole.Design.Geometry;
        var best = hole.Holes is { } holes
            ? $"pair of holes is now: {DrillingDimensions.Sentence(geometry, holes.Unit)} "
                + string.Join(' ', HoleText.Sentences(holes, geometry))
            : $"of the study is now: {GeometryText.Value(offset, geometry.OffsetMetres)}.";
        yield return $"Lateral offset as {frame}: {GeometryText.Value(offset, offset.LevelsSi[0])}. With everything else as {frame}, "
            + $"the best {best}"
            + (hole.MeetsLimits ? "" : " IT VIOLATES A LIMIT, as every other choice does; it comes nearest to meeting them all.");
    }

    private static string Sideways(double metres) => Math.Abs(metres) < 5e-5 ? "in the plane of symmetry"
        : Invariant($"{1000 * Math.Abs(metres):0.0} mm to the pilot's {SideText.Side(metres)}");

    private static string Title(HangCheckCause cause) => cause.Source?.Title ?? "the two straps of the hang check";

    private static string Deviation(HangCheckCause cause, double deviation) => cause.Source is { } source
        ? NoiseText.Deviation(source, deviation)
        : Invariant($"{1000 * Math.Abs(deviation):0.0} mm longer on the {SideText.Side(deviation)}");

    private static string Size(HangCheckCause cause, double size) => cause.Source is { } source ? NoiseText.Size(source, size)
        : Invariant($"{1000 * size:0.0} mm");
}
