using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace FrameOpt.StudyFile.Syntax;

/// <summary>Builds nodes from events that were scanned before: no aliases, bounded depth.</summary>
internal sealed class NodeBuilder(IReadOnlyList<ParsingEvent> events, DiagnosticBag diagnostics)
{
    private int next;

    /// <summary>The root, reporting duplicate keys.</summary>
    public Node Root() => Build();

    private Node Build()
    {
        var current = events[next++];
        var line = (int)current.Start.Line;
        var column = (int)current.Start.Column;
        return current switch
        {
            Scalar scalar => Value(scalar, line, column),
            SequenceStart => new Node.List(Items(), line, column),
            MappingStart => new Node.Map(Entries(), line, column),
            _ => throw new InvalidOperationException($"an event that begins no node: {current}"),
        };
    }

    private Node.Scalar Value(Scalar scalar, int line, int column)
    {
        var text = YamlText.UnescapeBrackets(scalar.Value);
        if (text.Any(character => char.IsControl(character) && character is not ('\n' or '\r' or '\t')))
        {
            diagnostics.Add(line, column, "", "This value holds an invisible control character.", "Type the value again.");
            text = "";
        }

        return new Node.Scalar(text, scalar.Style != ScalarStyle.Plain, line, column);
    }

    private List<Node> Items()
    {
        var items = new List<Node>();
        while (events[next] is not SequenceEnd)
            items.Add(Build());
        next++;
        return items;
    }

    private List<Node.Entry> Entries()
    {
        var entries = new List<Node.Entry>();
        var seen = new Dictionary<string, Node>();
        while (events[next] is not MappingEnd)
        {
            var key = Build();
            if (events[next] is MappingEnd)
            {
                // The parser accepts a colon without a key before it.
                diagnostics.Add(key, "A colon without its key stands here or in a line above.", "Write `key: value`, or remove the colon.");
                break;
            }

            var value = Build();
            if (key is not Node.Scalar word)
                diagnostics.Add(key, "A key must be one word.", "Write `key: value`.");
            else if (!seen.TryAdd(word.Text, word))
                diagnostics.Add(word, $"Duplicate key; first used in line {seen[word.Text].Line}.", "Remove one of the two.");
            else
                entries.Add(new Node.Entry(word, value));
        }

        next++;
        return entries;
    }
}

/// <summary>A decimal comma within { } ends the value: `mass: 5,5 kg` is the value 5 and a key `5 kg` with nothing after it.</summary>
internal static class DecimalComma
{
    /// <summary>The entries with such pieces reported and read as the number that was meant.</summary>
    public static IReadOnlyList<Node.Entry> Rejoin(IReadOnlyList<Node.Entry> entries, DiagnosticBag diagnostics)
    {
        var whole = new List<Node.Entry>();
        foreach (var entry in entries)
        {
            if (whole.Count > 0 && whole[^1] is { Value: Node.Scalar before } first && IsRest(entry, before))
            {
                var meant = before with { Text = $"{before.Text}.{entry.Key.Text}" };
                diagnostics.Add(before.Line, before.Column, $"{before.Text},{entry.Key.Text}",
                    "A number takes a decimal point, not a comma.", $"Write {meant.Text}.");
                whole[^1] = first with { Value = meant };
            }
            else
            {
                whole.Add(entry);
            }
        }

        return whole;
    }

    /// <summary>True when the key begins with a digit right after the comma that ended a plain number.</summary>
    private static bool IsRest(Node.Entry entry, Node.Scalar before) =>
        entry is { Key: { IsQuoted: false, Text: [>= '0' and <= '9', ..] } key, Value.IsNull: true }
        && !before.IsQuoted
        && before.Text.Length > 0
        && before.Text.TrimStart('-', '+').All(char.IsAsciiDigit)
        && key.Line == before.Line
        && key.Column == before.Column + before.Text.Length + 1;
}

/// <summary>A piece of a study file with its place: a value, a list, or a group of keys.</summary>
internal abstract record Node(int Line, int Column)
{
    private const int ShownItems = 4;

    /// <summary>One value, as text.</summary>
    internal sealed record Scalar(string Text, bool IsQuoted, int Line, int Column) : Node(Line, Column);

    /// <summary>A list of nodes.</summary>
    internal sealed record List(IReadOnlyList<Node> Items, int Line, int Column) : Node(Line, Column);

    /// <summary>A group of keys, each key once.</summary>
    internal sealed record Map(IReadOnlyList<Entry> Entries, int Line, int Column) : Node(Line, Column);

    /// <summary>A key and what stands under it.</summary>
    internal sealed record Entry(Scalar Key, Node Value);

    /// <summary>True for a key with nothing after it.</summary>
    public bool IsNull => this is Scalar { IsQuoted: false, Text: "" or "~" or "null" };

    /// <summary>What stands here, short enough for a message.</summary>
    public string Excerpt => Shortened(this switch
    {
        Scalar scalar => scalar.Text,
        List list => $"[{string.Join(", ", list.Items.Take(ShownItems).Select(item => item.Excerpt))}]",
        Map map => $"{{ {string.Join(", ", map.Entries.Take(ShownItems)
            .Select(entry => $"{entry.Key.Excerpt}: {entry.Value.Excerpt}"))} }}",
        _ => "",
    });

    private static string Shortened(string text)
    {
        var line = text.ReplaceLineEndings(" ");
        return line.Length <= 60 ? line : string.Concat(line.AsSpan(0, 57), "...");
    }
}
