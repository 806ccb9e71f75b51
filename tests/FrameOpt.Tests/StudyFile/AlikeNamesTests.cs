using FrameOpt.Studies;
using FrameOpt.StudyFile;
using FrameOpt.Tests.Running;

namespace FrameOpt.Tests.StudyFile;

/// <summary>Two things of one name: it would be open which of them counts, so each is refused in its place.</summary>
public class AlikeNamesTests
{
    [Theory]
    [InlineData("\"cruise \"", "begins or ends with a blank")]
    [InlineData("Cruise", "Two phases have this name; the first stands in line 49.")]
    [InlineData("\"cru\u200bise\"", "Two phases have this name")]
    public void A_phase_that_reads_like_another_is_refused_in_its_line(string name, string what)
    {
        var reading = WorkedStudyText.Read(WorkedStudyText.With("  accelerated:",
            $"  {name}: {{ weight: 0.1, power: level }}\n  accelerated:"));
        Assert.Null(reading.Study);
        Assert.Contains(reading.Diagnostics, diagnostic => diagnostic.Message.Contains(what) && diagnostic.Line == 50);
    }

    [Theory]
    [InlineData("name: \"\"")]
    [InlineData("name: \"  \"")]
    public void Masses_without_a_name_are_refused(string name)
    {
        var mistake = WorkedStudyText.OneDiagnostic(WorkedStudyText.With("name: clothing", name));
        Assert.Equal((9, "The name of a mass is empty."), (mistake.Line, mistake.Message));
    }

    [Fact]
    public void Masses_that_differ_only_in_capitals_are_refused() =>
        Assert.Equal(9, WorkedStudyText.OneDiagnostic(WorkedStudyText.With("name: clothing", "name: PILOT")).Line);

    [Fact]
    public void A_glide_cannot_be_added_where_both_of_its_names_are_taken()
    {
        var text = WorkedStudyText.Text.Replace("power: engine off", "power: level")
            .Replace("\nfactors:", "\n  \"Glide, engine off\": { weight: 0.1, power: level }\nfactors:");
        var mistake = WorkedStudyText.OneDiagnostic(text);
        Assert.Contains("the name of the glide that is added is taken", mistake.Message);
        Assert.Contains("Glide, engine off", mistake.Excerpt);
    }

    [Theory]
    [InlineData("name,pilot_mass [kg],engine,wing,Name\na,80,light,small,b\n", "columns 1 and 5 are headed alike, `name` and `Name`")]
    [InlineData("pilot_mass [kg],pilot_mass [lb],engine,wing\n80,180,light,small\n", "columns 1 and 2 are headed alike")]
    [InlineData("pilot_mass [kg],engine,engine,wing\n80,light,big,small\n", "columns 2 and 3 are headed alike")]
    public void Two_columns_of_one_name_are_refused_with_their_places(string csv, string what)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["customers.csv"], csv);
        File.WriteAllText(folder["study.yaml"], ProductLineStudy.Text(customers: "  customers: customers.csv\n"));
        Assert.Contains($"Line 1 of customers.csv: {what}", Assert.Single(StudyReader.Read(folder["study.yaml"]).Diagnostics).Message);
    }

    [Fact]
    public void Two_columns_of_one_factor_are_refused_in_a_start_too()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["start.csv"], "lateral_offset [mm],suspension_height [mm],lateral_offset [m]\n1,200,0.02\n");
        File.WriteAllText(folder["study.yaml"],
            WorkedStudyText.With("method: exhaustive", "method: NSGA-II, start: start.csv"));
        Assert.Contains("columns 1 and 3 are headed alike",
            Assert.Single(StudyReader.Read(folder["study.yaml"]).Diagnostics).Message);
    }

    [Theory]
    [InlineData("share", "1e308")]
    [InlineData("share", "1e308 %")]
    [InlineData("count", "1e308")]
    [InlineData("count", "1000001")]
    public void Shares_and_counts_whose_sum_is_beyond_measure_are_refused_in_their_line(string header, string value)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["customers.csv"],
            $"pilot_mass [kg],engine,wing,{header}\n80,light,small,1\n80,light,small,{value}\n");
        File.WriteAllText(folder["study.yaml"], ProductLineStudy.Text(customers: "  customers: customers.csv\n"));
        Assert.Contains($"Line 3 of customers.csv: `{value}` is not a {header}.",
            Assert.Single(StudyReader.Read(folder["study.yaml"]).Diagnostics).Message);
    }

    [Theory]
    [InlineData("1e308")]
    [InlineData("1e308 %")]
    [InlineData("1000001")]
    [InlineData("1e-320")]
    public void Weights_of_phases_that_sums_cannot_hold_are_refused(string weight)
    {
        var text = System.Text.RegularExpressions.Regex.Replace(WorkedStudyText.Text, @"(  cruise: +\{ weight: )[^,]+", $"${{1}}{weight}");
        var mistake = WorkedStudyText.OneDiagnostic(text);
        Assert.Equal(weight, mistake.Excerpt);
        Assert.Equal(49, mistake.Line);
    }
}
