using FrameOpt.Studies.Noise;
using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.Tests.StudyFile.Sections;

/// <summary>How a study says what is uncertain, and what is refused.</summary>
public class NoiseReadingTests
{
    private static readonly int lines = WorkedStudyText.Text.Count(letter => letter == '\n');

    [Fact]
    public void Study_without_a_word_gets_the_usual_spreads_and_they_are_listed()
    {
        var study = WorkedStudyText.Right(WorkedStudyText.Text);
        Assert.Equal(NoiseSource.All.Select(source => (source, source.Usual)), study.Noise.Sources);
        var listed = Assert.Single(study.Assumptions, assumption => assumption.What == "noise");
        Assert.Equal("the usual spreads (docs/noise.md)", listed.Value);
    }

    [Fact]
    public void None_takes_every_number_as_exact_and_is_no_assumption()
    {
        var study = WorkedStudyText.Right(WorkedStudyText.Text + "noise: none\n");
        Assert.Empty(study.Noise.Sources);
        Assert.DoesNotContain(study.Assumptions, assumption => assumption.What == "noise");
    }

    [Theory]
    [InlineData("seat_right: { normal: 6 mm }", 0.9, 1.2815515655446 * 0.006)]
    [InlineData("seat_right: { normal: 1 cm, from: -1 cm, to: 10 mm }", 0.9, 0.00749014598969570)]
    [InlineData("propeller_torque: { uniform: [-4 %, 0.06] }", 0.5, 0.01)]
    [InlineData("yaw_leverage: { triangle: [-0.5, 0, 0.5] }", 0.5, 0)]
    [InlineData("angle_built: { uniform: [0 deg, 1 deg] }", 0.5, Math.PI / 360)]
    [InlineData("air_temperature: { uniform: [-5 K, 15 K] }", 0.5, 5)]
    [InlineData("glide_ratio: { table: [3 %, -6 %, -1 %] }", 0.5, -0.01)]
    public void Each_kind_of_spread_is_read_in_its_units(string line, double probability, double expected)
    {
        var noise = WorkedStudyText.Right($"{WorkedStudyText.Text}noise:\n  {line}\n").Noise;
        var (_, spread) = noise.Sources.Single(pair => pair.Source.Name == line.Split(':')[0]);
        Check.Close(expected, spread.Quantile(probability), absolute: 1e-10, because: "printed digits");
        Assert.Equal(NoiseSource.All.Count, noise.Sources.Count);
    }

    [Fact]
    public void One_number_may_be_exact_and_the_others_keep_their_usual_spread()
    {
        var noise = WorkedStudyText.Right(WorkedStudyText.Text + "noise: { seat_right: none }\n").Noise;
        Assert.Equal(NoiseSource.All.Skip(1).Select(source => (source, source.Usual)), noise.Sources);
    }

    [Fact]
    public void Correlations_are_read()
    {
        var noise = WorkedStudyText.Right(WorkedStudyText.Text + "noise: { correlations: [[seat_right, frame_right, -0.5]] }\n").Noise;
        Assert.Equal(new RankCorrelation(NoiseSource.SeatRight, NoiseSource.FrameRight, -0.5), Assert.Single(noise.Correlations));
    }

    [Theory]
    [InlineData("seat_right: { normal: 10 }", "unit")]
    [InlineData("seat_right: { normal: 10 deg }", "length")]
    [InlineData("seat_right: { normal: 0 mm }", "above 0")]
    [InlineData("seat_right: { normal: 1 m }", "above 0")]
    [InlineData("seat_right: { normal: 5 mm, from: 3 mm, to: 2 mm }", "more than from")]
    [InlineData("seat_right: { uniform: [1 mm, 2 mm], from: 0 mm }", "normal spread only")]
    [InlineData("seat_right: { normal: 5 mm, uniform: [1 mm, 2 mm] }", "one kind")]
    [InlineData("seat_right: { from: 5 mm }", "one kind")]
    [InlineData("seat_right: { uniform: [2 mm, 1 mm] }", "not such a list")]
    [InlineData("seat_right: { uniform: [2 mm] }", "not such a list")]
    [InlineData("seat_right: { triangle: [-1 mm, 5 mm, 2 mm] }", "not such a list")]
    [InlineData("seat_right: { uniform: [-1 m, 2 mm] }", "300 mm")]
    [InlineData("seat_right: { table: [] }", "")]
    [InlineData("seat_right: 5 mm", "")]
    [InlineData("seat_rihgt: { normal: 5 mm }", "seat_rihgt")]
    [InlineData("propeller_torque: { normal: 60 % }", "above 0")]
    [InlineData("cases: 100", "power of two")]
    [InlineData("correlations: [[seat_right, seat_right, 0.5]]", "two different")]
    [InlineData("correlations: [[seat_right, frame_right, 1]]", "between -1 and 1")]
    [InlineData("correlations: [[seat_right, frame_right, 0.5], [frame_right, seat_right, 0.4]]", "twice")]
    [InlineData("correlations: [[seat_right, frame_right, 0.9], [frame_right, drag_area, 0.9], [seat_right, drag_area, -0.9]]", "once")]
    public void What_is_no_spread_is_refused_with_its_line_and_a_cure(string line, string words)
    {
        var diagnostic = WorkedStudyText.OneDiagnostic($"{WorkedStudyText.Text}noise:\n  {line}\n");
        Assert.Contains(words, diagnostic.Message);
        Assert.Equal(lines + 2, diagnostic.Line);
        Assert.NotEqual("", diagnostic.Fix);
    }

    [Fact]
    public void Correlation_of_an_exact_number_is_refused() => Assert.Contains("not none", WorkedStudyText.OneDiagnostic(
        $"{WorkedStudyText.Text}noise:\n  seat_right: none\n  correlations: [[seat_right, frame_right, 0.5]]\n").Message);

    [Fact]
    public void Variant_may_turn_the_noise_off()
    {
        var text = WorkedStudyText.Text + "variants: { exact: { noise: none }, careful: { noise: { seat_right: { normal: 5 mm } } } }\n";
        Assert.Equal(["exact", "careful"], WorkedStudyText.Right(text).Variants);
    }
}
