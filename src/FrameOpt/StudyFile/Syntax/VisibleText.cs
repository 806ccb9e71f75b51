using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace FrameOpt.StudyFile.Syntax;

/// <summary>Text of a user or of a file made fit to be shown: nothing in it commands the terminal, hides or turns the reading direction,
/// and a quotation stays short.</summary>
public static partial class VisibleText
{
    /// <summary>Longest quotation of a user's text in a message, in characters.</summary>
    public const int MaxQuoted = 80;

    private const int MaxPath = 200;

    /// <summary>Largest part of a message, in characters: beyond it only a list of names is cut.</summary>
    private const int MaxSentence = 2_000;

    /// <summary>The text with control characters (of 7 and 8 bits), marks of reading direction and other invisible characters written as
    /// their numbers, such as \u001B. Tabs stay, and so do the joiners that some scripts are written with.</summary>
    public static string Of(string text)
    {
        if (!NeedsWork(text))
            return text;
        var shown = new StringBuilder(text.Length + 16);
        for (var i = 0; i < text.Length; i++)
        {
            if (!Rune.TryGetRuneAt(text, i, out var rune))
                shown.Append(CultureInfo.InvariantCulture, $@"\u{(int)text[i]:X4}");
            else if (IsInvisible(rune))
                shown.Append(CultureInfo.InvariantCulture, $@"\u{rune.Value:X4}");
            else
                shown.Append(rune);
            i += rune.Utf16SequenceLength == 2 ? 1 : 0;
        }

        return shown.ToString();
    }

    /// <summary>The text in one line, visible, and cut to what a message quotes.</summary>
    public static string Quoted(string text)
    {
        var line = (text.Length > MaxQuoted ? text[..(MaxQuoted + 1)] : text).ReplaceLineEndings(" ").Replace('\t', ' ');
        return line.Length <= MaxQuoted ? Of(line) : string.Concat(Of(line[..(MaxQuoted - 3)]), "...");
    }

    /// <summary>A path in one line, visible; of a very long one the end.</summary>
    public static string Path(string path) =>
        Of((path.Length <= MaxPath ? path : string.Concat("...", path.AsSpan(path.Length - MaxPath + 3))).ReplaceLineEndings(" "));

    /// <summary>A sentence of a message: in one line, visible, with quotations in backticks and endless words cut; paths stay
    /// whole.</summary>
    public static string Sentence(string text)
    {
        if (text.Length > MaxQuoted)
            text = LongWord().Replace(LongQuotation().Replace(text, match => $"`{Quoted(match.Groups[1].Value)}`"),
                match => Quoted(match.Value));
        text = text.Length > MaxSentence ? string.Concat(text.AsSpan(0, MaxSentence), "...") : text;
        return Of(text.ReplaceLineEndings(" "));
    }

    private static bool NeedsWork(string text)
    {
        foreach (var letter in text)
        {
            if (letter is < ' ' or (>= '\u007F' and < '\u00A0') or '\u00AD' || letter >= '\u0600')
                return true;
        }

        return false;
    }

    private static bool IsInvisible(Rune rune) => rune.Value is not ('\t' or '\u200C' or '\u200D')
        && Rune.GetUnicodeCategory(rune) is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator
            or UnicodeCategory.ParagraphSeparator;

    [GeneratedRegex("`([^`]{81,})`")]
    private static partial Regex LongQuotation();

    [GeneratedRegex(@"(?<!\S)[^\s`/][^\s`]{80,}")]
    private static partial Regex LongWord();
}
