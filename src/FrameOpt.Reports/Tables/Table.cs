namespace FrameOpt.Reports.Tables;

/// <summary>Columns over numbered rows. Every table of a file or sheet is a list of columns and a writer: CSV, JSON or cells.</summary>
/// <param name="Columns">From left to right.</param>
/// <param name="RowCount">0 or more.</param>
public sealed record Table(IReadOnlyList<Column> Columns, int RowCount)
{
    /// <summary>Tables beside each other; the shorter ones end in blank cells.</summary>
    /// <param name="tables">One or more.</param>
    public static Table SideBySide(IReadOnlyList<Table> tables) => new(
        [.. tables.SelectMany(table => table.Columns.Select(column =>
            column with { Value = row => row < table.RowCount ? column.Value(row) : double.NaN }))],
        tables.Max(table => table.RowCount));
}

/// <summary>One column of a <see cref="Table"/>.</summary>
/// <param name="Name">As files for other programs write it.</param>
/// <param name="Unit">Of its values; empty for a plain number.</param>
/// <param name="FormatCode">How a spreadsheet shows its values.</param>
/// <param name="Value">The cell of a row, counted from 0: a number or a text, on a sheet a formula too. A number that is not finite leaves
/// its cell blank.</param>
public sealed record Column(string Name, string Unit, string FormatCode, Func<int, object> Value)
{
    /// <summary>The number format of texts.</summary>
    public const string TextFormat = "@";

    /// <summary>The number format that shows a number as it is.</summary>
    public const string GeneralFormat = "General";

    /// <summary>Name and unit in one text: "lateral_offset [mm]".</summary>
    public string Header => Unit.Length == 0 ? Name : $"{Name} [{Unit}]";

    /// <summary>True for a column of texts.</summary>
    public bool IsText => FormatCode == TextFormat;

    /// <summary>How wide a column of texts is on a sheet of its own; one of numbers is as wide as its header needs.</summary>
    public double WidthCharacters { get; init; } = 16;

    /// <summary>A column of numbers.</summary>
    public static Column OfNumbers(string name, string unit, string formatCode, Func<int, double> value) =>
        new(name, unit, formatCode, row => value(row));

    /// <summary>A column of numbers whose name says the unit, if any.</summary>
    public static Column OfNumbers(string header, string formatCode, Func<int, double> value) => OfNumbers(header, "", formatCode, value);

    /// <summary>A column of texts.</summary>
    public static Column OfTexts(string name, Func<int, string> value) => new(name, "", TextFormat, value);
}
