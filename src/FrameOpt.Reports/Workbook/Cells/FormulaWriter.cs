using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace FrameOpt.Reports.Workbook.Cells;

/// <summary>Writes formulas with the values they have, which ClosedXML 0.95 cannot: it would save them blank.</summary>
internal static class FormulaWriter
{
    /// <summary>Puts the formulas into cells that exist; other cells stay as they are.</summary>
    public static void Write(WorkbookPart book, IReadOnlyList<FormulaCell> formulas)
    {
        foreach (var onSheet in formulas.GroupBy(formula => formula.SheetName))
        {
            var part = RowWriter.Sheet(book, onSheet.Key);
            var cells = part.Worksheet.Descendants<Cell>().ToDictionary(cell => cell.CellReference!.Value!);
            foreach (var formula in onSheet)
                Write(cells[CellAddress.Relative(formula.Row, formula.Column)], formula.Formula);
            part.Worksheet.Save();
            part.UnloadRootElement();
        }
    }

    private static void Write(Cell cell, Formula formula)
    {
        cell.RemoveAllChildren();
        cell.CellFormula = new CellFormula(formula.Text);
        cell.DataType = formula.Cached is string ? CellValues.String : null;
        cell.CellValue = formula.Cached is double number ? new CellValue(number) : new CellValue((string)formula.Cached);
    }
}

/// <summary>A cell that recomputes.</summary>
/// <param name="Text">Without the leading =; English function names, no dynamic arrays.</param>
/// <param name="Cached">What it gives for the workbook as written: a number or a text, for programs that do not recompute.</param>
internal sealed record Formula(string Text, object Cached);

/// <summary>A formula on a sheet whose cell exists already, with its look.</summary>
internal sealed record FormulaCell(string SheetName, int Row, int Column, Formula Formula);
