using System.Globalization;
using System.Text.RegularExpressions;
using FrameOpt.Analysis;

namespace FrameOpt.Forms;

/// <summary>What is wanted of a response: "yield more 60..80".</summary>
/// <param name="Response">Index among those of the table.</param>
/// <param name="Desirability">Of its values.</param>
public sealed record GoalText(int Response, Desirability Desirability)
{
    /// <summary>How goals are written.</summary>
    public const string HowTo = "Write it as in 'yield more 60..80' (useless at 60, as good as can be used at 80), 'drag less 20..30' "
        + "(as good as can be used at 20, useless at 30) or 'stretch near 400..500..600'; rising numbers without units.";

    /// <summary>A goal, or null with what is wrong with it.</summary>
    public static GoalText? Read(string text, IReadOnlyList<MeasuredResponse> responses, out string wrong)
    {
        wrong = "";
        var match = Regex.Match(text, @"^\s*(?<name>.+?)\s+(?<way>more|less|near)\s+(?<ends>\S+)\s*$");
        if (!match.Success)
        {
            wrong = "More, less or near, and numbers after it, are missing.";
            return null;
        }

        var named = responses.ToList().FindIndex(one => one.Measured.Name.Equals(match.Groups["name"].Value,
            StringComparison.OrdinalIgnoreCase));
        if (named < 0)
        {
            wrong = $"No response has this name; they are {string.Join(", ", responses.Select(response => response.Measured.Name))}.";
            return null;
        }

        var way = match.Groups["way"].Value;
        if (RangeText.Numbers(match.Groups["ends"].Value) is not { } ends)
        {
            wrong = "Its numbers do not rise, or are not numbers with two points between them.";
            return null;
        }

        GoalText? goal = (way, ends) switch
        {
            ("more", [var low, var high]) => new GoalText(named, Desirability.Maximise(low, high)),
            ("less", [var low, var high]) => new GoalText(named, Desirability.Minimise(low, high)),
            ("near", [var low, var target, var high]) => new GoalText(named, Desirability.Target(low, target, high)),
            _ => null,
        };
        wrong = goal is null ? $"A goal with {way} takes {(way == "near" ? "three numbers" : "two numbers")}, not {ends.Length}." : "";
        return goal;
    }
}

/// <summary>The two ends of a factor: "time 80..90".</summary>
/// <param name="Factor">Of the table.</param>
/// <param name="Low">In its unit.</param>
/// <param name="High">Above it.</param>
internal sealed record RangeText(RunColumn Factor, double Low, double High)
{
    /// <summary>A range, or null when it is of none of the factors or not written so.</summary>
    public static RangeText? Read(string text, IReadOnlyList<RunColumn> factors)
    {
        var match = Regex.Match(text, @"^\s*(?<name>.+?)\s+(?<ends>\S+)\s*$");
        return match.Success && Numbers(match.Groups["ends"].Value) is [var low, var high]
            && factors.FirstOrDefault(one => one.Name.Equals(match.Groups["name"].Value, StringComparison.OrdinalIgnoreCase)) is { } factor
            ? new RangeText(factor, low, high) : null;
    }

    /// <summary>Rising numbers with two points between them; null for anything else.</summary>
    internal static double[]? Numbers(string text)
    {
        var numbers = new List<double>();
        foreach (var part in text.Split(".."))
        {
            if (!double.TryParse(part, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || !double.IsFinite(number)
                || numbers.Count > 0 && number <= numbers[^1])
                return null;
            numbers.Add(number);
        }

        return [.. numbers];
    }
}
