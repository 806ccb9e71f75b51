using System.Xml.Linq;
using FrameOpt.Reports.Tables;

namespace FrameOpt.Reports.Workbook.Cells;

/// <summary>A table and where it stands in the workbook.</summary>
/// <param name="Table">What it holds.</param>
/// <param name="SheetName">On this sheet.</param>
/// <param name="FirstRow">Below its header, from 1.</param>
/// <param name="FirstColumn">From 1.</param>
internal sealed record PlacedTable(Table Table, string SheetName, int FirstRow, int FirstColumn = 1)
{
    /// <summary>Some cells of a column.</summary>
    /// <param name="column">Of the table, from 0.</param>
    /// <param name="first">The first row, from 0.</param>
    /// <param name="count">How many rows.</param>
    public CellRange Column(int column, int first, int count) => new(
        CellAddress.Column(SheetName, FirstColumn + column, FirstRow + first, FirstRow + first + count - 1),
        [.. Enumerable.Range(first, count).Select(Table.Columns[column].Value)]);

    /// <summary>All cells of a column, from 0.</summary>
    public CellRange Column(int column) => Column(column, 0, Table.RowCount);

    /// <summary>All numbers right of the first column.</summary>
    public IEnumerable<double> NumbersAfterFirst() =>
        Enumerable.Range(1, Table.Columns.Count - 1).SelectMany(column => Column(column).Numbers);
}

/// <summary>Cells of one column, with what they hold.</summary>
/// <param name="Reference">With its sheet.</param>
/// <param name="Values">Numbers and texts in order; a number that is not finite is a blank.</param>
internal sealed record CellRange(string Reference, IReadOnlyList<object> Values)
{
    /// <summary>True when a text is among them.</summary>
    public bool IsText => Values.Any(value => value is string);

    /// <summary>The numbers among them.</summary>
    public IEnumerable<double> Numbers => Values.OfType<double>();
}

/// <summary>What a cell computes.</summary>
/// <param name="Text">Without the leading =; English function names, no dynamic arrays.</param>
/// <param name="Cached">What it gives for the workbook as written: a number or a text, for programs that do not recompute.</param>
internal sealed record Formula(string Text, object Cached);

/// <summary>A formula in a cell that exists already, with its style.</summary>
internal sealed record PlacedFormula(string SheetName, int Row, int Column, Formula Formula);

/// <summary>A chart and where it stands.</summary>
/// <param name="SheetName">On this sheet.</param>
/// <param name="Row">Of its upper left corner, from 1.</param>
/// <param name="Column">Of its upper left corner, from 1.</param>
/// <param name="Name">What it shows, for programs that read aloud.</param>
/// <param name="Xml">The chart part.</param>
internal sealed record PlacedChart(string SheetName, int Row, int Column, string Name, XElement Xml);
