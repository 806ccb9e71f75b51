using System.Globalization;
using System.Text.RegularExpressions;
using FrameOpt.Cli;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Running;
using FrameOpt.StudyFile;
using FrameOpt.Tests.Running;

namespace FrameOpt.Tests.Cli;

/// <summary>Cards of customers of a line that is made already, so that nothing is to be chosen.</summary>
public class CardCommandTests
{
    private const string Stamped = "objective: mean; up_to: 2; geometries: [{ name: A, hang_point_spacing: 440 mm, lateral_offset: 20 mm, "
        + "suspension_height: 150 mm }, { name: B2, hang_point_spacing: 440 mm, lateral_offset: 35 mm, suspension_height: 150 mm }]";

    /// <summary>An effort over 1 is too much for a pilot, but not for this test.</summary>
    private static string Text => ProductLineStudy.Text(Stamped).Replace("  variants: 2\n", "").Replace("effort_worst, at_most: 0.6",
        "effort_worst, at_most: 9");

    [Fact]
    public void Every_customer_gets_a_sheet_with_the_frame_that_leaves_least_on_the_own_machine()
    {
        using var folder = new TemporaryFolder();
        var terminal = Run(folder, "--all");
        var page = File.ReadAllText(folder["cards.html"]);
        Assert.Equal(5, Regex.Count(page, "<article>"));
        var line = Study(folder).Line!;
        foreach (var customer in line.Customers)
        {
            var own = line.Configurations[customer.Configuration].For(customer.PilotMassKilograms);
            double Residual(double offset) => StudyProblem.Model(own).Evaluate(FrameGeometry.On(own.Machine, 0.44, offset, 0.15, 0))
                [MissionQuantity.ResidualRms];
            var best = Residual(0.020) <= Residual(0.035) ? "A" : "B2";
            Assert.Contains($"{customer.Name}: frame {best}, ", terminal.Output);
        }
    }

    // Statics: of a beam on two supports the right one carries W (r - e + s/2) / s, with r the centre of all masses to the right.
    [Fact]
    public void The_scales_must_read_what_the_moments_of_the_masses_give()
    {
        using var folder = new TemporaryFolder();
        Run(folder, "--customer", "school");
        var study = Study(folder);
        var machine = study.Line!.Configurations[0].For(62).Machine;
        var total = machine.Masses.Sum(item => item.MassKilograms);
        var right = machine.Masses.Sum(item => item.MassKilograms * item.At.RightMetres) / total;
        var page = File.ReadAllText(folder["cards.html"]);
        var offset = page.Contains("Frame A.") ? 0.020 : 0.035;
        var share = (right - offset + 0.22) / 0.44;
        foreach (var (side, of) in new[] { ("LEFT", 1 - share), ("RIGHT", share) })
        {
            var shown = Regex.Match(page, $@"pilot's {side}</th><td>([\d,]+) N").Groups[1].Value.Replace(",", "");
            Check.Close(of * total * 9.80665, double.Parse(shown, CultureInfo.InvariantCulture), absolute: 0.51,
                because: "shown to the newton");
        }
    }

    [Fact]
    public void Scales_of_a_pilot_who_sits_to_one_side_put_the_centre_there_and_name_the_frame_to_use()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["study.yaml"], Text);
        var machine = Study(folder).Line!.Configurations[0].For(62).Machine;
        // The same load with 5 mm of body to the right: 62 kg x 5 mm over a spacing of 440 mm goes from the left scale to the right one.
        var fit = new TestTerminal();
        Assert.Equal(ExitCode.Success, fit.Run("card", folder["study.yaml"], "--customer", "School", "--out", folder["a.html"]));
        var shown = Regex.Matches(File.ReadAllText(folder["a.html"]), @"pilot's (?:LEFT|RIGHT)</th><td>([\d,]+) N")
            .Select(match => double.Parse(match.Groups[1].Value.Replace(",", ""), CultureInfo.InvariantCulture)).ToArray();
        var moved = 62 * 9.80665 * 0.005 / 0.44;
        var scales = new TestTerminal();
        Assert.Equal(ExitCode.Success, scales.Run("card", folder["study.yaml"], "--pilot", "62 kg", "--engine", "light", "--wing=small",
            "--scales", FormattableString.Invariant($"left {shown[0] - moved:0.0} N, right {shown[1] + moved:0.0} N"), "--out",
            folder["b.html"]));
        var right = machine.CentreOfGravity.RightMetres + 62 * 0.005 / machine.MassKilograms;
        var said = Regex.Match(scales.Output, @"is ([\d.]+) mm to the pilot's (left|right), good to");
        Check.Close(1000 * right, double.Parse(said.Groups[1].Value, CultureInfo.InvariantCulture) * (said.Groups[2].Value == "left" ? -1
            : 1),
            absolute: 0.6, because: "loads rounded to a newton");
        Assert.Contains("Likeliest single cause: ", scales.Output);
        Assert.Contains("rame to use: ", scales.Output.Replace("FRAME TO USE", "Frame to use"));
        Assert.Contains("The scales were read with frame", File.ReadAllText(folder["b.html"]));
    }

    [Theory]
    [InlineData("The line has no customer of this name. Did you mean `school`?", "--customer", "shool")]
    [InlineData("--wing is missing. Write it once, with small or large.", "--pilot", "80 kg", "--engine", "light")]
    [InlineData("The line has no option of this name.", "--pilot", "80 kg", "--engine", "light", "--wing", "small", "--wheel", "big")]
    [InlineData("engine has no choice `bg`. Did you mean `big`?", "--pilot", "80 kg", "--engine", "bg", "--wing", "small")]
    [InlineData("card needs one of --customer", "--threads", "1")]
    [InlineData("--scales are of one customer", "--all", "--scales", "left 40 kgf, right 50 kgf")]
    [InlineData("This means nothing here.", "--customer", "school", "--engine", "big")]
    public void What_is_wrong_is_said_and_nothing_written(string message, params string[] args)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["study.yaml"], Text);
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, terminal.Run(["card", folder["study.yaml"], .. args, "--out", folder["cards.html"]]));
        Assert.Contains(message, terminal.Error);
        Assert.False(File.Exists(folder["cards.html"]));
    }

    private static FrameOpt.Studies.Study Study(TemporaryFolder folder) => StudyReader.Read(folder["study.yaml"]).Study!;

    private static TestTerminal Run(TemporaryFolder folder, params string[] args)
    {
        File.WriteAllText(folder["study.yaml"], Text);
        var terminal = new TestTerminal();
        var code = terminal.Run(["card", folder["study.yaml"], .. args, "--out", folder["cards.html"]]);
        Assert.True(code == ExitCode.Success, terminal.Error);
        return terminal;
    }
}
