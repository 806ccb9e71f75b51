using FrameOpt.Cli;
using FrameOpt.Tests.Running;

namespace FrameOpt.Tests.Cli;

/// <summary>One customer of a line by name.</summary>
public class EvaluateCustomerTests
{
    // The pilot of the customer north weighs 81 kg and flies the big engine and the small wing: the same figures as with the study itself
    // changed to that, and with the choices and the mass given one by one.
    [Fact]
    public void A_customer_of_the_line_is_evaluated_by_name()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["study.yaml"], ProductLineStudy.Text());
        string Figures(params string[] options)
        {
            var terminal = new TestTerminal();
            Assert.Equal(ExitCode.Success, terminal.Run(["evaluate", folder["study.yaml"], .. options, "--set", "lateral_offset=20 mm"]));
            return terminal.Output;
        }

        var named = Figures("--customer", "North");
        Assert.Equal(named, Figures("--variant", "engine=big", "--variant", "wing=small", "--pilot", "81 kg"));
        Assert.NotEqual(named, Figures("--customer", "North", "--pilot", "86 kg"));
        Assert.NotEqual(named, Figures());
        File.WriteAllText(folder["by-hand.yaml"], File.ReadAllText(folder["study.yaml"]).Replace("mass: 78 kg", "mass: 81 kg")
            .Replace("mass: 24.5 kg", "mass: 31 kg").Replace("diameter: 1.30 m", "diameter: 1.35 m").Replace("area: 25 m²", "area: 22 m²"));
        var hand = new TestTerminal();
        hand.Run("evaluate", folder["by-hand.yaml"], "--set", "lateral_offset=20 mm");
        Assert.Equal(hand.Output, named);
    }

    [Fact]
    public void A_customer_that_is_none_is_an_error()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["study.yaml"], ProductLineStudy.Text());
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, terminal.Run("evaluate", folder["study.yaml"], "--customer", "nort", "--pilot", "81"));
        Assert.Contains("Did you mean `north`?", terminal.Error);
        Assert.Contains("has no unit", terminal.Error);
    }
}
