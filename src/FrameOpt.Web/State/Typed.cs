using System.Globalization;
using System.Text.RegularExpressions;

namespace FrameOpt.Web.State;

/// <summary>What somebody types into a box: brought to the study file's form, and said back in the other usual unit.</summary>
public static partial class Typed
{
    /// <summary>Units that people use for the same thing, with how many of the first one is.</summary>
    private static readonly (string Unit, string Other, double Factor)[] pairs =
    [
        ("kg", "lb", 2.2046226), ("mm", "in", 1 / 25.4), ("cm", "in", 1 / 2.54), ("m", "in", 1 / 0.0254), ("kgf", "N", 9.80665),
        ("m/s", "km/h", 3.6), ("kW", "hp", 1 / 0.7457), ("lb", "kg", 0.45359237), ("in", "mm", 25.4), ("ft", "m", 0.3048),
        ("N", "kgf", 1 / 9.80665), ("lbf", "N", 4.4482216), ("km/h", "m/s", 1 / 3.6), ("kt", "m/s", 0.514444), ("hp", "kW", 0.7457),
    ];

    /// <summary>"76,5" in a box of kg is "76.5 kg". A comma that may be meant in two ways stays, so that the finding says so.</summary>
    /// <param name="typed">As typed.</param>
    /// <param name="present">What stood there, for its unit.</param>
    /// <param name="unit">Where nothing stood there.</param>
    public static string Of(string typed, string? present, string unit)
    {
        var text = typed.Trim().Replace('−', '-').Replace('–', '-');
        if (Comma().Match(text) is { Success: true } comma)
            text = $"{comma.Groups[1].Value}.{comma.Groups[2].Value}{comma.Groups[3].Value}";
        if (!Bare().IsMatch(text))
            return text;
        var own = present is not null && Number().Match(present) is { Success: true } match ? match.Groups[2].Value : unit;
        return $"{text} {own}".TrimEnd();
    }

    /// <summary>The same in the other usual unit: "168.7 lb"; empty where there is none.</summary>
    public static string Echo(string? value)
    {
        if (value is null || Number().Match(value) is not { Success: true } match)
            return "";
        var pair = Array.Find(pairs, one => one.Unit == match.Groups[2].Value);
        return pair.Unit is null ? "" : string.Create(CultureInfo.InvariantCulture,
            $"{double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) * pair.Factor:G4} {pair.Other}");
    }

    [GeneratedRegex(@"^([+-]?\d+),(\d{1,2}|\d{4,})(\s*[^\d,.]*)$")]
    private static partial Regex Comma();

    [GeneratedRegex(@"^[+-]?\d+(\.\d+)?$")]
    private static partial Regex Bare();

    [GeneratedRegex(@"^\s*([+-]?\d+(?:\.\d+)?)\s*(\S.*?)?\s*$")]
    private static partial Regex Number();
}
