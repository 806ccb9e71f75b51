using FrameOpt.Studies;

namespace FrameOpt.Reports.Text;

/// <summary>Why figures of a study are as they are, and where they are from.</summary>
internal static class ReasonText
{
    /// <summary>The figure or group in words: "limit: smallest twist margin at least 2", "mission, climb, weight".</summary>
    public static string What(Study study, FigureReason figure)
    {
        var named = study.Limits.Select((limit, i) => (Path(i, "limits"), $"limit: {StudyText.LimitTitle(limit)}"))
            .Concat(study.Objectives.SelectMany((objective, i) => (IEnumerable<(string, string)>)
            [
                (Path(i, "objectives"), $"objective: {StudyText.Goal(objective)} {Title(objective)}"),
                (WeightOf(objective), $"weight of {Title(objective)} in the ranking"),
            ]))
            .Where(known => figure.IsOf(known.Item1)).ToList();
        return named.Count == 0 ? Words(figure.Path) : named[0].Item2 + Rest(figure.Path[named[0].Item1.Length..]);
    }

    /// <summary>The rows, each with what is said of it, and a row for each figure that none of them shows.</summary>
    public static IEnumerable<DescriptionRow> Beside(Study study, IEnumerable<DescriptionRow> rows)
    {
        var left = study.Reasons.ToList();
        foreach (var row in rows)
        {
            var here = left.FindAll(figure => row.Paths.FirstOrDefault(figure.IsOf) is not null);
            left.RemoveAll(here.Contains);
            yield return row with
            {
                Value = string.Join("; ", here.Select(figure => $"{Under(row, figure)} {figure.Text}".Trim()).Prepend(row.Value)),
            };
        }

        foreach (var figure in left)
            yield return new DescriptionRow("Reasons and sources", What(study, figure),
                figure.Value.Length > 0 ? $"{figure.Value}; {figure.Text}" : figure.Text);
    }

    /// <summary>Where an objective or a limit stands in the file.</summary>
    public static string Path(int index, string list) => FormattableString.Invariant($"{list}[{index + 1}]");

    /// <summary>Where the weight of an objective stands in the file.</summary>
    public static string WeightOf(StudyObjective objective) => $"ranking.weights.{objective.Response.Name}";

    private static string Under(DescriptionRow row, FigureReason figure) =>
        Rest(figure.Path[row.Paths.First(figure.IsOf).Length..]).TrimStart(',', ' ');

    private static string Title(StudyObjective objective) => StudyText.Title(objective.Response, objective.Magnitude);

    private static string Rest(string path) => Words(path) is { Length: > 0 } rest ? $", {rest.TrimStart(',', ' ')}" : "";

    private static string Words(string path) => path.Replace("machine.masses[", "mass [")
        .Replace("line.geometries[", "geometry [").Replace("factors.", "factor ").Replace(".", ", ").Replace(" [", " ").Replace("[", " ")
        .Replace("]", "").Replace('_', ' ');
}
