using CsCheck;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;
using FrameOpt.Tests.Reports;

namespace FrameOpt.Tests.StudyFile.Sections;

/// <summary>Ranges, lists and fixed values of the factors.</summary>
public class FactorTests
{
    private const string Offset = "{ from: 0 mm, to: 60 mm, step: 1 mm }";

    [Fact]
    public void Level_reached_by_steps_is_exactly_what_its_own_text_would_be()
    {
        var study = WorkedStudyText.Right(WorkedStudyText.Text);
        Assert.Equal(Read("440 mm"), study.Factors[0].LevelsSi[12]);
        Assert.Equal(study.Baseline!.Value.SpacingMetres, study.Factors[0].LevelsSi[12]);
        var inches = WorkedStudyText.Right(WorkedStudyText.With(Offset, "{ from: 0 in, to: 2.1 in, step: 0.3 in }"));
        Assert.Equal(Read("0.9 in"), inches.Factors[1].LevelsSi[3]);
        Assert.Equal(8, inches.Factors[1].LevelsSi.Count);
    }

    [Fact]
    public void Any_range_whose_step_fits_has_exactly_its_levels() =>
        Gen.Select(Gen.Int[-2000, 2000], Gen.Int[1, 15], Gen.Int[1, 60], Gen.Int[0, 3]).Sample(
            (first, step, count, places) =>
            {
                string Text(long units) => FormattableString.Invariant($"{units / (decimal)Math.Pow(10, places)} mm");
                var levels = WorkedStudyText.Right(WorkedStudyText.With(Offset,
                    $"{{ from: {Text(first)}, to: {Text(first + (long)step * count)}, step: {Text(step)} }}")).Factors[1].LevelsSi;
                return levels.Count == count + 1 && Enumerable.Range(0, count + 1).All(
                    i => levels[i] == Read(Text(first + (long)step * i)));
            },
            iter: 100,
            writeLine: null);

    [Fact]
    public void Units_may_differ_within_a_factor_and_the_first_is_shown()
    {
        var factor = WorkedStudyText.Right(WorkedStudyText.With(Offset, "{ from: 0 mm, to: 6 cm, step: 0.001 m }")).Factors[1];
        Assert.Equal(61, factor.LevelsSi.Count);
        Assert.Equal("mm", factor.Unit.Symbol);
        Assert.Equal("25 mm", factor.Unit.Text(factor.LevelsSi[25]));
    }

    [Fact]
    public void Values_are_put_in_order()
    {
        var factor = WorkedStudyText.Right(WorkedStudyText.With("values: [-3 deg, -1.5 deg, 0 deg, 1.5 deg, 3 deg]",
            "values: [3°, 0°, -3°]")).Factors[3];
        Assert.Equal([Read("-3 deg"), 0, Read("3 deg")], factor.LevelsSi);
        Assert.Equal("deg", factor.Unit.Symbol);
    }

    [Fact]
    public void One_value_fixes_a_factor()
    {
        var factor = WorkedStudyText.Right(WorkedStudyText.With(Offset, "25 mm")).Factors[1];
        Assert.False(factor.IsSwept);
        Assert.Equal([Read("25 mm")], factor.LevelsSi);
    }

    [Fact]
    public void Further_geometry_inputs_may_be_swept()
    {
        var text = WorkedStudyText.With(Offset, Offset + "\n  hub_up: { values: [100 mm, 120 mm] }").Replace(
            "baseline: {", "baseline: { hub_up: 110 mm,");
        var study = WorkedStudyText.Right(text);
        Assert.Equal("hub_up", study.Factors[^1].Name);
        Check.Close(0.11, study.Baseline!.Value.HubUpMetres, relative: 1e-15, because: "rounding of one conversion");
        Assert.Equal(21L * 61 * 31 * 5 * 2, study.GridSize);
    }

    [Fact]
    public void Baseline_must_say_where_a_further_factor_stands()
    {
        var diagnostic = WorkedStudyText.OneDiagnostic(WorkedStudyText.With(Offset, Offset + "\n  hub_up: { values: [100 mm, 120 mm] }"));
        Assert.Equal("Add `hub_up:` under baseline, with a length and its unit (mm, m, cm, in, ft).", diagnostic.Fix);
    }

    [Fact]
    public void One_frame_is_a_study_too_but_nothing_for_an_evolutionary_search()
    {
        var text = WorkedStudyText.With(Offset, "25 mm")
            .Replace("{ from: 380 mm, to: 480 mm, step: 5 mm }", "440 mm").Replace("{ from: 100 mm, to: 400 mm, step: 10 mm }", "150 mm")
            .Replace("{ values: [-3 deg, -1.5 deg, 0 deg, 1.5 deg, 3 deg] }", "0 deg");
        Assert.True(WorkedStudyText.Right(text).IsOneFrame);
        Assert.Contains("nothing to search", WorkedStudyText.OneDiagnostic(
            text.Replace("search: { method: exhaustive }", "search: { method: NSGA-II }")).Message);
    }

    [Fact]
    public void Grid_beyond_two_thousand_million_designs_says_its_size_its_time_and_what_would_fit()
    {
        // 21 x 60001 x 3001 x 5 = 18 906 615 105 designs; 2e9 / (21 x 3001 x 5) = 6347.0 levels.
        var diagnostic = WorkedStudyText.OneDiagnostic(
            WorkedStudyText.With("step: 1 mm", "step: 0.001 mm").Replace("step: 10 mm", "step: 0.1 mm"));
        Assert.Contains("18906615105 designs, about ", diagnostic.Message);
        Assert.Contains("lateral_offset has 60001 levels, and 6347 or fewer", diagnostic.Fix);
    }

    [Fact]
    public void Spacing_as_wide_as_the_lines_needs_a_riser_coupling()
    {
        var wide = WorkedStudyText.With("to: 480 mm", "to: 2380 mm").Replace("line_spread: 3.8 m", "line_spread: 2.3 m");
        WorkedStudyText.Right(wide);
        Assert.Contains("wing.riser_coupling", WorkedStudyText.OneDiagnostic(wide.Replace("  riser_coupling: {", "  # {")).Fix);
    }

    private static double Read(string text)
    {
        var node = new Node.Scalar(text, false, 1, 1);
        var dimension = text.EndsWith("deg", StringComparison.Ordinal) ? Dimension.Angle : Dimension.Length;
        return Quantity.Read(node, "it", dimension, AllowedRange.None, new DiagnosticBag("study.yaml"))!.Base;
    }
}
