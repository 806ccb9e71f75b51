using FrameOpt.Model;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

using static Key;

/// <summary>The keys of a product line and of a decision, beside those of <see cref="StudyKeys"/>.</summary>
internal static class LineKeys
{
    public static readonly SectionKeys Line = new("line",
        Required("variants", "3") with { StandIn = "geometries" },
        Optional("geometries", "[{ name: A, hang_point_spacing: 420 mm, lateral_offset: 20 mm }]",
            "a list of geometries that are made already, each with its name and dimensions"),
        Optional("up_to", "5"),
        Optional("objective", "blend 30 %", "mean, worst, or percentile or blend with a share"),
        Optional("response", "residual_rms", StudyKeys.OneResponse), Optional("maximise", "true", StudyKeys.TrueOrFalse),
        Optional("candidates", "grid", "front or grid"), Optional("common", "frame", "nothing, spacing or frame"),
        Optional("serve", "at least 95 % of pieces", "at least and a share in %"), Optional("hole_pitch", "5 mm"), Optional("time",
            "60 s"), Optional("pilot", "pilot", "the name of one of the masses"),
        Optional("allow_both_rotations", "true", StudyKeys.TrueOrFalse),
        Optional("options", "{ engine: { light: { machine: ... }, big: { machine: ... } } }",
            "a name for each option, under it its choices, and under each the keys it changes"),
        Required("customers", "customers.csv", "the name of a CSV file, or a list of customers"));

    public static readonly SectionKeys DecidedDesign = new("decision.chosen", [Optional("left_hole", "240 mm"),
        Optional("right_hole", "200 mm"), .. FactorCatalogue.All.Select(input => Optional(input.Name, input.Example))]);

    public static readonly SectionKeys ProductLineGeometry = new("line.geometries[]",
        [Required("name", "A", "a name"), Optional("turns", "clockwise", "clockwise or counter-clockwise, as seen from behind the machine"),
            .. DecidedDesign.Keys]);

    public static readonly SectionKeys Decision = new("decision",
        Required("chosen", "[A, B]", "the names of geometries of the line, or under it the dimensions of one design"),
        Required("date", "the day", "the day it was decided"), Required("by", "name", "who decided"),
        Optional("reason", "text", "a line of text"), Optional("rejected", "[text]", "a list of lines of text"));

    public static readonly SectionKeys ProductLineCustomer = new("line.customers[]",
        Optional("name", "school", "a name"), Required("pilot_mass", "70 kg"), Optional("share", "20 %"), Optional("count", "12"));

    public static readonly SectionKeys ProductLineSample = new("line.customers",
        Required("sample", "500"), Optional("seed", "1"), Required("pilot_mass", "{ mean: 85 kg, sd: 12 kg, from: 55 kg, to: 125 kg }"));

    public static readonly SectionKeys ProductLineSampleMass = new("line.customers.pilot_mass",
        Required("mean", "85 kg"), Required("sd", "12 kg"), Required("from", "55 kg"), Required("to", "125 kg"));
}
