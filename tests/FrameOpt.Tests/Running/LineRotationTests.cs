using FrameOpt.Model;
using FrameOpt.ProductLine;
using FrameOpt.Running;
using FrameOpt.Search;
using FrameOpt.Studies;
using FrameOpt.Tests.StudyFile;
using static FrameOpt.Tests.Running.ProductLineStudy;

namespace FrameOpt.Tests.Running;

/// <summary>Lines whose engines turn both ways.</summary>
public class LineRotationTests
{
    /// <summary>Two engines that are mirror images of each other: all that is off the middle is put on the other side, and the propeller
    /// turns the other way.</summary>
    private const string Mirrored =
        "  options:\n    engine:\n"
        + "      left: { machine: { masses: { frame and engine: { right: 10 mm }, fuel: { right: -20 mm } } } }\n"
        + "      right: { machine: { masses: { frame and engine: { right: -10 mm }, fuel: { right: 20 mm } }, "
            + "propeller: { turns: clockwise } } }\n";

    private const string Pair =
        "  customers:\n    - { name: ann, pilot_mass: 80 kg, engine: left }\n"
        + "    - { name: bob, pilot_mass: 80 kg, engine: right }\n";

    private const string Four = Pair
        + "    - { name: cat, pilot_mass: 62 kg, engine: left, count: 3 }\n"
        + "    - { name: dan, pilot_mass: 101 kg, engine: right, count: 2 }\n";

    /// <summary>A line for the two engines, or for what else is asked.</summary>
    public static Study Line(string keys, string customers = Pair, int count = 2, double effort = 0.6) => WorkedStudyText.Right(
        BothSides(Text(keys, customers, Mirrored)).Replace("  variants: 2\n", $"  variants: {count}\n")
            .Replace("effort_worst, at_most: 0.6", FormattableString.Invariant($"effort_worst, at_most: {effort}")));

    private static string BothSides(string text) =>
        text.Replace("{ from: 0 mm, to: 60 mm, step: 5 mm }", "{ from: -60 mm, to: 60 mm, step: 5 mm }");

    [Fact]
    public void Mirrored_engines_get_mirrored_geometries_each_for_its_own_rotation()
    {
        var result = Solve(Line("objective: worst", Pair));
        Assert.True(result.Solution is { Proven: true, Feasible: true });
        var (ann, bob) = (result.Assignments[0], result.Assignments[1]);
        Assert.Equal([Rotation.CounterClockwise], result.Geometries[ann.Geometry].Rotations);
        Assert.Equal([Rotation.Clockwise], result.Geometries[bob.Geometry].Rotations);
        // A mirror image: the same frame with its offset to the other side leaves the same torque, turned round.
        var (a, b) = (result.Geometries[ann.Geometry].Design, result.Geometries[bob.Geometry].Design);
        Assert.Equal((a.SpacingMetres, a.HeightMetres, -a.OffsetMetres), (b.SpacingMetres, b.HeightMetres, b.OffsetMetres));
        Assert.True(a.OffsetMetres > 0, "a counter-clockwise propeller pushes the right side down; a right offset holds against it");
        Check.Close(ann.Cost, bob.Cost, relative: 1e-9, because: "the mirrored machine has the same equations with other signs");
    }

    [Fact]
    public void One_geometry_for_mirrored_engines_is_refused_unless_the_study_allows_it_and_then_it_is_centred()
    {
        var refused = Solve(Line("objective: worst; up_to: 2", Pair, count: 1));
        Assert.False(refused.Solution.Feasible);
        Assert.Single(refused.Solution.Unserved);
        Assert.Single(Assert.Single(refused.Geometries).Rotations);
        Assert.Contains(refused.UnservedMessages, words => words.Contains("allow_both_rotations: true"));
        // An effort over 1 is too much for the pilot, but not for this test.
        var allowed = Solve(Line("objective: worst; up_to: 2; allow_both_rotations: true", Pair, count: 1, effort: 9));
        var only = Assert.Single(allowed.Geometries);
        Assert.True(allowed.Solution.Feasible);
        Assert.Equal(2, only.Rotations.Distinct().Count());
        // What an offset to one side gives one of the two it takes from the other, so that the worse of both is least in the middle.
        Assert.Equal(0, only.Design.OffsetMetres);
    }

    [Theory]
    [InlineData("objective: mean")]
    [InlineData("objective: worst")]
    [InlineData("objective: blend 30 %")]
    [InlineData("objective: worst; common: frame")]
    [InlineData("objective: mean; common: spacing")]
    public void The_line_is_the_best_of_all_pairs_in_which_no_geometry_serves_both_rotations(string keys)
    {
        var study = Line(keys, Four);
        var result = Solve(study);
        var free = study with { Line = study.Line! with { AllowBothRotations = true } };
        var candidates = ProductLineCandidates.OfGrid(free);
        var groups = candidates.Groups(study.Line!.Common);
        var costs = study.Line.Customers.Select(customer =>
        {
            var own = new double[candidates.Count];
            new ProductLineCosts(free.Line!, candidates).Fill(
                study.Line.Configurations[customer.Configuration], customer.PilotMassKilograms, own);
            return own;
        }).ToList();
        // Two geometries for two rotations: one for each, so every customer pays what the geometry of its rotation costs it.
        var best = double.PositiveInfinity;
        for (var left = 0; left < candidates.Count; left++)
        {
            for (var right = 0; right < candidates.Count; right++)
            {
                if (groups is null || groups[left] == groups[right])
                    best = Math.Min(best, ObjectiveValue.Of(study.Line.Objective,
                        [.. study.Line.Customers.Select(customer => customer.Share)],
                        [.. study.Line.Customers.Select((customer, c) => costs[c][customer.Configuration == 0 ? left : right])]));
            }
        }

        Assert.True(result.Solution.Proven);
        Check.Close(best, result.Solution.Value, relative: 1e-9, because: "proven to one part in 10⁹");
        Assert.Equal(candidates.Count, result.Candidates);
        Assert.All(result.Assignments, served => Assert.Equal(
            [study.Line.Configurations[served.Row.Configuration].Rotation], result.Geometries[served.Geometry].Rotations));
        Assert.All(result.Chart.Blocks.SelectMany(block => block.Columns), column => Assert.All(
            column.Spans.Where(span => span.Geometry >= 0), span =>
                Assert.Equal([column.Rotation], result.Geometries[span.Geometry].Rotations)));
    }

    [Theory]
    [InlineData("candidates: grid", "lateral_offset is to one side only")]
    [InlineData("candidates: front", "Write `candidates: grid`")]
    public void Candidates_for_one_rotation_only_are_remarked(string keys, string remark) =>
        Assert.Contains(remark, Assert.Single(Read(keys, Pair, Mirrored).Warnings,
            warning => !warning.Contains("datum", StringComparison.Ordinal)));

    [Fact]
    public void An_option_that_turns_the_propeller_keeps_its_columns_apart()
    {
        var options = Options.Replace("small: { wing: { area: 22 m² } }", "small: { machine: { propeller: { turns: clockwise } } }");
        var study = WorkedStudyText.Right(BothSides(Text("allow_both_rotations: true", options: options)));
        Assert.Equal(4, Solve(study).Chart.Blocks.Sum(block => block.Columns.Count));
    }
}
