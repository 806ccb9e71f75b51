using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.ProductLine.PMedian;
using FrameOpt.Running;
using FrameOpt.Search;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Running;

/// <summary>Lines with geometries that are made already.</summary>
public class FixedGeometriesTests
{
    /// <summary>Off the grid in spacing and offset.</summary>
    private const string Stamped =
        "geometries: [{ name: B, hang_point_spacing: 433 mm, lateral_offset: 21 mm, suspension_height: 250 mm }]";

    [Fact]
    public void One_is_chosen_beside_it_that_no_other_betters_and_its_name_stays()
    {
        var study = ProductLineStudy.Read($"objective: mean; up_to: 2; {Stamped}");
        var result = ProductLineStudy.Solve(study);
        Assert.Equal([("B", true), ("A", false)], result.Geometries.Select(geometry => (geometry.Name, geometry.IsFixed)));
        Assert.True(result.Solution.Proven);
        var stamped = Residuals(study, Stamp(study));
        var problem = new StudyProblem(study, StudyProblem.Model(study));
        var grid = new Grid(problem.Problem);
        var least = Enumerable.Range(0, (int)grid.Count).Min(number =>
            Mean(study, [.. Residuals(study, problem.Geometry(grid.Design(number))).Zip(stamped, Math.Min)]));
        Check.Close(least, result.Solution.Value, relative: 1e-9, because: "proven to one part in a thousand million");
    }

    [Fact]
    public void A_line_of_fixed_geometries_only_is_each_customers_own_machine_evaluated_with_the_better_of_them()
    {
        var study = ProductLineStudy.Read("objective: mean; up_to: 2; geometries: [{ name: old, hang_point_spacing: 433 mm, "
            + "lateral_offset: 21 mm, suspension_height: 250 mm }, { name: new, left_hole: 190 mm, right_hole: 260 mm, "
            + "suspension_height: 300 mm }]");
        var result = ProductLineStudy.Solve(study);
        Assert.Equal(ProductLineStopReason.Fixed, result.Solution.Stop);
        Assert.Equal(["old", "new"], result.Geometries.Select(geometry => geometry.Name));
        // Holes 190 mm left and 260 mm right: 450 mm apart, their middle 35 mm to the right.
        var second = study.Line!.Fixed[1].Design;
        Check.Close(0.450, second.SpacingMetres, relative: 1e-12, because: "a sum of two numbers");
        Check.Close(0.035, second.OffsetMetres, relative: 1e-12, because: "half a difference of two numbers");
        var (one, other) = (Residuals(study, Stamp(study)), Residuals(study, second));
        foreach (var served in result.Assignments)
        {
            var c = served.Row.Customers[0];
            if (double.IsFinite(served.Cost) || double.IsFinite(Math.Min(one[c], other[c])))
                Check.Close(Math.Min(one[c], other[c]), served.Cost, relative: 1e-9, because: "the same formulas, one design at a time");
            Assert.Equal(double.IsInfinity(Math.Min(one[c], other[c])) ? -1 : one[c] <= other[c] ? 0 : 1, served.Geometry);
        }

        Assert.NotEmpty(result.Stress);
        Assert.Single(result.Curve);
    }

    // The engines of the worked balance all turn counter-clockwise.
    [Fact]
    public void A_geometry_for_engines_that_turn_the_other_way_stays_in_the_line_and_nobody_gets_it()
    {
        var study = ProductLineStudy.Read("objective: mean; up_to: 2; geometries: [{ name: B, turns: clockwise, "
            + "hang_point_spacing: 433 mm, lateral_offset: 21 mm, suspension_height: 250 mm }]");
        Assert.Contains(study.Warnings, warning => warning.Contains("nobody gets the geometry B."));
        var result = ProductLineStudy.Solve(study);
        Assert.DoesNotContain(result.Assignments, served => served.Geometry == 0);
        Assert.Equal([Rotation.Clockwise], result.Geometries[0].Rotations);
        Assert.All(study.Line!.Customers, customer => Assert.False(CustomerFit.Of(result, customer).Frames
            .Single(frame => frame.Geometry.IsFixed).IsForRotation));
    }

    [Theory]
    [InlineData("geometries: [{ name: A, lateral_offset: 20 mm }]",
        "line.geometries[1].hang_point_spacing is missing: the study has a range")]
    [InlineData("geometries: [{ name: A, left_hole: 200 mm }]", "line.geometries[1].right_hole is missing.")]
    [InlineData("geometries: [{ name: A, left_hole: 200 mm, right_hole: 220 mm, lateral_offset: 10 mm }]",
        "gives both holes and lateral_offset")]
    [InlineData("geometries: [{ name: A, hub_up: 100 mm }]", "hub_up is no factor of this study")]
    [InlineData("geometries: [{ name: Standard, lateral_offset: 20 mm }]", "has 8 characters; 6 is the most")]
    [InlineData("geometries: []", "0 geometries are listed; there can be 1 to 26.")]
    [InlineData("geometries: [{ name: A }, { name: a }]", "Two geometries have this name.")]
    [InlineData("geometries: [{ name: A }, { name: B }, { name: C }]", "variants is 2, and the 3 of geometries count")]
    [InlineData("common: spacing; geometries: [{ name: A, hang_point_spacing: 433 mm, lateral_offset: 2 mm, suspension_height: 200 mm }]",
        "No design of the grid has the hang_point_spacing of the geometry A, 433 mm")]
    public void What_cannot_be_is_refused(string keys, string message)
    {
        // Without the baseline nothing stands in for what a geometry leaves out.
        var text = ProductLineStudy.Text(keys);
        var from = text.IndexOf("\nbaseline:", StringComparison.Ordinal);
        if (from >= 0)
            text = text.Remove(from, text.IndexOf('\n', text.IndexOf("thrust_line_angle", from, StringComparison.Ordinal)) - from);
        Assert.Contains(FrameOpt.StudyFile.StudyReader.Parse(System.Text.Encoding.UTF8.GetBytes(text), "study.yaml").Diagnostics,
            diagnostic => diagnostic.Text.Contains(message));
    }

    private static FrameGeometry Stamp(Study study) => FrameGeometry.On(study.Machine, 0.433, 0.021, 0.250, 0);

    /// <summary>The residual of each customer on the own machine, infinite where the design cannot fly there or breaks a limit.</summary>
    private static double[] Residuals(Study study, FrameGeometry design) => [.. study.Line!.Customers.Select(customer =>
    {
        var own = study.Line.Configurations[customer.Configuration].For(customer.PilotMassKilograms);
        var evaluation = StudyProblem.Model(own).Evaluate(FrameGeometry.On(own.Machine, design.SpacingMetres, design.OffsetMetres,
            design.HeightMetres, design.AngleRadians));
        return evaluation.Failure is null && own.Limits.All(limit => limit.IsMetBy(evaluation))
            ? evaluation[MissionQuantity.ResidualRms] : double.PositiveInfinity;
    })];

    private static double Mean(Study study, double[] costs) =>
        costs.Zip(study.Line!.Customers, (cost, customer) => cost * customer.Share).Sum() / study.Line!.Customers.Sum(one => one.Share);
}
