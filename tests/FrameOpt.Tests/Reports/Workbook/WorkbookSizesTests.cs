using System.IO.Compression;
using FrameOpt.Analysis;
using FrameOpt.Model.Mission;
using FrameOpt.Search.Fronts;
using FrameOpt.Studies;
using FrameOpt.Tests.Model;

namespace FrameOpt.Tests.Reports.Workbook;

/// <summary>The limits that the sheet Read me states.</summary>
public class WorkbookSizesTests
{
    [Fact]
    public void A_front_of_5000_designs_leaves_a_valid_workbook()
    {
        var book = new WorkbookReader(ReportFixture.Report(5_000));
        Assert.Empty(book.SchemaErrors());
        Assert.Equal(500, book.Table("Ranking", "position").Rows.Count);
    }

    [Theory]
    [InlineData(1, 2)]
    [InlineData(5, 4)]
    [InlineData(20, 5)]
    public void Any_number_of_phases_and_objectives_leaves_a_valid_workbook(int phases, int objectives)
    {
        var cruise = WorkedMachine.Phases.First(phase => phase.Name == "cruise");
        MissionQuantity[] quantities =
            [MissionQuantity.ResidualRms, MissionQuantity.PitchSwing, MissionQuantity.TwistMarginWorst,
                MissionQuantity.LoadDifferenceWorst, MissionQuantity.BodyYawWorst];
        var study = ReportFixture.Study() with
        {
            Mission = [.. Enumerable.Range(0, phases).Select(i => cruise with { Name = $"cruise {i}", Weight = 1.0 / phases })],
            Objectives = [.. quantities.Take(objectives).Select(quantity =>
                new StudyObjective(new Response.OfMission(quantity), quantity == MissionQuantity.TwistMarginWorst, false, 0))],
            Ranking = new RankingSetting(RankingMethod.DistanceToIdeal, [.. Enumerable.Repeat(1.0, objectives)]),
            Band = new BandSetting(0, 5),
        };
        var book = new WorkbookReader(ReportFixture.Report(30, study));
        Assert.Empty(book.SchemaErrors());
        Assert.Equal(phases + 1, book.Table("What if", "phase").Rows.Count);
        Assert.Equal(Math.Min(objectives - 1, 2) + 2, book.ChartTitles().Count);
    }

    [Fact]
    public void Charts_draw_cells_that_hold_what_they_show()
    {
        var report = LiveRun.Report;
        var book = new WorkbookReader(report);
        var rows = book.Sheets["Chart data"];
        Assert.Equal(["The front: " + report.Result.Front.Count + " designs", "The front: " + report.Result.Front.Count + " designs"],
            book.ChartTitles().Skip(1).Take(2));
        Assert.Equal("baseline", rows[2][0]);
        Assert.Equal("1", rows[3][0]);
        Assert.Equal(report.Result.Front[0].Objectives[0], (double)rows[3][1]!);
        Assert.NotEmpty(book.ChartReferences());
        Assert.All(book.ChartReferences(), reference => Assert.Matches(@"^'(Chart data|How sure)'!\$", reference));
    }

    [Fact]
    public void The_same_run_gives_the_same_bytes_and_holds_no_time()
    {
        var first = WorkbookReader.Written(LiveRun.Report);
        Assert.Equal(first, WorkbookReader.Written(LiveRun.Report));
        using var archive = new ZipArchive(new MemoryStream(first));
        Assert.All(archive.Entries, entry => Assert.Equal(1980, entry.LastWriteTime.Year));
        Assert.DoesNotContain(archive.Entries, entry => new StreamReader(entry.Open()).ReadToEnd().Contains(
            "dcterms:created", StringComparison.Ordinal));
    }

    [Fact]
    public void Sheets_print_on_A4_with_their_study_and_page_number()
    {
        var setups = new WorkbookReader(LiveRun.Report).PageSetups();
        Assert.Equal(14, setups.Count);
        Assert.All(setups, setup => Assert.Equal(9u, setup.Paper));
        Assert.Equal(4, setups.Count(setup => !setup.Landscape));
        Assert.All(setups, setup => Assert.Contains("&P", setup.Footer));
    }

    [Fact]
    public void The_front_sheet_is_thinned_by_the_resolutions_and_says_so()
    {
        var report = LiveRun.Report;
        var coarse = report.Result.Study.Objectives.Select((objective, o) => objective with { Resolution = o == 0 ? 5 : 20 }).ToList();
        var thinned = report with { Result = report.Result with { Study = report.Result.Study with { Objectives = coarse } } };
        var book = new WorkbookReader(thinned);
        var boxes = report.Result.Front.Select(design => string.Join(
            '|', design.Objectives.Select((value, o) => Math.Floor(value / coarse[o].Resolution)))).Distinct().Count();
        Assert.Equal(boxes, book.Sheets["Front"].Count - 2);
        Assert.Contains($"{boxes} of the {report.Result.Front.Count} designs on the front", (string)book.Sheets["Front"][0][0]!);
        Assert.Contains("designs.csv contains all", (string)book.Sheets["Front"][0][0]!);
        Assert.Equal(report.Result.Front.Count, book.Table("Ranking", "position").Rows.Count);
    }
}
