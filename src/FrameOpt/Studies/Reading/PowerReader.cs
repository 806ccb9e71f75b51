using FrameOpt.Model;

namespace FrameOpt.Studies.Reading;

/// <summary>Reads what the engine does in a phase: level, climb 1.8 m/s, full throttle, 1840 rpm or engine off.</summary>
internal static class PowerReader
{
    private const string Choices = "Write `level`, `climb 1.8 m/s`, `full throttle`, `1840 rpm` or `engine off`.";

    public static PhasePower Read(Section phase)
    {
        var text = phase.Text("power");
        var at = phase.At("power");
        switch (text)
        {
            case null or "level":
                return new PhasePower.Level();
            case "full throttle":
                return new PhasePower.FullThrottle();
            case "engine off":
                return new PhasePower.EngineOff();
            case "off" or "Off" or "OFF" or "no" or "No" or "NO" or "false" or "False" or "FALSE":
                phase.Findings.Mistake(at, "This word alone is a yes-or-no value to some programs, not a power.", "Write `engine off`.");
                return new PhasePower.EngineOff();
        }

        if (text.StartsWith("climb ", StringComparison.Ordinal))
            return new PhasePower.Climb(Amount(phase, text["climb ".Length..], "climb 1.8 m/s", Dimension.Speed, Bound.Above0(15, "15 m/s")));
        if (text.Length > 0 && (char.IsAsciiDigit(text[0]) || text[0] is '-' or '+' or '.'))
            return new PhasePower.AtRpm(Amount(phase, text, "1840 rpm", Dimension.Revolutions, Bound.Above0(10000, "10000 rpm")));
        phase.Findings.Mistake(at, "This is not a power the tool knows.", Mend(text));
        return new PhasePower.Level();
    }

    private static double Amount(Section phase, string text, string example, Dimension dimension, Bound bound)
    {
        var at = phase.At("power");
        var amount = new Node.Scalar(text, false, at.Line, at.Column);
        return Quantity.Read(amount, phase.Named("power"), $"power: {example}", dimension, bound, phase.Findings)?.Base ?? double.NaN;
    }

    private static string Mend(string text)
    {
        if (text == "climb")
            return "Give the rate of climb: `climb 1.8 m/s`.";
        if (text == "full")
            return "Did you mean `full throttle`?";
        return NearestName.Of(text, ["level", "full throttle", "engine off"]) is { } near ? $"Did you mean `{near}`?" : Choices;
    }
}
