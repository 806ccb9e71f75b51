using System.Text.RegularExpressions;
using YamlDotNet.Core;

namespace FrameOpt.StudyFile.Syntax;

/// <summary>Explains an error of the YAML parser.</summary>
internal static partial class YamlErrorText
{
    public static (int Line, int Column, string What, string Fix) Of(YamlException problem, string text)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        var line = Math.Clamp((int)problem.Start.Line, 1, lines.Length);
        // The parser reports some errors a line late or early, a tab any number of lines early.
        var last = Has(problem.Message, "tab ") ? lines.Length : Math.Min(lines.Length, line + 1);
        for (var near = Math.Max(1, line - 1); near <= last; near++)
        {
            if (TabIndent().Match(lines[near - 1]) is { Success: true } tab)
                return (near, tab.Length, "This line is indented with a tab.", "Indent with spaces only, two for each step.");
        }

        for (var near = line; near >= Math.Max(1, line - 1); near--)
        {
            if (NoSpaceAfterColon().Match(lines[near - 1]) is { Success: true } key)
                return (near, key.Groups[1].Index + 1, $"A space is missing after `{key.Groups[1].Value}`.",
                    $"Write `{key.Groups[1].Value} {key.Groups[2].Value.TrimEnd()}`.");
        }

        var (what, fix) = InWords(problem.Message);
        return (line, Math.Max(1, (int)problem.Start.Column), what, fix);
    }

    private static (string What, string Fix) InWords(string message) => message switch
    {
        _ when Has(message, "quoted scalar") =>
            ("A quotation mark is opened and not closed.", "Close it, or remove it: most text needs none."),
        _ when Has(message, "flow mapping", "'}'") =>
            ("A `{` is not closed, or a comma is missing.", "Write `{ key: value, key: value }`."),
        _ when Has(message, "flow sequence", "']'") => ("A `[` is not closed, or a comma is missing.", "Write `[value, value]`."),
        _ when Has(message, "mapping values are not allowed", "invalid mapping") =>
            ("A second `key:` stands where a value is expected.",
            "Start each key on its own line, as far in as its neighbours, with a colon after it; put text that has a colon in quotes."),
        _ when Has(message, "expected key", "block mapping", "block collection", "'-' indicator", "simple key") =>
            ("This line does not fit the lines above it.",
                "Check that it begins as far in as its neighbours, that it is written `key: value`, and that no bracket is closed twice."),
        _ when Has(message, "entries are not allowed") =>
            ("A list begins after a key on the same line.", "Put each `- ` on its own line, further in than the key."),
        _ when Has(message, "escape") => ("A backslash in double quotes begins a special character.",
            "Write the text without quotes, or in single quotes."),
        _ when Has(message, "cannot start any token", "anchor or alias", "scanning a tag") =>
            ("This character cannot begin a value.", "Put the text in quotes, or remove the character."),
        _ => ("The file is not laid out as it should be here.",
            "Check that lines begin as far in as their neighbours, that brackets and quotes are closed, "
                + "and that keys are written `key: value`."),
    };

    private static bool Has(string message, params ReadOnlySpan<string> words)
    {
        foreach (var word in words)
        {
            if (message.Contains(word, StringComparison.OrdinalIgnoreCase))
                return true;
        }

        return false;
    }

    [GeneratedRegex("^ *\t")]
    private static partial Regex TabIndent();

    [GeneratedRegex("""^\s*(?:- )?([A-Za-z_]+:)([^\s:/][^:]*)$""")]
    private static partial Regex NoSpaceAfterColon();
}
