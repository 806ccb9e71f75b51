using FrameOpt.Cli;

namespace FrameOpt.Tests.Cli;

public class NewCommandTests
{
    public static TheoryData<string> Templates => [.. NewCommand.Templates];

    [Theory]
    [MemberData(nameof(Templates))]
    public void A_template_runs_as_it_is_with_each_of_its_variants_and_says_it_is_invented(string template)
    {
        using var folder = new TemporaryFolder();
        var study = folder["inside/study.yaml"];
        Assert.Equal(ExitCode.Success, new TestTerminal().Run("new", template, "--out", study));
        Assert.Contains("Invented scenario", File.ReadAllText(study));
        var check = new TestTerminal();
        Assert.Equal(ExitCode.Success, check.Run("check", study));
        Assert.Matches(@"Warning: study\.yaml line 1[0-9]: (\d+) of \1 figures of machine"
            + @"(, wing and baseline| and wing) are the template's: ",
            string.Join(' ', check.Output.Split()));
        Assert.Single(check.Output.Split("Warning: ").Skip(1));
        string[] variants = template == "product-line" ? ["light", "heavy"] : [];
        Assert.Equal(ExitCode.Success, new TestTerminal().Run("run", study, "--out", folder["results"]));
        foreach (var variant in variants)
            Assert.Equal(ExitCode.Success, new TestTerminal().Run("run", study, "--variant", variant, "--out", folder[variant]));
    }

    [Fact]
    public void Nothing_is_overwritten()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["study.yaml"], "mine");
        File.WriteAllText(folder["study.schema.json"], "mine");
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, terminal.Run("new", "rationale", "--out", folder["study.yaml"]));
        Assert.Contains("already exists and is not overwritten", terminal.Error);
        Assert.Equal("mine", File.ReadAllText(folder["study.yaml"]));
        Assert.Equal(ExitCode.Success, new TestTerminal().Run("new", "rationale", "--out", folder["other.yaml"]));
        Assert.Equal("mine", File.ReadAllText(folder["study.schema.json"]));
    }

    [Fact]
    public void Without_a_name_the_templates_are_listed()
    {
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run("new"));
        Assert.All(NewCommand.Templates, template => Assert.Contains(template, terminal.Output));
    }

    [Fact]
    public void An_unknown_template_and_an_impossible_place_are_mistakes_in_words()
    {
        using var folder = new TemporaryFolder();
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, terminal.Run("new", "custom", "--out", folder["study.yaml"]));
        Assert.Contains("There is no template custom. The templates are custom-match, product-line, rationale.", terminal.Error);
        File.WriteAllText(folder["file"], "");
        var other = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, other.Run("new", "rationale", "--out", folder["file/study.yaml"]));
        Assert.Contains("could not be written", other.Error);
    }
}
