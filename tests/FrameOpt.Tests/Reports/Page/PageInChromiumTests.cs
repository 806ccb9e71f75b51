using System.Globalization;
using FrameOpt.Analysis;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Page;
using FrameOpt.Search.Fronts;
using FrameOpt.Studies;
using Microsoft.Playwright;

namespace FrameOpt.Tests.Reports.Page;

/// <summary>The page as a person uses it.</summary>
public sealed class PageInChromiumTests(ChromiumBrowser chromium) : IClassFixture<ChromiumBrowser>
{
    [ChromiumFact]
    public async Task Another_design_chosen_from_the_list_is_told_and_drawn_with_the_model_s_figures()
    {
        var report = LiveRun.Report;
        await Open(report, async opened =>
        {
            var shown = DisplayedDesigns.Of(report.Result);
            var (study, geometry) = (report.Result.Study, report.Result.Front[shown[3]].Geometry);
            await opened.SelectOptionAsync("#design", "3");
            var words = await opened.InnerTextAsync("main");
            string[] lines =
            [
                .. GroundChecksSection.HangCheck(study, geometry).Lines,
                .. PhasesSection.Of(report.Result, report.Result.Mission.Evaluate(geometry)).Lines,
                .. DrillingSection.Of(study, geometry).Lines,
            ];
            Assert.All(lines, line => Assert.Contains(line, words));
            Assert.Equal($"{1000 * geometry.SpacingMetres:0} mm", await opened.Locator("#frame-front .figure").Nth(2).TextContentAsync());
            await opened.ClickAsync("#best");
            Assert.Contains(RunAnswer.Of(report.Result).Headline, await opened.InnerTextAsync("#answer"));
        });
    }

    [ChromiumFact]
    public async Task A_point_of_the_front_is_walked_to_by_keyboard_and_shown_by_Enter()
    {
        var report = LiveRun.Report;
        await Open(report, async opened =>
        {
            await opened.Locator("figure.front .plot").First.FocusAsync();
            await opened.Keyboard.PressAsync("ArrowRight");
            await opened.Keyboard.PressAsync("ArrowRight");
            var second = report.Result.Front[DisplayedDesigns.Of(report.Result)[2]];
            Assert.StartsWith($"rank {second.Rank}:", await opened.Locator("figure.front .readout").First.TextContentAsync());
            await opened.Keyboard.PressAsync("Enter");
            Assert.Equal("2", await opened.InputValueAsync("#design"));
            Assert.Contains($"rank {second.Rank} of the front", await opened.InnerTextAsync("#answer"));
        });
    }

    // A4 less the margins of the page's print style is 182 mm by 266 mm, a CSS pixel 1/96 inch.
    [ChromiumFact]
    public async Task The_answer_with_how_sure_it_is_prints_on_one_sheet() => await Open(LiveRun.Report, async opened =>
    {
        await opened.SetViewportSizeAsync(688, 1005);
        await opened.EmulateMediaAsync(new() { Media = Media.Print });
        var bottom = await opened.EvaluateAsync<double>("document.getElementById('answer').getBoundingClientRect().bottom + scrollY");
        Assert.InRange(bottom, 600, 1005);
        Assert.Contains("MEASURE THIS FIRST", await opened.InnerTextAsync("#answer"));
    });

    [ChromiumFact]
    public Task A_weight_changed_ranks_by_distance_to_the_ideal_as_the_run_would() =>
        Reranks(RankingMethod.DistanceToIdeal, Ranking.ByDistanceToIdeal);

    [ChromiumFact]
    public Task A_weight_changed_ranks_by_TOPSIS_as_the_run_would() => Reranks(RankingMethod.Topsis, Ranking.ByTopsis);

    private async Task Reranks(
        RankingMethod method, Func<IReadOnlyList<double[]>, IReadOnlyList<double>, IReadOnlyList<RankedDesign>> rank)
    {
        var report = method == RankingMethod.DistanceToIdeal ? LiveRun.Report : LiveRun.Of(method);
        var objectives = report.Result.Study.Objectives;
        // The methods want less to be better, and every design shown.
        var designs = report.Result.Front.Select(design => design.Objectives.Select((value, o) => objectives[o].Maximise ? -value : value)
            .ToArray()).ToList();
        Assert.Equal(designs.Count, DisplayedDesigns.Of(report.Result).Count);
        var expected = rank(designs, [1, .. report.Result.Study.Ranking.Weights.Skip(1).Select(weight => 4 * weight)]);
        await Open(report, async opened =>
        {
            await opened.FillAsync("#weight-0", "1");
            for (var o = 1; o < objectives.Count; o++)
                await opened.FillAsync($"#weight-{o}", (4 * report.Result.Study.Ranking.Weights[o]).ToString(CultureInfo.InvariantCulture));
            await opened.ClickAsync("#show-first");
            Assert.Equal(expected[0].Index.ToString(CultureInfo.InvariantCulture), await opened.InputValueAsync("#design"));
            var buttons = opened.Locator("#order tbody button");
            for (var row = 0; row < 5; row++)
            {
                var label = await buttons.Nth(row).GetAttributeAsync("aria-label");
                Assert.StartsWith($"Show rank {expected[row].Rank}: rank {report.Result.Front[expected[row].Index].Rank}:", label);
            }
        });
    }

    /// <summary>Opens the page and fails on any error it reports and anything it fetches.</summary>
    private async Task Open(RunReport report, Func<IPage, Task> use)
    {
        using var folder = new TemporaryFolder();
        await File.WriteAllTextAsync(folder["report.html"], ReportPage.Of(report));
        var opened = await chromium.NewPage();
        List<string> problems = [], requests = [];
        opened.Console += (_, message) => problems.Add(message.Text);
        opened.PageError += (_, message) => problems.Add(message);
        opened.Request += (_, request) => requests.Add(request.Url);
        await opened.GotoAsync(new Uri(folder["report.html"]).AbsoluteUri);
        await use(opened);
        Assert.Empty(problems);
        Assert.Equal([new Uri(folder["report.html"]).AbsoluteUri], requests);
        await opened.CloseAsync();
    }
}
