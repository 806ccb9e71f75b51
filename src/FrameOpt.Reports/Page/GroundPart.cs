using System.Xml.Linq;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Page;

/// <summary>What to see on the ground before any flight.</summary>
internal static class GroundPart
{
    public static IEnumerable<XElement> Of(PageContent content)
    {
        if (content.Follow is not { } follow || !content.IsFeasible)
            yield break;
        var chosen = content.Result.Chosen!;
        yield return Html.Section(
            "hang-check",
            HangCheckSection.Of(content.Study, chosen.Geometry).Title,
            follow.Part(view => Html.Block("hang", [Scales(content, view), Html.Words(HangCheckSection.Of(content.Study, view.Evaluation.Geometry))])));
        yield return Html.Section(
            "before-flight",
            FlightChecksSection.Of(content.Study, chosen).Title,
            follow.Part(view => Html.Words(FlightChecksSection.Of(content.Study, view.Evaluation))),
            new XElement("p", "The ", new XElement("a", new XAttribute("href", "#card"), "test card"), " takes these steps apart, with figures to expect and room to write."));
    }

    private static XElement Scales(PageContent content, DesignView view)
    {
        var check = HangCheck.Of(content.Study.Machine, view.Evaluation.Geometry);
        return Html.Table("Hang check: figures to expect", ["scale", "to expect, engine off"],
        [
            ["pilot's LEFT", Figures.Load(check.LeftNewtons)],
            ["pilot's RIGHT", Figures.Load(check.RightNewtons)],
            ["right less left", $"{(check.DifferenceNewtons < 0 ? "left" : "right")} more by {Figures.Load(Math.Abs(check.DifferenceNewtons))}"],
        ]);
    }
}
