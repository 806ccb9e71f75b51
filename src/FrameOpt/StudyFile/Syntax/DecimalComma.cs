namespace FrameOpt.StudyFile.Syntax;

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
