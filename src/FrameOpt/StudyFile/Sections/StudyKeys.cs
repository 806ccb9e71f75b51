using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

using static Key;

/// <summary>Every key of a study file, in one place: what the reader knows, what it offers when one is misspelt, what docs/study-file.md lists.</summary>
internal static class StudyKeys
{
    public static readonly SectionKeys File = new("",
        Must("format", "1"), Must("title", "One frame for one engine"), May("question", "Which hang-point geometry leaves the least torque?"),
        Must("machine", "{ masses: ..., hang_line: ..., propeller: ..., pilot: ... }"), Must("wing", "{ mass: 6 kg, ... }"),
        Must("mission", "{ cruise: { weight: 1, power: level } }"), Must("factors", "{ hang_point_spacing: { from: 380 mm, to: 480 mm, step: 5 mm }, ... }"),
        Must("objectives", "[{ minimise: residual_rms }, { minimise: pitch_swing }]"), May("limits", "[{ response: effort_worst, at_most: 0.6 }]"),
        May("search", "{ method: exhaustive }"), May("ranking", "{ method: distance to ideal }"),
        May("baseline", "{ hang_point_spacing: 440 mm, ... }"), May("strength", "{ limit_load_factor: 6, overhang: 120 mm }"),
        May("balanced_band", "{ phase: cruise, within: 5 N·m }"),
        May("plan", "{ kind: central composite, centre_runs: 3 }"), May("line", "{ variants: 3, customers: customers.csv }"),
        May("variants", "{ full tank: { machine: { masses: { fuel: { volume: 10 l } } } } }"));

    public static readonly SectionKeys Machine = new("machine",
        Must("masses", "[{ name: pilot, mass: 78 kg, forward: 20 mm, right: 0 mm, up: 0 mm, body: true }]"), Must("hang_line", "{ forward: -60 mm }"),
        Must("propeller", "{ diameter: 1.30 m, ... }"), May("engine", "{ reduction: 2.9, ... }"), Must("pilot", "{ lean: 80 mm, ... }"));

    public static readonly SectionKeys Mass = new("machine.masses[]",
        [Must("name", "pilot"), May("mass", "78 kg"), May("volume", "6 l"), May("density", "750 kg/m³"), .. Position(), May("body", "true")]);

    public static readonly SectionKeys HangLine = new("machine.hang_line", Must("forward", "-60 mm"));

    public static readonly SectionKeys Propeller = new("machine.propeller",
        Must("diameter", "1.30 m"), Must("turns", "clockwise"), Must("hub", "{ forward: -420 mm, right: 0 mm, up: 120 mm }"), May("tilt", "5 deg"),
        May("polar_inertia", "0.085 kg·m²"), May("coefficients", "[[0.0, 0.105, 0.052], [0.5, 0.0475, 0.0393]]"),
        May("bench", "{ rpm: 2450 rpm, thrust: 62 kgf, torque: 60 N·m, pitch: 0.85 m }"));

    public static readonly SectionKeys Hub = new("machine.propeller.hub", Position());

    public static readonly SectionKeys Bench = new("machine.propeller.bench",
        Must("rpm", "2450 rpm"), Must("thrust", "62 kgf"), May("torque", "60 N·m"), May("power", "15 kW"), May("pitch", "0.85 m"),
        May("zero_thrust_advance_ratio", "0.7"), May("density", "1.2 kg/m³"));

    public static readonly SectionKeys Engine = new("machine.engine",
        Must("reduction", "2.9"), Must("efficiency", "0.96"), Must("torque", "[[4000 rpm, 14 N·m], [8500 rpm, 18 N·m]]"));

    public static readonly SectionKeys Pilot = new("machine.pilot",
        Must("lean", "80 mm"), Must("drag_area", "0.45 m²"), Must("drag_centre", "{ forward: 0 mm, right: 0 mm, up: 100 mm }"));

    public static readonly SectionKeys DragCentre = new("machine.pilot.drag_centre", Position());

    public static readonly SectionKeys Wing = new("wing",
        Must("mass", "6 kg"), Must("area", "25 m²"), Must("span", "10.8 m"), Must("lines", "7.0 m"), Must("line_spread", "3.8 m"),
        Must("polar", "{ at: ..., rows: ... }"), May("riser_coupling", "{ length: 330 mm, at_spacing: 440 mm }"), May("roll_restoring", "0.05"),
        May("yaw_damping", "0.07"), May("yaw_leverage", "1.5"));

    public static readonly SectionKeys Polar = new("wing.polar",
        Must("at", "{ mass: 115 kg, density: 1.225 kg/m³ }"), Must("rows", "[[0, 10.4 m/s, 6.2], [1, 13.6 m/s, 5.0]]"));

    public static readonly SectionKeys PolarAt = new("wing.polar.at", Must("mass", "115 kg"), Must("density", "1.225 kg/m³"));

    public static readonly SectionKeys RiserCoupling = new("wing.riser_coupling", Must("length", "330 mm"), Must("at_spacing", "440 mm"));

    public static readonly SectionKeys Phase = new("mission.<phase>",
        Must("weight", "0.5"), Must("power", "level"), May("fraction", "1"), May("airspeed", "8.5 m/s"), May("altitude", "300 m"),
        May("temperature_offset", "10 K"), May("load_factor", "1"), May("carried", "0.8"), May("pitch_rate", "0.3 rad/s"));

    public static readonly SectionKeys Factors = new("factors",
        Must("hang_point_spacing", "{ from: 380 mm, to: 480 mm, step: 5 mm }"), Must("lateral_offset", "{ from: 0 mm, to: 60 mm, step: 1 mm }"),
        Must("suspension_height", "{ from: 100 mm, to: 400 mm, step: 10 mm }"), Must("thrust_line_angle", "{ values: [-3 deg, 0 deg, 3 deg] }"),
        May("thrust_line_tilt", "5 deg"), May("hub_forward", "-420 mm"), May("hub_right", "0 mm"), May("hub_up", "120 mm"), May("hang_line_forward", "-60 mm"));

    public static readonly SectionKeys Factor = new("factors.<factor>",
        May("from", "380 mm"), May("to", "480 mm"), May("step", "5 mm"), May("values", "[380 mm, 440 mm]"));

    public static readonly SectionKeys Objective = new("objectives[]", May("minimise", "residual_rms"), May("maximise", "weight_shift_authority[cruise]"), May("resolution", "0.5 N·m"));

    public static readonly SectionKeys Limit = new("limits[]", Must("response", "effort_worst"), May("at_least", "3"), May("at_most", "0.6"));

    public static readonly SectionKeys Search = new("search",
        Must("method", "exhaustive"), May("population", "100"), May("seed", "1"), May("start", "plan"), May("polish", "true"),
        May("stop", "{ evaluations: 20000 }"));

    public static readonly SectionKeys Stop = new("search.stop",
        May("evaluations", "20000"), May("time", "60 s"), May("stall", "{ evaluations: 5000, growth: 0.1 % }"), May("target", "{ residual_rms: 3 N·m }"));

    public static readonly SectionKeys Stall = new("search.stop.stall", Must("evaluations", "5000"), May("growth", "0.1 %"));

    public static readonly SectionKeys Ranking = new("ranking", May("method", "distance to ideal"), May("weights", "{ residual_rms: 3, pitch_swing: 1 }"));

    public static readonly SectionKeys Baseline = new("baseline",
        Must("hang_point_spacing", "440 mm"), Must("lateral_offset", "0 mm"), Must("suspension_height", "150 mm"), Must("thrust_line_angle", "0 deg"),
        May("thrust_line_tilt", "5 deg"), May("hub_forward", "-420 mm"), May("hub_right", "0 mm"), May("hub_up", "120 mm"), May("hang_line_forward", "-60 mm"));

    public static readonly SectionKeys Strength = new("strength", Must("limit_load_factor", "6"), Must("overhang", "120 mm"));

    public static readonly SectionKeys BalancedBand = new("balanced_band", Must("phase", "cruise"), Must("within", "5 N·m"));

    public static readonly SectionKeys Plan = new("plan",
        Must("kind", "central composite"), May("levels", "3"), May("generators", "[D=ABC]"), May("most_runs", "8"), May("runs", "20"),
        May("axial", "face-centred"), May("centre_runs", "3"), May("model", "quadratic"), May("seed", "1"), May("responses", "[residual_rms, pitch_swing]"));

    public static readonly SectionKeys Line = new("line",
        Must("variants", "3"), May("up_to", "5"), May("objective", "blend 30 %"), May("response", "residual_rms"), May("maximise", "true"),
        May("candidates", "grid"), May("common", "frame"), May("hole_pitch", "5 mm"), May("time", "60 s"), May("pilot", "pilot"),
        May("options", "{ engine: { light: { machine: ... }, big: { machine: ... } } }"), Must("customers", "customers.csv"));

    public static readonly SectionKeys LineCustomer = new("line.customers[]",
        May("name", "school"), Must("pilot_mass", "70 kg"), May("share", "20 %"), May("count", "12"));

    public static readonly SectionKeys LineSample = new("line.customers",
        Must("sample", "500"), May("seed", "1"), Must("pilot_mass", "{ mean: 85 kg, sd: 12 kg, from: 55 kg, to: 125 kg }"));

    public static readonly SectionKeys LineSampleMass = new("line.customers.pilot_mass",
        Must("mean", "85 kg"), Must("sd", "12 kg"), Must("from", "55 kg"), Must("to", "125 kg"));

    /// <summary>All sections, in the order of a file.</summary>
    public static readonly IReadOnlyList<SectionKeys> All =
    [
        File, Machine, Mass, HangLine, Propeller, Hub, Bench, Engine, Pilot, DragCentre, Wing, Polar, PolarAt, RiserCoupling, Phase,
        Factors, Factor, Objective, Limit, Search, Stop, Stall, Ranking, Baseline, Strength, BalancedBand, Plan,
        Line, LineCustomer, LineSample, LineSampleMass,
    ];

    private static Key[] Position() => [Must("forward", "20 mm"), Must("right", "0 mm"), Must("up", "120 mm")];
}
