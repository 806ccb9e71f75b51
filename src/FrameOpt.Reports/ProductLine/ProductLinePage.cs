using System.Text;
using System.Xml.Linq;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Graphics;
using FrameOpt.Reports.Page;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>line.html: one file that needs nothing else, for the screen, the phone and paper.</summary>
public static class ProductLinePage
{
    private const int HashPrefixLength = 12;
    private const int MaxWorstServed = 20;

    /// <summary>Writes the page of a line; the same bytes for the same line.</summary>
    public static void Write(ProductLineReport report, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true);
        writer.Write(Of(report));
    }

    /// <summary>The page as text.</summary>
    public static string Of(ProductLineReport report)
    {
        var answer = ProductLineAnswer.Of(report.Result);
        return PageTemplate.Of(
            $"{answer.Title} - FrameOpt product line", Style(), script: null,
            [Head(report, answer), PageTemplate.Main(Parts(report, answer)), PageTemplate.Footer()]);
    }

    private static string Style() => PageTemplate.ReadResource("page.css") + FittingChartDrawing.Rules.ReplaceLineEndings("\n") + """
        .chart { overflow-x: auto; margin-bottom: 1rem; }
        .chart svg { min-width: 36rem; max-width: 56rem; }
        @media print { .chart { overflow: visible; break-inside: avoid; } .chart svg { min-width: 0; } #chart { break-before: page; } }

        """.ReplaceLineEndings("\n");

    private static XElement Head(ProductLineReport report, RunAnswer answer)
    {
        var (info, result) = (report.Info, report.Result);
        (string What, string Value)[] stamp =
        [
            ("study file", info.StudyFileName),
            ("SHA-256", $"{report.Result.Study.Hash[..HashPrefixLength]}…"),
            ("computed with", $"FrameOpt {info.ToolVersion}"),
            ("customers", NumberFormat.Count(result.Setting.Customers.Count)),
            ("candidates", NumberFormat.Count(result.Candidates)),
        ];
        return new XElement(
            "header",
            Html.Paragraph("kind", "Hang points: a product line"),
            new XElement("h1", answer.Title),
            answer.Question.Length > 0 ? Html.Paragraph("question", answer.Question) : null,
            new XElement("dl", new XAttribute("class", "stamp"), stamp.Select(
                item => new XElement("div", new XElement("dt", item.What), new XElement("dd", item.Value)))));
    }

    private static IEnumerable<XElement?> Parts(ProductLineReport report, RunAnswer answer)
    {
        var result = report.Result;
        yield return Html.Section("answer", "The answer", Html.Paragraph(
            answer.IsWarning ? "headline warning" : "headline", answer.Headline), Html.Paragraph("danger", Cautions.FirstPage[0]));
        foreach (var decision in LineDecision.Of(result))
            yield return Html.Decision(decision);
        yield return Html.Section("geometries", "The geometries to make", Html.SectionBody(ProductLineAnswer.Geometries(result)),
            Html.Block("pictures", Frames(result)));
        yield return Chart(result);
        foreach (var worst in ProductLineAnswer.WorstServed(result, MaxWorstServed))
            yield return Html.Section("worst", "Worst-served customers, and the geometry that would suit them",
                Html.Paragraph(Worst(result)),
                Html.SectionBody(worst));
        yield return Html.Section("gain", "Gain from one more geometry",
            GainPlot.Of(result) is { } curve ? Html.Figure(curve, ProductLineText.Value(result.Setting)) : null,
            Html.SectionBody(ProductLineAnswer.Gain(result)));
        foreach (var stress in LineStressSection.Of(result))
            yield return Html.Section("stress", stress.Title, Html.SectionBody(stress));
        foreach (var near in LineSurenessSection.Of(result))
            yield return Html.Section("near", near.Title, Html.SectionBody(near));
        yield return Html.Section("sure", "Proof of optimality", [.. ProductLineOptimality.Of(result)
            .Concat(ProductLineText.Unserved(result))
            .Select(Html.Paragraph)]);
        yield return StudyPart.CautionsOf(answer.Sections[^1].Lines);
        yield return StudyPart.Assumptions(result.Study);
        yield return Reproduce(report);
    }

    private static XElement Chart(ProductLineResult result) => Html.Section(
        "chart",
        "Fitting chart",
        Html.Paragraph(FittingChartText.HowToRead),
        new XElement("div", new XAttribute("class", "chart"), new XAttribute("role", "group"), new XAttribute("tabindex", "0"),
            new XAttribute("aria-label", "Fitting chart"), FittingChartDrawing.Of(result, isAlone: false)),
        Html.List(ServedRotation.Notes(result)),
        Html.List([.. ProductLineText.Boundaries(result), .. FittingChartReasons.Of(result), .. FittingChartReasons.NotSold(result)]),
        Html.List(FittingChartText.Letters(result)),
        Html.Paragraph(FittingChartText.Warnings[0]),
        Html.Paragraph("The same chart for the wall, A4 or A3: fitting-chart.svg and the sheet Fitting chart of line.xlsx."));

    private static string Worst(ProductLineResult result)
    {
        double[] regrets = [.. result.Assignments.Select(served => served.Regret).Where(double.IsFinite).DefaultIfEmpty(0).Order()];
        return "Regret is what a customer loses compared with a made-to-measure frame chosen from the same candidates. The largest is "
            + $"{ProductLineText.Amount(result.Setting, regrets[^1])}, "
            + "half of the distinct customers lose at most "
            + $"{ProductLineText.Amount(result.Setting, regrets[(regrets.Length - 1) / 2])}. Every customer is in customers.csv.";
    }

    private static IEnumerable<XElement> Frames(ProductLineResult result)
    {
        var scale = result.Geometries.Count == 0 ? null
            : FrameScale.Of(result.Study.Machine, [.. result.Geometries.Select(geometry => geometry.Design)]);
        foreach (var (index, geometry, rotation) in result.Geometries.Index().SelectMany(
            item => item.Item.Rotations.Select(rotation => (item.Index, item.Item, rotation))))
        {
            var id = $"frame-{index + 1}-{StudyText.RotationName(rotation)}";
            var (factors, machine) = (result.Study.Factors, ServedRotation.On(result.Study, rotation));
            yield return Html.Figure(
                FrameRearView.Of(id, machine, factors, geometry.Design, scale!),
                $"Geometry {geometry.Name}, for a propeller that turns {StudyText.RotationText(rotation)} seen from behind"
                    + $"{(geometry.Rotations.Count > 1 ? " (this geometry serves BOTH rotations)" : "")}, drawn on the "
                    + "study's own machine. " + DrillingSection.Of(machine, factors, geometry.Design).Lines[0]);
        }
    }

    private static XElement Reproduce(ProductLineReport report)
    {
        (string What, string Value)[] facts =
        [
            ("study file", report.Info.StudyFileName),
            ("SHA-256", report.Result.Study.Hash),
            .. report.Result.Study.Files.Select(file => ($"{file.Name}, SHA-256", file.Hash)),
            ("version", $"FrameOpt {report.Info.ToolVersion}"),
            ("in the same folder",
                "line.xlsx (all figures), customers.csv (who gets which), fitting-chart.svg (for the wall), line.json (everything, for "
                    + "programs)"),
        ];
        return Html.Section(
            "reproduce",
            "How to reproduce it",
            Html.Paragraph(
                "frameopt line on the same study file, with the same version, gives the same "
                    + $"figures{(report.Result.IsComplete ? "" : "; this one was stopped early")}."),
            new XElement("dl", new XAttribute("class", "facts"), facts.Select(
                fact => new XElement("div", new XElement("dt", fact.What), new XElement("dd", fact.Value)))));
    }
}
