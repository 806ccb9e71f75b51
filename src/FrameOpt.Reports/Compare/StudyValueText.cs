using System.Globalization;
using System.Text.Json;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Compare;

/// <summary>One value of a study with its unit, and its side in words.</summary>
internal static class StudyValueText
{
    /// <summary>Lengths that people give in metres; the others are shown in millimetres.</summary>
    private static readonly string[] keysInMetres = ["diameter", "span", "lines", "line_spread", "altitude"];

    private static readonly Dictionary<string, (string Plus, string Minus)> sideText = new()
    {
        ["forward"] = ("forward of the datum", "behind the datum"),
        ["hang_line_forward"] = ("forward of the datum", "behind the datum"),
        ["hub_forward"] = ("forward of the datum", "behind the datum"),
        ["right"] = ("right of the datum", "left of the datum"),
        ["hub_right"] = ("right of the datum", "left of the datum"),
        ["hang_height_difference"] = ("higher on the right", "higher on the left"),
        ["strap_difference"] = ("longer on the right", "longer on the left"),
        ["lateral_offset"] = ("to the pilot's right", "to the pilot's left"),
        ["thrust_line_angle"] = ("to the pilot's right", "to the pilot's left"),
        ["up"] = ("above the datum", "below the datum"),
        ["hub_up"] = ("above the datum", "below the datum"),
        ["suspension_height"] = ("above the datum", "below the datum"),
        ["tilt"] = ("upward", "downward"),
        ["thrust_line_tilt"] = ("upward", "downward"),
        ["temperature_offset"] = ("warmer than the standard day", "colder than the standard day"),
        ["pitch_rate"] = ("nose up", "nose down"),
    };

    /// <param name="key">Key of the value in run.json.</param>
    /// <param name="part">A plain value, {value, unit}, or the levels of a factor.</param>
    /// <param name="unit">The unit of a plain number.</param>
    public static string Of(string key, RunJsonElement part, string unit) => part.Element.ValueKind switch
    {
        JsonValueKind.Object when part.Has("levels") => Levels(part),
        JsonValueKind.Object => Number(key, part["value"].Number, part.Has("unit") ? part["unit"].Text : ""),
        JsonValueKind.Number => key == "fraction" ? $"fraction {Plain(part.Number)}"
            : Number(key, part.Number, key is "at_least" or "at_most" or "resolution" ? unit : ""),
        JsonValueKind.String => part.Text.Length > 0 ? part.Text : "none",
        JsonValueKind.True => "yes",
        JsonValueKind.False => "no",
        _ => "none",
    };

    private static string Number(string key, double value, string unit)
    {
        var (shown, symbol) = unit switch
        {
            "m" when !keysInMetres.Contains(key) => (1000 * value, "mm"),
            "rad" => (value * 180 / Math.PI, "deg"),
            _ => (value, unit),
        };
        var side = sideText.TryGetValue(key, out var words) && value != 0 ? value > 0 ? words.Plus : words.Minus : "";
        return string.Join(' ', ((string[])[Plain(side.Length > 0 ? Math.Abs(shown) : shown), symbol, side])
            .Where(word => word.Length > 0));
    }

    private static string Levels(RunJsonElement factor)
    {
        var (levels, unit) = (factor["levels"].Items, factor["unit"].Text);
        string At(int index) => $"{Plain(levels[index].Number)} {unit}";
        return levels.Count switch
        {
            0 => "none",
            1 => $"fixed at {At(0)}",
            var count when !factor["any_value_between"].Boolean =>
                $"{count.ToString("N0", CultureInfo.InvariantCulture)} levels from {At(0)} to {At(count - 1)}",
            var count => $"any value from {At(0)} to {At(count - 1)}",
        };
    }

    private static string Plain(double value) => PlainNumber.Text(Math.Round(value, 9));
}
