using System.Xml.Linq;
using DocumentFormat.OpenXml.Packaging;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Workbook.Cells;

/// <summary>Title and author of the workbook, without a time: the same run gives the same bytes.</summary>
internal static class CoreProperties
{
    private static readonly XNamespace cp = "http://schemas.openxmlformats.org/package/2006/metadata/core-properties";
    private static readonly XNamespace dc = "http://purl.org/dc/elements/1.1/";

    /// <summary>Puts them in the place of those that ClosedXML dates.</summary>
    public static void Write(SpreadsheetDocument document, IReportSource report)
    {
        if (document.CoreFilePropertiesPart is { } dated)
            document.DeletePart(dated);
        var part = document.AddCoreFilePropertiesPart();
        document.ChangeIdOfPart(part, "core");
        document.ChangeIdOfPart(document.WorkbookPart!, "workbook"); // ClosedXML draws it at random
        using var stream = part.GetStream(FileMode.Create);
        new XElement(
            cp + "coreProperties",
            new XAttribute(XNamespace.Xmlns + "cp", cp),
            new XAttribute(XNamespace.Xmlns + "dc", dc),
            new XElement(dc + "creator", $"FrameOpt {report.Info.ToolVersion}"),
            new XElement(dc + "title", TextSanitizer.Clean(report.Study.FullTitle))).Save(stream, SaveOptions.DisableFormatting);
    }
}
