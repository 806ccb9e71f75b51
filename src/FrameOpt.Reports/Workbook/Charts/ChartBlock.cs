using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Workbook.Charts;

/// <summary>Columns side by side on the sheet Chart data.</summary>
/// <param name="Columns">Header, format and width of each.</param>
/// <param name="Rows">As many cells in each as there are columns; a number that is not finite is a blank.</param>
internal sealed record ChartBlock(IReadOnlyList<DataColumn> Columns, IReadOnlyList<IReadOnlyList<object>> Rows)
{
    /// <summary>The column of the sheet its first column stands in.</summary>
    public int FirstColumn { get; init; } = 1;

    /// <summary>Cells of one of its columns.</summary>
    public ChartColumn Column(int column, int firstRow, int count)
    {
        var first = DataSheet.HeaderRow + 1 + firstRow;
        return new ChartColumn(
            CellAddress.Column(ChartSheets.DataSheetName, FirstColumn + column, first, first + count - 1),
            [.. Rows.Skip(firstRow).Take(count).Select(row => row[column])]);
    }

    /// <summary>All cells of one of its columns.</summary>
    public ChartColumn Column(int column) => Column(column, 0, Rows.Count);
}
