using FrameOpt.Cli;
using FrameOpt.Plans;
using FrameOpt.Running;
using FrameOpt.Studies;
using FrameOpt.StudyFile;
using FrameOpt.Tests.Cli;

namespace FrameOpt.Tests.Running;

/// <summary>Plans with factors that are hard to change, from a study to the analysis of what was measured.</summary>
public class WholePlotPlanTests
{
    [Theory]
    [InlineData("kind: full factorial, repeats: 2, hard_to_change: [suspension_height]", 4)]
    [InlineData("kind: fractional factorial, generators: [D=ABC], hard_to_change: [hang_point_spacing, suspension_height]", 4)]
    [InlineData("kind: central composite, hard_to_change: [suspension_height]", 3)]
    [InlineData("kind: D-optimal, runs: 18, model: interactions, hard_to_change: [suspension_height], whole_plots: 6", 6)]
    [InlineData("kind: I-optimal, runs: 18, model: linear, levels: as made, within: limits, hard_to_change: [suspension_height], "
        + "whole_plots: 5", 5)]
    public void All_runs_of_a_whole_plot_set_the_hard_factors_alike(string plan, int plots)
    {
        var study = Study(plan)!;
        var built = StudyPlan.Of(study, StudyProblem.Model(study)).Plan;
        Assert.Equal(plots, built.WholePlots);
        var hard = study.Plan!.HardToChange.Select(name => built.Factors.ToList().IndexOf(name)).ToList();
        foreach (var plot in built.Runs.GroupBy(run => run.WholePlot))
            Assert.Single(plot.Select(run => string.Join('|', hard.Select(f => run.Coded[f]))).Distinct());
        // Plot after plot, neither plots nor runs in standard order.
        var order = built.InRandomOrder(1);
        Assert.Equal(plots, 1 + order.Zip(order.Skip(1)).Count(pair => pair.First.WholePlot != pair.Second.WholePlot));
        Assert.Equal(built.Runs.Count, order.Select(run => run.Number).Distinct().Count());
        Assert.NotEqual(order.Select(run => run.Number), order.Select(run => run.Number).Order());
    }

    [Theory]
    [InlineData("kind: full factorial, hard_to_change: [height]", "wants names of swept factors")]
    [InlineData("kind: D-optimal, runs: 18, hard_to_change: [suspension_height]", "both hard_to_change and whole_plots")]
    [InlineData("kind: D-optimal, runs: 18, hard_to_change: [suspension_height], whole_plots: 2",
        "at least 3 whole plots are needed, not 2")]
    [InlineData("kind: Sobol sequence, runs: 8, hard_to_change: [suspension_height]", "takes no hard_to_change")]
    [InlineData("kind: full factorial, hard_to_change: "
        + "[hang_point_spacing, lateral_offset, suspension_height, thrust_line_angle]", "Every factor of the plan is hard to change")]
    public void What_cannot_be_is_refused_with_its_reason(string plan, string why) => Assert.Null(Study(plan, why));

    // The best split plot of one factor of each kind and their interaction, in 4 whole plots of 2, by hand: each plot has both ends of the
    // easy factor, and each end of the hard one has two plots. Then 8 runs' information for the easy factor and the interaction, and 8 / 3
    // for the constant and the hard factor (variances 1 and 1 of plot and run: 8 over 1 + 2).
    [Fact]
    public void The_optimal_whole_plots_of_two_factors_are_those_worked_by_hand()
    {
        var plan = OptimalPlan.Build(new OptimalRequest
        {
            Factors = ["hard", "easy"],
            Model = PlanModel.Interactions(2),
            Runs = 8,
            Levels = [[-1, 0, 1], [-1, 0, 1]],
            HardToChange = [0],
            WholePlots = 4,
            Starts = 10,
        });
        foreach (var plot in plan.Runs.GroupBy(run => run.WholePlot))
            Assert.Equal([-1, 1], plot.Select(run => run.Coded[1]).Order());
        Assert.Equal([-1, -1, 1, 1], plan.Runs.GroupBy(run => run.WholePlot).Select(plot => plot.First().Coded[0]).Order());
        var quality = PlanQuality.Of(plan, PlanModel.Interactions(2))!;
        double[] errors = [Math.Sqrt(3 / 8.0), Math.Sqrt(3 / 8.0), Math.Sqrt(1 / 8.0), Math.Sqrt(1 / 8.0)];
        foreach (var (expected, found) in errors.Zip(quality.StandardErrors))
            Check.Close(expected, found, relative: 1e-9, because: "the same formula");
        Assert.Equal([2, 2, 2, 2], quality.TermDegreesOfFreedom);
    }

    [Fact]
    public void What_is_written_for_measuring_is_read_as_whole_plots()
    {
        using var folder = new TemporaryFolder();
        Write(folder["study.yaml"], "kind: full factorial, repeats: 2, hard_to_change: [suspension_height]");
        var planned = new TestTerminal();
        Assert.Equal(ExitCode.Success, planned.Run("plan", folder["study.yaml"], "--csv", folder["runs.csv"]));
        Assert.Contains("suspension_height hard to change: 4 whole plots with 2 different settings", planned.Output);
        Assert.Contains("are judged by 2 degrees of freedom", planned.Output);
        var lines = File.ReadAllLines(folder["runs.csv"]).Select(line => line.Split(',')).ToList();
        var (plot, empty) = (Array.IndexOf(lines[0], "whole plot"),
            Array.FindIndex(lines[0], cell => cell.StartsWith("residual_rms", StringComparison.Ordinal)));
        foreach (var (line, i) in lines.Skip(1).Select((line, i) => (line, i)))
            line[empty] = $"{(10 * line[plot][0]) + (i % 3)}";
        File.WriteAllLines(folder["runs.csv"], lines.Select(line => string.Join(',', line)));
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run("analyse", folder["runs.csv"], "--response", "residual_rms", "--model", "linear"));
        Assert.Contains("32 runs in 4 whole plots", terminal.Output);
        Assert.Matches("between whole plots, error +2 ", terminal.Output);
        Assert.Equal(ExitCode.InvalidInput, terminal.Run("analyse", folder["runs.csv"], "--response", "residual_rms", "--select"));
    }

    private static Study? Study(string plan, string? why = null)
    {
        using var folder = new TemporaryFolder();
        Write(folder["study.yaml"], plan);
        var reading = StudyReader.Read(folder["study.yaml"]);
        if (why is null)
            Assert.Empty(reading.Diagnostics);
        else
            Assert.Contains(reading.Diagnostics, error => error.Message.Contains(why, StringComparison.Ordinal));
        return reading.Study;
    }

    private static void Write(string file, string plan)
    {
        var text = File.ReadAllText(Repository.Study("rationale"));
        var (from, to) = (text.IndexOf("\nplan:", StringComparison.Ordinal), text.IndexOf("  responses:", StringComparison.Ordinal));
        File.WriteAllText(file, $"{text[..from]}\nplan:\n  {System.Text.RegularExpressions.Regex.Replace(plan, @", (?=\w+:)", "\n  ")}\n"
            + text[to..]);
    }
}
