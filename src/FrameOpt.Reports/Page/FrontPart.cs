using System.Xml.Linq;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Graphics;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Page;

/// <summary>The front, two objectives at a time, and its designs in order.</summary>
internal static class FrontPart
{
    private const int Rows = 12;

    public static XElement? Of(PageContent content)
    {
        if (content.Binder is not { } binder || !content.IsFeasible || content.Study.IsOneFrame)
            return null;
        return Html.Section(
            "front",
            "The front: designs on the front",
            Html.Paragraph(DisplayedDesigns.Summary(content.Result)),
            content.Result.Front.Count > DisplayedDesigns.Most(content.Study)
                ? Html.Paragraph(
                    "The lowest ranked of these were replaced by the knee and by the best design of each objective. With other weights "
                        + "the best design of the whole front may be among those left out: run the study again with those weights.")
                : null,
            Html.Paragraph("On the front no objective can be improved without making another one worse."),
            Key(content.Result),
            Html.Block("pictures", Pairs(content, binder)),
            Html.Heading("Ranking"),
            Weights(content),
            Best(content, binder));
    }

    private static IEnumerable<XElement> Pairs(PageContent content, DesignBinder binder)
    {
        var shown = DisplayedDesigns.WithExtremes(content.Result);
        var objectives = content.Study.Objectives.Count;
        for (var across = 0; across < objectives; across++)
        {
            for (var up = across + 1; up < objectives; up++)
            {
                var picture = new FrontPlot(content.Result, shown, across, up);
                yield return new XElement(
                    "figure",
                    new XAttribute("class", "front"),
                    Html.Block("plot", picture.Of(binder.Bind(view => picture.Marker(view.FrontDesign!)))),
                    new XElement("p", new XAttribute("class", "readout"), new XAttribute("hidden", "hidden")),
                    new XElement("figcaption", picture.OutsideNotes().Select(line => new XElement("span", line))));
            }
        }
    }

    private static XElement Key(StudyResult result)
    {
        List<(XElement, string)> entries =
        [
            (PlotMarker.At("best", PlotMarker.Square, 17, 8), "best compromise"),
            (PlotMarker.At("ranked", PlotMarker.Diamond, 17, 8), "ranked 2 to 10"),
            (Svg.Circle("dot", 17, 8, 2.2), "other designs"),
            (PlotMarker.At("now", PlotMarker.Ring, 17, 8), "design shown"),
        ];
        if (result.Front.Any(design => design.IsKnee))
            entries.Add((PlotMarker.At("knee", PlotMarker.Triangle, 17, 8), "knee"));
        if (result.Baseline is { Failure: null })
            entries.Add((PlotMarker.At("baseline", PlotMarker.Cross, 17, 8), "baseline"));
        if (result.Study.Limits.Any(limit => result.Study.Objectives.Any(objective => objective.Response == limit.Response)))
            entries.Add((Svg.Line("limit", 0, 8, 34, 8), "limit"));
        return PlotLegend.Of("front-key", "Key to the front", entries);
    }

    /// <summary>Weights to type in; shown only where the page's script runs.</summary>
    private static XElement Weights(PageContent content) => new(
        "fieldset",
        new XAttribute("id", "weights"),
        new XAttribute("hidden", "hidden"),
        new XElement("legend", $"Weights of the ranking ({StudyText.Method(content.Study.Ranking.Method)})"),
        content.Study.Objectives.Select((objective, o) => new XElement(
            "p",
            new XElement("label", new XAttribute("for", $"weight-{o}"), StudyText.Title(objective.Response, objective.Magnitude)),
            new XElement(
                "input",
                new XAttribute("type", "number"),
                new XAttribute("id", $"weight-{o}"),
                new XAttribute("min", "0"),
                new XAttribute("step", "any"),
                new XAttribute("value", PlainNumber.Text(content.Study.Ranking.Weights[o]))))),
        new XElement("p",
            new XElement("button", new XAttribute("type", "button"), new XAttribute("id", "show-first"), "show the best ranked"),
            new XElement("button", new XAttribute("type", "button"), new XAttribute("id", "as-studied"), "the study's weights")));

    private static XElement Best(PageContent content, DesignBinder binder)
    {
        var weights = string.Join(", ", content.Study.Objectives.Select((objective, o) =>
            $"{StudyText.Title(objective.Response, objective.Magnitude)} {PlainNumber.Text(content.Study.Ranking.Weights[o])}"));
        var table = Html.Table("The best ranked designs of the front", DesignRow.Headers(content.Study),
            binder.Views.Take(Rows).Select(DesignRow.Of));
        table.SetAttributeValue("id", "order");
        return Html.Block(
            "words",
            new XElement(
                "p", new XAttribute("id", "order-words"),
                $"The first {Math.Min(Rows, binder.Views.Count)} by {StudyText.Method(content.Study.Ranking.Method)}, weighted {weights}."),
            new XElement("p", new XAttribute("id", "ranked"), new XAttribute("role", "status")),
            table);
    }
}
