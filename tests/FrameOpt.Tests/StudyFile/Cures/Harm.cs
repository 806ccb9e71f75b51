using System.Text.RegularExpressions;
using YamlDotNet.RepresentationModel;

namespace FrameOpt.Tests.StudyFile.Cures;

/// <summary>One way to get a place of a study wrong, as a person would.</summary>
/// <param name="Name">What was done.</param>
/// <param name="Apply">Does it to the last step of a path; false where it cannot be done.</param>
internal sealed record Harm(string Name, Func<StudyTree, IReadOnlyList<string>, bool> Apply)
{
    public static readonly IReadOnlyList<Harm> All =
    [
        new("left out", (tree, path) => tree.GroupOf(path) is { Children.Count: > 1 } group
            && group.Children.Remove(new YamlScalarNode(path[^1]))),
        Text("empty", _ => ""),
        Text("a word", _ => "something else"),
        Text("unit left out", text => Number().Match(text) is { Success: true } number ? number.Value : null),
        Text("another unit", text => Number().Match(text) is { Success: true } number ? $"{number.Value} furlong" : null),
        Text("a unit of something else", text => Number().Match(text) is { Success: true } number
            ? $"{number.Value} {(text.EndsWith(" kg", StringComparison.Ordinal) ? "mm" : "kg")}" : null),
        Text("decimal comma", text => Number().IsMatch(text) ? Number().Replace(text, "1,5") : null),
        Text("grouped digits", text => Number().IsMatch(text) ? Number().Replace(text, "1 500 000") : null),
        Text("below its range", text => Number().IsMatch(text) ? Number().Replace(text, "-999999") : null),
        Text("above its range", text => Number().IsMatch(text) ? Number().Replace(text, "999999") : null),
        Text("beyond any number", text => Number().IsMatch(text) ? Number().Replace(text, "1e13") : null),
        Text("letter left out", text => text.Length > 4 && text.All(letter => char.IsLetter(letter) || letter is '_' or ' ' or '-')
            ? text.Remove(2, 1) : null),
        Node("a list in its place", _ => new YamlSequenceNode(new YamlScalarNode("1"))),
        Node("a group in its place", _ => new YamlMappingNode(new YamlScalarNode("a"), new YamlScalarNode("1"))),
        Node("a word in the place of a group", node => node is YamlScalarNode ? null : new YamlScalarNode("something")),
        Node("an empty list", node => node is YamlSequenceNode ? new YamlSequenceNode() : null),
        Node("an empty group", node => node is YamlMappingNode ? new YamlMappingNode() : null),
        new("key misspelt", (tree, path) => Rename(tree, path, key => key.Length > 4 ? key.Remove(1, 1) : null)),
        new("key of nothing", (tree, path) => Rename(tree, path, _ => "zzzzzzzz")),
    ];

    private static Harm Text(string name, Func<string, string?> change) => Node(
        name, node => node is YamlScalarNode { Value: { } text } && change(text) is { } other ? new YamlScalarNode(other) : null);

    private static Harm Node(string name, Func<YamlNode, YamlNode?> change) => new(name, (tree, path) =>
    {
        if (tree.GroupOf(path) is not { } group || change(group.Children[new YamlScalarNode(path[^1])]) is not { } other)
            return false;
        group.Children[new YamlScalarNode(path[^1])] = other;
        return true;
    });

    private static bool Rename(StudyTree tree, IReadOnlyList<string> path, Func<string, string?> rename)
    {
        if (tree.GroupOf(path) is not { } group || rename(path[^1]) is not { } name)
            return false;
        var value = group.Children[new YamlScalarNode(path[^1])];
        group.Children.Remove(new YamlScalarNode(path[^1]));
        group.Children.Add(new YamlScalarNode(name), value);
        return true;
    }

    private static Regex Number() => new(@"^[+-]?[0-9]+(\.[0-9]+)?");
}
