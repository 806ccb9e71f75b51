using FrameOpt.Model.Mission;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Reads the names that a plan lists.</summary>
internal static class PlanLists
{
    /// <summary>The responses to analyse: the objectives, unless others are named.</summary>
    public static IReadOnlyList<Response> Responses(
        Section plan, ResponseReader responses, Prerequisites needs, IReadOnlyList<StudyObjective> objectives)
    {
        if (!plan.Has("responses"))
            return [.. objectives.Select(objective => objective.Response).Where(response => !response.IsOverCases)];
        var read = new List<Response>();
        foreach (var node in plan.List("responses"))
        {
            if (node is not Node.Scalar scalar)
            {
                plan.DiagnosticBag.Add(node, "plan.responses wants names of responses.",
                    "Write names from docs/study-file.md, in brackets with commas between.");
                continue;
            }

            if (responses.Read(scalar.Text, node) is not { } response)
                continue;
            needs.Check(response, node);
            if (read.Contains(response))
                plan.DiagnosticBag.Add(node, $"{response.Name} is listed twice.", "Remove one of the two.");
            read.Add(response);
        }

        if (plan.Value("responses") is Node.List list && list.Items.Count == 0)
            plan.DiagnosticBag.Add(
                list, "plan.responses is empty.", "Name one or more responses, or leave it out: then the objectives are analysed.");
        return read;
    }

    /// <summary>Names of the swept factors that are hard to change.</summary>
    public static IReadOnlyList<string> HardToChange(Section plan, IReadOnlyList<StudyFactor> factors)
    {
        List<string> swept = [.. factors.Where(factor => factor.IsSwept).Select(factor => factor.Name)];
        var named = new List<string>();
        foreach (var node in plan.Has("hard_to_change") ? plan.List("hard_to_change") : [])
        {
            var name = (node as Node.Scalar)?.Text.Trim() ?? "";
            if (!swept.Contains(name) || named.Contains(name))
                plan.DiagnosticBag.Add(node, "plan.hard_to_change wants names of swept factors, each once.",
                    $"Write some of {string.Join(", ", swept)}, in brackets with commas between.");
            else
                named.Add(name);
        }

        if (named.Count > 0 && named.Count == swept.Count)
            plan.DiagnosticBag.Add(plan.KeyAt("hard_to_change"), "Every factor of the plan is hard to change.",
                "Leave hard_to_change out: every run is set up by itself then.");
        return named;
    }
}
