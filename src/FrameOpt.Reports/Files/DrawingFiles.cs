using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Drafting;
using FrameOpt.Reports.Drafting.Template;

namespace FrameOpt.Reports.Files;

/// <summary>The files a builder draws, prints and drills by.</summary>
internal static class DrawingFiles
{
    /// <summary>drawing.svg, drawing.pdf, template-a4.pdf, template-letter.pdf and holes.dxf of the best compromise; none where a run has
    /// none.</summary>
    public static IEnumerable<(string Name, Action<Stream> Write)> Of(RunReport report)
    {
        if (DrawnDesign.Of(report) is not { } design)
            yield break;
        var drawing = new Lazy<Sheet>(() => FrameSheet.Of(design));
        yield return ("drawing.svg", stream => SheetSvg.Write(drawing.Value, stream));
        yield return ("drawing.pdf", stream => SheetPdf.Write(drawing.Value.Title, [drawing.Value], stream));
        foreach (var paper in (Paper[])[Paper.A4, Paper.Letter])
        {
            yield return ($"template-{paper.Name.ToLowerInvariant()}.pdf", stream => SheetPdf.Write(
                $"FrameOpt template on {paper.Name}", TemplateSheets.Of(design, paper), stream));
        }

        yield return ("holes.dxf", stream => SheetDxf.Write(HoleOutline.Of(design), stream));
    }
}
