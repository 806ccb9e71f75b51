using System.Security.Cryptography;
using System.Text;
using System.Xml.Linq;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Plans;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Page;
using FrameOpt.Search.Fronts;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Reports.Page;

public class PageTests
{
    private static readonly Lazy<PageText> page = new(() => new PageText(ReportFixture.Report()));

    [Fact]
    public void Every_word_of_the_answer_stands_on_the_page()
    {
        var answer = RunAnswer.Of(ReportFixture.Report().Result);
        Holds(page.Value, [answer.Title, answer.Question, answer.Headline]);
        foreach (var section in answer.Sections)
            Holds(page.Value, [section.Title, .. section.Lines, .. section.Table?.Headers ?? [],
                .. section.Table?.Rows.SelectMany(row => row) ?? []]);
    }

    [Fact]
    public void Nothing_feasible_is_an_answer_too_without_drilling_and_without_a_test_card()
    {
        var run = ReportFixture.Report(3);
        foreach (var miss in (NearestMiss?[])[new NearestMiss(7, run.FrontEvaluations[0], [run.Result.Study.Limits[0]]), null])
        {
            var report = run with { Result = ReportFixture.NothingFeasible(miss), FrontEvaluations = [] };
            var read = new PageText(report);
            var answer = RunAnswer.Of(report.Result);
            Holds(read, [answer.Headline, .. answer.Sections.SelectMany(section => section.Lines)]);
            Assert.Empty(read.Scripts);
            Assert.DoesNotContain(read.Tree.Descendants(), element => element.Attribute("id")?.Value is "card" or "hang-check" or "front");
            Assert.Equal(miss is not null, read.Tree.Descendants("svg").Any());
        }
    }

    [Fact]
    public void A_user_s_text_stays_text()
    {
        const string title = "<script>alert(1)</script>", cruise = "=1+1 & <b>\"x\"</b>", pilot = "</script><img src=x onerror=alert(2)>";
        var read = new PageText(ReportFixture.Report(3, ReportFixture.Study(title, cruise, pilot)));
        Assert.Equal(title, read.Tree.Descendants("h1").Single().Value);
        Assert.Contains(pilot, read.Words);
        Assert.Contains(cruise, read.Words);
        Assert.Equal(2, read.Scripts.Count);
        Assert.DoesNotContain("<", read.Scripts[0]);
        Assert.DoesNotContain("<img", read.Raw);
        Assert.Contains(read.Data.GetProperty("slots").EnumerateArray(), slot =>
            slot[0].GetString()!.Contains(cruise, StringComparison.Ordinal));
    }

    [Fact]
    public void The_policy_lets_nothing_act_but_the_one_style_and_the_one_script()
    {
        var policy = page.Value.Tree.Descendants("meta").Single(meta => meta.Attribute("http-equiv") is not null)
            .Attribute("content")!.Value;
        static string Hash(string text) => Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
        Assert.Equal(
            $"default-src 'none'; style-src 'sha256-{Hash(page.Value.Style)}'; "
                + $"script-src 'sha256-{Hash(page.Value.Scripts[1])}'; base-uri 'none'; form-action 'none'",
            policy);
        Assert.DoesNotContain(page.Value.Tree.Descendants().Attributes(), attribute =>
            attribute.Name == "style" || attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_is_fetched_from_elsewhere()
    {
        Assert.All(page.Value.Tree.Descendants().Attributes().Where(attribute => attribute.Name.LocalName is "href" or "src"), link =>
            Assert.StartsWith("#", link.Value));
        Assert.DoesNotContain("url(", page.Value.Style);
        Assert.DoesNotContain("@import", page.Value.Style);
        Assert.DoesNotContain("http", page.Value.Scripts[1]);
    }

    [Fact]
    public void Every_picture_says_in_words_and_figures_what_it_shows()
    {
        var pictures = page.Value.Tree.Descendants("svg").ToList();
        Assert.NotEmpty(pictures);
        Assert.All(pictures, picture =>
        {
            Assert.Equal("img", picture.Attribute("role")!.Value);
            var ids = picture.Attribute("aria-labelledby")!.Value.Split(' ');
            Assert.Equal(["title", "desc"], ids.Select(id => page.Value.ById(id).Name.LocalName));
            Assert.All(ids, id => Assert.NotEmpty(page.Value.ById(id).Value));
        });
        Assert.All(pictures.Where(picture => !picture.Attribute("id")!.Value.EndsWith("-key", StringComparison.Ordinal)), picture =>
            Assert.Matches("[0-9]", picture.Element("desc")!.Value));
    }

    [Fact]
    public void Names_of_elements_are_single_and_headings_skip_no_level()
    {
        var ids = page.Value.Tree.Descendants().Attributes("id").Select(id => id.Value).ToList();
        Assert.Equal(ids.Distinct(), ids);
        var levels = page.Value.Tree.Descendants().Where(element => element.Name.LocalName is "h1" or "h2" or "h3" or "h4")
            .Select(heading => heading.Name.LocalName[1] - '0').ToList();
        Assert.Equal(1, levels[0]);
        Assert.All(levels.Skip(1), level => Assert.NotEqual(1, level));
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1));
        Assert.All(page.Value.Tree.Descendants("a"), link => Assert.NotNull(page.Value.ById(link.Attribute("href")!.Value[1..])));
    }

    [Fact]
    public void The_data_hold_every_shown_design_and_put_its_own_words_into_place()
    {
        var report = ReportFixture.Report(40);
        var read = new PageText(report);
        var shown = DisplayedDesigns.Of(report.Result);
        var designs = read.Data.GetProperty("designs");
        Assert.Equal(shown.Count, designs.GetArrayLength());
        for (var d = 0; d < shown.Count; d++)
        {
            Assert.Equal(report.Result.Front[shown[d]].Number, designs[d].GetProperty("number").GetInt64());
            Assert.Equal(report.Result.Front[shown[d]].Objectives, designs[d].GetProperty("objectives").EnumerateArray()
                .Select(value => value.GetDouble()));
        }

        var other = report.Result.Front[shown[7]].Geometry;
        var evaluation = report.Result.Mission.Evaluate(other);
        var showing = read.Showing(7);
        Holds(showing,
        [
            .. DrillingSection.Of(report.Result.Study, other).Lines,
            .. GroundChecksSection.HangCheck(report.Result.Study, other).Lines,
            .. PhasesSection.Of(report.Result, evaluation).Lines,
            .. GroundChecksSection.BeforeFlight(report.Result.Study, evaluation).Lines,
            .. CostSection.Of(report.Result, evaluation).Table!.Rows.SelectMany(row => row),
        ]);
        Assert.Contains(showing.Words, words => words.Contains("NOT THE BEST COMPROMISE but rank", StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_run_gives_the_same_bytes_and_a_long_front_stays_small()
    {
        var report = ReportFixture.Report(600);
        var text = ReportPage.Of(report);
        Assert.Equal(text, ReportPage.Of(report));
        Assert.InRange(Encoding.UTF8.GetByteCount(text), 1, 3_600_000);
        using var stream = new MemoryStream();
        ReportPage.Write(report, stream);
        Assert.Equal(Encoding.UTF8.GetBytes(text), stream.ToArray());
    }

    private static void Holds(PageText read, IEnumerable<string> expected)
    {
        var words = read.Words;
        Assert.All(expected.Where(text => text.Length > 0), text => Assert.Contains(text, words));
    }
}
