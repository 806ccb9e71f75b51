using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>What the design gives up against the best of each objective on the front, and against the baseline.</summary>
internal static class CostSection
{
    /// <summary>Every objective and response of the mission beside the best of the front and the baseline.</summary>
    public static AnswerSection Of(StudyResult result, DesignEvaluation chosen) => Of(result, chosen, Best(result));

    /// <summary>The best of each objective on the front, in its unit.</summary>
    public static IReadOnlyList<double> Best(StudyResult result) => [.. result.Study.Objectives.Select((objective, o) =>
        result.Front.Select(design => design.Objectives[o]) is var values && objective.Maximise ? values.Max() : values.Min())];

    /// <summary>The same where the best of the front is known.</summary>
    public static AnswerSection Of(StudyResult result, DesignEvaluation chosen, IReadOnlyList<double> best)
    {
        var objectives = result.Study.Objectives.Select((objective, i) => ObjectiveRow(result, chosen, objective, best[i]));
        var others = ResponseCatalogue.OfMissions
            .Where(quantity => !double.IsNaN(chosen[quantity]) && !IsObjective(result.Study, quantity))
            .Select(quantity => MissionRow(result, chosen, quantity));
        if (result.Study.IsOneFrame)
            return new AnswerSection("Responses of the mission", [.. Lines(result)], new AnswerTable(
                ["response", "goal", "this frame", .. result.Baseline is null ? [] : new[] { "baseline" }],
                [.. objectives.Concat(others).Select(row => (IReadOnlyList<string>)[.. row.Take(3), .. row.Skip(4)])]));
        string[] headers = ["response", "goal", "this design", "best on the front", .. result.Baseline is null ? [] : new[] { "baseline" }];
        return new AnswerSection("What it costs elsewhere", [.. Lines(result)], new AnswerTable(headers, [.. objectives, .. others]));
    }

    /// <summary>What the design leaves with the engine off, a sentence for each such phase.</summary>
    public static IEnumerable<string> EngineOff(StudyResult result, DesignEvaluation design)
    {
        for (var p = 0; p < design.Phases.Count; p++)
        {
            var phase = design.Phases[p];
            if (phase.Phase.Power is not PhasePower.EngineOff)
                continue;
            var baseline = result.Baseline is { Failure: null } other ? $" The baseline leaves {SideText.Residual(other.Phases[p])}." : "";
            yield return $"{phase.Phase.Name}: {SideText.Residual(phase)}; {SideText.LeanAndEffort(phase)}.{baseline}";
        }
    }

    private static IEnumerable<string> Lines(StudyResult result)
    {
        if (result.Baseline is { } baseline)
        {
            yield return $"Baseline: {GeometryText.Of(result.Study, baseline.Geometry)}"
                + (baseline.Failure is { } failure ? $". It cannot fly the mission: {FailureText.Describe(failure)}." : ".");
        }

        if (result.DroppedObjectives.Count > 0)
            yield return "Equal for every design of the front and therefore not used in the ranking: "
                + $"{string.Join(", ", result.DroppedObjectives)}.";
    }

    private static string[] ObjectiveRow(StudyResult result, DesignEvaluation chosen, StudyObjective objective, double best)
    {
        string Cell(DesignEvaluation design) =>
            NumberFormat.Text(objective.ValueOf(design), objective.Response.Entry);
        return
        [
            StudyText.Title(objective.Response, objective.Magnitude),
            StudyText.Goal(objective),
            Cell(chosen),
            NumberFormat.Text(best, objective.Response.Entry),
            .. BaselineCell(result, Cell),
        ];
    }

    private static string[] MissionRow(StudyResult result, DesignEvaluation chosen, MissionQuantity quantity)
    {
        string Cell(DesignEvaluation design) => NumberFormat.Text(design[quantity], quantity);
        return [quantity.Title, "", Cell(chosen), "", .. BaselineCell(result, Cell)];
    }

    private static string[] BaselineCell(StudyResult result, Func<DesignEvaluation, string> cell) => result.Baseline switch
    {
        null => [],
        { Failure: not null } => ["cannot fly"],
        var baseline => [cell(baseline)],
    };

    private static bool IsObjective(Study study, MissionQuantity quantity) =>
        study.Objectives.Any(objective => objective.Response.Entry == quantity);
}
