using System.Xml.Linq;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Page;

/// <summary>What to see on the ground before any flight.</summary>
internal static class GroundChecksPart
{
    public static IEnumerable<XElement> Of(PageContent content)
    {
        if (content.Binder is not { } binder || !content.IsFeasible)
            yield break;
        var chosen = content.Result.Chosen!;
        yield return Html.Section(
            "hang-check",
            HangCheckSection.Of(content.Study, chosen.Geometry).Title,
            binder.Bind(view => Html.Block("hang", [Scales(content, view),
                Html.SectionBody(HangCheckSection.Of(content.Study, view.Evaluation.Geometry))])));
        yield return Html.Section(
            "before-flight",
            FlightChecksSection.Of(content.Study, chosen).Title,
            binder.Bind(view => Html.SectionBody(FlightChecksSection.Of(content.Study, view.Evaluation))),
            new XElement("p", "The ", new XElement("a", new XAttribute("href", "#card"), "test card"),
                " takes these steps apart, with figures to expect and room to write."));
    }

    private static XElement Scales(PageContent content, DesignView view)
    {
        var check = HangCheck.Of(content.Study.Machine, view.Evaluation.Geometry);
        return Html.Table("Hang check: figures to expect", ["scale", "to expect, engine off"],
        [
            ["pilot's LEFT", NumberFormat.Load(check.LeftNewtons)],
            ["pilot's RIGHT", NumberFormat.Load(check.RightNewtons)],
            ["right less left",
                $"{(check.DifferenceNewtons < 0 ? "left" : "right")} more by {NumberFormat.Load(Math.Abs(check.DifferenceNewtons))}"],
        ]);
    }
}
