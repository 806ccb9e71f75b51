using FrameOpt.Model;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Reads the phases of the mission and lists every default they take.</summary>
internal static class MissionReader
{
    /// <summary>Largest number of phases; each is computed for every design.</summary>
    public const int MaxPhases = 100;

    private static readonly (string Key, string What, string Value, string Source)[] defaults =
    [
        ("altitude", "altitude", "0 m", "assumption: sea level; range 0 to 2000 m"),
        ("temperature_offset", "temperature offset", "0 K", "assumption: a standard day (ISO 2533:1975); range -20 to 20 K"),
        ("load_factor", "load factor", "1", "assumption: steady straight flight; range 1 to 2"),
        ("carried", "share of the weight carried by the risers", "1", "assumption: in full flight; range 0.7 to 1 while running"),
        ("pitch_rate", "pitch rate", "0 rad/s", "assumption: steady attitude; range 0 to 0.5 rad/s"),
    ];

    /// <summary>The phases, a power-off one among them; empty after an error that leaves none.</summary>
    public static IReadOnlyList<Phase> Read(Section study)
    {
        var entries = study.Entries("mission");
        if (study.Value("mission") is Node.Map && entries.Count == 0)
            study.DiagnosticBag.Add(study.KeyAt("mission"), "The mission has no phase.",
                "Name one, and write under it its weight and its power.");
        if (entries.Count > MaxPhases)
        {
            study.DiagnosticBag.Add(study.KeyAt("mission"), $"The mission has {entries.Count} phases; {MaxPhases} is the most.",
                "Put phases that are flown alike together and add their weights.");
            return [];
        }

        CheckNames(entries, study.DiagnosticBag);
        var sections = entries.Select(entry => Open(entry, study.DiagnosticBag)).OfType<Section>().ToList();
        List<Phase> phases = [.. sections.Select(ReadPhase)];
        if (phases.Count == 0)
            return [];
        if (phases.All(phase => phase.Weight == 0))
            study.DiagnosticBag.Add(study.KeyAt("mission"), "Every phase of the mission has weight 0.",
                "Give each phase you fly its share of the flying time as its weight.");
        ListDefaults(sections);
        ListUnsettled(sections, phases);
        if (!phases.Any(phase => phase.Power is PhasePower.EngineOff))
            phases.Add(AddedGlide(phases, entries, study.DiagnosticBag));
        if (!phases.Any(phase => phase.IsSettled))
            study.DiagnosticBag.Add(study.KeyAt("mission"), "No phase of the mission is settled: there is no effort to judge a design by.",
                "Write `settled: false` only for the first seconds of a launch.");
        return phases;
    }

    private static void CheckNames(IReadOnlyList<Node.Entry> entries, DiagnosticBag diagnostics)
    {
        foreach (var (index, entry) in entries.Index())
        {
            if (entries.Take(index).FirstOrDefault(other => NameRules.AreAlike(other.Key.Text, entry.Key.Text)) is { } first)
                diagnostics.Add(entry.Key, $"Two phases have this name; the first stands in line {first.Key.Line}.", "Give each its own.");
        }
    }

    private static Section? Open(Node.Entry entry, DiagnosticBag diagnostics)
    {
        var name = entry.Key.Text;
        if (name.Length == 0 || name.Contains('[') || name.Contains(']'))
            diagnostics.Add(entry.Key, "A phase's name is a word or two without brackets.",
                name.Length == 0 ? "Give it a name." : "Leave the brackets out.");
        else if (NameRules.Problem("phase", name) is var (what, fix))
            diagnostics.Add(entry.Key, what, fix);
        return Section.Open(entry.Value, entry.Key, $"mission.{name}", StudyKeys.Phase, diagnostics);
    }

    private static Phase ReadPhase(Section phase) => new(
        phase.Path["mission.".Length..],
        phase.Number("weight", Dimension.Share, AllowedRange.Weight),
        ReadSpeed(phase),
        PowerReader.Read(phase),
        phase.OptionalNumber("altitude", Dimension.Length, AllowedRange.Between(-500, 9000, "-500 m", "9000 m")) ?? 0,
        phase.OptionalNumber("temperature_offset", Dimension.TemperatureDifference, AllowedRange.Within(60, "60 K")) ?? 0,
        phase.OptionalNumber("load_factor", Dimension.Number, AllowedRange.PositiveUpTo(10, "10")) ?? 1,
        phase.OptionalNumber("carried", Dimension.Share, AllowedRange.PositiveUpTo(1, "1 (100 %)")) ?? 1,
        phase.OptionalNumber("pitch_rate", Dimension.AngularRate, AllowedRange.Within(5, "5 rad/s")) ?? 0,
        phase.Has("settled") ? phase.Boolean("settled") : null);

    private static FlightSpeed ReadSpeed(Section phase)
    {
        var fraction = phase.OptionalNumber("fraction", Dimension.Share, AllowedRange.NonNegativeUpTo(1, "1 (fully accelerated)"));
        var airspeed = phase.OptionalNumber("airspeed", Dimension.Speed, AllowedRange.PositiveUpTo(50, "50 m/s"));
        if (fraction is not null && airspeed is not null)
            phase.DiagnosticBag.Add(phase.At("airspeed"), $"{phase.Path} gives both a fraction and an airspeed.", "Keep one of the two.");
        return airspeed is { } speed ? new FlightSpeed.AtAirspeed(speed) : new FlightSpeed.AtFraction(fraction ?? 0);
    }

    private static void ListDefaults(List<Section> phases)
    {
        ListDefault(phases, phase => phase.Has("fraction") || phase.Has("airspeed"), "airspeed", "trim (fraction 0)",
            "assumption: hands up, not accelerated; range fraction 0 to 1");
        foreach (var (key, what, value, source) in defaults)
            ListDefault(phases, phase => phase.Has(key), what, value, source);
    }

    /// <summary>Lists the phases taken as settled, and as not, without the study saying so.</summary>
    private static void ListUnsettled(List<Section> sections, List<Phase> phases)
    {
        bool Differs(Section section, bool settled) =>
            section.Has("settled") || phases[sections.IndexOf(section)].IsSettled != settled;
        ListDefault(sections, section => Differs(section, false), "settled", "no: the wing is still overhead",
            "assumption: full throttle is the launch, and the sway of the wing takes about 7 s (own simulation); else `settled: true`");
        ListDefault(sections, section => Differs(section, true), "settled", "yes: a steady state",
            "assumption: the phase lasts ten seconds or more");
    }

    private static void ListDefault(List<Section> phases, Func<Section, bool> given, string what, string value, string source)
    {
        string[] taken = [.. phases.Where(phase => !given(phase)).Select(phase => phase.Path["mission.".Length..])];
        if (taken.Length > 0)
            phases[0].DiagnosticBag.AddAssumption($"{what} in {(taken.Length == phases.Count ? "every phase" : string.Join(", ", taken))}",
                value, source);
    }

    private static Phase AddedGlide(List<Phase> phases, IReadOnlyList<Node.Entry> entries, DiagnosticBag diagnostics)
    {
        const string glide = "glide";
        const string longer = "glide, engine off";
        var heaviest = phases.MaxBy(phase => phase.Weight)!;
        var name = phases.Any(phase => NameRules.AreAlike(phase.Name, glide)) ? longer : glide;
        if (entries.FirstOrDefault(entry => name == longer && NameRules.AreAlike(entry.Key.Text, longer)) is { } taken)
            diagnostics.Add(taken.Key, "No phase of the mission has the engine off, and the name of the glide that is added is taken.",
                "Write `power: engine off` in this phase, or give it another name.");
        diagnostics.AddAssumption($"phase {name}", FormattableString.Invariant(
            $"engine off at trim, weight 0, {heaviest.AltitudeMetres:0.#} m"),
            $"assumption: the mission names no phase with the engine off; air as in {heaviest.Name}");
        return new Phase(name, 0, new FlightSpeed.AtFraction(0), new PhasePower.EngineOff(), heaviest.AltitudeMetres,
            heaviest.TemperatureOffsetKelvin);
    }
}

/// <summary>Reads what the engine does in a phase: level, climb 1.8 m/s, full throttle, 1840 rpm or engine off.</summary>
internal static class PowerReader
{
    private const string Choices =
        "Write `level`, `climb` and its rate in m/s, `full throttle`, a propeller speed in rpm, or `engine off`.";

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
                phase.DiagnosticBag.Add(at, "This word alone is a yes-or-no value to some programs, not a power.", "Write `engine off`.");
                return new PhasePower.EngineOff();
        }

        if (text.StartsWith("climb ", StringComparison.Ordinal))
            return new PhasePower.Climb(Amount(phase, text["climb ".Length..], Dimension.Speed,
                AllowedRange.PositiveUpTo(15, "15 m/s")));
        if (text.Length > 0 && (char.IsAsciiDigit(text[0]) || text[0] is '-' or '+' or '.'))
            return new PhasePower.AtRpm(Amount(phase, text, Dimension.Revolutions,
                AllowedRange.PositiveUpTo(10000, "10000 rpm")));
        phase.DiagnosticBag.Add(at, "This is not a power the tool knows.", Fix(text));
        return new PhasePower.Level();
    }

    private static double Amount(Section phase, string text, Dimension dimension, AllowedRange bound)
    {
        var at = phase.At("power");
        var amount = new Node.Scalar(text, false, at.Line, at.Column);
        return Quantity.Read(amount, phase.PathOf("power"), dimension, bound, phase.DiagnosticBag)?.Base ?? double.NaN;
    }

    private static string Fix(string text)
    {
        if (text == "climb")
            return "Write after it the rate of climb and its unit (m/s, km/h, kt).";
        if (text == "full")
            return "Did you mean `full throttle`?";
        return NearestName.Of(text, ["level", "full throttle", "engine off"]) is { } near ? $"Did you mean `{near}`?" : Choices;
    }
}
