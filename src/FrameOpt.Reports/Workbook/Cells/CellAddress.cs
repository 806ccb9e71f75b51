namespace FrameOpt.Reports.Workbook.Cells;

/// <summary>How formulas name cells.</summary>
internal static class CellAddress
{
    /// <summary>A column's letters: 1 is A, 27 is AA.</summary>
    public static string Letters(int column)
    {
        var letters = "";
        for (var rest = column; rest > 0; rest = (rest - 1) / 26)
            letters = (char)('A' + (rest - 1) % 26) + letters;
        return letters;
    }

    /// <summary>A cell that moves with the formula: B3.</summary>
    public static string Relative(int row, int column) => FormattableString.Invariant($"{Letters(column)}{row}");

    /// <summary>A cell that stays put: $B$3.</summary>
    public static string Absolute(int row, int column) => FormattableString.Invariant($"${Letters(column)}${row}");

    /// <summary>Part of a column on any sheet: 'Ranking data'!$B$3:$B$502.</summary>
    public static string Column(string sheet, int column, int firstRow, int lastRow) =>
        $"'{sheet}'!{Absolute(firstRow, column)}:{Absolute(lastRow, column)}";

    /// <summary>Part of a row on any sheet.</summary>
    public static string Row(string sheet, int row, int firstColumn, int lastColumn) =>
        $"'{sheet}'!{Absolute(row, firstColumn)}:{Absolute(row, lastColumn)}";
}
