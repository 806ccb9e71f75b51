using System.Globalization;

namespace FrameOpt.StudyFile.Values;

/// <summary>Says a quantity once more in the other unit that people use for it.</summary>
public static class OtherUnit
{
    private static readonly (string Unit, string Other)[] pairs =
    [
        ("kg", "lb"), ("lb", "kg"), ("mm", "in"), ("cm", "in"), ("m", "in"), ("in", "mm"), ("ft", "m"), ("kgf", "N"), ("lbf", "N"),
        ("N", "kgf"),
        ("m/s", "km/h"), ("km/h", "m/s"), ("kt", "m/s"), ("kW", "hp"), ("hp", "kW"),
    ];

    /// <summary>"167.6 lb" for "76 kg", to four digits; empty where there is no other unit.</summary>
    /// <param name="written">A number with its unit.</param>
    public static string Of(string written)
    {
        var parsed = NumberText.Parse(written);
        if (Array.Find(pairs, pair => pair.Unit == parsed.Unit) is not { Unit: { } unit, Other: var other })
            return "";
        var dimension = Dimension.OfUnit(unit);
        var value = dimension.FindUnit(unit)!.ToBase(parsed.Value) / dimension.FindUnit(other)!.ToBase(1);
        return string.Create(CultureInfo.InvariantCulture, $"{value:G4} {other}");
    }
}
