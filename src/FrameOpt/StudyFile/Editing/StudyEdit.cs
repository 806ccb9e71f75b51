using FrameOpt.StudyFile.Syntax;
using YamlDotNet.Core.Events;

namespace FrameOpt.StudyFile.Editing;

/// <summary>Reads and changes single values of a study's text and leaves everything else as it is, comments included. A place is a path
/// as in `machine.masses.0.mass`: keys, and numbers from 0 for the items of a list.</summary>
public sealed class StudyEdit
{
    private readonly string text;
    private readonly Piece? root;

    private StudyEdit(string text, Piece? root) => (this.text, this.root) = (text, root);

    /// <summary>A text to look values up in. One that is no study at all has none.</summary>
    /// <param name="text">Of a study file.</param>
    public static StudyEdit Of(string text)
    {
        var events = YamlText.Scan(text, new DiagnosticBag("study"));
        var next = 0;
        return new StudyEdit(text, events is { Count: > 0 } ? Piece.Read(events, ref next, text) : null);
    }

    /// <summary>A value as written, without quotes; null where there is none.</summary>
    public string? Value(string path) => Find(path) is { Value: { } value } ? value : null;

    /// <summary>How many items or keys a list or group has; 0 where there is none.</summary>
    public int Count(string path) => Find(path)?.Children.Count ?? 0;

    /// <summary>Line and column of a value and of its key, from 1; none where there is no such value.</summary>
    public IReadOnlyList<(int Line, int Column)> Places(string path) =>
        Find(path) is { } piece ? [(piece.Line, piece.Column), piece.Key] : [];

    /// <summary>The text with one value replaced, or added to the group it belongs to; the same text where that cannot be.</summary>
    /// <param name="path">Of the value.</param>
    /// <param name="value">As it should stand; put in quotes where it needs them.</param>
    public string With(string path, string value) => WithWritten(path, Quoted(value));

    /// <summary>The text with a list added, or put in the place of one in brackets; the same text where that cannot be.</summary>
    /// <param name="path">Of the list.</param>
    /// <param name="list">In brackets, each item as it should stand.</param>
    public string WithList(string path, string list) => Find(path) is { Value: null, IsGroup: false, IsFlow: true } found
        ? string.Concat(text.AsSpan(0, found.Start), list, text.AsSpan(Closing(found.Start) + 1)) : WithWritten(path, list);

    /// <summary>Where the bracket closes that opens at a place.</summary>
    private int Closing(int at)
    {
        var depth = 0;
        do
            depth += text[at] == '[' ? 1 : text[at] == ']' ? -1 : 0;
        while (depth > 0 && ++at < text.Length);
        return at;
    }

    private string WithWritten(string path, string written)
    {
        if (Find(path) is { } found)
            return found.Value is null ? text : string.Concat(text.AsSpan(0, found.Start), written, text.AsSpan(found.End));
        var (parent, key) = ("", path);
        while (key.LastIndexOf('.') is >= 0 and var at)
        {
            (parent, key) = (key[..at], key[(at + 1)..]);
            if (Find(parent) is { IsGroup: true } group)
                return Added(group, $"{Quoted(key)}: {written}");
            (key, written) = (parent, $"{{ {Quoted(key)}: {written} }}");
        }

        return root is { IsGroup: true } ? Added(root, $"{Quoted(key)}: {written}") : text;
    }

    private string Added(Piece group, string entry)
    {
        if (group.IsFlow)
        {
            var inside = text[..(group.End - 1)].TrimEnd();
            return $"{inside}{(group.Children.Count > 0 ? ", " : " ")}{entry} {text[(group.End - 1)..]}";
        }

        var last = group.Children.Count == 0 ? group.Start : group.Children[^1].Piece.LastContent(text);
        var end = text.IndexOf('\n', Math.Min(last, text.Length));
        var (before, after) = end < 0 ? ($"{text}\n", "") : (text[..(end + 1)], text[(end + 1)..]);
        return $"{before}{new string(' ', group.Column - 1)}{entry}\n{after}";
    }

    private Piece? Find(string path)
    {
        var piece = root;
        foreach (var key in path.Split('.'))
            piece = piece?.Children.FirstOrDefault(child => child.Key == key).Piece;
        // A figure with its reason has its value one step further in.
        return piece is { IsGroup: true } && piece.Children.FirstOrDefault(child => child.Key == "value").Piece is { IsGroup: false } figure
            ? figure : piece;
    }

    private static string Quoted(string value) =>
        value.Length == 0 || value.AsSpan().IndexOfAny("#\"'[]{},&*!|>%@`\n") >= 0 || value.Contains(": ") || value != value.Trim()
            || value[0] is '-' && (value.Length == 1 || value[1] == ' ')
            ? $"\"{value.Replace("\\", "\\\\").Replace("\"", "\\\"").ReplaceLineEndings(" ")}\"" : value;

    /// <summary>A value, list or group with the part of the text it stands in.</summary>
    private sealed record Piece(int Start, int End, int Line, int Column, string? Value, bool IsGroup, bool IsFlow)
    {
        public List<(string Key, Piece Piece)> Children { get; } = [];

        /// <summary>Where its key begins; an item of a list begins there itself.</summary>
        public (int Line, int Column) Key { get; private init; } = (Line, Column);

        /// <summary>The piece that begins at an event, with all in it.</summary>
        public static Piece Read(List<ParsingEvent> events, ref int next, string text)
        {
            var first = events[next++];
            if (first is Scalar scalar)
            {
                var end = (int)scalar.End.Index;
                while (end > scalar.Start.Index && char.IsWhiteSpace(text[end - 1]))
                    end--;
                return At(first, end, YamlText.UnescapeBrackets(scalar.Value), false, false);
            }

            var children = new List<(string, Piece)>();
            while (events[next] is not (MappingEnd or SequenceEnd))
            {
                var begin = ((int)events[next].Start.Line, (int)events[next].Start.Column);
                var key = first is MappingStart ? (events[next++] as Scalar)?.Value ?? "" : $"{children.Count}";
                if (events[next] is not MappingEnd)
                    children.Add((YamlText.UnescapeBrackets(key), Read(events, ref next, text) with { Key = begin }));
            }

            var isFlow = first is MappingStart { Style: MappingStyle.Flow } or SequenceStart { Style: SequenceStyle.Flow };
            var last = events[next++];
            var piece = At(first, isFlow ? AfterBracket(last, text) : (int)last.End.Index, null, first is MappingStart, isFlow);
            piece.Children.AddRange(children);
            return piece;
        }

        /// <summary>Behind the closing bracket: the event may begin or end there.</summary>
        private static int AfterBracket(ParsingEvent last, string text)
        {
            var at = Math.Min((int)last.Start.Index, text.Length - 1);
            while (at < text.Length - 1 && text[at] is not ('}' or ']'))
                at++;
            return at + 1;
        }

        /// <summary>Where the last character of it stands.</summary>
        public int LastContent(string text) => IsFlow || Value is not null || Children.Count == 0
            ? Math.Max(Start, End - 1) : Children[^1].Piece.LastContent(text);

        private static Piece At(ParsingEvent first, int end, string? value, bool isGroup, bool isFlow) => new(
            (int)first.Start.Index, end, (int)first.Start.Line, (int)first.Start.Column, value, isGroup, isFlow);
    }
}
