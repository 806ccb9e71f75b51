using System.Text;
using System.Text.Json;
using System.Xml.Linq;
using FrameOpt.Reports.ProductLine;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;
using FrameOpt.Tests.Running;

namespace FrameOpt.Tests.Reports.ProductLine;

/// <summary>The propeller's rotation on every output of a line whose engines turn both ways.</summary>
public class RotationOnOutputsTests
{
    private static readonly Lazy<ProductLineReport> apart = new(() => Report(LineRotationTests.Line("objective: worst")));

    private static readonly Lazy<ProductLineReport> both = new(
        () => Report(LineRotationTests.Line("objective: worst; allow_both_rotations: true", count: 1, effort: 9)));

    [Fact]
    public void Each_geometry_stands_with_the_rotation_of_its_engine_everywhere()
    {
        var result = apart.Value.Result;
        var answer = ProductLineAnswer.Of(result);
        foreach (var (geometry, row) in result.Geometries.Zip(answer.Sections[0].Table!.Rows))
        {
            // The offset opposes the reaction: a counter-clockwise propeller pushes the right side down and wants the right offset.
            var isRight = geometry.Design.OffsetMetres > 0;
            Assert.Equal([geometry.Name, isRight ? "↺ counter-clockwise" : "↻ clockwise"], row.Take(2));
        }

        var page = new PageText(ProductLinePage.Of(apart.Value));
        Assert.Equal(2, page.Tree.Descendants("figcaption").Count(caption => caption.Value.Contains(", for a propeller that turns ")));
        Assert.Contains(page.Tree.Descendants("text"), text => text.Value == "propeller turns ↻ clockwise");
        Assert.Contains(page.Tree.Descendants("text"), text => text.Value == "propeller turns ↺ counter-clockwise");
        Assert.DoesNotContain("BOTH", page.Words);
        var csv = Encoding.UTF8.GetString(Bytes(stream => CsvTable.Write(CustomerTable.Of(result), stream)));
        Assert.Contains("↺ counter-clockwise", csv);
        Assert.Contains("↻ clockwise", csv);
        var cells = new WorkbookReader(Bytes(stream => ProductLineWorkbook.Write(apart.Value, stream))).AllTexts.ToList();
        Assert.Contains(cells, text => text.EndsWith("right\n↺ counter-clockwise", StringComparison.Ordinal));
        Assert.Contains(cells, text => text.EndsWith("left\n↻ clockwise", StringComparison.Ordinal));
    }

    [Fact]
    public void A_geometry_that_may_serve_both_rotations_is_marked_on_every_output()
    {
        var answer = ProductLineAnswer.Of(both.Value.Result);
        Assert.True(answer.IsWarning);
        Assert.Contains("CAUTION: A serves engines of BOTH rotations", answer.Headline);
        Assert.Contains("CAUTION: A serves engines of BOTH rotations", string.Join('\n', answer.Sections[^1].Lines));
        Assert.Equal("↻↺ BOTH WAYS".Order(), answer.Sections[0].Table!.Rows[0][1].Order());
        var page = new PageText(ProductLinePage.Of(both.Value));
        var captions = page.Tree.Descendants("figcaption").Where(caption => caption.Value.Contains("Geometry A")).ToList();
        Assert.Equal(2, captions.Count);
        Assert.All(captions, caption => Assert.Contains("this geometry serves BOTH rotations", caption.Value));
        var drawing = XDocument.Parse(Encoding.UTF8.GetString(Bytes(stream => FittingChartDrawing.Write(both.Value.Result, stream))));
        var cells = drawing.Descendants().Where(element => element.Value.EndsWith(" BOTH WAYS", StringComparison.Ordinal)
            && !element.HasElements);
        Assert.NotEmpty(cells);
        Assert.Contains(new WorkbookReader(Bytes(stream => ProductLineWorkbook.Write(both.Value, stream))).AllTexts,
            text => text.EndsWith(" BOTH WAYS", StringComparison.Ordinal));
        using var json = JsonDocument.Parse(Bytes(stream => ProductLineJson.Write(both.Value, stream)));
        Assert.Equal(2, json.RootElement.GetProperty("line").GetProperty("geometries")[0].GetProperty("turns").GetArrayLength());
    }

    private static ProductLineReport Report(Study study) => new(ProductLineStudy.Solve(study), new RunInfo("study.yaml", "0.1.0", 0));

    private static byte[] Bytes(Action<Stream> write)
    {
        using var stream = new MemoryStream();
        write(stream);
        return stream.ToArray();
    }
}
