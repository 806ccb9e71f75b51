using System.Text;
using System.Xml.Linq;
using FrameOpt.Analysis;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Page;

namespace FrameOpt.Reports.Runs;

/// <summary>What measured runs say, as one file for screen and paper.</summary>
public static class RunAnalysisPage
{
    /// <summary>Writes the page.</summary>
    /// <param name="fileName">Of the runs.</param>
    /// <param name="analyses">One for each response.</param>
    /// <param name="sections">All that the terminal says.</param>
    /// <param name="stream">To write to; it stays open.</param>
    public static void Write(
        string fileName, IReadOnlyList<RunAnalysis> analyses, IReadOnlyList<AnswerSection> sections, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true);
        writer.Write(PageTemplate.Of($"{fileName} - FrameOpt measured runs", PageTemplate.ReadResource("page.css"), script: null,
        [
            new XElement("header", Html.Paragraph("kind", "Measured runs"), new XElement("h1", fileName)),
            PageTemplate.Main(
            [
                .. analyses.Select((analysis, a) => Pictures(analysis, $"response-{a + 1}")),
                .. sections.Select((section, s) => Html.Section($"part-{s + 1}", section.Title, Html.SectionBody(section))),
            ]),
            PageTemplate.Footer(),
        ]));
    }

    private static XElement Pictures(RunAnalysis analysis, string id)
    {
        var pictures = new RunPictures(analysis, id);
        return Html.Section(id, $"{analysis.Response.Measured.Header} in pictures", Html.Block(
            "pictures",
            pictures.BesideModel() is { } beside ? Html.Figure(beside, "On the dashed line model and measurement are equal.") : null,
            pictures.HalfNormalPlot(isBetweenPlots: true) is { } of
                ? Html.Figure(of, "Effects between whole plots have an error of their own; without a line none is beyond it.") : null,
            pictures.HalfNormalPlot(isBetweenPlots: false) is { } plot
                ? Html.Figure(plot, "Effects right of the line are more than errors.") : null,
            Html.Figure(pictures.Residuals(), "A bow says that the fit lacks a term, a funnel that larger values scatter more."),
            Html.Figure(pictures.InOrder(), "A trend says that something drifted while measuring.")));
    }
}
