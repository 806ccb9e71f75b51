using System.Text.RegularExpressions;

namespace FrameOpt.Web.State;

/// <summary>What somebody types into a box, brought to the study file's form.</summary>
public static partial class Typed
{
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

    [GeneratedRegex(@"^([+-]?\d+),(\d{1,2}|\d{4,})(\s*[^\d,.]*)$")]
    private static partial Regex Comma();

    [GeneratedRegex(@"^[+-]?\d+(\.\d+)?$")]
    private static partial Regex Bare();

    [GeneratedRegex(@"^\s*([+-]?\d+(?:\.\d+)?)\s*(\S.*?)?\s*$")]
    private static partial Regex Number();
}
