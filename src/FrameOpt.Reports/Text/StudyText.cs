using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Studies;
using static System.FormattableString;

namespace FrameOpt.Reports.Text;

/// <summary>The settings of a study in words.</summary>
public static class StudyText
{
    private const int MaxLabelLength = 40;

    /// <summary>"minimise" or "maximise".</summary>
    public static string Goal(StudyObjective objective) => objective.Maximise ? "maximise" : "minimise";

    /// <summary>A response as people say it: "largest effort in any settled phase", "residual torque in climb, either way".</summary>
    public static string Title(Response response, bool magnitude) =>
        response.Entry.Title + (response is Response.OfPhase phase ? $" in {phase.PhaseName}" : "") + (magnitude ? ", either way" : "");

    /// <summary>The response's name in a study file, between bars where its magnitude counts.</summary>
    public static string Name(Response response, bool magnitude) => magnitude ? $"|{response.Name}|" : response.Name;

    /// <summary>Name and unit of a response: "thrust [N]".</summary>
    public static string WithUnit(ResponseEntry entry) => entry.Unit.Length == 0 ? entry.Name : $"{entry.Name} [{entry.Unit}]";

    /// <summary>Name and unit of an objective, short enough for an axis.</summary>
    public static string AxisLabel(StudyObjective objective)
    {
        var name = TextTruncation.Truncate(Title(objective.Response, objective.Magnitude), MaxLabelLength);
        return objective.Response.Unit.Length == 0 ? name : $"{name} [{objective.Response.Unit}]";
    }

    /// <summary>As a study file says it: "twist_margin_worst at least 3".</summary>
    public static string Limit(StudyLimit limit) =>
        $"{limit.Response.Name} {Range(limit)}{(limit.Magnitude ? ", either way" : "")}";

    /// <summary>As people say it: "smallest twist margin in any phase at least 3".</summary>
    public static string LimitTitle(StudyLimit limit) =>
        $"{Title(limit.Response, false)} {Range(limit)}{(limit.Magnitude ? ", either way" : "")}";

    /// <summary>A text as the beginning of a sentence.</summary>
    /// <param name="text">Not empty.</param>
    public static string Capitalised(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>A case of the wing, short enough for a column's header.</summary>
    public static string Name(WingCase wingCase) => wingCase switch
    {
        WingCase.LowLeverage => "low leverage",
        WingCase.AsGiven => "as in the study",
        WingCase.HighLeverage => "high leverage",
        WingCase.SoftCoupling => "soft coupling",
        WingCase.StiffCoupling => "stiff coupling",
        _ => throw new ArgumentOutOfRangeException(nameof(wingCase)),
    };

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

    /// <summary>How the designs are chosen: "exhaustive", or the method with its settings and stop rules.</summary>
    public static string Search(SearchSetting setting)
    {
        if (setting is not SearchSetting.Evolutionary search)
            return "exhaustive: every design of the grid";
        List<string> words = [$"{Method(search.Method)}, population {NumberFormat.Count(search.Population)}, seed {search.Seed}",
            $"at most {NumberFormat.Count(search.Stop.Evaluations, "design")}"];
        if (search.Stop.Time is { } time)
            words.Add($"at most {PlainNumber.Text(time.TotalSeconds)} s");
        if (search.Stop.Stall is { } stall)
            words.Add($"until the hypervolume of the front grows by less than {PlainNumber.Text(Math.Round(100 * stall.Growth, 9))} % "
                + $"over {NumberFormat.Count(stall.Evaluations, "design")}");
        if (search.Stop.Target.Count > 0)
            words.Add("until the target is reached");
        if (search.Start is { Count: > 0 } start)
            words.Add($"started from {NumberFormat.Count(start.Count, "design")} of {start.Description}");
        if (search.LocalSearch)
            words.Add("the last tenth of the designs is a local search that polishes the front");
        return string.Join("; ", words);
    }

    /// <summary>"NSGA-II" or "NSGA-III".</summary>
    public static string Method(SearchMethod method) => method == SearchMethod.NsgaII ? "NSGA-II" : "NSGA-III";

    /// <summary>The set of designs that the evaluated designs come from.</summary>
    public static string DesignSpace(Study study) => (study.Search, study.GridSize) switch
    {
        (SearchSetting.Evolutionary search, { } designs) =>
            $"chosen by {Method(search.Method)} from a grid of {NumberFormat.Count(designs)}",
        (SearchSetting.Evolutionary search, null) => $"chosen by {Method(search.Method)} from a space too large to count",
        (_, var designs) => $"of a grid of {NumberFormat.Count(designs!.Value)}",
    };

    /// <summary>"↺ counter-clockwise" or "↻ clockwise", seen from behind.</summary>
    public static string RotationText(Rotation rotation) =>
        $"{(rotation == Rotation.CounterClockwise ? '↺' : '↻')} {RotationName(rotation)}";

    /// <summary>As a study file writes it.</summary>
    public static string RotationName(Rotation rotation) =>
        rotation == Rotation.CounterClockwise ? "counter-clockwise" : "clockwise";

    private static string Range(StudyLimit limit)
    {
        var parts = new List<string>();
        if (limit.AtLeast is { } least)
            parts.Add($"at least {Bound(limit, least)}");
        if (limit.AtMost is { } most)
            parts.Add($"at most {Bound(limit, most)}");
        return string.Join(" and ", parts);
    }

    private static string Bound(StudyLimit limit, double value) => limit.Response.Entry is CaseQuantity { IsShare: true }
        ? NumberFormat.Share(value) : Invariant($"{value:0.######} {limit.Response.Unit}").TrimEnd();
}
