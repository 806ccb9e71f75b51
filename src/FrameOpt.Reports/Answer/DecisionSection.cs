using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>What was decided on before, whether it still holds, and lines to sign; why figures are as they are.</summary>
internal static class DecisionSection
{
    /// <summary>Nothing where the study records no decision and no reason.</summary>
    public static IEnumerable<AnswerSection> Of(StudyResult result) =>
        Of(result.Study, result.Study.Decision?.Design is { } design ? Changes(result, design) : []);

    /// <summary>The same with what changed since.</summary>
    /// <param name="study">With its decision, or none.</param>
    /// <param name="changes">Sentences.</param>
    public static IEnumerable<AnswerSection> Of(Study study, IEnumerable<string> changes)
    {
        if (study.Decision is { } decision)
            yield return new AnswerSection("Decision on record", [Sentence(study, decision), .. Rejected(decision), .. changes],
                new AnswerTable(["approval", "name", "date", "signature"],
                    [["decided", decision.By, decision.Date, ""], ["checked", "", "", ""], ["approved", "", "", ""]]));
        if (study.Reasons.Count > 0)
            yield return new AnswerSection("Reasons and sources on record", [], new AnswerTable(
                ["figure", "as written", "reason", "source"],
                [.. study.Reasons.Select(figure => (IReadOnlyList<string>)
                    [ReasonText.What(study, figure), figure.Value, figure.Reason, figure.Source])]));
    }

    /// <summary>"Decided on 2026-03-01 by A. Miller: A, B. Reason: ...".</summary>
    public static string Sentence(Study study, Decision decision) =>
        $"Decided on {decision.Date} by {decision.By}: "
            + (decision.Design is { } design ? GeometryText.Of(study, design) : string.Join(", ", decision.Geometries)) + "."
            + (decision.Reason.Length > 0 ? $" Reason: {decision.Reason.TrimEnd('.')}." : "");

    private static IEnumerable<string> Rejected(Decision decision) =>
        decision.Rejected.Count == 0 ? [] : [$"Rejected: {string.Join("; ", decision.Rejected)}."];

    /// <summary>What this run says of the design decided on.</summary>
    private static IEnumerable<string> Changes(StudyResult result, FrameGeometry design)
    {
        var study = result.Study;
        var there = StudyProblem.Model(study).Evaluate(design);
        if (there.Failure is { } failure)
        {
            yield return $"THE DESIGN DECIDED ON CANNOT FLY with this study: {FailureText.Describe(failure)}.";
            yield break;
        }

        foreach (var limit in study.Limits.Where(limit => !limit.Response.IsOverCases && !limit.IsMetBy(there)))
            yield return $"THE DESIGN DECIDED ON VIOLATES A LIMIT of this study: {StudyText.LimitTitle(limit)}; it is "
                + $"{NumberFormat.Text(limit.ValueOf(there), limit.Response.Entry)}.";
        if (result.Chosen is not { } best || study.IsOneFrame)
            yield break;
        yield return GeometryText.Difference(study, best.Geometry, design) is { Length: > 0 } difference
            ? $"THE DESIGN DECIDED ON IS NOT THE BEST of this run, which has {difference}; {Objectives(study, there, best)}."
            : "The design decided on is the best of this run too.";
    }

    private static string Objectives(Study study, DesignEvaluation decided, DesignEvaluation best) => string.Join("; ",
        study.Objectives.Where(objective => !objective.Response.IsOverCases).Select(objective =>
            $"{StudyText.Title(objective.Response, objective.Magnitude)}: decided "
                + $"{NumberFormat.Text(objective.ValueOf(decided), objective.Response.Entry)}, best "
                + NumberFormat.Text(objective.ValueOf(best), objective.Response.Entry)));
}
