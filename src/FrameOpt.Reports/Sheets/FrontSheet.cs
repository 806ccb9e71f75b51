using ClosedXML.Excel;

namespace FrameOpt.Reports;

/// <summary>The front, best first, as a table to sort and filter.</summary>
internal static class FrontSheet
{
    public static DataRows Add(XLWorkbook book, RunReport report)
    {
        var columns = FrontColumns.Of(report.Result.Study);
        var front = report.Result.Front;
        var shown = Math.Min(front.Count, Workbook.MostDesigns);
        return DataSheet.Add(
            book,
            report,
            "Front",
            Note(front.Count, shown),
            [.. columns.Select(column => DataColumn.OfNumbers(column.Header, column.NumberFormat))],
            [.. Enumerable.Range(0, shown).Select(i => (object[])[.. columns.Select(column => (object)column.Value(front[i], report.FrontEvaluations[i]))])]);
    }

    private static string Note(int all, int shown)
    {
        var which = all > shown
            ? $"The best {Figures.Count(shown)} by rank of the {Figures.Count(all)} designs on the front; designs.csv holds all."
            : $"All {Figures.Count(all)} designs on the front, best first.";
        return $"{which} Offsets and angles: right +. Drilling dimensions seen from behind. A blank is a response that the study gives no basis for.";
    }
}
