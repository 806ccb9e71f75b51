using FrameOpt.Studies;
using FrameOpt.StudyFile.Plausibility;

namespace FrameOpt.Tests.StudyFile;

/// <summary>Values that no frame, engine or wing usually has: each is allowed, and a warning says which range is usual.</summary>
public class UsualRangeTests
{
    private static readonly string template = File.ReadAllText(Repository.Template("custom-match")).ReplaceLineEndings("\n");

    private static readonly string document = File.ReadAllText(Path.Combine(Repository.Root, "docs", "study-file.md"));

    // Common practice, no source. Figures by hand: 11² / 24 = 5.04 and 5² / 24 = 1.042; 9 / 11 = 0.818;
    // (76 + 5 + 24 + 7 x 0.74 + 5.5) kg / 10 m² = 11.6 kg/m²; pi x 1.25 m x 7140 / 60 s = 467.3 m/s; 7140 x 2.8 = 19992, over 8800 = 2.272;
    // at 2550 x 2.8 = 7140 rpm of the crank 2.8 x 0.97 x 20.91 N·m = 56.8 N·m.
    public static TheoryData<string, string, string> Unusual => new()
    {
        { "hang_point_spacing: { from: 400 mm", "hang_point_spacing: { from: 40 mm",
            "the hang-point spacing at the lower end of its range is 40 mm" },
        { "hang_point_spacing: 440 mm, lateral", "hang_point_spacing: 44 mm, lateral", "the hang-point spacing of the baseline is 44 mm" },
        { "to: 50 mm, step: 1 mm", "to: 250 mm, step: 1 mm", "the lateral offset at the upper end of its range is 250 mm" },
        { "to: 350 mm, step: 10 mm", "to: 2350 mm, step: 10 mm",
            "the height of the hang points above the centre of gravity at the upper end" },
        { "[-2 deg, 0 deg, 2 deg]", "[-2 deg, 0 deg, 20 deg]", "the thrust-line angle at the upper end of its range is 20 deg" },
        { "tilt: 3 deg", "tilt: 30 deg", "the tilt of the thrust line is 30 deg" },
        { "hub: { forward: -430 mm", "hub: { forward: 430 mm", "the distance of the propeller hub behind the pilot's body is -405 mm" },
        { "hub: { forward: -430 mm, right: 0 mm", "hub: { forward: -430 mm, right: 300 mm",
            "the propeller hub to the right of the datum is 300 mm" },
        { "right: 0 mm, up: 110 mm }", "right: 0 mm, up: 1100 mm }", "the height of the propeller hub above the centre of gravity is 1" },
        { "hang_line: { forward: -55 mm }", "hang_line: { forward: -550 mm }",
            "the distance of the hang points in front of the centre of gravity is -" },
        { "forward: -285 mm", "forward: 20 mm", "the distance of the engine behind the pilot's body (`frame and engine`) is 5 mm" },
        { "mass: 76 kg", "mass: 17 kg", "the mass of the pilot's body is 17 kg" },
        { "lean: 75 mm", "lean: 40 cm", "the pilot's largest lean is 400 mm" },
        { "drag_area: 0.45 m²", "drag_area: 4.5 m²", "the drag area of pilot and frame is 4.5 m²" },
        { "diameter: 1.25 m", "diameter: 2.25 m", "the diameter of the propeller is 2.25 m" },
        { "rpm: 2550 rpm", "rpm: 7140 rpm", "the speed of the blade tips on the bench (7140 rpm) is 467.3 m/s" },
        { "rpm: 2550 rpm", "rpm: 7140 rpm", "the bench run's ideal power for its thrust" },
        { "rpm: 2550 rpm", "rpm: 7140 rpm", "(19992 rpm over 8800 rpm) is 2.272" },
        { "rpm: 2550 rpm, thrust: 60 kgf, torque: 56", "rpm: 2550 rpm, thrust: 20 kgf, torque: 20", "(56.8 N·m over 20.0 N·m)" },
        { "[7000 rpm, 21 N·m], [7800 rpm, 20.5 N·m]", "[7000 rpm, 16 N·m], [7800 rpm, 15 N·m]",
            "the propeller speed at full throttle in flight over that of the bench run in launch" },
        { "reduction: 2.8", "reduction: 0.28", "the reduction is 0.28" },
        { "efficiency: 0.97", "efficiency: 0.5", "the efficiency of the drive is 0.5" },
        { "area: 24 m²", "area: 10 m²", "the wing loading (all-up mass / area) is 11.6 kg/m²" },
        { "area: 24 m² ", "area: 26 m² ", "" },
        { "span: 11 m", "span: 5 m", "the flat aspect ratio (span² / area) is 1.042" },
        { "lines: 7.1 m", "lines: 71 cm", "the length of the lines is 0.71 m" },
        { "line_spread: 3.9 m", "line_spread: 9 m", "the line spread over the span is 0.818" },
        { "[0, 10.6 m/s, 6.8]", "[0, 10.6 m/s, 16.8]", "the glide ratio is 16.8" },
        { "[0, 10.6 m/s, 6.8]", "[0, 2.6 m/s, 6.8]", "the airspeed at trim is 2.6 m/s" },
    };

    [Theory]
    [MemberData(nameof(Unusual))]
    public void Unusual_value_is_allowed_with_a_warning(string piece, string unusual, string words)
    {
        Assert.Contains(piece, template);
        var warnings = Others(WorkedStudyText.Right(template.Replace(piece, unusual)));
        if (words.Length == 0)
            Assert.Empty(warnings);
        else
            Assert.Contains(warnings, warning => warning.Contains(words, StringComparison.Ordinal)
                && warning.Contains(" is usual (common practice"));
    }

    [Fact]
    public void Every_range_is_tried()
    {
        var tried = Unusual.Select(row => (string)row[2]).ToList();
        Assert.All(UsualRanges.All, range => Assert.True(
            tried.Exists(words => words.StartsWith(range.Name[..Math.Min(range.Name.Length, 40)], StringComparison.Ordinal)
                || words.StartsWith('(')), range.Name));
    }

    [Fact]
    public void Bench_run_beyond_momentum_theory_is_rejected_with_its_likely_cause()
    {
        // T sqrt(T / 2 rho A) = 588 N x sqrt(588 N / (2 x 1.225 kg/m³ x 1.227 m²)) = 8.2 kW; 21 N·m at 2550 rpm are 5.6 kW.
        var diagnostic = WorkedStudyText.OneDiagnostic(template.Replace("torque: 56 N·m", "torque: 21 N·m"));
        Assert.Contains("5.6 kW", diagnostic.Message);
        Assert.Contains("8.2 kW", diagnostic.Message);
        Assert.Contains("not of the crank", diagnostic.Fix);
    }

    [Fact]
    public void Document_has_a_row_for_every_range()
    {
        foreach (var range in UsualRanges.All)
            Assert.Contains($"| {range.Name} | {range.Text} | `{range.Key}` | {range.Source} |", document);
    }

    [Fact]
    public void Warning_of_a_variant_is_shown_by_check_with_its_name()
    {
        var study = WorkedStudyText.Right(template + "variants: { hang glider: { wing: { lines: 70 cm } } }\n");
        Assert.Empty(Others(study));
        Assert.Contains(study.VariantWarnings, warning => warning.Contains("the length of the lines is 0.7 m")
            && warning.EndsWith("(in variant `hang glider`)", StringComparison.Ordinal));
    }

    private static IReadOnlyList<string> Others(Study study) =>
        [.. study.Warnings.Where(warning => !warning.Contains("are the template's", StringComparison.Ordinal))];
}
