using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Reports.Answer;

/// <summary>How sure the answer is, and what to measure first.</summary>
internal static class UncertaintySection
{
    private const int MostBars = 8;

    /// <summary>The section; a sentence alone when the study says that nothing is uncertain.</summary>
    public static IEnumerable<AnswerSection> Of(StudyResult result)
    {
        if (result.Uncertainty is not { } uncertainty)
            yield break;
        if (uncertainty.Bars.Count == 0)
        {
            yield return new AnswerSection("How sure is this?",
                ["The study says `noise: none`: every number is taken as exact, so nothing is said of how sure the answer is."]);
            yield break;
        }

        yield return new AnswerSection("How sure is this?", [.. Sentences(result.Study, uncertainty)], Bars(result, uncertainty));
    }

    /// <summary>The verdict in a few sentences.</summary>
    public static IEnumerable<string> Sentences(Study study, UncertaintyResult uncertainty)
    {
        var sample = uncertainty.Sample;
        var limits = study.Limits.Count == 0 ? "" : $"This design meets every limit in {NoiseText.InCases(sample.LimitsMet)}. ";
        yield return $"{limits}The pilot can hold every phase in {NoiseText.InCases(sample.Held)}. "
            + $"{NumberFormat.Count(sample.Cases)} cases of what may really be were computed, the usual spreads in docs/noise.md; these figures "
            + FormattableString.Invariant($"are good to {Math.Max(1, Math.Ceiling(200 * Math.Max(sample.LimitsMet.StandardError, sample.Held.StandardError))):0} in 100.");
        var (first, phase) = (uncertainty.Bars[0], Heaviest(study));
        if (double.IsFinite(first.Moves(phase)))
        {
            yield return $"MEASURE THIS FIRST: {first.Source.Title} ({first.Source.Meaning}). From "
                + $"{NoiseText.Deviation(first.Source, first.LowDeviation)} to {NoiseText.Deviation(first.Source, first.HighDeviation)}, between "
                + $"which 8 of 10 cases lie, it moves the residual torque in {study.Mission[phase].Name} by "
                + $"{NumberFormat.Text(first.Moves(phase), "N·m")}.";
        }
    }

    /// <summary>The settled phase of most weight.</summary>
    public static int Heaviest(Study study) =>
        study.Mission.Index().Where(item => item.Item.IsSettled).MaxBy(item => item.Item.Weight).Index;

    private static AnswerTable Bars(StudyResult result, UncertaintyResult uncertainty)
    {
        var phase = Heaviest(result.Study);
        return new AnswerTable(
            ["uncertain number, alone", "8 of 10 cases lie between", $"residual torque in {result.Study.Mission[phase].Name}",
                "largest effort", "limits violated there", "best design there"],
            [.. uncertainty.Bars.Take(MostBars).Select(bar => (IReadOnlyList<string>)
            [
                bar.Source.Title,
                $"{NoiseText.Deviation(bar.Source, bar.LowDeviation)} and {NoiseText.Deviation(bar.Source, bar.HighDeviation)}",
                Both(bar, design => SideText.Moment(design.Phases[phase][PhaseQuantity.Residual])),
                Both(bar, design => NumberFormat.Text(design[MissionQuantity.EffortWorst], "")),
                Violated(result.Study, bar),
                Best(result.Study, bar),
            ])]);
    }

    private static string Both(NoiseBar bar, Func<DesignEvaluation, string> words)
    {
        string One(DesignEvaluation design) => design.Failure is null ? words(design) : "cannot fly";
        return $"{One(bar.Low)} to {One(bar.High)}";
    }

    private static string Violated(Study study, NoiseBar bar)
    {
        var violated = study.Limits.Where(limit => !limit.IsMetBy(bar.Low) || !limit.IsMetBy(bar.High))
            .Select(limit => limit.Response.Entry.Title).Distinct().ToList();
        return violated.Count == 0 ? "none" : string.Join(", ", violated);
    }

    private static string Best(Study study, NoiseBar bar)
    {
        var offset = study.Factor(GeometryInput.LateralOffset);
        var others = new[] { bar.LowBest, bar.HighBest }.OfType<FrontDesign>()
            .Select(design => GeometryText.Of(offset, design.Geometry.OffsetMetres)).Distinct().ToList();
        return others.Count == 0 ? "the same" : string.Join("; ", others);
    }
}
