using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Plans;
using FrameOpt.Running;
using FrameOpt.Search.Fronts;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Reports.Page;

/// <summary>What the pictures of the page show.</summary>
public class PagePicturesTests
{
    private static readonly Lazy<PageText> page = new(() => new PageText(ReportFixture.Report()));

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
    public void A_limit_on_an_objective_is_drawn_where_it_is_near_and_told_where_it_is_far()
    {
        var study = ReportFixture.Study();
        var highest = ReportFixture.Report().Result.Front.Max(design => design.Objectives[0]);
        PageText With(double bound) => new(ReportFixture.Report(12,
            study with { Limits = [new StudyLimit(study.Objectives[0].Response, false, null, bound)] }));
        Assert.Equal(2, PageText.Of(With(highest).ById("front"), "limit").Count(line => line.Ancestors("figure").Any()));
        Assert.Contains(With(100 * highest).Words, words =>
            words.StartsWith("The limit on typical residual torque (rms)", StringComparison.Ordinal)
            && words.EndsWith("is outside the range shown.", StringComparison.Ordinal));
    }

    [Fact]
    public void A_plan_brings_shares_main_effects_and_pairs_of_each_response()
    {
        var report = ReportFixture.Report(3);
        var study = report.Result.Study with
        {
            Plan = new PlanSetting(new PlanRequest.CentralComposite(AxialRule.FaceCentred, 1),
                [.. report.Result.Study.Objectives.Select(objective => objective.Response)]),
        };
        var plan = PlanRunner.Run(study, report.Result.Mission, 1);
        var read = new PageText(report with { Result = report.Result with { Study = study, Plan = plan } });
        for (var response = 1; response <= 3; response++)
        {
            foreach (var picture in (string[])["shares", "mains", "pair"])
                Assert.Equal("svg", read.ById($"effects-{response}-{picture}").Name.LocalName);
        }

        Assert.DoesNotContain(page.Value.Tree.Descendants(), element => element.Attribute("id")?.Value == "effects");
    }
}
