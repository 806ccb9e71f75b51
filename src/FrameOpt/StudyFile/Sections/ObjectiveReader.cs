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
        foreach (var (index, node) in nodes.Take(MaxObjectives).Index())
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
                "Write one of the two, with the name of a response; docs/study-file.md lists them.");
            return null;
        }

        var goal = section.Has("maximise") ? "maximise" : "minimise";
        if (section.Text(goal) is not { } name || responses.ReadAny(name, section.At(goal)) is not { } response)
            return null;
        needs.Check(response, section.At(goal));
        var resolution = ResponseAmount.Read(section, "resolution", response, AllowedRange.NonNegative) ?? 0;
        return new StudyObjective(response, goal == "maximise", ResponseReader.IsSigned(response), resolution);
    }
}

/// <summary>Reads the limits.</summary>
internal static class LimitReader
{
    private const int MaxLimits = 50;

    public static IReadOnlyList<StudyLimit> Read(
        Section study, IReadOnlyList<StudyObjective> objectives, ResponseReader responses, Prerequisites needs)
    {
        var nodes = study.List("limits");
        if (nodes.Count > MaxLimits)
            study.DiagnosticBag.Add(study.KeyAt("limits"), $"There are {nodes.Count} limits; {MaxLimits} is the most.",
                "Keep those that decide.");
        List<StudyLimit> limits =
        [
            .. nodes.Take(MaxLimits)
                .Select((node, index) => Section.Open(node, node, $"limits[{index + 1}]", StudyKeys.Limit, study.DiagnosticBag))
                .OfType<Section>()
                .Select(section => ReadOne(section, responses, needs))
                .OfType<StudyLimit>(),
        ];
        return [.. limits, .. objectives.Where(objective => objective.Response.Entry.LargestRanked is not null
            && !limits.Any(limit => limit.Response == objective.Response && limit.AtMost is not null))
            .Select(objective => Assumed(study, objective))];
    }

    /// <summary>A limit that keeps values without bound, which nothing can be compared with, out of the ranking.</summary>
    private static StudyLimit Assumed(Section study, StudyObjective objective)
    {
        var most = objective.Response.Entry.LargestRanked!.Value;
        study.DiagnosticBag.AddAssumption($"limit on {objective.Response.Name}",
            FormattableString.Invariant($"at most {most} {objective.Response.Unit}").TrimEnd(),
            "assumption: it is without bound where no lean cures the turn, and such a design cannot be ranked by it");
        return new StudyLimit(objective.Response, objective.Magnitude, null, most);
    }

    private static StudyLimit? ReadOne(Section section, ResponseReader responses, Prerequisites needs)
    {
        if (!section.Has("at_least") && !section.Has("at_most"))
            section.DiagnosticBag.Add(section.Owner, "This limit has no bound.",
                "Add at_least or at_most or both, each with an amount of the response.");
        if (section.Text("response") is not { } name || responses.ReadAny(name, section.At("response")) is not { } response)
            return null;
        needs.Check(response, section.At("response"));
        var atLeast = ResponseAmount.Read(section, "at_least", response, AllowedRange.None);
        // An upper bound alone on a signed response bounds its magnitude.
        var magnitude = ResponseReader.IsSigned(response) && !section.Has("at_least");
        var atMost = ResponseAmount.Read(section, "at_most", response, magnitude ? AllowedRange.NonNegative : AllowedRange.None);
        if (atLeast > atMost)
            section.DiagnosticBag.Add(section.At("at_least"), "at_least is above at_most: nothing can pass.", "Exchange the two.");
        return new StudyLimit(response, magnitude, atLeast, atMost);
    }
}

/// <summary>Reads how the front is ranked.</summary>
internal static class RankingReader
{
    private const string Distance = "distance to ideal";

    public static RankingSetting Read(Section study, IReadOnlyList<StudyObjective> objectives, ResponseReader responses)
    {
        var ranking = study.Child("ranking", StudyKeys.Ranking);
        return new RankingSetting(Method(study, ranking), Weights(study, ranking, objectives, responses));
    }

    private static RankingMethod Method(Section study, Section? ranking)
    {
        if (ranking is null || !ranking.Has("method"))
            study.DiagnosticBag.AddAssumption("ranking method", Distance,
                "assumption: weighted Euclidean distance to the best of every objective; the other choice is TOPSIS");
        switch (ranking?.Text("method"))
        {
            case null or Distance:
                return RankingMethod.DistanceToIdeal;
            case "topsis":
                return RankingMethod.Topsis;
            case var other:
                ranking!.DiagnosticBag.Add(ranking.At("method"), "This is not a ranking method the tool knows.",
                    NearestName.Of(other, [Distance, "topsis"]) is { } near ? $"Did you mean `{near}`?"
                        : $"Write `{Distance}` or `topsis`.");
                return RankingMethod.DistanceToIdeal;
        }
    }

    private static double[] Weights(Section study, Section? ranking, IReadOnlyList<StudyObjective> objectives, ResponseReader responses)
    {
        if (ranking is null || !ranking.Has("weights"))
        {
            study.DiagnosticBag.AddAssumption("ranking weights", "1 for each objective", "assumption: all objectives have equal weight");
            return [.. objectives.Select(_ => 1.0)];
        }

        var entries = ranking.Entries("weights");
        // Weights of objectives that could not be read would be reported as unknown.
        if (objectives.Count < study.List("objectives").Count)
            return [];
        var weights = objectives.Select(_ => double.NaN).ToArray();
        var taken = new HashSet<int>();
        foreach (var entry in entries)
            TakeWeight(ranking, entry, objectives, responses, weights, taken);
        for (var i = 0; i < weights.Length; i++)
        {
            if (double.IsNaN(weights[i]) && !entries.Any(entry => entry.Key.Text == objectives[i].Response.Name))
                ranking.DiagnosticBag.Add(ranking.KeyAt("weights"), $"ranking.weights has no weight for {objectives[i].Response.Name}.",
                    $"Add `{objectives[i].Response.Name}: 1`.");
        }

        if (weights.Length > 0 && weights.All(weight => weight == 0))
            ranking.DiagnosticBag.Add(ranking.KeyAt("weights"), "Every weight is 0.", "Give at least one objective a weight above 0.");
        return weights;
    }

    private static void TakeWeight(Section ranking, Node.Entry entry, IReadOnlyList<StudyObjective> objectives, ResponseReader responses,
        double[] weights, HashSet<int> taken)
    {
        if (responses.ReadAny(entry.Key.Text, entry.Key) is not { } response)
            return;
        var index = objectives.ToList().FindIndex(objective => objective.Response == response);
        if (index < 0)
            ranking.DiagnosticBag.Add(entry.Key, $"{response.Name} is not an objective, so it has no weight.",
                "Remove it, or make it an objective.");
        else if (!taken.Add(index))
            ranking.DiagnosticBag.Add(entry.Key, $"{response.Name} has a weight twice.", "Remove one of the two.");
        else
            weights[index] = Quantity.Read(entry.Value, $"ranking.weights.{response.Name}", Dimension.Number,
                AllowedRange.Weight, ranking.DiagnosticBag)?.Base ?? double.NaN;
    }
}
