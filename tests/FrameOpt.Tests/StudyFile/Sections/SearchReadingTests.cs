using FrameOpt.Search.Local;
using FrameOpt.Studies;
using FrameOpt.StudyFile;
using FrameOpt.Tests.Reports;

namespace FrameOpt.Tests.StudyFile.Sections;

public class SearchReadingTests
{
    private const string Exhaustive = "search: { method: exhaustive }";

    private static readonly string evolved = WorkedStudyText.With(
        Exhaustive,
        "search: { method: nsga-ii, population: 40, seed: 7, polish: true, stop: { evaluations: 3000, time: 2 min, "
            + "stall: { evaluations: 500, growth: 1 % }, target: { residual_rms: 3 N·m } } }");

    [Fact]
    public void A_search_is_read_with_its_stop_rules()
    {
        var search = Assert.IsType<SearchSetting.Evolutionary>(WorkedStudyText.Right(evolved).Search);
        Assert.Equal((SearchMethod.NsgaII, 40, 7UL, true), (search.Method, search.Population, search.Seed, search.LocalSearch));
        Assert.Equal(3000, search.Stop.Evaluations);
        Assert.Equal(TimeSpan.FromMinutes(2), search.Stop.Time);
        Assert.Equal(500, search.Stop.Stall!.Evaluations);
        Check.Close(0.01, search.Stop.Stall.Growth, absolute: 1e-15, because: "1 % in binary");
        Assert.Equal([3, null, null], search.Stop.Target);
    }

    [Fact]
    public void What_a_search_does_not_say_is_listed_as_assumed()
    {
        var study = WorkedStudyText.Right(WorkedStudyText.With(Exhaustive, "search: { method: NSGA-III }"));
        Assert.Equal(20_000, ((SearchSetting.Evolutionary)study.Search).Stop.Evaluations);
        foreach (var what in new[] { "population of the search", "seed of the search", "evaluations of the search" })
            Assert.Contains(study.Assumptions, assumption => assumption.What == what);
    }

    [Fact]
    public void A_range_without_a_step_is_any_value_between() =>
        Assert.True(WorkedStudyText.Right(evolved.Replace("{ from: 0 mm, to: 60 mm, step: 1 mm }", "{ from: 0 mm, to: 60 mm }")).Factors[
            1].IsContinuous);

    [Fact]
    public void A_range_without_a_step_is_refused_by_an_exhaustive_search()
    {
        var diagnostic = WorkedStudyText.OneDiagnostic(
            WorkedStudyText.With("{ from: 0 mm, to: 60 mm, step: 1 mm }", "{ from: 0 mm, to: 60 mm }"));
        Assert.Contains("factors.lateral_offset has no step", diagnostic.Message);
        Assert.Contains("`step: 5 mm`", diagnostic.Fix);
    }

    [Fact]
    public void A_space_too_large_to_count_is_taken_by_an_evolutionary_search()
    {
        var text = evolved.Replace("step: 5 mm", "step: 0.001 mm").Replace("step: 1 mm", "step: 0.001 mm").Replace(
            "step: 10 mm", "step: 0.003 mm").Replace(
            "values: [-3 deg, -1.5 deg, 0 deg, 1.5 deg, 3 deg]", "from: -3 deg, to: 3 deg, step: 0.0001 deg");
        Assert.Null(WorkedStudyText.Right(text).GridSize);
    }

    [Fact]
    public void A_method_misspelt_is_one_mistake_whatever_the_factors() =>
        Assert.Contains("has no choice `NSGA3`", WorkedStudyText.OneDiagnostic(
            evolved.Replace("nsga-ii", "NSGA3").Replace("{ from: 0 mm, to: 60 mm, step: 1 mm }", "{ from: 0 mm, to: 60 mm }")).Message);

    [Fact]
    public void Designs_outside_the_ranges_and_columns_not_used_are_warned_of()
    {
        var warnings = Beside(
            "hang_point_spacing [mm],lateral_offset [mm],suspension_height [mm],thrust_line_angle [deg],hub_up [mm]\n"
                + "440,200,150,0,90\n").Study!.Warnings;
        Assert.Contains(warnings, warning => warning.Contains("1 of the 1 designs of designs.csv lie outside"));
        Assert.Contains(warnings, warning => warning.Contains("columns of hub_up"));
    }

    [Theory]
    [InlineData("{ \"tool\": \"FrameOpt\" }")]
    [InlineData("PK\u0003\u0004")]
    public void A_file_that_is_no_table_is_one_mistake(string content) =>
        Assert.Equal("The file designs.csv is not a CSV file.", Assert.Single(Beside(content).Diagnostics).Message);

    [Theory]
    [InlineData("{ method: exhaustive, seed: 1 }", "takes no seed")]
    [InlineData("{ method: NSGA-IV }", "has no choice")]
    [InlineData("{ method: NSGA-II, population: 1 }", "must be between 2 and")]
    [InlineData("{ method: NSGA-II, stop: { evaluations: 0.5 } }", "must be between 1 and")]
    [InlineData("{ method: NSGA-II, stop: { time: 3 m } }", "wants a time")]
    [InlineData("{ method: NSGA-II, stop: { stall: { growth: 1 % } } }", "evaluations is missing")]
    [InlineData("{ method: NSGA-II, stop: { target: { residual_worst: 3 N·m } } }", "is not an objective")]
    [InlineData("{ method: NSGA-II, stop: { target: { residual_rms: 3 kg } } }", "wants a torque")]
    [InlineData("{ method: NSGA-II, stop: { evaluations: 20.000 } }", "written without grouping")]
    [InlineData("{ method: NSGA-II, population: 1'000 }", "written without grouping")]
    [InlineData("{ method: NSGA-II, start: plan }", "has no plan")]
    [InlineData("{ method: NSGA-II, start: designs.csv }", "was not read from a folder")]
    [InlineData("{ method: NSGA-II, polish: perhaps }", "has no choice")]
    public void A_slip_in_the_search_is_one_mistake_in_words(string search, string words) =>
        Assert.Contains(words, WorkedStudyText.OneDiagnostic(WorkedStudyText.With(Exhaustive, $"search: {search}")).Message);

    [Theory]
    [InlineData("hang_point_spacing [mm],lateral_offset [mm],suspension_height [mm],thrust_line_angle [deg]\n"
        + "440,25,150,0\n400,0,200,1.5\n", 2)]
    [InlineData("rank;hang_point_spacing [in];lateral_offset [mm];suspension_height [mm];thrust_line_angle [deg]\r\n1;17.5;25;150;0\r\n",
        1)]
    public void A_search_begins_from_the_designs_of_a_file(string csv, int designs)
    {
        var search = (SearchSetting.Evolutionary)Beside(csv).Study!.Search;
        var start = Assert.IsType<SearchStart.FromFile>(search.Start);
        Assert.Equal(designs, start.Count);
        Check.Close(0.025, start.Designs[0][1], relative: 1e-12, because: "25 mm in metres");
    }

    [Theory]
    [InlineData("", "has no rows")]
    [InlineData("hang_point_spacing [mm]\n440\n", "has no column for lateral_offset")]
    [InlineData("hang_point_spacing [kg],lateral_offset [mm],suspension_height [mm],thrust_line_angle [deg]\n440,25,150,0\n",
        "has no unit this factor is measured in")]
    [InlineData("hang_point_spacing [mm],lateral_offset [mm],suspension_height [mm],thrust_line_angle [deg]\n440,25,150,zero\n",
        "Line 2 has `zero`")]
    [InlineData("hang_point_spacing [mm],lateral_offset [mm],suspension_height [mm],thrust_line_angle [deg]\n440,25,150\n",
        "Line 2 of designs.csv has 3 cells")]
    public void A_slip_in_the_file_of_designs_is_told(string csv, string words) =>
        Assert.Contains(Beside(csv).Diagnostics, diagnostic => diagnostic.Message.Contains(words, StringComparison.Ordinal));

    [Fact]
    public void The_file_of_designs_is_named_with_its_hash()
    {
        var used = Assert.Single(
            Beside("hang_point_spacing [mm],lateral_offset [mm],suspension_height [mm],thrust_line_angle [deg]\n"
                + "440,25,150,0\n").Study!.Files);
        Assert.Equal("designs.csv", used.Name);
        Assert.Equal(64, used.Hash.Length);
    }

    private static StudyReadResult Beside(string csv)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["designs.csv"], csv);
        File.WriteAllText(folder["study.yaml"], WorkedStudyText.With(Exhaustive, "search: { method: NSGA-II, start: designs.csv }"));
        return StudyReader.Read(folder["study.yaml"]);
    }
}
