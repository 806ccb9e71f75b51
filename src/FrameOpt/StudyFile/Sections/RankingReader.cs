using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

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
            study.DiagnosticBag.AddAssumption("ranking weights", "1 for each objective", "assumption: all objectives count alike");
            return [.. objectives.Select(_ => 1.0)];
        }

        var entries = ranking.Entries("weights");
        // Weights for objectives that could not be read would be blamed for nothing.
        if (objectives.Count < study.List("objectives").Count)
            return [];
        var weights = objectives.Select(_ => double.NaN).ToArray();
        foreach (var entry in entries)
            TakeWeight(ranking, entry, objectives, responses, weights);
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
        double[] weights)
    {
        if (responses.Read(entry.Key.Text, entry.Key) is not { } response)
            return;
        var index = objectives.ToList().FindIndex(objective => objective.Response == response);
        if (index < 0)
            ranking.DiagnosticBag.Add(entry.Key, $"{response.Name} is not an objective, so it has no weight.",
                "Remove it, or make it an objective.");
        else
            weights[index] = Quantity.Read(entry.Value, $"ranking.weights.{response.Name}", $"{response.Name}: 1", Dimension.Number,
                AllowedRange.NonNegative, ranking.DiagnosticBag)?.Base ?? double.NaN;
    }
}
