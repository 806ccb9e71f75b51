using ClosedXML.Excel;
using FrameOpt.Model;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Workbook.WhatIf;

/// <summary>The block of the sheet What if that says what each phase leaves.</summary>
internal static class WhatIfPhases
{
    private const int Settings = 3;

    public static void Add(Spreadsheet book, IXLWorksheet sheet, RunReport report, WhatIfTable table, WhatIfLayout layout)
    {
        Leverages(sheet);
        string[] headers =
        [
            "phase", "weight", "roll part [N·m], right +", "yaw part [N·m], right +", "leverage in the study",
            "residual [N·m], leverage above", "residual [N·m], as in the study", "residual [N·m], leverage above",
                "steers, as in the study", "lean [mm], right +, as in the study",
            "effort, first leverage", "effort, as in the study", "effort, second leverage", "twist margin", "verdict",
        ];
        for (var c = 0; c < headers.Length; c++)
            SheetStyle.Text(sheet.Cell(WhatIfLayout.HeaderRow, c + 1), headers[c]);
        SheetStyle.TableHeader(sheet.Range(WhatIfLayout.HeaderRow, 1, WhatIfLayout.HeaderRow, headers.Length));
        sheet.Range(WhatIfLayout.HeaderRow, 2, WhatIfLayout.HeaderRow, headers.Length).Style.Alignment.SetHorizontal(
            XLAlignmentHorizontalValues.Center);
        sheet.Row(WhatIfLayout.HeaderRow).Height = 64;
        var coefficients = table.Interpolate(report.Result.Chosen!.Geometry)
            ?? throw new InvalidOperationException("the chosen design flies");
        for (var p = 0; p < coefficients.Length; p++)
            new WhatIfPhase(book, sheet, report, p, coefficients[p]).Write();
        Mission(book, sheet, report, layout, coefficients);
    }

    private static void Leverages(IXLWorksheet sheet)
    {
        var row = WhatIfLayout.LeverageRow;
        SheetStyle.Text(sheet.Cell(row, 1), "yaw leverage: residual = roll part + leverage x yaw part");
        sheet.Cell(row, WhatIfLayout.FirstResidualColumn).SetValue(YawLeverage.AssumedLowest);
        SheetStyle.Text(sheet.Cell(row, WhatIfLayout.FirstResidualColumn + 1), "as in study");
        sheet.Cell(row, WhatIfLayout.FirstResidualColumn + 1).Style.Alignment.SetHorizontal(XLAlignmentHorizontalValues.Right);
        sheet.Cell(row, WhatIfLayout.FirstResidualColumn + 2).SetValue(YawLeverage.AssumedHighest);
        foreach (var column in (int[])[WhatIfLayout.FirstResidualColumn, WhatIfLayout.FirstResidualColumn + 2])
        {
            SheetStyle.Input(sheet.Cell(row, column).AsRange());
            sheet.Cell(row, column).DataValidation.Decimal.EqualOrGreaterThan(0);
        }

        sheet.Cell(row, 1).Style.Font.SetBold();
        sheet.Workbook.NamedRanges.Add("what_if_first_leverage", sheet.Cell(row, WhatIfLayout.FirstResidualColumn).AsRange());
        sheet.Workbook.NamedRanges.Add("what_if_second_leverage", sheet.Cell(row, WhatIfLayout.FirstResidualColumn + 2).AsRange());
    }

    /// <summary>The weighted root mean square of the residual, and the largest effort, at each leverage.</summary>
    private static void Mission(
        Spreadsheet book, IXLWorksheet sheet, RunReport report, WhatIfLayout layout, PhaseCoefficients[] coefficients)
    {
        var row = layout.LastPhaseRow + 1;
        SheetStyle.Text(sheet.Cell(row, 1), "mission: residual rms [N·m], effort worst");
        string Column(int column) =>
            $"{CellAddress.Absolute(WhatIfLayout.FirstPhaseRow, column)}:{CellAddress.Absolute(layout.LastPhaseRow, column)}";
        var weights = Column(WhatIfLayout.WeightColumn);
        var offset = report.Result.Chosen!.Geometry.OffsetMetres;
        for (var l = 0; l < Settings; l++)
        {
            var setting = l;
            double Leverage(int phase) => LeverageOf(report, setting, phase);
            var mission = report.Result.Study.Mission;
            var squares = coefficients.Select((phase, p) => mission[p].Weight * Math.Pow(phase.Residual(offset, Leverage(p)), 2)).Sum();
            var residuals = Column(WhatIfLayout.FirstResidualColumn + l);
            Cell(WhatIfLayout.FirstResidualColumn + l, $"SQRT(SUMPRODUCT({weights},{residuals},{residuals})/SUM({weights}))",
                Math.Sqrt(squares / mission.Sum(phase => phase.Weight)), "0.00");
            Cell(
                WhatIfLayout.FirstEffortColumn + l,
                $"MAX({Column(WhatIfLayout.FirstEffortColumn + l)})",
                coefficients.Select((phase, p) => Math.Abs(phase.Residual(offset, Leverage(p))) / phase.Authority(Leverage(p))).Max(),
                "0.00");
        }

        SheetStyle.TableRow(sheet.Range(row, 1, row, WhatIfLayout.VerdictColumn));
        sheet.Range(row, 1, row, WhatIfLayout.VerdictColumn).Style.Font.SetBold();

        void Cell(int column, string formula, double cached, string format) =>
            book.AddFormula(sheet.Cell(row, column), new Formula(WhatIfPhase.IfValid(formula), cached), format);
    }

    /// <summary>The leverage of a phase at setting 0 (first), 1 (as in the study) or 2 (second), as written.</summary>
    public static double LeverageOf(RunReport report, int setting, int phase) => setting switch
    {
        0 => YawLeverage.AssumedLowest,
        1 => report.Result.Mission.Conditions[phase].YawLeverage,
        _ => YawLeverage.AssumedHighest,
    };
}
