using System.Text.Json;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Files;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;
using FrameOpt.Tests.Reports.Workbook;

namespace FrameOpt.Tests.Reports;

/// <summary>How sure the answer of a run is, on page, sheet and in JSON: the same figures everywhere, those of the result.</summary>
public class HowSureOutputsTests
{
    private const string Decimals = "coordinates have one decimal";
    private static readonly RunReport report = LiveRun.Report;
    private static readonly UncertaintyResult uncertainty = report.Result.Uncertainty!;
    private static readonly Lazy<PageText> page = new(() => new PageText(report));

    [Fact]
    public void First_sheet_of_the_page_has_the_verdict()
    {
        var words = page.Value.ById("answer").Value;
        Assert.All(UncertaintySection.Of(report.Result.Study, uncertainty).Lines.Take(2), line => Assert.Contains(line, words));
    }

    [Fact]
    public void Another_design_of_the_page_says_that_it_was_not_computed() =>
        Assert.Contains("This was computed for the best compromise only.", page.Value.Showing(1).ById("answer").Value);

    [Fact]
    public void Band_across_a_bar_goes_from_the_10_to_the_90_percent_point()
    {
        var picture = page.Value.ById("phases-picture");
        var whiskers = PageText.Of(picture, "whisker");
        var chosen = report.Result.Chosen!;
        // Three lines a phase, then those of the legend.
        Assert.Equal(3 * (chosen.Phases.Count + 1), whiskers.Count);
        var bars = PageText.Of(picture, "bar-1").Skip(1).ToList();
        var scale = bars.Max(bar => PageText.Number(bar, "width")) / chosen.Phases.Max(phase => Math.Abs(phase[PhaseQuantity.Residual]));
        for (var p = 0; p < chosen.Phases.Count; p++)
        {
            var spread = uncertainty.Sample.Phases[p].Residual;
            Check.Close(scale * (spread.NineTenths - spread.Tenth),
                PageText.Number(whiskers[3 * p], "x2") - PageText.Number(whiskers[3 * p], "x1"), absolute: 0.6, because: Decimals);
        }

        Assert.Contains("8 of 10 cases lie in this band", picture.Value);
    }

    [Fact]
    public void Bars_are_as_long_as_what_the_numbers_move_the_longest_on_top_and_told_in_words()
    {
        var study = report.Result.Study;
        var settled = study.Mission.Index().Where(phase => phase.Item.IsSettled).Select(phase => phase.Index).ToList();
        var scales = new List<double>();
        for (var i = 0; i < settled.Count; i++)
        {
            var picture = page.Value.ById($"how-sure-{i + 1}");
            Assert.Equal($"Residual torque in {study.Mission[settled[i]].Name}", picture.Element("title")!.Value);
            var first = uncertainty.Bars.MaxBy(bar => Farthest(bar, settled[i]))!;
            Assert.Contains(first.Source.Title, PageText.Of(picture, "tick").Select(tick => tick.Value.Split(':')[0]).First(
                name => uncertainty.Bars.Any(bar => bar.Source.Title == name)));
            Assert.Contains(first.Source.Title, picture.Element("desc")!.Value);
            var longest = PageText.Of(picture, "bar-1").Concat(PageText.Of(picture, "bar-2")).Where(bar => PageText.Number(bar, "y") > 40)
                .Max(bar => PageText.Number(bar, "width"));
            scales.Add(longest / Farthest(first, settled[i]));
        }

        // One scale for all phases.
        Assert.All(scales, scale => Check.Close(scales[0], scale, relative: 0.03, because: Decimals));
    }

    [Fact]
    public void Run_json_has_the_figures_of_the_result_and_nothing_that_is_not_finite()
    {
        var json = Json(report).GetProperty("uncertainty");
        Assert.Equal(2048, json.GetProperty("cases").GetInt32());
        Assert.Equal(uncertainty.Sample.LimitsMet.Value, json.GetProperty("limits_met").GetProperty("share").GetDouble());
        Assert.Equal(uncertainty.Sample.EachLimit.Select(share => share.Value),
            json.GetProperty("limits").EnumerateArray().Select(limit => limit.GetProperty("met").GetProperty("share").GetDouble()));
        Assert.Equal(uncertainty.Sample.Phases.Select(phase => phase.Residual.NineTenths),
            json.GetProperty("phases").EnumerateArray().Select(phase => phase.GetProperty("residual").GetProperty("p90").GetDouble()));
        Assert.Equal(NoiseSource.All.Select(source => source.Name),
            json.GetProperty("sources").EnumerateArray().Select(source => source.GetProperty("name").GetString()));
        var bars = json.GetProperty("bars").EnumerateArray().ToList();
        Assert.Equal(uncertainty.Bars.Select(bar => bar.Source.Name), bars.Select(bar => bar.GetProperty("source").GetString()));
        Assert.Equal(uncertainty.Bars[0].LowDeviation, bars[0].GetProperty("low").GetProperty("deviation").GetDouble());
    }

    [Fact]
    public void Effort_without_bound_is_null_in_json()
    {
        var phase = uncertainty.Sample.Phases[1];
        var unbounded = uncertainty with
        {
            Sample = uncertainty.Sample with
            {
                Phases = [phase with { Effort = phase.Effort with { NineTenths = double.PositiveInfinity } },
                    .. uncertainty.Sample.Phases.Skip(1)],
            },
        };
        var effort = Json(report with { Result = report.Result with { Uncertainty = unbounded } }).GetProperty("uncertainty")
            .GetProperty("phases")[0].GetProperty("effort");
        Assert.Equal(JsonValueKind.Null, effort.GetProperty("p90").ValueKind);
    }

    [Fact]
    public void Sheet_has_a_row_for_every_number_and_the_share_of_every_limit()
    {
        var book = new WorkbookReader(report);
        Assert.Equal(uncertainty.Bars.Select(bar => bar.Source.Title), book.Table("How sure", "number").Rows.Select(row => row[0]));
        var limits = book.Table("How sure", "limit").Rows;
        Assert.Equal(report.Result.Study.Limits.Count + 2, limits.Count);
        Check.Close(100 * uncertainty.Sample.EachLimit[0].Value, Convert.ToDouble(limits[0][1], null), absolute: 1e-9, because: "rounding");
        Assert.Empty(book.SchemaErrors());
    }

    [Fact]
    public void Without_noise_page_and_workbook_have_no_part_of_it()
    {
        var exact = report with
        {
            Result = report.Result with
            {
                Study = report.Result.Study with { Noise = NoiseSetting.None },
                Uncertainty = uncertainty with { Setting = NoiseSetting.None, Bars = [] },
            },
        };
        var words = new PageText(exact);
        Assert.DoesNotContain(words.Tree.Descendants(), element => element.Attribute("id")?.Value == "how-sure");
        Assert.Empty(PageText.Of(words.ById("phases-picture"), "whisker"));
        Assert.Contains("noise: none", words.ById("answer").Value);
        Assert.DoesNotContain("How sure", new WorkbookReader(exact).Sheets.Keys);
        Assert.Empty(Json(exact).GetProperty("uncertainty").GetProperty("bars").EnumerateArray());
    }

    private static double Farthest(NoiseBar bar, int phase) => new[] { bar.Low, bar.High }.Max(design => design.Failure is not null ? 0
        : Math.Abs(design.Phases[phase][PhaseQuantity.Residual] - report.Result.Chosen!.Phases[phase][PhaseQuantity.Residual]));

    private static JsonElement Json(RunReport run)
    {
        using var stream = new MemoryStream();
        RunJson.Write(run, stream);
        return JsonDocument.Parse(stream.ToArray()).RootElement;
    }
}
