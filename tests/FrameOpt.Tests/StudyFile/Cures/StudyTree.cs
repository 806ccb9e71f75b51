using System.Text;
using YamlDotNet.RepresentationModel;

namespace FrameOpt.Tests.StudyFile.Cures;

/// <summary>A study as a tree that can be damaged in one place and written again, every key and item on a line of its own.</summary>
internal sealed class StudyTree
{
    private readonly YamlMappingNode root;

    private StudyTree(YamlMappingNode root) => this.root = root;

    public static StudyTree Parse(string text)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(text));
        // Each variant is one more study to read, and says nothing more here.
        ((YamlMappingNode)stream.Documents[0].RootNode).Children.Remove(new YamlScalarNode("variants"));
        return new StudyTree((YamlMappingNode)stream.Documents[0].RootNode);
    }

    /// <summary>The keys and items on the way to every node, in the order of the file.</summary>
    public IEnumerable<IReadOnlyList<string>> Paths() => Under(root, []);

    public YamlNode Find(IReadOnlyList<string> path) => path.Aggregate((YamlNode)root, Step);

    /// <summary>The group that holds the last step of a path, or null where that is an item of a list.</summary>
    public YamlMappingNode? GroupOf(IReadOnlyList<string> path) => Find([.. path.SkipLast(1)]) as YamlMappingNode;

    /// <summary>The text, and the line of one node in it.</summary>
    public (string Text, int Line) Write(IReadOnlyList<string> path)
    {
        var text = new StringBuilder();
        var lines = new Dictionary<YamlNode, int>(ReferenceEqualityComparer.Instance);
        var line = 1;
        Write(root, 0, text, lines, ref line);
        return (text.ToString(), lines.GetValueOrDefault(Find(path)));
    }

    private static YamlNode Step(YamlNode node, string step) => node is YamlMappingNode map
        ? map.Children[new YamlScalarNode(step)]
        : ((YamlSequenceNode)node).Children[int.Parse(step)];

    private static IEnumerable<IReadOnlyList<string>> Under(YamlNode node, IReadOnlyList<string> path)
    {
        if (path.Count > 0)
            yield return path;
        var children = node switch
        {
            YamlMappingNode map => map.Children.Select(pair => (((YamlScalarNode)pair.Key).Value!, pair.Value)),
            YamlSequenceNode list => list.Children.Select((item, i) => ($"{i}", item)),
            _ => [],
        };
        foreach (var (step, child) in children)
        {
            foreach (var found in Under(child, [.. path, step]))
                yield return found;
        }
    }

    private static void Write(YamlNode node, int depth, StringBuilder text, Dictionary<YamlNode, int> lines, ref int line)
    {
        var indent = new string(' ', 2 * depth);
        if (node is YamlMappingNode map)
        {
            foreach (var (key, value) in map.Children)
                WriteOne($"{indent}{Quoted((YamlScalarNode)key)}:", value, depth, text, lines, ref line);
        }
        else
        {
            foreach (var item in ((YamlSequenceNode)node).Children)
                WriteOne($"{indent}-", item, depth, text, lines, ref line);
        }
    }

    private static void WriteOne(string head, YamlNode value, int depth, StringBuilder text, Dictionary<YamlNode, int> lines, ref int line)
    {
        lines[value] = line++;
        var isEmptyGroup = value is YamlMappingNode { Children.Count: 0 } or YamlSequenceNode { Children.Count: 0 };
        if (value is YamlScalarNode scalar)
            text.Append(head).Append(scalar.Value is { Length: > 0 } ? $" {Quoted(scalar)}" : "").Append('\n');
        else if (isEmptyGroup)
            text.Append(head).Append(value is YamlMappingNode ? " {}" : " []").Append('\n');
        else
        {
            text.Append(head).Append('\n');
            Write(value, depth + 1, text, lines, ref line);
        }
    }

    private static string Quoted(YamlScalarNode scalar) =>
        scalar.Value!.All(letter => char.IsLetterOrDigit(letter) || letter is '_') ? scalar.Value!
            : $"\"{scalar.Value!.Replace("\\", "\\\\").Replace("\"", "\\\"").Replace("\n", "\\n")}\"";
}
