using FrameOpt.Model;
using FrameOpt.Studies;

namespace FrameOpt.Reports;

/// <summary>The settings of a study in words.</summary>
public static class StudyWords
{
    /// <summary>"effort_worst at most 0.6".</summary>
    public static string Limit(StudyLimit limit)
    {
        var bounds = new List<string>();
        if (limit.AtLeast is { } least)
            bounds.Add($"at least {Bound(least, limit.Response.Unit)}");
        if (limit.AtMost is { } most)
            bounds.Add($"at most {Bound(most, limit.Response.Unit)}");
        return $"{Name(limit.Response, limit.Magnitude)} {string.Join(" and ", bounds)}";
    }

    /// <summary>"minimise" or "maximise".</summary>
    public static string Goal(StudyObjective objective) => objective.Maximise ? "maximise" : "minimise";

    /// <summary>The response's name, between bars where its size counts whatever the sign.</summary>
    public static string Name(Response response, bool magnitude) => magnitude ? $"|{response.Name}|" : response.Name;

    /// <summary>"distance to ideal" or "TOPSIS".</summary>
    public static string Method(RankingMethod method) => method == RankingMethod.Topsis ? "TOPSIS" : "distance to ideal";

    /// <summary>What the engine does in a phase, as a study file writes it.</summary>
    public static string Power(PhasePower power) => power switch
    {
        PhasePower.Level => "level",
        PhasePower.Climb climb => $"climb {PlainNumber.Text(climb.MetresPerSecond)} m/s",
        PhasePower.FullThrottle => "full throttle",
        PhasePower.AtRpm at => $"{PlainNumber.Text(at.PropellerRpm)} rpm",
        PhasePower.EngineOff => "engine off",
        _ => throw new ArgumentOutOfRangeException(nameof(power)),
    };

    /// <summary>How fast a phase is flown.</summary>
    public static string Speed(FlightSpeed speed) => speed switch
    {
        FlightSpeed.AtFraction { Fraction: 0 } => "trim",
        FlightSpeed.AtFraction { Fraction: 1 } => "fully accelerated",
        FlightSpeed.AtFraction at => $"fraction {PlainNumber.Text(at.Fraction)}",
        FlightSpeed.AtAirspeed at => $"{PlainNumber.Text(at.MetresPerSecond)} m/s",
        _ => throw new ArgumentOutOfRangeException(nameof(speed)),
    };

    /// <summary>"↺ counter-clockwise" or "↻ clockwise", seen from behind.</summary>
    public static string Turns(Rotation rotation) => rotation == Rotation.CounterClockwise ? "↺ counter-clockwise" : "↻ clockwise";

    private static string Bound(double value, string unit) => unit.Length == 0 ? PlainNumber.Text(value) : $"{PlainNumber.Text(value)} {unit}";
}
