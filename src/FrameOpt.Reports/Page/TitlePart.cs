using System.Xml.Linq;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Page;

/// <summary>The head of the page: what was asked, and the block that identifies the run.</summary>
internal static class TitlePart
{
    private const int HashPrefixLength = 12;

    public static XElement Of(PageContent content)
    {
        var (info, counts) = (content.Report.Info, content.Result.Counts);
        (string What, string Value)[] stamp =
        [
            ("study file", info.StudyFileName),
            ("its SHA-256", $"{content.Study.Hash[..HashPrefixLength]}…"),
            ("computed with", $"FrameOpt {info.ToolVersion}"),
            ("designs evaluated", NumberFormat.Count(counts.Evaluated)),
            ("on the front", NumberFormat.Count(content.Result.Front.Count)),
        ];
        return new XElement(
            "header",
            Html.Paragraph("kind", "Hang points and thrust line: report of a run"),
            new XElement("h1", content.Answer.Title),
            content.Answer.Question.Length > 0 ? Html.Paragraph("question", content.Answer.Question) : null,
            new XElement("dl", new XAttribute("class", "stamp"), stamp.Select(
                item => new XElement("div", new XElement("dt", item.What), new XElement("dd", item.Value)))));
    }
}
