using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace FrameOpt.StudyFile.Syntax;

/// <summary>Builds nodes from events that were scanned before: no aliases, bounded depth.</summary>
internal sealed class NodeBuilder(IReadOnlyList<ParsingEvent> events, DiagnosticBag diagnostics)
{
    private int next;

    /// <summary>The root, with keys that stand twice reported.</summary>
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
            diagnostics.Add(line, column, "", "This value holds an invisible control character.", "Type the value anew.");
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
                // The parser lets a colon pass that has no key before it.
                diagnostics.Add(key, "A colon without its key stands here or in a line above.", "Write `key: value`, or remove the colon.");
                break;
            }

            var value = Build();
            if (key is not Node.Scalar word)
                diagnostics.Add(key, "A key must be one word.", "Write `key: value`.");
            else if (!seen.TryAdd(word.Text, word))
                diagnostics.Add(word, $"This key stands twice; first in line {seen[word.Text].Line}.", "Remove one of the two.");
            else
                entries.Add(new Node.Entry(word, value));
        }

        next++;
        return entries;
    }
}
