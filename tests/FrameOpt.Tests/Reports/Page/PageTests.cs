using System.Security.Cryptography;
using System.Text;
using System.Xml.Linq;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Plans;
using FrameOpt.Plans.Classical;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Page;
using FrameOpt.Running;
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
        var policy = page.Value.Tree.Descendants("meta").Single(meta => meta.Attribute("http-equiv") is not null).Attribute(
            "content")!.Value;
        static string Hash(string text) => Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
        Assert.Equal(
            $"default-src 'none'; style-src 'sha256-{Hash(page.Value.Style)}'; script-src 'sha256-{Hash(page.Value.Scripts[1])}'; base-uri 'none'; form-action 'none'", policy);
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
    public void The_bars_of_the_phases_are_as_long_as_the_model_s_residuals()
    {
        var report = ReportFixture.Report();
        var picture = page.Value.ById("phases-picture");
        var bars = PageText.Of(picture, "bar-1").Skip(1).Select(bar => PageText.Number(bar, "width")).ToList();
        var residuals = report.Result.Mission.Evaluate(ReportFixture.WorkedGeometry).Phases
            .Select(phase => Math.Abs(phase[PhaseQuantity.Residual])).ToList();
        var scale = bars.Max() / residuals.Max();
        Assert.Equal(residuals.Count, bars.Count);
        for (var p = 0; p < bars.Count; p++)
            Check.Close(Math.Max(0.8, scale * residuals[p]), bars[p], absolute: 0.1, because: "coordinates have one decimal");
    }

    [Fact]
    public void The_drawing_is_to_scale_and_the_right_hang_point_is_on_the_right()
    {
        var drawing = page.Value.ById("frame-front");
        var holes = PageText.Of(drawing, "hole").Select(hole => PageText.Number(hole, "cx")).ToList();
        var radius = PageText.Number(PageText.Of(drawing, "disc").Single(), "r");
        var symmetry = PageText.Number(PageText.Of(drawing, "symmetry").Single(), "x1");
        var perMetre = radius / (ReportFixture.Study().Machine.Propeller.DiameterMetres / 2);
        // 440 mm apart, both moved 25 mm to the right: 195 mm and 245 mm from the plane of symmetry (s/2 - e and s/2 + e).
        Check.Close(0.195, (symmetry - holes[0]) / perMetre, absolute: 0.001, because: "coordinates have one decimal");
        Check.Close(0.245, (holes[1] - symmetry) / perMetre, absolute: 0.001, because: "coordinates have one decimal");
        Assert.Equal(["195 mm", "245 mm", "440 mm", "150 mm"], PageText.Of(drawing, "figure").Select(figure => figure.Value));
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
    public void A_limit_on_an_objective_is_drawn_where_it_is_near_and_told_where_it_is_far()
    {
        var study = ReportFixture.Study();
        var highest = ReportFixture.Report().Result.Front.Max(design => design.Objectives[0]);
        PageText With(double bound) => new(ReportFixture.Report(12,
            study with { Limits = [new StudyLimit(study.Objectives[0].Response, false, null, bound)] }));
        Assert.Equal(2, PageText.Of(With(highest).ById("front"), "limit").Count(line => line.Ancestors("figure").Any()));
        Assert.Contains(With(100 * highest).Words, words => words.StartsWith("The limit on residual rms", StringComparison.Ordinal)
            && words.EndsWith("lies outside this picture.", StringComparison.Ordinal));
    }

    [Fact]
    public void A_plan_brings_shares_main_effects_and_pairs_of_each_response()
    {
        var report = ReportFixture.Report(3);
        var study = report.Result.Study with
        {
            Plan = new PlanSetting.CentralComposite(
            AxialRule.FaceCentred, 1)
            { Responses = [.. report.Result.Study.Objectives.Select(objective => objective.Response)] }
        };
        var read = new PageText(report with
        {
            Result = report.Result with
            {
                Study = study,
                Plan = PlanResult.Of(study, report.Result.Mission, 1)
            }
        });
        for (var response = 1; response <= 3; response++)
        {
            foreach (var picture in (string[])["shares", "mains", "pair"])
                Assert.Equal("svg", read.ById($"effects-{response}-{picture}").Name.LocalName);
        }

        Assert.DoesNotContain(page.Value.Tree.Descendants(), element => element.Attribute("id")?.Value == "effects");
    }

    [Fact]
    public void The_same_run_gives_the_same_bytes_and_a_long_front_stays_small()
    {
        var report = ReportFixture.Report(600);
        var text = ReportPage.Of(report);
        Assert.Equal(text, ReportPage.Of(report));
        Assert.InRange(Encoding.UTF8.GetByteCount(text), 1, 3_000_000);
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
