using FrameOpt.Reports.ProductLine;
using FrameOpt.Studies;
using FrameOpt.Tests.Running;

namespace FrameOpt.Tests.Reports.ProductLine;

/// <summary>The live sheet of a line, recomputed by LibreOffice.</summary>
public class LiveLineTests
{
    [SofficeFact]
    public void Recomputed_it_is_the_line_and_follows_a_changed_count_and_a_geometry_that_is_not_made()
    {
        var result = ProductLineStudy.Solve(ProductLineStudy.Read("objective: blend 30 %; up_to: 3"));
        using var stream = new MemoryStream();
        ProductLineWorkbook.Write(new ProductLineReport(result, new RunInfo("study.yaml", "1", 0)), stream);
        const string sheet = "Live line";
        var books = Soffice.Recomputed(stream.ToArray(), [[], [(sheet, "C15", 100)], [(sheet, "F12", 0)]]);
        Check.Close(result.Solution.Value, Number(books[0], 7), relative: 1e-9, because: "the same sums");
        foreach (var (r, served) in result.Assignments.Index())
            Assert.Equal(served.Geometry < 0 ? "none" : result.Geometries[served.Geometry].Name, books[0].Sheets[sheet][14 + r][3]);

        var (own, costs) = (result.Assignments.ToList(), result.Costs!);
        Check.Close(0.7 * (100 * own[0].Cost + own.Skip(1).Sum(one => one.Row.Share * one.Cost)) / (100 + own.Skip(1).Sum(one =>
            one.Row.Share))
            + 0.3 * own.Max(one => one.Cost), Number(books[1], 7), relative: 1e-9, because: "the same sums");

        // Without the first geometry all have the second where it is allowed.
        var second = own.Select((one, r) => (one.Row.Share, Cost: costs.Rows[r][1])).Where(one => double.IsFinite(one.Cost)).ToList();
        Check.Close(second.Sum(one => one.Share * one.Cost) / second.Sum(one => one.Share), Number(books[2], 4), relative: 1e-9,
            because: "the same sums");

        double Number(WorkbookReader book, int row) => (double)book.Sheets[sheet][row - 1][2]!;
    }
}
