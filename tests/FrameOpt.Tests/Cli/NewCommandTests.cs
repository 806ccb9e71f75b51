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
    public void The_line_has_its_customers_in_a_table_to_fill_in_and_runs_as_it_is()
    {
        using var folder = new TemporaryFolder();
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run("new", "product-line", "--out", folder["study.yaml"]));
        Assert.Contains("Also written: customers.csv, its invented customers", terminal.Output);
        // The five customers of the template's own list.
        Assert.Equal("name,pilot_mass [kg],wing,count\nschool (invented),62,22 m²,12\nclub (invented),74,25 m²,20\n"
            + "dealer north (invented),86,25 m²,15\ndealer south (invented),95,28 m²,9\ntall pilots (invented),104,28 m²,4\n",
            File.ReadAllText(folder["customers.csv"]));
        var study = FrameOpt.StudyFile.StudyReader.Read(folder["study.yaml"]).Study!;
        var inTheTemplate = FrameOpt.StudyFile.StudyReader.Read(Repository.Template("product-line")).Study!;
        Assert.Equal(["customers.csv"], study.Files.Select(file => file.Name));
        Assert.Equal(inTheTemplate.Line!.Customers.Select(one => (one.Configuration, one.PilotMassKilograms, one.Share)),
            study.Line!.Customers.Select(one => (one.Configuration, one.PilotMassKilograms, one.Share)));
        Assert.Equal(ExitCode.Success, new TestTerminal().Run("line", folder["study.yaml"], "--out", folder["out"]));
        var again = new TestTerminal();
        Assert.Equal(ExitCode.Success, again.Run("new", "product-line", "--out", folder["other.yaml"]));
        Assert.Contains("customers.csv is there already and was left alone", again.Output);
        Assert.Empty(FrameOpt.StudyFile.StudyReader.Read(folder["other.yaml"]).Study!.Files);
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
