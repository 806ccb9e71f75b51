using ClosedXML.Excel;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook.WhatIf;

/// <summary>The block of the sheet What if that says what each phase leaves.</summary>
internal static class WhatIfPhases
{
    public static void Add(Spreadsheet book, IXLWorksheet sheet, RunReport report, WhatIfTable table, WhatIfLayout layout)
    {
        string[] headers =
        [
            "phase", "weight", "roll part [N·m], right +", "yaw part [N·m], right +", "wing weight [N·m], right +", "yaw leverage",
            .. WingCases.All.Select(wingCase => $"residual [N·m], {StudyText.Name(wingCase)}"),
            "steers", "lean [mm], right +",
            .. WingCases.All.Select(wingCase => $"effort, {StudyText.Name(wingCase)}"),
            "twist margin", "verdict",
        ];
        for (var c = 0; c < headers.Length; c++)
            SheetStyle.Text(sheet.Cell(WhatIfLayout.HeaderRow, c + 1), headers[c]);
        SheetStyle.TableHeader(sheet.Range(WhatIfLayout.HeaderRow, 1, WhatIfLayout.HeaderRow, headers.Length));
        sheet.Range(WhatIfLayout.HeaderRow, 2, WhatIfLayout.HeaderRow, headers.Length).Style.Alignment.SetHorizontal(
            XLAlignmentHorizontalValues.Center);
        sheet.Row(WhatIfLayout.HeaderRow).Height = 64;
        var coefficients = table.Interpolate(report.Result.Chosen!.Geometry)
            ?? throw new InvalidOperationException("the chosen design flies");
        IReadOnlyList<WhatIfPhase> phases =
            [.. coefficients.Select((phase, p) => new WhatIfPhase(book, sheet, report, p, phase))];
        foreach (var phase in phases)
            phase.Write();
        foreach (var wingCase in WingCases.All)
            Mission(book, sheet, report, layout, (int)wingCase, [.. coefficients.Select(phase => phase.Cases[(int)wingCase])], phases);
        var row = layout.LastPhaseRow + 1;
        SheetStyle.Text(sheet.Cell(row, 1), "mission: residual rms [N·m], effort worst");
        SheetStyle.TableRow(sheet.Range(row, 1, row, WhatIfLayout.VerdictColumn));
        sheet.Range(row, 1, row, WhatIfLayout.VerdictColumn).Style.Font.SetBold();
    }

    /// <summary>The weighted root mean square of the residual, and the largest effort, with the wing of one case.</summary>
    private static void Mission(
        Spreadsheet book, IXLWorksheet sheet, RunReport report, WhatIfLayout layout, int wingCase,
        IReadOnlyList<CaseCoefficients> coefficients, IReadOnlyList<WhatIfPhase> phases)
    {
        string Column(int column) =>
            $"{CellAddress.Absolute(WhatIfLayout.FirstPhaseRow, column)}:{CellAddress.Absolute(layout.LastPhaseRow, column)}";
        var mission = report.Result.Study.Mission;
        var offset = report.Result.Chosen!.Geometry.OffsetMetres;
        var squares = coefficients.Select((phase, p) => mission[p].Weight * Math.Pow(phase.Residual.At(offset), 2)).Sum();
        var (weights, residuals) = (Column(WhatIfLayout.WeightColumn), Column(WhatIfLayout.ResidualColumn(wingCase)));
        Cell(WhatIfLayout.ResidualColumn(wingCase), $"SQRT(SUMPRODUCT({weights},{residuals},{residuals})/SUM({weights}))",
            Math.Sqrt(squares / mission.Sum(phase => phase.Weight)));
        var efforts = Column(WhatIfLayout.EffortColumn(wingCase));
        var cached = phases.Select(phase => phase.Effort(wingCase)).ToList();
        Cell(WhatIfLayout.EffortColumn(wingCase),
            $"IF(COUNTIF({efforts},\"{WhatIfPhase.Unbounded}\")>0,\"{WhatIfPhase.Unbounded}\",MAX({efforts}))",
            cached.Contains(WhatIfPhase.Unbounded) ? WhatIfPhase.Unbounded : cached.OfType<double>().Max());

        void Cell(int column, string formula, object value) =>
            book.AddFormula(sheet.Cell(layout.LastPhaseRow + 1, column), new Formula(WhatIfPhase.IfValid(formula), value), "0.00");
    }
}
