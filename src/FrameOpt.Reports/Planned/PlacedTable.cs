namespace FrameOpt.Reports;

/// <summary>A table that stands on a sheet from its first column on, for charts to draw.</summary>
/// <param name="SheetName">Of the sheet.</param>
/// <param name="FirstRow">Below the header, from 1.</param>
/// <param name="Rows">As written.</param>
internal sealed record PlacedTable(string SheetName, int FirstRow, IReadOnlyList<IReadOnlyList<object>> Rows)
{
    /// <summary>The first cells of one column, from 0.</summary>
    public ChartColumn Column(int column, int count) => new(
        CellNames.Column(SheetName, column + 1, FirstRow, FirstRow + count - 1), [.. Rows.Take(count).Select(row => row[column])]);

    /// <summary>All cells of one column, from 0.</summary>
    public ChartColumn Column(int column) => Column(column, Rows.Count);
}
