using FrameOpt.Forms;
using FrameOpt.Reports.Forms;
using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.Web.State;

/// <summary>A sheet of the flight card.</summary>
/// <param name="Index">Its place in the form.</param>
/// <param name="Plan">Its words and settings.</param>
/// <param name="Notes">Cautions, when to stop, and how to measure.</param>
/// <param name="Cells">As filled in.</param>
public sealed record CardSheet(int Index, FormSheet Plan, FormNotes Notes, FilledSheet Cells)
{
    /// <summary>Columns of every sheet: the name of the run, then its block.</summary>
    public const int RunColumn = 0, BlockColumn = 1;

    /// <summary>How many columns it has.</summary>
    public int Columns => Plan.Headers.Count;

    /// <summary>The row of headers.</summary>
    public int HeaderRow { get; } = Cells.HeaderRow;

    /// <summary>The rows with a run.</summary>
    public IReadOnlyList<int> Rows { get; } = [.. Enumerable.Range(Cells.HeaderRow + 1, Cells.Rows.Count - Cells.HeaderRow - 1)
        .Where(row => Cells.Rows[row].Any(cell => cell.Length > 0))];

    /// <summary>The title of a column.</summary>
    public string Title(int column) => FilledSheet.Title(Cells.Cell(HeaderRow, column));

    /// <summary>The unit of a column, which a number without one has; empty for words.</summary>
    public string Unit(int column) => FilledSheet.Unit(Cells.Cell(HeaderRow, column));

    /// <summary>The name of a run.</summary>
    public string Run(int row) => Cells.Cell(row, RunColumn);

    /// <summary>True for a run that the builder added.</summary>
    public bool IsOwn(int row) => Run(row).StartsWith(FormReader.Extra, StringComparison.OrdinalIgnoreCase);

    /// <summary>True for a cell that says how to set the run, which the form decides.</summary>
    public bool IsSetting(int row, int column) => column < Plan.SettingColumns && !IsOwn(row);

    /// <summary>True where a reading is filled in.</summary>
    public bool IsFilled(int row) =>
        Enumerable.Range(Plan.SettingColumns, Columns - Plan.SettingColumns).Any(column => Cells.Cell(row, column).Length > 0);
}

/// <summary>What is to correct on the flight card.</summary>
/// <param name="Sheet">Of the cell; null where none is meant.</param>
/// <param name="Row">Of the cell.</param>
/// <param name="Column">Of the cell.</param>
/// <param name="Found">In the words of the command fit.</param>
public sealed record CardFinding(CardSheet? Sheet, int Row, int Column, Diagnostic Found)
{
    /// <summary>True for a cell that is only not filled in yet.</summary>
    public bool IsEmpty => Sheet is { } sheet && sheet.Cells.Cell(Row, Column).Length == 0;
}
