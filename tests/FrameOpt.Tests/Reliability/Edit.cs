using System.Text;
using System.Text.RegularExpressions;

namespace FrameOpt.Tests.Reliability;

/// <summary>One small damage to a file. Text is taken as one character a byte, so that damage may also break its encoding.</summary>
/// <param name="Kind">Which damage; any number.</param>
/// <param name="At">Where; any number.</param>
/// <param name="With">With what; any number.</param>
internal sealed partial record Edit(uint Kind, uint At, uint With)
{
    private const int LargestPower = 320;

    /// <summary>What has broken readers before: numbers at the ends, signs of YAML and CSV, controls, other scripts, long words.</summary>
    private static readonly string[] dangerous =
    [
        .. new[]
        {
            "1e308", "-1e308", "1e309", "1e-320", "4.9e-324", "9223372036854775808", "2147483648", "-1", "0", "-0", "0.0", "1e-9", "1e9",
            "1e30", "00012", "0x7f", "1_000", "1,5", "1.5.5", "+", "-", ".", "NaN", "nan", ".nan", ".inf", "-.inf", "Infinity", "inf", "∞",
            "1e",
            "null", "~", "true", "no", "yes", "off", "", " ", "''", "\"", "'", "\"\"", "{", "}", "[", "]", "{}", "[]", "[[]]", "[[[[[[",
            ":", "- ", "-", "?", "|", ">", "&a", "*a", "!!int", "!", "#", "%", "@", "`", ",", ";", ",,,,", ";;", "\t", "\n", "\r", "\r\n",
            "---", "...", "<<: *a", "\u0000", "\u0001", "\u0007", "\u001b[31m", "\u007f", "\u0085", "\u2028", "\ufeff", "\u200f", "\u202e",
            "é",
            "Ω", "µ", "−", "𝛼", "\ud83d\ude80", "ﬀ", "１２", "٣", "kg", "mm", "deg", "N·m", "kgf", "lb", "%", "0 kg",
            "1e-300 mm", "-5 mm",
            "1e308 kgf", "1e-160 rpm", "1e300 rpm", "../../etc/passwd", "/dev/null", "=1+1", "<b>", "${x}", "{0}", "[bold]", "[/]",
            "values", "from", "step", "response", "cruise", "residual_rms", "residual[cruise]", "residual[", "level", "engine off",
            "full throttle", "climb 0 m/s", "fuel", "variants", "line", "plan", "search", "format: 2", "1e5", "1000000", "\"a\": 1",
            "\\u0000",
            "\\ud800", "null,null",
        }.Select(Bytes),
        new string('9', 400), new string('a', 5000), new string('[', 200), new string('{', 60), new string(',', 3000),
        new string(' ', 2000),
        string.Concat(Enumerable.Repeat("a: {", 40)), string.Concat(Enumerable.Repeat("\n- ", 500)),
    ];

    /// <summary>The text with the damage done; unchanged where it does not fit.</summary>
    public string Apply(string text)
    {
        var at = text.Length == 0 ? 0 : (int)(At % (uint)text.Length);
        switch (Kind % 18)
        {
            case 0: return text.Length == 0 ? text : Put(text, at, 1, $"{(char)(text[at] ^ (1 << (int)(With % 8)))}");
            case 1: return text.Length == 0 ? text : Put(text, at, 1, $"{(char)(With % 256)}");
            case 2: return text.Length == 0 ? text : Put(text, at, 1 + (int)(With % 8), "");
            case 3: return Put(text, at, 0, $"{(char)(With % 256)}");
            case 4: return Lines(text, (lines, i, _) => lines.RemoveAt(i));
            case 5: return Lines(text, (lines, i, j) => lines.Insert(j, lines[i]));
            case 6: return Lines(text, (lines, i, j) => (lines[i], lines[j]) = (lines[j], lines[i]));
            case 7: return Token(text, Tokens(), _ => "");
            case 8: return Token(text, Tokens(), token => $"{token} {token}");
            case 9 or 10 or 11: return Token(text, Tokens(), _ => dangerous[With % dangerous.Length]);
            case 12: return Put(text, at, 0, dangerous[With % dangerous.Length]);
            case 13 or 14: return Token(text, Numbers(), Scaled);
            case 15: return Token(text, Tokens(), _ => From(Tokens(), text, With)?.Value ?? "");
            case 16: return text[..at];
            default: return Repeated(text, at);
        }
    }

    private static string Bytes(string text) => Encoding.Latin1.GetString(Encoding.UTF8.GetBytes(text));

    private static string Put(string text, int at, int length, string with) =>
        string.Concat(text.AsSpan(0, at), with, text.AsSpan(Math.Min(text.Length, at + length)));

    private string Lines(string text, Action<List<string>, int, int> change)
    {
        var lines = text.Split('\n').ToList();
        change(lines, (int)(At % lines.Count), (int)(With % lines.Count));
        return string.Join('\n', lines);
    }

    private string Token(string text, Regex words, Func<string, string> change)
    {
        var one = From(words, text, At);
        return one is null ? text : Put(text, one.Index, one.Length, change(one.Value));
    }

    /// <summary>The next word after a place anywhere in the text, or the first one.</summary>
    private static Match? From(Regex words, string text, uint at)
    {
        var next = text.Length == 0 ? Match.Empty : words.Match(text, (int)(at % (uint)text.Length));
        next = next.Success ? next : words.Match(text);
        return next.Success ? next : null;
    }

    /// <summary>The number times a power of ten, small powers as often as large ones.</summary>
    private string Scaled(string number) => (With % 4) switch
    {
        0 => $"{number}e{(int)(With / 4 % (2 * LargestPower)) - LargestPower}",
        1 => $"-{number}",
        _ => $"{number}e{(int)(With / 4 % 13) - 6}",
    };

    private string Repeated(string text, int at)
    {
        var length = Math.Min(text.Length - at, 1 + (int)(With % 40));
        return Put(text, at, 0, string.Concat(Enumerable.Repeat(text.Substring(at, length), (int)(With / 40 % 300))));
    }

    [GeneratedRegex("""[^\s,:;{}\[\]"'|]+""")]
    private static partial Regex Tokens();

    [GeneratedRegex("""(?<![\w.])-?[0-9]+(\.[0-9]+)?""")]
    private static partial Regex Numbers();
}
