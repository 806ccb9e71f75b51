using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;
using static System.FormattableString;

namespace FrameOpt.Reports.Answer;

/// <summary>How sure the answer is, and what to measure first.</summary>
public static class UncertaintySection
{
    /// <summary>Above the verdict wherever it stands.</summary>
    internal const string Title = "How sure is this?";

    private const int NextNamed = 2;

    /// <summary>Numbers in the table of what each does alone.</summary>
    private const int MostBars = 6;

    /// <summary>A number that moves less than this share of what the first moves is not worth naming beside it.</summary>
    private const double WorthNaming = 0.1;

    /// <summary>In how many cases the design is good, and what to measure first.</summary>
    /// <param name="study">As understood.</param>
    /// <param name="uncertainty">Of the design; null when it was not computed for it.</param>
    public static AnswerSection Of(Study study, UncertaintyResult? uncertainty) => new(Title,
        study.Noise.Sources.Count == 0
            ? ["The study says `noise: none`: every number is taken as exact, so nothing is said of how sure the answer is."]
            : uncertainty is null ? ["This was computed for the best compromise only."]
            :
            [
                InCases(study, uncertainty.Sample),
                MeasureFirst(study, uncertainty.Bars) + OfLeastMet(study, uncertainty),
                .. Guesses(study, uncertainty.Bars),
                Method(uncertainty.Sample),
            ]);

    /// <summary>What stands on the first sheet: the verdict without how it was computed.</summary>
    internal static IReadOnlyList<string> Verdict(Study study, UncertaintyResult? uncertainty) =>
        [.. Of(study, uncertainty).Lines.Take(2)];

    /// <summary>The figures behind it; nothing when nothing is uncertain.</summary>
    /// <param name="study">As understood.</param>
    /// <param name="design">As drawn.</param>
    /// <param name="uncertainty">Of that design, or null.</param>
    public static IEnumerable<AnswerSection> Figures(Study study, DesignEvaluation design, UncertaintyResult? uncertainty) =>
        uncertainty is { Bars.Count: > 0 } ? [Phases(study, uncertainty), NoiseBarsSection.Of(study, design, uncertainty, MostBars)] : [];

    /// <summary>For each phase what it leaves to the pilot over the cases.</summary>
    internal static AnswerSection Phases(Study study, UncertaintyResult uncertainty) => new(
        "Residual torque and effort over the cases",
        [$"In a tenth of {NumberFormat.Count(uncertainty.Sample.Cases)} cases the value is at or below the 10 % point, in half at or below "
            + "the 50 % point, in a tenth above the 90 % point."],
        new AnswerTable(
            ["phase", .. new[] { "residual torque", "effort" }.SelectMany(what => new[] { 10, 50, 90 }.Select(percent =>
                Invariant($"{what}, {percent} % point")))],
            [.. study.Mission.Zip(uncertainty.Sample.Phases, (phase, spread) => (IReadOnlyList<string>)
            [
                phase.Name,
                .. Points(spread.Residual).Select(SideText.Moment),
                .. Points(spread.Effort).Select(effort => phase.IsSettled ? NumberFormat.Text(effort, "") : "not settled"),
            ])]));

    /// <summary>In how many cases a limit is met: "94 of 100"; empty for a design whose cases were not computed.</summary>
    /// <param name="result">The run.</param>
    /// <param name="limit">Index in the study's order.</param>
    internal static string MetIn(StudyResult result, int limit) => result.Study.Limits[limit].Response.IsOverCases ? "is over cases"
        : result.Uncertainty is { } uncertainty ? NoiseText.OfHundred(uncertainty.Sample.EachLimit[limit].Value) : "";

    private static string InCases(Study study, SampleSummary sample)
    {
        var held = $"the pilot can hold every settled phase in {NoiseText.InCases(sample.Held.Value)}.";
        return study.Limits.Count == 0 ? StudyText.Capitalised(held)
            : $"This design meets every limit in {NoiseText.InCases(sample.LimitsMet.Value)}{LeastMet(study, sample)}; {held}";
    }

    private static string LeastMet(Study study, SampleSummary sample)
    {
        var (limit, share) = Least(study, sample);
        return study.Limits.Count == 1 || share.Value == 1 ? ""
            : $", least often the {StudyText.LimitTitle(limit)} ({NoiseText.OfHundred(share.Value)})";
    }

    /// <summary>The limit that is met in the fewest cases.</summary>
    private static (StudyLimit Limit, Estimate Share) Least(Study study, SampleSummary sample) =>
        study.Limits.Zip(sample.EachLimit).MinBy(item => item.Second.Value);

    /// <summary>What moves the limit that is met in the fewest cases, where that is not what moves the residual most.</summary>
    private static string OfLeastMet(Study study, UncertaintyResult uncertainty)
    {
        if (study.Limits.Count == 0
            || Least(study, uncertainty.Sample) is not { Share.Value: < 1, Limit: { Response.IsOverCases: false } limit })
        {
            return "";
        }

        double Value(DesignEvaluation design) => design.Failure is null ? limit.ValueOf(design) : double.PositiveInfinity;
        string Words(DesignEvaluation design) =>
            design.Failure is null ? NumberFormat.Text(limit.ValueOf(design), limit.Response.Entry) : "cannot fly";
        double Moves(NoiseBar bar) => Math.Abs(Value(bar.High) - Value(bar.Low)) is var moves && double.IsNaN(moves)
            ? double.PositiveInfinity : moves;
        var most = uncertainty.Bars.MaxBy(Moves)!;
        return most == uncertainty.Bars[0] || Moves(most) == 0 ? ""
            : $" The {limit.Response.Entry.Title} depends most on {most.Source.Title}: {Words(most.Low)} to {Words(most.High)}.";
    }

    /// <summary>Twice the standard error of the shares that are in the verdict.</summary>
    private static string Method(SampleSummary sample)
    {
        var error = 200 * Math.Max(sample.LimitsMet.StandardError, sample.Held.StandardError);
        return $"A case is one way in which the numbers of the study may really be: {NumberFormat.Count(sample.Cases)} were computed, and "
            + Invariant($"these shares are good to {Math.Max(1, Math.Ceiling(error)):0} in 100 (docs/noise.md).");
    }

    private static string MeasureFirst(Study study, IReadOnlyList<NoiseBar> bars)
    {
        var (phase, first) = (study.HeaviestSettledPhase, bars[0]);
        string Residual(DesignEvaluation design) =>
            design.Failure is null ? SideText.Moment(design.Phases[phase][PhaseQuantity.Residual]) : "one with which it cannot fly";
        var next = bars.Skip(1).Take(NextNamed).Where(bar => bar.Moves(phase) > WorthNaming * first.Moves(phase))
            .Select(bar => $"{bar.Source.Title} ({NumberFormat.Text(bar.Moves(phase), "N·m")})").ToList();
        return $"MEASURE THIS FIRST: {first.Source.Title}. Between {NoiseText.Deviation(first.Source, first.LowDeviation)} and "
            + $"{NoiseText.Deviation(first.Source, first.HighDeviation)} (8 of 10 cases) the residual torque in "
            + $"{study.Mission[phase].Name} goes from {Residual(first.Low)} to {Residual(first.High)}."
            + (next.Count > 0 ? $" Then: {string.Join(", ", next)}." : "");
    }

    /// <summary>The figures that the study marks as a guess, by what they move; nothing when it marks none.</summary>
    private static IEnumerable<string> Guesses(Study study, IReadOnlyList<NoiseBar> bars)
    {
        var guesses = study.Origins.Where(origin => origin.Word == FigureOrigin.Guess).ToList();
        if (guesses.Count == 0)
            yield break;
        var phase = study.HeaviestSettledPhase;
        var mattering = bars.Where(bar => bar.Moves(phase) > WorthNaming * bars[0].Moves(phase)
            && guesses.Any(guess => guess.IsOf(bar.Source, study.Machine)))
            .Select(bar => $"{bar.Source.Title} ({NumberFormat.Text(bar.Moves(phase), "N·m")})").ToList();
        yield return mattering.Count == 0
            ? $"None of the {NumberFormat.Count(guesses.Count, "figure")} marked as a guess matters in {study.Mission[phase].Name}."
            : $"GUESSES THAT MATTER, by what they move in {study.Mission[phase].Name}: {string.Join(", ", mattering)}.";
    }

    private static double[] Points(Percentiles points) => [points.Tenth, points.Median, points.NineTenths];
}
