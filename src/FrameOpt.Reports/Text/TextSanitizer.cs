using System.Text;
using System.Text.RegularExpressions;

namespace FrameOpt.Reports.Text;

/// <summary>Users' text made safe for files: titles, phase names, mass names, reasons.</summary>
public static partial class TextSanitizer
{
    /// <summary>The text without the characters that XML forbids or advises against: control characters, halves of surrogate pairs,
    /// U+FFFE and U+FFFF.</summary>
    public static string Clean(string text)
    {
        if (!text.AsSpan().ContainsAnyExceptInRange(' ', '~'))
            return text;
        var kept = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
                kept.Append(text[i]).Append(text[++i]);
            else if (text[i] is '\t' or '\n' or (>= ' ' and < '\u007F') or (>= '\u00A0' and < '\uFFFE') && !char.IsSurrogate(text[i]))
                kept.Append(text[i]);
        }

        return kept.ToString();
    }

    /// <summary>True for text that a spreadsheet program might take for a formula when it is typed or read from a CSV. The signs of full
    /// width count as their narrow ones, as some programs read them.</summary>
    public static bool StartsLikeFormula(string text) =>
        text is ['=' or '+' or '-' or '@' or '\t' or '\r' or '\n' or '\uFF1D' or '\uFF0B' or '\uFF0D' or '\uFF20', ..];

    /// <summary>The text for a CSV cell, without control characters: an apostrophe stands before what looks like a formula, also after a
    /// character at which another program may separate the cells.</summary>
    public static string ForCsv(string text)
    {
        var clean = AfterSeparator().Replace(Clean(text), "'");
        return StartsLikeFormula(clean) ? "'" + clean : clean;
    }

    [GeneratedRegex("(?<=[;|,\t\r\n])(?=[=+@\uFF1D\uFF0B\uFF20]|[-\uFF0D](?![0-9]))")]
    private static partial Regex AfterSeparator();
}

/// <summary>Users' text shortened for a chart or a header.</summary>
internal static class TextTruncation
{
    /// <summary>The text, cut with an ellipsis where it is longer; never through a surrogate pair.</summary>
    public static string Truncate(string text, int max)
    {
        var clean = TextSanitizer.Clean(text).ReplaceLineEndings(" ");
        return clean.Length <= max ? clean : TextSanitizer.Clean(clean[..(max - 1)]) + "…";
    }
}
