using System.Text;
using FrameOpt.Reports.Page;

namespace FrameOpt.Reports.ProductLine;

/// <summary>line.html: one file that needs nothing else, for the screen, the phone and paper.</summary>
public static class ProductLinePage
{
    /// <summary>Writes the page of a line; the same bytes for the same line.</summary>
    public static void Write(ProductLineReport report, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
            leaveOpen: true)
        { NewLine = "\n" };
        writer.Write(Of(report));
    }

    /// <summary>The page as text.</summary>
    public static string Of(ProductLineReport report)
    {
        var answer = ProductLineAnswer.Of(report.Result);
        return PageTemplate.Of(
            $"{answer.Title} - FrameOpt product line", Style(), script: null,
            [ProductLinePageParts.Head(report, answer), PageTemplate.Main(ProductLinePageParts.Of(report, answer)), PageTemplate.Footer()]);
    }

    private static string Style() => PageTemplate.ReadResource("page.css") + FittingChartDrawing.Rules.ReplaceLineEndings("\n") + """
        .chart { overflow-x: auto; margin-bottom: 1rem; }
        .chart svg { min-width: 36rem; max-width: 56rem; }
        @media print { .chart { overflow: visible; break-inside: avoid; } .chart svg { min-width: 0; } #chart { break-before: page; } }

        """.ReplaceLineEndings("\n");
}
