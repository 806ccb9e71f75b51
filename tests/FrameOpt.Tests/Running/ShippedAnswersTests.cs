
namespace FrameOpt.Tests.Running;

/// <summary>What the README of a shipped study promises as its answer.</summary>
public class ShippedAnswersTests
{
    // The propeller turns clockwise: its reaction pushes the left side down, so the machine pulls to the left with the hang points in the
    // middle.
    [Fact]
    public void A_custom_match_for_a_clockwise_propeller_moves_the_hang_points_to_the_left_that_pulls_without_it()
    {
        var run = ShippedRun.Of("custom-match");
        Assert.True(run.Factor("lateral_offset") < 0);
        var inTheMiddle = run.Json.GetProperty("baseline").GetProperty("phases");
        foreach (var phase in run.Mission.Where(phase => phase.GetProperty("power").GetString() != "engine off"))
            Assert.Equal("left", inTheMiddle.GetProperty(phase.GetProperty("name").GetString()!).GetProperty("steers")
                .GetProperty("value").GetString());
    }

    [Fact]
    public void With_a_full_tank_on_the_right_the_hang_points_go_further_right_than_with_an_empty_one()
    {
        var (full, empty) = (ShippedRun.Of("full-and-empty", "full tank"), ShippedRun.Of("full-and-empty", "empty tank"));
        Assert.True(full.Factor("lateral_offset") > empty.Factor("lateral_offset"));
    }

    [Fact]
    public void Luggage_on_the_right_leaves_a_smaller_offset_to_the_left_than_luggage_on_the_left()
    {
        var (left, right) = (ShippedRun.Of("luggage-on-one-side"), ShippedRun.Of("luggage-on-one-side", "luggage on the right"));
        Assert.True(left.Factor("lateral_offset") < right.Factor("lateral_offset"));
        Assert.True(left.Factor("lateral_offset") < 0);
    }

    [Fact]
    public void A_rationale_has_24_runs_and_a_surface_for_each_of_five_responses()
    {
        var run = ShippedRun.Of("rationale");
        Assert.Equal(24, run.PlanRuns);
        Assert.Equal(5, run.Json.GetProperty("plan").GetProperty("surfaces").GetArrayLength());
    }

    [Fact]
    public void Drilled_holes_are_answered_in_the_inches_they_were_asked_in()
    {
        var run = ShippedRun.Of("drilled-holes");
        Assert.Equal("in", run.Chosen.GetProperty("design").GetProperty("lateral_offset").GetProperty("unit").GetString());
        var (spacing, offset) = (run.Factor("hang_point_spacing"), run.Factor("lateral_offset"));
        Assert.Contains(spacing / 2 - offset, new[] { 7.5, 8, 8.5, 9 });
        Assert.Contains(spacing / 2 + offset, new[] { 8, 8.5, 9, 9.5, 10 });
    }

    // 7 levels of each of 7 factors.
    [Fact]
    public void Seven_factors_are_compared_with_a_whole_grid_and_several_lie_at_the_end_of_their_range()
    {
        var run = ShippedRun.Of("seven-factors");
        Assert.Equal(823_543, run.Json.GetProperty("certificate").GetProperty("grid_designs").GetInt32());
        var atAnEnd = run.Study.GetProperty("factors").EnumerateObject().Count(factor =>
        {
            double[] levels = [.. factor.Value.GetProperty("levels").EnumerateArray().Select(level => level.GetDouble())];
            return run.Factor(factor.Name) == levels.Min() || run.Factor(factor.Name) == levels.Max();
        });
        Assert.True(atAnEnd >= 2, $"{atAnEnd} factors at an end");
    }
}
