using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Reads the objectives.</summary>
internal static class ObjectiveReader
{
    private const int MaxObjectives = 5;

    public static IReadOnlyList<StudyObjective> Read(Section study, ResponseReader responses, Prerequisites needs)
    {
        var nodes = study.List("objectives");
        if (study.Value("objectives") is Node.List list && nodes.Count is < 2 or > MaxObjectives)
            study.DiagnosticBag.Add(study.KeyAt("objectives"), $"There are {nodes.Count} objectives; a study has two to five.",
                nodes.Count < 2 ? "Add another goal that pulls the other way, or make one a limit." : "Make some of them limits.");
        var objectives = new List<StudyObjective>();
        foreach (var (index, node) in nodes.Index())
        {
            if (Section.Open(node, node, $"objectives[{index + 1}]", StudyKeys.Objective, study.DiagnosticBag) is not { } section
                || ReadOne(section, responses, needs) is not { } objective)
                continue;
            if (objectives.Any(other => other.Response == objective.Response))
                study.DiagnosticBag.Add(node, $"{objective.Response.Name} is an objective twice.", "Remove one of the two.");
            objectives.Add(objective);
        }

        return objectives;
    }

    private static StudyObjective? ReadOne(Section section, ResponseReader responses, Prerequisites needs)
    {
        if (section.Has("minimise") == section.Has("maximise"))
        {
            section.DiagnosticBag.Add(section.Owner, "An objective either minimises or maximises one response.",
                "Write for example `minimise: residual_rms`.");
            return null;
        }

        var goal = section.Has("maximise") ? "maximise" : "minimise";
        if (section.Text(goal) is not { } name || responses.Read(name, section.At(goal)) is not { } response)
            return null;
        needs.Check(response, section.At(goal));
        var resolution = ResponseAmount.Read(section, "resolution", response, AllowedRange.NonNegative) ?? 0;
        return new StudyObjective(response, goal == "maximise", ResponseReader.IsSigned(response), resolution);
    }
}
