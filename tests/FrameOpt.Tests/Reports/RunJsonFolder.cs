using System.Text.Json.Nodes;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Compare;
using FrameOpt.Reports.Files;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.Tests.Reports;

/// <summary>Folders with a run.json in them, to be read back.</summary>
public static class RunJsonFolder
{
    /// <summary>Writes the run.json of a run, changed as a test likes, and gives the folder.</summary>
    public static string Write(TemporaryFolder parent, string name, RunReport report, Action<JsonNode>? change = null)
    {
        var json = Json(report);
        change?.Invoke(json);
        Directory.CreateDirectory(parent[name]);
        File.WriteAllText(Path.Combine(parent[name], "run.json"), json.ToJsonString());
        return parent[name];
    }

    public static JsonNode Json(RunReport report)
    {
        using var stream = new MemoryStream();
        RunJson.Write(report, stream);
        return JsonNode.Parse(stream.ToArray())!;
    }

    public static Comparison Read(params string[] folders)
    {
        var comparison = ComparisonReader.Read(folders, ReportFixture.Info.ToolVersion, out var errors);
        Assert.Empty(errors);
        return comparison!;
    }

    public static IReadOnlyList<string> Refused(params string[] folders)
    {
        Assert.Null(ComparisonReader.Read(folders, ReportFixture.Info.ToolVersion, out var errors));
        Assert.NotEmpty(errors);
        return errors;
    }

    /// <summary>Every value in a tree, with what holds it.</summary>
    public static IEnumerable<(JsonNode Parent, string Key, int Index)> Leaves(JsonNode node)
    {
        switch (node)
        {
            case JsonObject members:
                foreach (var (key, value) in members.ToList())
                {
                    if (value is JsonObject or JsonArray)
                    {
                        foreach (var leaf in Leaves(value))
                            yield return leaf;
                    }
                    else
                    {
                        yield return (members, key, -1);
                    }
                }

                break;
            case JsonArray items:
                for (var i = 0; i < items.Count; i++)
                {
                    if (items[i] is JsonObject or JsonArray)
                    {
                        foreach (var leaf in Leaves(items[i]!))
                            yield return leaf;
                    }
                    else
                    {
                        yield return (items, "", i);
                    }
                }

                break;
        }
    }

    public static JsonNode? Get((JsonNode Parent, string Key, int Index) leaf) =>
        leaf.Index < 0 ? leaf.Parent[leaf.Key] : leaf.Parent[leaf.Index];

    public static void Set((JsonNode Parent, string Key, int Index) leaf, JsonNode? value)
    {
        if (leaf.Index < 0)
            leaf.Parent[leaf.Key] = value;
        else
            leaf.Parent[leaf.Index] = value;
    }
}
