using FrameOpt.Model;
using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.Studies;
using FrameOpt.Tests.Running;

namespace FrameOpt.Tests.StudyFile.Sections;

/// <summary>Holes in a study: what they make of spacing and offset, what is refused, and that a search sees every pair and no other
/// design.</summary>
public class HoleTests
{
    private const string Sides =
        "holes: { left: { first: 180 mm, pitch: 20 mm, count: 6, drilled: [240 mm] }, right: { values: [200 mm, 215 mm] } }";

    // By hand: left 240 mm and right 200 mm are 440 mm apart, and their middle lies 20 mm to the left.
    [Fact]
    public void A_pair_of_holes_has_its_spacing_and_its_offset()
    {
        var pair = HolePattern.Put(default, 0.24, 0.2);
        Assert.Equal(0.44, pair.SpacingMetres);
        Assert.Equal(-0.02, pair.OffsetMetres);
        var holes = Read(Sides).Holes!;
        Assert.Equal([0.18, 0.2, 0.22, 0.24, 0.26, 0.28], holes.Left.Places);
        Assert.Equal([0.2, 0.215], holes.Right.Places);
        Assert.Equal(["LEFT hole 4 of 6, counted from the middle, drilled already.", "RIGHT hole 1 of 2, counted from the middle."],
            HoleText.Sentences(holes, pair));
        Assert.Contains("NEW: to be drilled", HoleText.Sentences(holes, HolePattern.Put(default, 0.26, 0.2)).First());
    }

    [Fact]
    public void Holes_for_both_sides_are_those_of_each() =>
        Assert.Equal(Read("holes: { left: { values: [200 mm, 220 mm] }, right: { values: [200 mm, 220 mm] } }").Factors[1].LevelsSi,
            Read("holes: { first: 200 mm, pitch: 20 mm, count: 2 }").Factors[1].LevelsSi);

    // Every design of the search against every pair of holes, one at a time.
    [Fact]
    public void A_search_evaluates_every_pair_and_nothing_else()
    {
        var study = Read(Sides) with { Limits = [] };
        var result = StudyRunnerTests.Finish(study);
        var heights = study.Factor(GeometryInput.SuspensionHeight).LevelsSi;
        var angles = study.Factor(GeometryInput.ThrustLineAngle).LevelsSi;
        Assert.Equal(12 * heights.Count * angles.Count, result.Counts.Evaluated);
        Assert.Equal(study.GridSize, result.Counts.Evaluated);
        var model = StudyProblem.Model(study);
        var all = (from left in study.Holes!.Left.Places
                   from right in study.Holes.Right.Places
                   from height in heights
                   from angle in angles
                   select model.Evaluate(FrameGeometry.On(
                       study.Machine, Math.Round(left + right, 9), Math.Round((right - left) / 2, 9), height, angle)))
            .Where(design => design.Failure is null)
            .Select(design => (design.Geometry, Values: study.Objectives.Select(o => o.Oriented(o.ValueOf(design))).ToArray())).ToList();
        var front = all.Where(a => !all.Any(b => a.Values.Zip(b.Values).All(v => v.Second <= v.First)
            && a.Values.Zip(b.Values).Any(v => v.Second < v.First))).Select(a => a.Geometry).ToHashSet();
        Assert.Equal(front, result.Front.Select(design => design.Geometry).ToHashSet());
    }

    [Fact]
    public void An_evolutionary_search_and_a_product_line_take_pairs_of_holes_only()
    {
        var text = With(Sides).Replace("method: exhaustive", "method: NSGA-II, stop: { evaluations: 600 }");
        var study = WorkedStudyText.Right(text);
        Assert.All(StudyRunnerTests.Finish(study).Front, design => Assert.Equal(design.Geometry, study.Holes!.Nearest(design.Geometry)));
        var candidates = ProductLineCandidates.OfGrid(Read(Sides));
        Assert.Equal(study.GridSize, candidates.Count);
        Assert.All(candidates.Designs, design => Assert.Equal(design, study.Holes!.Nearest(design)));
    }

    [Theory]
    [InlineData("holes: { left: { values: [200 mm] } }", "factors.holes.right is missing.")]
    [InlineData("holes: { first: 200 mm, pitch: 20 mm }", "factors.holes.count is missing.")]
    [InlineData("holes: { values: [200 mm, 20 cm] }", "factors.holes has this hole twice.")]
    [InlineData("holes: { values: [200 mm], first: 200 mm }", "factors.holes gives both values and first.")]
    [InlineData("holes: { values: [200 mm], drilled: [210 mm] }", "names a hole that is none of these")]
    [InlineData("holes: { values: [-200 mm] }", "must be above 0")]
    [InlineData("holes: { first: 200 mm, pitch: 100 mm, count: 20 }", "The last hole of factors.holes must be")]
    [InlineData("holes: { values: [200 mm] }\n  lateral_offset: 0 mm", "factors gives both holes and lateral_offset.")]
    [InlineData("holes: { values: [200 mm] }\nplan: { kind: central composite }", "which holes do not allow")]
    public void A_slip_is_named(string holes, string what) =>
        Assert.Contains(what, WorkedStudyText.OneDiagnostic(With(holes)).Text);

    private static Study Read(string holes) => WorkedStudyText.Right(With(holes));

    private static string With(string holes)
    {
        var lines = WorkedStudyText.Text.Split('\n').Where(line => !line.StartsWith("  lateral_offset:")).ToList();
        var spacing = lines.FindIndex(line => line.StartsWith("  hang_point_spacing:"));
        lines[spacing] = $"  {holes.Split('\n')[0]}";
        var rest = holes.Split('\n').Skip(1).ToList();
        lines.InsertRange(spacing + 1, rest.Where(line => line.StartsWith(' ')));
        return string.Join('\n', lines) + string.Concat(rest.Where(line => !line.StartsWith(' ')).Select(line => line + "\n"));
    }
}
