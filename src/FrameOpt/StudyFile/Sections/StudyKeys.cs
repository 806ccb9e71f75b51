using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

using static Key;

/// <summary>Every key of a study file, in one place: what the reader knows, what it offers when one is misspelt, what docs/study-file.md
/// lists.</summary>
internal static class StudyKeys
{
    private const string Bound = "an amount of that response, in its unit";
    /// <summary>What is wanted in a key of that kind.</summary>
    public const string OneResponse = "the name of a response; docs/study-file.md lists them";
    /// <summary>What is wanted in a key of that kind.</summary>
    public const string TrueOrFalse = "true or false";
    private const string WithUnit = "a number and its unit";

    public static readonly SectionKeys File = new("",
        Ready("format", "1"), Optional("template", "custom-match", "the name of the template it began as, or remove the line"),
        Required("title", "One frame for one engine", "one line of text"),
        Optional("question", "Which hang-point geometry leaves the least torque?", "a line of text"),
        Required("machine", "{ masses: ..., hang_line: ..., propeller: ..., pilot: ... }"),
        Required("wing", "{ mass: ..., area: ..., span: ..., lines: ..., line_spread: ..., polar: ... }"),
        Required("mission", "{ cruise: { weight: 1, power: level } }", "a name for each phase, and under it its weight and power"),
        Required("factors", "{ hang_point_spacing: ..., lateral_offset: ..., suspension_height: ..., thrust_line_angle: ... }"),
        Required("objectives", "[{ minimise: residual_rms }, { minimise: power_off_residual }]",
            "a list of two to five responses, each to minimise or to maximise"),
        Optional("limits", "[{ response: effort_worst, at_most: 0.6 }]", "a list of responses, each with at_least or at_most"),
        Optional("search", "{ method: exhaustive }"),
        Ready("ranking", "{ method: distance to ideal }") with { IsRequired = false },
        Optional("baseline", "{ hang_point_spacing: ..., lateral_offset: ..., suspension_height: ..., thrust_line_angle: ... }"),
        Optional("strength", "{ limit_load_factor: 6, overhang: 120 mm }"),
        Optional("balanced_band", "{ phase: cruise, within: 5 N·m }"),
        Ready("noise", "none") with { IsRequired = false },
        Optional("origins", "{ wing: { polar: guess } }", "groups and keys again, each figure with measured, maker or guess"),
        Ready("plan", "{ kind: central composite, centre_runs: 3 }") with { IsRequired = false },
        Optional("line", "{ variants: 3, customers: customers.csv }"),
        Optional("decision", "{ chosen: [A, B], date: the day, by: name }"),
        Optional("variants", "{ full tank: { machine: { masses: { fuel: { volume: 10 l } } } } }",
            "a name for each variant, and under it the keys that are different"));

    public static readonly SectionKeys Machine = new("machine",
        Required("masses", "[{ name: pilot, mass: 78 kg, forward: 20 mm, right: 0 mm, up: 0 mm, body: true }]",
            "a list of masses, each with its name, mass, forward, right and up"),
        Required("hang_line", "{ forward: -60 mm }"),
        Optional("datum", "rear edge of the seat board", "the name of the point that positions are measured from"),
        Optional("hang_point", "centre of the carabiner hole", "the name of the point of hook or hole that the riser pulls at"),
        Optional("arms", "rigid", "rigid or moving"),
        Required("propeller", "{ diameter: ..., turns: ..., hub: ..., bench: ... }"),
        Optional("engine", "{ reduction: ..., efficiency: ..., torque: ... }"),
        Required("pilot", "{ lean: ..., drag_area: ..., drag_centre: ... }"))
    {
        Replaced = [("hang_points", "In place of `hang_points: frame` write `arms: rigid`, in place of `hang_points: arm pivots` write "
            + "`arms: moving`; `hang_point` now names the point itself.")],
    };

    public static readonly SectionKeys Mass = new("machine.masses[]",
        [Required("name", "pilot", "a name"), Optional("mass", "78 kg"), Optional("volume", "6 l"), Optional("density", "750 kg/m³"),
            .. Position(), Optional("body", "true", TrueOrFalse)]);

    public static readonly SectionKeys HangLine = new("machine.hang_line", Position()[0]);

    public static readonly SectionKeys Propeller = new("machine.propeller",
        Required("diameter", "1.30 m"),
        Required("turns", "clockwise", "clockwise or counter-clockwise, as seen from behind the machine"),
        Required("hub", "{ forward: -420 mm, right: 0 mm, up: 120 mm }"), Optional("tilt", "5 deg"),
        Optional("polar_inertia", "0.085 kg·m²"), Optional("coefficients", "[[0.0, 0.105, 0.052], [0.5, 0.0475, 0.0393]]",
            "rows of advance ratio J, thrust coefficient CT and power coefficient CP"),
        Optional("bench", "{ rpm: 2450 rpm, thrust: 62 kgf, torque: 60 N·m, pitch: 0.85 m }"));

    public static readonly SectionKeys Hub = new("machine.propeller.hub", Position());

    public static readonly SectionKeys Bench = new("machine.propeller.bench",
        Required("rpm", "2450 rpm"), Required("thrust", "62 kgf"), Optional("torque", "60 N·m"), Optional("power", "15 kW"),
        Optional("pitch", "0.85 m"), Optional("zero_thrust_advance_ratio", "0.7"), Optional("density", "1.2 kg/m³"));

    public static readonly SectionKeys Engine = new("machine.engine",
        Required("reduction", "2.9"), Required("efficiency", "0.96"),
        Required("torque", "[[4000 rpm, 14 N·m], [8500 rpm, 18 N·m]]", "rows of crank speed in rpm and torque at the crank"));

    public static readonly SectionKeys Pilot = new("machine.pilot",
        Required("lean", "80 mm"), Required("drag_area", "0.45 m²"), Required("drag_centre", "{ forward: 0 mm, right: 0 mm, up: 100 mm }"));

    public static readonly SectionKeys DragCentre = new("machine.pilot.drag_centre", Position());

    public static readonly SectionKeys Wing = new("wing",
        Required("mass", "6 kg"), Required("area", "25 m²"), Required("span", "10.8 m"), Required("lines", "7.0 m"),
        Required("line_spread", "3.8 m"), Required("polar", "{ at: ..., rows: ... }"),
        Optional("riser_coupling", "{ length: 330 mm, at_spacing: 440 mm }"), Optional("roll_restoring", "0.05"),
        Optional("yaw_leverage", "{ speed_factor: 0.17 s/m, twist_share: 0.5 }"), Optional("sideslip", "{ roll: -0.67, yaw: 0.32 }"))
    {
        Replaced = [("yaw_damping", "The yaw leverage follows from the airspeed now, not from damping: remove the key. Where the wing's "
            + "slopes in a sideslip were measured, write them as roll and yaw under wing.sideslip.")],
    };

    public static readonly SectionKeys YawLeverage = new(
        "wing.yaw_leverage", Optional("speed_factor", "0.17 s/m"), Optional("twist_share", "0.5"));

    public static readonly SectionKeys Sideslip = new(
        "wing.sideslip", Required("roll", "-0.67"), Required("yaw", "0.32"), Optional("twist_share", "0.5"));

    public static readonly SectionKeys Polar = new("wing.polar",
        Required("at", "{ mass: 115 kg, density: 1.225 kg/m³ }"),
        Required("rows", "[[0, 10.4 m/s, 6.2], [1, 13.6 m/s, 5.0]]", "rows of fraction from 0 to 1, airspeed in m/s and glide ratio"));

    public static readonly SectionKeys PolarAt = new("wing.polar.at", Required("mass", "115 kg"), Required("density", "1.225 kg/m³"));

    public static readonly SectionKeys RiserCoupling = new(
        "wing.riser_coupling", Required("length", "330 mm"), Required("at_spacing", "440 mm"));

    public static readonly SectionKeys Phase = new("mission.<phase>",
        Required("weight", "0.5"),
        Required("power", "level", "level, climb and its rate in m/s, full throttle, a propeller speed in rpm, or engine off"),
        Optional("fraction", "1"), Optional("airspeed", "8.5 m/s"), Optional("altitude", "300 m"), Optional("temperature_offset", "10 K"),
        Optional("load_factor", "1"), Optional("carried", "0.8"), Optional("pitch_rate", "0.3 rad/s"),
        Optional("settled", "false", TrueOrFalse));

    public static readonly SectionKeys Factors = new("factors", [.. FactorCatalogue.All.Select(input => (input.ExampleRange is { } range
        ? Ready(input.Name, range) with { IsRequired = input.IsRequired }
        : new Key(input.Name, input.Example, input.IsRequired) { Wanted = "from, to and step under it, or one value, each with its unit" })
        with { StandIn = HolePattern.Decides(input) ? HoleReader.InFactors.Name : null }), HoleReader.InFactors]);

    public static readonly SectionKeys Factor = new("factors.<factor>",
        Optional("from", "380 mm", WithUnit), Optional("to", "480 mm", WithUnit), Optional("step", "5 mm", WithUnit),
        Optional("values", "[380 mm, 440 mm]"));

    public static readonly SectionKeys Objective = new(
        "objectives[]", Optional("minimise", "residual_rms", OneResponse), Optional("maximise", "power_off_residual", OneResponse),
        Optional("resolution", "0.5 N·m", Bound));

    public static readonly SectionKeys Limit = new(
        "limits[]", Required("response", "effort_worst", OneResponse), Optional("at_least", "3", Bound), Optional("at_most", "0.6", Bound));

    public static readonly SectionKeys Search = new("search",
        Required("method", "exhaustive", "exhaustive, NSGA-II or NSGA-III"), Optional("population", "100"), Optional("seed", "1"),
        Optional("start", "plan", "plan, or the name of a CSV file of designs"), Optional("polish", "true", TrueOrFalse),
        Optional("stop", "{ evaluations: 20000 }"));

    public static readonly SectionKeys Stop = new("search.stop",
        Optional("evaluations", "20000"), Optional("time", "60 s"), Optional("stall", "{ evaluations: 5000, growth: 0.1 % }"),
        Optional("target", "{ residual_rms: 3 N·m }", "the name of an objective and an amount of it"));

    public static readonly SectionKeys Stall = new("search.stop.stall", Required("evaluations", "5000"), Optional("growth", "0.1 %"));

    public static readonly SectionKeys Ranking = new("ranking",
        Ready("method", "distance to ideal") with { IsRequired = false },
        Optional("weights", "{ residual_rms: 3, pitch_swing: 1 }", "the name of each objective and its weight, a plain number"));

    public static readonly SectionKeys Baseline = new(
        "baseline", [.. FactorCatalogue.All.Select(input => new Key(input.Name, input.Example, input.IsRequired))]);

    public static readonly SectionKeys Strength = new("strength", Required("limit_load_factor", "6"), Required("overhang", "120 mm"));

    public static readonly SectionKeys BalancedBand = new("balanced_band",
        Required("phase", "cruise", "the name of a phase of the mission"), Required("within", "5 N·m"));

    public static readonly SectionKeys Plan = new("plan",
        Required("kind", "central composite", "the kind of plan; docs/plans.md lists them"), Optional("levels", "3"),
        Optional("generators", "[D=ABC]"), Optional("most_runs", "8"), Optional("runs", "20"),
        Optional("axial", "face-centred", "rotatable, spherical, face-centred or orthogonal"), Optional("centre_runs", "3"),
        Optional("repeats", "2"), Optional("within", "limits", "limits"), Optional("made", "runs.csv"),
        Optional("model", "quadratic", "linear, interactions or quadratic"), Optional("seed", "1"),
        Optional("responses", "[residual_rms, pitch_swing]"),
        Optional("hard_to_change", "[suspension_height]", "factors that are set once for several runs"), Optional("whole_plots", "8"));

    /// <summary>All sections, in the order of a file.</summary>
    public static readonly IReadOnlyList<SectionKeys> All =
    [
        File, Machine, Mass, HangLine, Propeller, Hub, Bench, Engine, Pilot, DragCentre, Wing, Polar, PolarAt, RiserCoupling, YawLeverage,
        Sideslip, Phase,
        Factors, Factor, HoleReader.Keys, HoleReader.RowKeys, Objective, Limit, Search, Stop, Stall, Ranking, Baseline, Strength,
        BalancedBand, NoiseReader.Keys, NoiseReader.SpreadKeys, Plan,
        LineKeys.Decision, LineKeys.DecidedDesign, LineKeys.Line, LineKeys.ProductLineGeometry, LineKeys.ProductLineCustomer,
            LineKeys.ProductLineSample, LineKeys.ProductLineSampleMass,
    ];

    private static Key[] Position() =>
    [
        Required("forward", "20 mm", $"{Dimension.Length.Wanted}, measured forward of the datum; behind it is -"),
        Required("right", "0 mm", $"{Dimension.Length.Wanted}, measured to the pilot's right of the datum; left is -"),
        Required("up", "120 mm", $"{Dimension.Length.Wanted}, measured above the datum; below it is -"),
    ];
}
