using System.Globalization;
using System.Text.RegularExpressions;

namespace FrameOpt.StudyFile.Values;

/// <summary>The one grammar of numbers: sign, digits, a decimal point with digits after it, an exponent; then the unit.</summary>
internal static partial class NumberText
{
    private const int MaxLength = 80;

    /// <summary>A number and the unit text after it, or what is wrong with it.</summary>
    /// <param name="Value">The number; NaN when there is an error.</param>
    /// <param name="Digits">The number as typed.</param>
    /// <param name="Unit">What stands after it, not yet looked up.</param>
    /// <param name="Message">What is wrong, or null.</param>
    /// <param name="Fix">How to fix it; empty when only an example helps.</param>
    internal readonly record struct Parsed(double Value, string Digits, string Unit, string? Message = null, string Fix = "");

    public static Parsed Parse(string text)
    {
        var trimmed = text.Trim();
        if (trimmed.Length > MaxLength)
            return new Parsed(double.NaN, "", "", "This is too long for a number.");
        if (Grammar().Match(trimmed) is not { Success: true } match)
            return Problem(trimmed);
        var digits = match.Groups["number"].Value;
        var unit = match.Groups["unit"].Value;
        if (unit.Length > 0 && ".,'’_".Contains(unit[0]))
            return Problem(trimmed);
        var value = double.Parse(digits, NumberStyles.Float, CultureInfo.InvariantCulture);
        return double.IsFinite(value)
            ? new Parsed(value, digits, unit)
            : new Parsed(double.NaN, "", "", "This number is too large.");
    }

    private static Parsed Problem(string text)
    {
        var (what, fix) = Diagnose(text);
        return new Parsed(double.NaN, "", "", what, fix);
    }

    private static (string What, string Fix) Diagnose(string text)
    {
        if (text.StartsWith('−') || text.StartsWith('–'))
            return ("The minus sign is not the plain one of the keyboard.", $"Write -{text[1..].TrimStart()}.");
        if (NonFinite().IsMatch(text))
            return ("This is not a finite number.", "");
        if (Grouped().Match(text) is { Success: true } grouped)
            return Thousands(grouped);
        if (DecimalComma().Match(text) is { Success: true } comma)
            return ("A number takes a decimal point, not a comma.",
                $"Write {comma.Groups[1].Value}.{comma.Groups[2].Value}{comma.Groups[3].Value}.");
        if (PointAtEdge().Match(text) is { Success: true } edge)
            return ("A decimal point needs digits on both sides.",
                $"Write {edge.Groups[1].Value}{Or0(edge.Groups[2].Value)}.{Or0(edge.Groups[3].Value)}{edge.Groups[4].Value}.");
        return ("This is not a number.", "");
    }

    private static (string What, string Fix) Thousands(Match grouped)
    {
        var sign = grouped.Groups["sign"].Value;
        var whole = string.Concat(grouped.Groups["group"].Value.Where(char.IsAsciiDigit));
        var rest = grouped.Groups["rest"].Value;
        var separator = grouped.Groups["separator"].Value;
        var first = grouped.Groups["first"].Value;
        // 1,500 may be meant either way; 1 500 and 1,500,000 only one.
        var either = separator == "," && grouped.Groups["more"].Captures.Count == 1 && !rest.StartsWith('.');
        return either
            ? ("A comma in a number may be meant in two ways.",
                $"Write {sign}{first}{whole}{rest} or {sign}{first}.{whole}{rest}, whichever is meant.")
            : ("Digits are not grouped in a study file.", $"Write {sign}{first}{whole}{rest}.");
    }

    private static string Or0(string digits) => digits.Length > 0 ? digits : "0";

    [GeneratedRegex(@"^(?<number>[+-]?[0-9]+(\.[0-9]+)?([eE][+-]?[0-9]+)?)\s*(?<unit>[^\s0-9].*)?$")]
    private static partial Regex Grammar();

    [GeneratedRegex(@"^[+-]?\.?(nan|inf|infinity|∞)\b", RegexOptions.IgnoreCase)]
    private static partial Regex NonFinite();

    [GeneratedRegex(
        @"^(?<sign>[+-]?)(?<first>[0-9]{1,3})(?<group>(?<more>(?<separator>[,'’_\s.])[0-9]{3})(?<more>\k<separator>[0-9]{3})*)"
        + @"(?<rest>([.][0-9]+)?(?![0-9.,]).*)$")]
    private static partial Regex Grouped();

    [GeneratedRegex(@"^([+-]?[0-9]+),([0-9]+)((?![0-9.,]).*)$")]
    private static partial Regex DecimalComma();

    [GeneratedRegex(@"^([+-]?)([0-9]*)\.([0-9]*)((?![0-9.,]).*)$")]
    private static partial Regex PointAtEdge();
}
