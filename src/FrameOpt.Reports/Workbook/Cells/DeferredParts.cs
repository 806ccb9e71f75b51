using ClosedXML.Excel;
using FrameOpt.Reports.Workbook.Charts;

namespace FrameOpt.Reports.Workbook.Cells;

/// <summary>What is written into the workbook once its sheets are saved.</summary>
internal sealed class DeferredParts
{
    /// <summary>Long tables.</summary>
    public List<DataRows> Tables { get; } = [];

    /// <summary>Sheets of figures behind the others: they come last in the workbook.</summary>
    public List<Func<XLWorkbook, DataRows>> DataSheets { get; } = [];

    /// <summary>Formulas among the cells of short tables.</summary>
    public List<FormulaCell> Formulas { get; } = [];

    /// <summary>Charts and where they stand.</summary>
    public List<PlacedChart> Charts { get; } = [];
}
