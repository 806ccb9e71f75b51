using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>How the search went: how good the front of an evolutionary search is, and how many designs went where.</summary>
internal static class SearchSection
{
    /// <summary>With a smaller share of the hypervolume the search is called too short.</summary>
    private const double SufficientShare = 0.97;

    private const int MaxReasons = 3;

    /// <summary>How good the front is; nothing for an exhaustive search, whose front is exact.</summary>
    public static IEnumerable<AnswerSection> Quality(StudyResult result)
    {
        if (result.Study.Search is not SearchSetting.Evolutionary)
            yield break;
        yield return result.Certificate is { } certificate
            ? new AnswerSection("How good the search is", [.. Lines(result.Study, certificate)])
            : new AnswerSection(
                "How good the search is", ["Not known: the run was stopped before the reference grid was computed."]);
    }

    /// <summary>How many designs went where, and why the search ended.</summary>
    public static AnswerSection Counts(StudyResult result)
    {
        var counts = result.Counts;
        List<string> lines =
        [
            $"{NumberFormat.Count(counts.Evaluated, "design")} evaluated, {StudyText.DesignSpace(result.Study)}: "
                + $"{NumberFormat.Count(counts.Failed)} cannot fly, "
                + $"{NumberFormat.Count(counts.Infeasible)} outside a limit, {NumberFormat.Count(counts.Feasible)} feasible, of which "
                + $"{NumberFormat.Count(result.Front.Count)} on the front.",
            $"{State(result)}: {RunText.Of(result.StopReason)}.",
            .. counts.FailedBy.Take(MaxReasons)
                .Select(failed =>
                $"Cannot fly: {FailureText.Kind(result.Study.Mission, failed.Failure)} ({NumberFormat.Count(failed.Count, "design")})."),
        ];
        return new AnswerSection("Counts", lines);
    }

    private static string State(StudyResult result) => !result.IsComplete ? "INCOMPLETE"
        : result.Study.Search is SearchSetting.Exhaustive ? "Complete" : "Ended";

    /// <summary>The share of the hypervolume in words: "99.31 %".</summary>
    public static string Share(Certificate certificate) =>
        FormattableString.Invariant(
            $"{(certificate.Hypervolume.SamplePoints > 0 ? "about " : "")}{100 * certificate.Hypervolume.Ratio:0.00} %");

    private static IEnumerable<string> Lines(Study study, Certificate certificate)
    {
        var behind = study.Objectives
            .Select((objective, o) =>
                $"{NumberFormat.Text(certificate.Regrets[o], objective.Response.Unit)} of "
                    + $"{StudyText.Title(objective.Response, objective.Magnitude)}");
        yield return $"For every design of the exact front the search found one that is worse by at most {string.Join(", ", behind)}.";
        yield return $"The exact front is that of {RunText.Grid(certificate)}: "
            + $"{NumberFormat.Count(certificate.GridDesigns, "design")}, all evaluated, {NumberFormat.Count(certificate.ExactFront)} of "
            + $"them on the front.";
        yield return $"Overall, the front found covers {Share(certificate)} of the hypervolume of the exact front (reference point: the "
            + $"worst values of the exact front plus a tenth of each objective's range)."
            + (certificate.Hypervolume.Ratio < SufficientShare ? " The search was too short: increase the number of evaluations." : "");
        if (certificate.Hypervolume.SamplePoints > 0)
            yield return "That share was estimated on "
                + $"{NumberFormat.Count(certificate.Hypervolume.SamplePoints, "point")}; "
                + $"its standard error is {FormattableString.Invariant($"{100 * certificate.Hypervolume.StandardError:0.00}")} %.";
        if (certificate.IsEstimate)
            yield return "ESTIMATE ONLY: that grid is only a part of the search space. Above 100 % the search found better designs than "
                + "the grid contains.";
        if (study.GridSize is { } designs && !certificate.IsEstimate)
        {
            var seconds = RunEstimate.Seconds(designs, study.Mission.Count, Environment.ProcessorCount);
            yield return $"`method: exhaustive` would compute this study's {NumberFormat.Count(designs, "design")} in "
                + $"{RunEstimate.InWords(seconds)}, and its front would be exact.";
        }
    }
}
