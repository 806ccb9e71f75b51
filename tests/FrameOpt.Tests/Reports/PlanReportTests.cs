using System.Text.Json;
using FrameOpt.Model.Mission;
using FrameOpt.Plans;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Files;
using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.Studies;
using Json;
using MathNet.Numerics;

namespace FrameOpt.Tests.Reports;

/// <summary>A plan in the files of a run.</summary>
public class PlanReportTests
{
    private const int Runs = 25; // central composite of 4 factors: 16 + 2 x 4 + 1
    private static readonly Lazy<RunReport> composite = new(() => Report(new PlanRequest.CentralComposite(AxialRule.FaceCentred, 1)));
    private static readonly Lazy<WorkbookReader> book = new(() => new WorkbookReader(composite.Value));

    private static PlanResult Answer => composite.Value.Result.Plan!;

    [Fact]
    public void The_sheets_of_the_plan_stand_before_the_machine_and_the_workbook_is_valid()
    {
        string[] expected = ["Phases", "Plan", "Effects", "Surface", "Machine and mission"];
        Assert.Equal(expected, book.Value.Sheets.Keys.SkipWhile(name => name != "Phases").Take(5));
        Assert.Empty(book.Value.SchemaErrors());
        foreach (var sheet in expected[1..4])
            Assert.Contains(book.Value.Sheets["Read me"], row => $"sheet {sheet}".Equals(row[0]));
    }

    [Fact]
    public void A_run_without_a_plan_has_none_of_them()
    {
        var plain = new WorkbookReader(ReportFixture.Report(2));
        Assert.DoesNotContain(plain.Sheets.Keys, name => name is "Plan" or "Effects" or "Surface");
        Assert.DoesNotContain(plain.AllTexts, text => text is "sheet Plan" or "Which factors matter");
        Assert.False(Json(ReportFixture.Report(2)).TryGetProperty("plan", out _));
    }

    [Theory]
    [MemberData(nameof(OtherPlans))]
    public void A_workbook_with_any_plan_is_valid(PlanRequest request)
    {
        var other = new WorkbookReader(Report(request));
        Assert.Empty(other.SchemaErrors());
        Assert.Contains("Surface", other.Sheets.Keys);
        Assert.Equal(request is PlanRequest.FractionWithGenerators,
            other.AllTexts.Any(text => text.Contains("part of a share may be due to them", StringComparison.Ordinal)));
        Assert.Equal(request is PlanRequest.FractionWithGenerators, other.AllTexts.Contains("AB = CD")); // I = ABCD
    }

    public static TheoryData<PlanRequest> OtherPlans =>
        [new PlanRequest.FractionWithGenerators(["D=ABC"]), new PlanRequest.DefinitiveScreening()];

    [Fact]
    public void The_sheet_Plan_has_every_run_with_what_model_and_surface_give()
    {
        var rows = book.Value.Sheets["Plan"];
        var header = rows.FindIndex(row => "run".Equals(row[0]));
        Assert.Contains("lateral offset [mm]", rows[header]);
        for (var i = 0; i < Runs; i++)
        {
            var row = rows[header + 1 + i];
            Assert.Equal((double)(i + 1), row[0]);
            for (var r = 0; r < Answer.Surfaces.Count; r++)
            {
                var run = Answer.Surfaces[r].Fit!.Runs[i];
                Check.Close(run.Observed, (double)row[11 + 2 * r]!, relative: 1e-12, because: "both hold all digits of the same number");
                Check.Close(run.Fitted, (double)row[12 + 2 * r]!, relative: 1e-9, absolute: 1e-9,
                    because: "the fit's own value of its run");
            }
        }
    }

    [Fact]
    public void The_sheet_Effects_sorts_terms_by_share_and_main_effects_meet_at_the_middle()
    {
        var rows = book.Value.Sheets["Effects"];
        var header = rows.FindIndex(row => "term".Equals(row[0]));
        var shares = rows.Skip(header + 1).Take(14).Select(row => (double)row[2]!).ToList();
        Assert.Equal(shares.OrderDescending(), shares);
        var middle = rows.First(row => 0.0.Equals(row[0]));
        var constant = (double)rows.First(row => "constant: the centre of the cube".Equals(row[0]))[1]!;
        Assert.All(middle.Skip(1).Take(4), value =>
            Check.Close(constant, (double)value!, relative: 1e-12, because: "all factors at their middle"));
    }

    [Fact]
    public void The_grid_on_the_sheet_Surface_ends_at_corners_of_the_cube()
    {
        var rows = book.Value.Sheets["Surface"];
        var header = rows.FindIndex(row => row[0] is string text && text.Contains(" down, ", StringComparison.Ordinal));
        Assert.Equal(21, rows[header].Skip(1).OfType<double>().Count());
        var words = ((string)rows[header][0]!).Split(" down, ");
        var factors = Answer.Plan.Factors.Select(factor => factor.Name.Replace('_', ' ')).ToList();
        var coded = new double[4];
        coded[factors.FindIndex(name => words[0].StartsWith(name, StringComparison.Ordinal))] = 1;
        coded[factors.FindIndex(name => words[1].StartsWith(name, StringComparison.Ordinal))] = -1;
        Check.Close(Answer.Surfaces[0].Fit!.Predict(coded), (double)rows[header + 21][1]!, relative: 1e-12,
            because: "last row high, first column low");
    }

    [Fact]
    public void Charts_show_shares_main_effects_fit_and_surface_of_each_response_from_cells()
    {
        var titles = book.Value.ChartTitles();
        Assert.Equal(3, titles.Count(title => title.StartsWith("Shares of the terms of", StringComparison.Ordinal)));
        Assert.Equal(3, titles.Count(title => title.EndsWith("as one factor varies, others at mid-range", StringComparison.Ordinal)));
        Assert.Equal(3, titles.Count(title => title.EndsWith("for each run", StringComparison.Ordinal)));
        Assert.Equal(3, titles.Count(title => title.Contains("over the two factors of largest share", StringComparison.Ordinal)));
        foreach (var sheet in (string[])["Plan", "Effects", "Surface"])
            Assert.Contains(book.Value.ChartReferences(), reference => reference.StartsWith($"'{sheet}'!", StringComparison.Ordinal));
    }

    [Fact]
    public void Run_json_has_the_runs_and_the_surfaces()
    {
        var plan = Json(composite.Value).GetProperty("plan");
        var runs = plan.GetProperty("runs");
        Assert.Equal(Runs, runs.GetArrayLength());
        var first = Answer.Plan.Designs[0];
        var value = runs[0].GetProperty("responses").GetProperty("residual_rms");
        Check.Close(composite.Value.Result.Mission.Evaluate(first)[MissionQuantity.ResidualRms], value.GetProperty("value").GetDouble(),
            relative: 1e-12, because: "the model alone");
        Assert.Equal("N·m", value.GetProperty("unit").GetString());
        Assert.Equal("mm", runs[0].GetProperty("design").GetProperty("lateral_offset").GetProperty("unit").GetString());
        Assert.Equal(-1, runs[0].GetProperty("coded").GetProperty("lateral_offset").GetDouble());
        foreach (var (r, surface) in plan.GetProperty("surfaces").EnumerateArray().Index())
        {
            Assert.Equal(15, surface.GetProperty("terms").GetArrayLength());
            var made = Answer.Surfaces[r];
            Check.Close(
                GoodnessOfFit.RSquared(Answer.Plan.Plan.Runs.Select(run => made.Fit!.Predict(run.Coded)), made.Values),
                surface.GetProperty("r_squared").GetDouble(), absolute: 1e-11, because: "another program's formula");
            Assert.Equal(made.Check!.Everywhere.Largest, surface.GetProperty("check").GetProperty("largest_error").GetDouble());
            Assert.Equal(made.Check.Everywhere.RootMeanSquare, surface.GetProperty("check").GetProperty("rms_error").GetDouble());
            Assert.Contains("computed", surface.GetProperty("why_no_tests").GetString());
        }
    }

    [Fact]
    public void The_folder_holds_the_runs_as_CSV_only_when_there_is_a_plan()
    {
        using var root = new TemporaryFolder();
        foreach (var (name, report) in new[] { ("plan", composite.Value), ("none", ReportFixture.Report(2)) })
        {
            using var folder = ResultsFolder.Begin(root[name], replace: false);
            RunFolder.Write(report, ReportFixture.Timings, folder);
            folder.Complete();
        }

        Assert.Equal(1 + Runs, File.ReadAllLines(Path.Combine(root["plan"], "plan.csv")).Length);
        Assert.False(File.Exists(Path.Combine(root["none"], "plan.csv")));
    }

    [Fact]
    public void The_answer_names_the_terms_of_largest_share_and_the_largest_error()
    {
        var section = RunAnswer.Of(composite.Value.Result).Sections.Single(section => section.Title == "Which factors matter");
        Assert.Contains("25 runs", section.Lines[0]);
        for (var r = 0; r < Answer.Surfaces.Count; r++)
        {
            var most = PlanLabels.Terms(Answer.Surfaces[r].Fit!).First(row => row.Term.Order > 0);
            var name = most.Term.NamedWith([.. Answer.Plan.Factors.Select(factor => factor.Name)]);
            Assert.Contains($"The runs: {name} ", section.Lines[1 + r]);
            var (best, response) = (Answer.Shares.Responses[r].WithinLimits, Answer.Surfaces[r].Response.Name);
            var heaviest = best.Index().MaxBy(share => share.Item.Shapley).Index;
            Assert.StartsWith($"{response}: {Answer.Shares.Factors[heaviest].Name} ", section.Lines[1 + r]);
            Assert.Contains("largest error of the polynomial", section.Lines[1 + r]);
        }
    }

    private static RunReport Report(PlanRequest request)
    {
        var report = ReportFixture.Report(3);
        var study = report.Result.Study with
        {
            Plan = new PlanSetting(request, [.. report.Result.Study.Objectives.Select(objective => objective.Response)]),
        };
        var plan = PlanRunner.Run(study, report.Result.Mission, Environment.ProcessorCount);
        return report with { Result = report.Result with { Study = study, Plan = plan } };
    }

    private static JsonElement Json(RunReport report)
    {
        using var stream = new MemoryStream();
        RunJson.Write(report, stream);
        return JsonDocument.Parse(stream.ToArray()).RootElement;
    }
}
