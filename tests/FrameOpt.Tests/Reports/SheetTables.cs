namespace FrameOpt.Tests.Reports;

/// <summary>Finds tables on a sheet read back.</summary>
public static class SheetTables
{
    /// <summary>The rows under the header whose first cell reads so, to the first row that begins blank.</summary>
    public static (object?[] Header, IReadOnlyList<object?[]> Rows) Table(this WorkbookReader book, string sheet, string firstHeader)
    {
        var rows = book.Sheets[sheet];
        var at = rows.FindIndex(row => firstHeader.Equals(row[0]));
        Assert.True(at >= 0, $"no table that begins with {firstHeader}");
        return (rows[at], [.. rows.Skip(at + 1).TakeWhile(row => row[0] is not null)]);
    }

    /// <summary>Where the first cell of a column reads so: its row, from 1.</summary>
    public static int RowOf(this WorkbookReader book, string sheet, string firstCell) =>
        1 + book.Sheets[sheet].FindIndex(row => firstCell.Equals(row[0]));
}
