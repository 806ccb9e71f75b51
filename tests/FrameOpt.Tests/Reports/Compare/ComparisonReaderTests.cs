using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Compare;
using FrameOpt.Reports.Tables;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.Tests.Reports.Compare;

public sealed class ComparisonReaderTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Every_figure_is_the_run_s_own_whichever_design_is_asked_for()
    {
        var report = ReportFixture.Report();
        var run = RunJsonFolder.Write(folder, "run", report);
        var columns = RunJsonFolder.Read(run, $"{run}:2", $"{run}:7").Columns;
        Assert.Equal([1, 2, 7], columns.Select(column => column.Position));
        Assert.Equal(["A", "B", "C"], columns.Select(column => column.Letter));
        foreach (var column in columns)
        {
            var evaluation = report.FrontEvaluations[column.Position - 1];
            Assert.Equal(evaluation.Phases.Select(phase => phase.Phase.Name), column.Phases.Select(phase => phase.Name));
            Assert.Equal(evaluation.Phases.Select(phase => phase.Phase.IsSettled), column.Phases.Select(phase => phase.IsSettled));
            foreach (var quantity in FrontTable.PhaseQuantities)
                Assert.Equal(evaluation.Phases.Select(phase => phase[quantity]), column.Phases.Select(phase => phase[quantity]));
            Assert.Equal(evaluation.Mission.Select(value => double.IsFinite(value) ? value : double.NaN), column.Mission);
            foreach (var input in FactorCatalogue.All)
                Check.Close(evaluation.Geometry[input], column.Geometry[input], absolute: 1e-11,
                    because: "run.json holds factors in the user's unit, to nine decimals");
        }

        Assert.Equal(report.Result.Study.Machine.CentreOfGravity, columns[0].Run.Machine.CentreOfGravity);
        Assert.Equal(report.Result.Study.Machine.Propeller.Rotation, columns[0].Run.Machine.Propeller.Rotation);
    }

    // JSON has no infinity: null stands for it.
    [Fact]
    public void Lean_and_effort_without_bound_come_back_without_bound()
    {
        var report = ReportFixture.Report(2);
        var unbounded = report with
        {
            FrontEvaluations = [.. report.FrontEvaluations.Select(design => design
                .With(1, PhaseQuantity.Lean, double.PositiveInfinity).With(1, PhaseQuantity.Effort, double.PositiveInfinity))],
        };
        var run = RunJsonFolder.Write(folder, "run", unbounded);
        Assert.Contains("null", File.ReadAllText(Path.Combine(run, "run.json")));
        var climb = RunJsonFolder.Read(run, $"{run}:2").Columns[0].Phases[1];
        Assert.Equal((double.PositiveInfinity, double.PositiveInfinity), (climb[PhaseQuantity.Lean], climb[PhaseQuantity.Effort]));
        Assert.True(climb.CannotBeHeld);
    }

    [Fact]
    public void All_that_stands_against_a_comparison_is_said_at_once()
    {
        var good = RunJsonFolder.Write(folder, "good", ReportFixture.Report(3));
        Directory.CreateDirectory(folder["empty"]);
        Directory.CreateDirectory(folder["broken"]);
        File.WriteAllText(Path.Combine(folder["broken"], "run.json"), "{\"tool\": ");
        var older = RunJsonFolder.Write(folder, "older", ReportFixture.Report(3), json => json["version"] = "0.0.1");
        var refused = RunJsonFolder.Refused(folder["nowhere"], folder["empty"], folder["broken"], older, $"{good}:4", $"{good}:0");
        Assert.Equal(6, refused.Count);
        Assert.Contains("there is no such folder", refused[0]);
        Assert.Contains("contains no run.json", refused[1]);
        Assert.Contains("damaged", refused[2]);
        Assert.Contains("written by FrameOpt 0.0.1, and this is 0.1.0", refused[3]);
        Assert.Contains("has 3 ranked designs, numbered from 1; there is no design 4", refused[4]);
        Assert.Contains("there is no design 0", refused[5]);
    }

    [Fact]
    public void Other_files_called_run_json_are_refused()
    {
        var good = RunJsonFolder.Write(folder, "good", ReportFixture.Report(3));
        var foreign = RunJsonFolder.Write(folder, "foreign", ReportFixture.Report(3), json => json["tool"] = "another");
        var list = folder["list"];
        Directory.CreateDirectory(list);
        File.WriteAllText(Path.Combine(list, "run.json"), "[]");
        var huge = folder["huge"];
        Directory.CreateDirectory(huge);
        using (var file = File.Create(Path.Combine(huge, "run.json")))
            file.SetLength(RunJsonReader.MaxBytes + 1);
        var half = RunJsonFolder.Write(folder, "half", ReportFixture.Report(3));
        var text = File.ReadAllText(Path.Combine(half, "run.json"));
        File.WriteAllText(Path.Combine(half, "run.json"), text.Replace("One frame for one engine", "\\ud800"));
        var deep = folder["deep"];
        Directory.CreateDirectory(deep);
        File.WriteAllText(Path.Combine(deep, "run.json"), new string('[', 100_000));
        Assert.Collection(
            RunJsonFolder.Refused(good, foreign, list, huge, half, deep),
            refusal => Assert.Contains("was not written by FrameOpt", refusal),
            refusal => Assert.Contains("was not written by FrameOpt", refusal),
            refusal => Assert.Contains("larger than 50 MB", refusal),
            refusal => Assert.Contains("damaged", refusal),
            refusal => Assert.Contains("damaged", refusal));
        Assert.Contains("is a file", RunJsonFolder.Refused(good, Path.Combine(good, "run.json"))[0]);
    }

    [Fact]
    public void A_study_of_300_000_keys_is_refused_at_once()
    {
        var good = RunJsonFolder.Write(folder, "good", ReportFixture.Report(3));
        var wide = RunJsonFolder.Write(folder, "wide", ReportFixture.Report(3), json =>
        {
            for (var i = 0; i < 300_000; i++)
                json["study"]![$"key{i}"] = i;
        });
        var clock = System.Diagnostics.Stopwatch.StartNew();
        Assert.Contains("more than 20000 parts", Assert.Single(RunJsonFolder.Refused(wide, good)));
        Assert.True(clock.Elapsed.TotalSeconds < 5, $"took {clock.Elapsed.TotalSeconds:0.0} s");
    }

    [Fact]
    public void A_folder_without_a_name_is_refused() =>
        Assert.Contains("The name of a folder is empty", Assert.Single(RunJsonFolder.Refused("", "")));

    [Fact]
    public void A_run_of_an_older_build_and_one_that_found_nothing_say_what_to_do()
    {
        var report = ReportFixture.Report(3);
        var older = RunJsonFolder.Write(folder, "older", report, json =>
        {
            var columns = json["front"]!["columns"]!.AsArray();
            while (columns.Count > 10)
                columns.RemoveAt(10);
        });
        var nothing = RunJsonFolder.Write(
            folder, "nothing", report with { Result = ReportFixture.NothingFeasible(null), FrontEvaluations = [] });
        var refused = RunJsonFolder.Refused(older, nothing);
        Assert.Contains("Run the study again", refused[0]);
        Assert.Contains("found no design that meets every limit", refused[1]);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(7)]
    public void Two_to_six_designs_are_taken(int count)
    {
        var good = RunJsonFolder.Write(folder, "good", ReportFixture.Report(3));
        Assert.Contains("two to 6 designs", RunJsonFolder.Refused([.. Enumerable.Repeat(good, count)])[0]);
    }

    [Fact]
    public void A_folder_whose_name_ends_in_a_colon_and_a_number_is_taken_as_it_stands()
    {
        if (OperatingSystem.IsWindows())
            return;
        RunJsonFolder.Write(folder, "run", ReportFixture.Report(3));
        var named = RunJsonFolder.Write(folder, "run:2", ReportFixture.Report(3));
        Assert.Equal([1, 3], RunJsonFolder.Read(named, $"{named}:3").Columns.Select(column => column.Position));
    }

    [Fact]
    public void Damage_anywhere_is_refused_or_does_no_harm_but_never_throws()
    {
        var report = ReportFixture.Report(2);
        var good = RunJsonFolder.Write(folder, "good", report);
        var bad = RunJsonFolder.Write(folder, "bad", report);
        var json = RunJsonFolder.Json(report);
        JsonNode?[] damages = [null, -1e300, new JsonArray(), new JsonObject()];
        foreach (var (number, leaf) in RunJsonFolder.Leaves(json)
            .Where(leaf => leaf.Index < 3).DistinctBy(leaf => $"{Plain(leaf.Parent.GetPath())} {leaf.Key}").ToList().Index())
        {
            var old = RunJsonFolder.Get(leaf)?.DeepClone();
            foreach (var value in (JsonNode?[])["\u001b[31m<b>", damages[number % 4], damages[(number + 1) % 4]])
            {
                RunJsonFolder.Set(leaf, value?.DeepClone());
                File.WriteAllText(Path.Combine(bad, "run.json"), json.ToJsonString());
                if (ComparisonReader.Read([good, bad], ReportFixture.Info.ToolVersion, out var errors) is { } comparison)
                {
                    var words = string.Join('\n', ComparisonSections.Of(comparison)
                        .SelectMany(section => section.Lines.Concat(section.Table?.Rows.SelectMany(row => row) ?? [])));
                    var page = ComparisonPage.Of(comparison);
                    Assert.DoesNotContain('\u001b', words + page);
                    Assert.DoesNotContain("<b>", page);
                }
                else
                {
                    Assert.All(errors, refusal => Assert.DoesNotContain('\u001b', refusal));
                }
            }

            RunJsonFolder.Set(leaf, old);
        }
    }

    /// <summary>One design, one phase and one scenario stand for all.</summary>
    private static string Plain(string path) => Regex.Replace(Regex.Replace(path, @"\[\d+\]", "[]"), @"\.phases\.\w+", ".phases.any");
}
