using System.Text;
using System.Xml.Linq;
using FrameOpt.Analysis;
using FrameOpt.Reports.Page;

namespace FrameOpt.Reports.Runs;

/// <summary>What measured runs say, as one file for screen and paper.</summary>
public static class RunAnalysisPage
{
    /// <summary>Writes the page.</summary>
    /// <param name="answer">What is written.</param>
    /// <param name="stream">To write to; it stays open.</param>
    public static void Write(RunTableAnswer answer, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true);
        writer.Write(PageTemplate.Of($"{answer.File} - FrameOpt measured runs", PageTemplate.ReadResource("page.css"), script: null,
        [
            new XElement("header", Html.Paragraph("kind", "Measured runs"), new XElement("h1", answer.File)),
            PageTemplate.Main(
            [
                .. answer.Analyses.Select((analysis, a) => Pictures(analysis, $"response-{a + 1}")),
                .. answer.Sections.Select((section, s) => Html.Section($"part-{s + 1}", section.Title, Html.SectionBody(section))),
            ]),
            PageTemplate.Footer(),
        ]));
    }

    private static XElement Pictures(RunAnalysis analysis, string id) => Html.Section(
        id, $"{analysis.Response.Measured.Header} in pictures",
        Html.Block("pictures", [.. new RunPictures(analysis, id).All.Select(picture => Html.Figure(picture.Drawing, picture.Caption))]));
}
