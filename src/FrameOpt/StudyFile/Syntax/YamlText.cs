using System.Text.RegularExpressions;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace FrameOpt.StudyFile.Syntax;

/// <summary>Parses text to nodes; features of YAML that a study does not use are refused before anything is built.</summary>
internal static partial class YamlText
{
    /// <summary>Deepest nesting of lists and groups.</summary>
    public const int MaxDepth = 32;

    /// <summary>Largest number of keys, values, and ends of lists and groups.</summary>
    private const int MaxEvents = 60_000;

    // YAML gives [ ] and , a meaning inside { }, where a study writes residual[cruise] as one word: such brackets are
    // set aside as characters of the private use area, one for one so that columns stay, and put back in the values.
    private const char EscapedOpen = '\uE000';
    private const char EscapedClose = '\uE001';
    private const char EscapedComma = '\uE002';

    /// <summary>The one document's root, or null after an error.</summary>
    public static Node? Read(string text, DiagnosticBag diagnostics)
    {
        var events = Scan(text, diagnostics);
        if (events is null)
            return null;
        if (events.Count > 0)
            return new NodeBuilder(events, diagnostics).Root();
        diagnostics.AddForFile("The file is empty.", "Begin with the line `format: 1`.");
        return null;
    }

    /// <summary>A value as the user wrote it.</summary>
    public static string UnescapeBrackets(string value) =>
        value.Replace(EscapedOpen, '[').Replace(EscapedClose, ']').Replace(EscapedComma, ',');

    private static string EscapeBrackets(string text) => WordWithPhase().Replace(text, word =>
        word.Value.Replace('[', EscapedOpen).Replace(']', EscapedClose).Replace(',', EscapedComma));

    [GeneratedRegex("""(?<=[\p{L}\p{N}_])\[[^\[\]{}"'#\r\n]*\]""")]
    private static partial Regex WordWithPhase();

    /// <summary>The node events of the one document, or null when the text is not YAML or holds what is refused.</summary>
    public static List<ParsingEvent>? Scan(string text, DiagnosticBag diagnostics)
    {
        var events = new List<ParsingEvent>();
        var documents = 0;
        var depth = 0;
        var refused = false;
        try
        {
            var parser = new Parser(new StringReader(EscapeBrackets(text)));
            while (parser.MoveNext())
            {
                var current = parser.Current!;
                depth += current.NestingIncrease;
                documents += current is DocumentStart ? 1 : 0;
                if (Refusal(current, documents) is var (what, fix))
                {
                    refused = true;
                    diagnostics.Add((int)current.Start.Line, (int)current.Start.Column, "", what, fix);
                    if (documents > 1)
                        return null;
                }

                // The stream and the document count as two.
                if (depth > MaxDepth + 2)
                {
                    diagnostics.Add((int)current.Start.Line, (int)current.Start.Column, "",
                        $"Lists and groups are nested more than {MaxDepth} deep.",
                            "A study needs about six: check the brackets and the indentation.");
                    return null;
                }

                if (current is NodeEvent or MappingEnd or SequenceEnd)
                    events.Add(current);
                if (events.Count > MaxEvents)
                {
                    diagnostics.Add((int)current.Start.Line, (int)current.Start.Column, "",
                        $"The file has more than {MaxEvents} keys and values by here; a study has a few hundred.",
                        "Check that this is the study file; put long lists of customers in a CSV file.");
                    return null;
                }
            }
        }
        catch (YamlException problem)
        {
            var (line, column, what, fix) = YamlErrorText.Of(problem, text);
            diagnostics.Add(line, column, "", what, fix);
            return null;
        }
        catch (InvalidOperationException)
        {
            // What the parser throws for a bracket that the next line leaves open.
            var (line, column) = OpenBracket(events, text);
            diagnostics.Add(line, column, "", "A bracket `{` or `[` opens here and is not closed.", "Close it with `}` or `]`.");
            return null;
        }

        return refused ? null : events;
    }

    /// <summary>The innermost bracket open at the end of the events, or else the first one in the text after them.</summary>
    private static (int Line, int Column) OpenBracket(List<ParsingEvent> events, string text)
    {
        var open = new Stack<ParsingEvent>();
        foreach (var current in events)
        {
            if (current is MappingStart or SequenceStart)
                open.Push(current);
            else if (current is MappingEnd or SequenceEnd)
                open.Pop();
        }

        var read = events.Count > 0 ? (int)events[^1].End.Index : 0;
        var bracket = text.AsSpan(Math.Min(read, text.Length)).IndexOfAny('{', '[');
        var start = open.FirstOrDefault(
            start => start is MappingStart { Style: MappingStyle.Flow } or SequenceStart { Style: SequenceStyle.Flow })?.Start;
        if (start is { } inside)
            return ((int)inside.Line, (int)inside.Column);
        var before = text.AsSpan(0, Math.Min(read, text.Length) + Math.Max(0, bracket));
        return (before.Count('\n') + 1, before.Length - before.LastIndexOf('\n'));
    }

    private static (string What, string Fix)? Refusal(ParsingEvent current, int documents) => current switch
    {
        DocumentStart when documents > 1 => ("A second document begins here.", "Keep one study in a file: remove the line `---`."),
        AnchorAlias => ("A `*name` stands for something written elsewhere, which a study file does not use.",
            "Write it out, or put it in quotes if it is text."),
        NodeEvent { Anchor.IsEmpty: false } => ("A `&name` marks something for use elsewhere, which a study file does not use.",
            "Remove the `&name`, or put the text in quotes."),
        NodeEvent { Tag.IsEmpty: false } node when node.Tag != "!" =>
            ("A tag (`!...`) stands here, which a study file does not use.", "Remove the `!...`, or put the text in quotes."),
        _ => null,
    };
}
