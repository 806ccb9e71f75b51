using FrameOpt.Running;
using FrameOpt.Studies;
using FrameOpt.StudyFile;

namespace FrameOpt.Tests.Running;

/// <summary>Optimal plans that choose among what can be made and flown.</summary>
public class ChosenRunsTests
{
    [Fact]
    public void Within_limits_every_run_meets_them_and_stands_on_the_grid()
    {
        var (study, answer) = Plan("kind: D-optimal, runs: 18, levels: as made, within: limits, repeats: 2");
        Assert.Equal(36, answer.Plan.Plan.Runs.Count);
        Assert.DoesNotContain(false, answer.MeetsLimits);
        var model = StudyProblem.Model(study);
        Assert.All(answer.Plan.Designs, design =>
        {
            var evaluation = model.Evaluate(design);
            Assert.All(study.Limits, limit => Assert.True(limit.IsMetBy(evaluation)));
            Assert.All(answer.Plan.Factors, factor =>
                Assert.Contains(factor.LevelsSi, level => Math.Abs(level - design[factor.Input]) < 1e-9));
        });
        // Where it counts a plan within the limits gives a better surface than one whose runs all leave them.
        var outside = Plan("kind: central composite").Answer;
        Assert.DoesNotContain(true, outside.MeetsLimits);
        Assert.True(answer.Surfaces[^1].Check!.WithinLimits!.RSquared > outside.Surfaces[^1].Check!.WithinLimits!.RSquared);
    }

    [Fact]
    public void Runs_that_were_made_already_come_first_and_are_a_block_of_their_own()
    {
        const string made = "hang_point_spacing [mm],lateral_offset [mm],suspension_height [mm],thrust_line_angle [deg]\n"
            + "400,-20,150,0\n440,-20,250,1\n480,0,350,-1\n";
        var (_, answer) = Plan("kind: D-optimal, runs: 16, model: linear, made: runs.csv", made);
        Assert.Equal(19, answer.Plan.Plan.Runs.Count);
        Assert.Equal([1, 1, 1, .. Enumerable.Repeat(2, 16)], answer.Plan.Plan.Runs.Select(run => run.Block));
        Check.Close(-0.02, answer.Plan.Designs[1].OffsetMetres, absolute: 1e-12, because: "20 mm to the left, as the file says");
    }

    private static (Study Study, PlanResult Answer) Plan(string plan, string? made = null)
    {
        using var folder = new TemporaryFolder();
        var text = File.ReadAllText(Repository.Study("rationale"));
        var (from, to) = (text.IndexOf("\nplan:", StringComparison.Ordinal), text.IndexOf("  responses:", StringComparison.Ordinal));
        File.WriteAllText(folder["study.yaml"], $"{text[..from]}\nplan:\n  {plan.Replace(", ", "\n  ")}\n{text[to..]}");
        if (made is not null)
            File.WriteAllText(folder["runs.csv"], made);
        var reading = StudyReader.Read(folder["study.yaml"]);
        Assert.Empty(reading.Diagnostics);
        return (reading.Study!, PlanRunner.Run(reading.Study!, StudyProblem.Model(reading.Study!), 2));
    }
}
