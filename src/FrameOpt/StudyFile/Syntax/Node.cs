namespace FrameOpt.StudyFile.Syntax;

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
        Map map => $"{{ {string.Join(", ", map.Entries.Take(ShownItems).Select(entry => $"{entry.Key.Excerpt}: {entry.Value.Excerpt}"))} }}",
        _ => "",
    });

    private static string Shortened(string text)
    {
        var line = text.ReplaceLineEndings(" ");
        return line.Length <= 60 ? line : string.Concat(line.AsSpan(0, 57), "...");
    }
}
