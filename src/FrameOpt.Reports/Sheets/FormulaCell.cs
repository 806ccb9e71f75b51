namespace FrameOpt.Reports;

/// <summary>A formula on a sheet whose cell exists already, with its look.</summary>
internal sealed record FormulaCell(string SheetName, int Row, int Column, Formula Formula);
