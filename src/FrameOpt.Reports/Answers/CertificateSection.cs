using FrameOpt.Studies;

namespace FrameOpt.Reports;

/// <summary>How good the front of an evolutionary search is.</summary>
internal static class CertificateSection
{
    public static IEnumerable<AnswerSection> Of(StudyResult result)
    {
        if (result.Study.Search is not SearchSetting.Evolutionary)
            yield break;
        yield return result.Certificate is { } certificate
            ? new AnswerSection("How good the search is", [.. Lines(result.Study, certificate)], Regrets(result.Study, certificate))
            : new AnswerSection("How good the search is", ["Not known: the run was stopped before the grid that the front is held against was computed."]);
    }

    /// <summary>The share of the hypervolume in words: "99.31 %".</summary>
    public static string Share(Certificate certificate) =>
        FormattableString.Invariant($"{(certificate.Hypervolume.SamplePoints > 0 ? "about " : "")}{100 * certificate.Hypervolume.Share:0.00} %");

    private static IEnumerable<string> Lines(Study study, Certificate certificate)
    {
        yield return $"Held against {certificate.GridWords}: {Figures.Count(certificate.GridDesigns)} designs, all computed, {Figures.Count(certificate.ExactFront)} of them on its exact front.";
        yield return $"The front found dominates {Share(certificate)} of what that exact front dominates (hypervolume, measured from a tenth of each objective's range beyond the exact front's worst).";
        if (certificate.Hypervolume.SamplePoints > 0)
            yield return $"That share was estimated on {Figures.Count(certificate.Hypervolume.SamplePoints)} points; its standard error is {FormattableString.Invariant($"{100 * certificate.Hypervolume.StandardError:0.00}")} %.";
        if (certificate.IsEstimate)
            yield return "AN ESTIMATE: that grid is only a part of what the search could choose from. Above 100 % the search found better than the grid holds.";
        if (study.GridSize is { } designs && !certificate.IsEstimate)
            yield return $"`method: exhaustive` would compute this study's {Figures.Count(designs)} designs in {RunEstimate.InWords(RunEstimate.Seconds(designs, study.Mission.Count, Environment.ProcessorCount))}, and its front would be exact.";
    }

    private static AnswerTable Regrets(Study study, Certificate certificate) => new(
        ["objective", "at most so much worse than the exact front"],
        [.. study.Objectives.Select((objective, o) => (IReadOnlyList<string>)
            [StudyWords.Name(objective.Response, objective.Magnitude), Figures.Text(certificate.Regrets[o], objective.Response.Unit)])]);
}
