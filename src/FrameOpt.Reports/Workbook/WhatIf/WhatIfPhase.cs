using ClosedXML.Excel;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Workbook.WhatIf;

/// <summary>One phase's row on the sheet What if.</summary>
internal sealed class WhatIfPhase(Spreadsheet book, IXLWorksheet sheet, RunReport report, int phase, PhaseCoefficients coefficients)
{
    private const int Settings = 3;
    private readonly int row = WhatIfLayout.FirstPhaseRow + phase;
    private readonly double offset = report.Result.Chosen!.Geometry.OffsetMetres;

    /// <summary>A formula that gives nothing while the design typed is outside the table.</summary>
    public static string IfValid(string formula) =>
        $"IF({CellAddress.Absolute(WhatIfLayout.StateRow, WhatIfLayout.InputColumn)}<>\"yes\",\"\",{formula})";

    private static string TypedSpacing => CellAddress.Absolute(WhatIfLayout.FirstInputRow, WhatIfLayout.InputColumn);

    public void Write()
    {
        var typedOffset = CellAddress.Absolute(WhatIfLayout.OffsetRow, WhatIfLayout.InputColumn);
        SheetStyle.Text(sheet.Cell(row, 1), report.Result.Study.Mission[phase].Name);
        sheet.Cell(row, WhatIfLayout.WeightColumn).SetValue(report.Result.Study.Mission[phase].Weight);
        Cell(WhatIfLayout.RollColumn, $"{WhatIfLayout.Interpolate(phase, 0)}+{typedOffset}*{WhatIfLayout.Interpolate(phase, 1)}",
            coefficients.Roll.At(offset), "0.00");
        Cell(WhatIfLayout.YawColumn, $"{WhatIfLayout.Interpolate(phase, 2)}+{typedOffset}*{WhatIfLayout.Interpolate(phase, 3)}",
            coefficients.Yaw.At(offset), "0.00");
        sheet.Cell(row, WhatIfLayout.StudyLeverageColumn).SetValue(Leverage(1));
        sheet.Cell(row, WhatIfLayout.StudyLeverageColumn).Style.NumberFormat.Format = "0.00";
        for (var l = 0; l < Settings; l++)
        {
            Cell(WhatIfLayout.FirstResidualColumn + l, $"{At(WhatIfLayout.RollColumn)}+{LeverageCell(l)}*{At(WhatIfLayout.YawColumn)}",
                coefficients.Residual(offset, Leverage(l)), "0.00");
            Cell(WhatIfLayout.FirstEffortColumn + l, $"ABS({At(WhatIfLayout.FirstResidualColumn + l)})/{AuthorityFormula(l)}", Effort(l),
                "0.00");
        }

        var residual = At(WhatIfLayout.FirstResidualColumn + 1);
        var value = coefficients.Residual(offset, Leverage(1));
        var straight = PhaseResult.StraightWithinNewtonMetres;
        Cell(WhatIfLayout.SteersColumn,
            $"IF(ABS({residual})<={PlainNumber.Text(straight)},\"straight\",IF({residual}>0,\"right\",\"left\"))",
            Math.Abs(value) <= straight ? "straight" : SideText.Side(value), "General");
        var lean = CellAddress.Absolute(WhatIfLayout.LeanRow, 2);
        Cell(WhatIfLayout.LeanColumn, $"-{residual}/{AuthorityFormula(1)}*{lean}",
            -value / coefficients.Authority(Leverage(1)) * 1000 * report.Result.Study.Machine.Pilot.LeanMetres, "0.0");
        TwistMargin();
        Verdict();
        SheetStyle.TableRow(sheet.Range(row, 1, row, WhatIfLayout.VerdictColumn));
        foreach (var column in (int[])[WhatIfLayout.SteersColumn, WhatIfLayout.VerdictColumn])
            sheet.Cell(row, column).Style.Alignment.SetHorizontal(XLAlignmentHorizontalValues.Left).Alignment.SetIndent(1);
        sheet.Row(row).Height = SheetStyle.HeightPoints((report.Result.Study.Mission[phase].Name, 46));
    }

    private void TwistMargin()
    {
        var yaw = At(WhatIfLayout.YawColumn);
        var stiffness = $"{WhatIfLayout.Interpolate(phase, 6)}*{TypedSpacing}*{CellAddress.Absolute(WhatIfLayout.YawRow, 2)}";
        var margin = report.Result.Chosen!.Phases[phase][PhaseQuantity.TwistMargin];
        Cell(WhatIfLayout.TwistColumn, $"IF({yaw}=0,\"unbounded\",{stiffness}/ABS({yaw}))", double.IsFinite(margin) ? margin : "unbounded",
            "0.00");
    }

    private void Verdict()
    {
        var twist = At(WhatIfLayout.TwistColumn);
        var spacing = report.Result.Study.LengthUnit.SiPerUnit;
        var perMetre = $"ABS({At(WhatIfLayout.RollColumn)})/({TypedSpacing}*{PlainNumber.Text(spacing)})";
        var worstEffort = $"MAX({At(WhatIfLayout.FirstEffortColumn)}:{At(WhatIfLayout.FirstEffortColumn + 2)})";
        var warns = PlainNumber.Text(Cautions.SuddenTorqueTwistMargin);
        var margin = report.Result.Chosen!.Phases[phase][PhaseQuantity.TwistMargin];
        var cached = margin < Cautions.SuddenTorqueTwistMargin ? "sudden torque can twist risers"
            : Effort(1) > 1 ? "cannot be held"
            : Math.Max(Effort(0), Effort(2)) > 1 ? "not held at every leverage" : "can be held";
        Cell(
            WhatIfLayout.VerdictColumn,
            $"IF(AND(ISNUMBER({twist}),{twist}<1),\"CANNOT FLY: risers twist\","
                + $"IF({WhatIfLayout.Interpolate(phase, 6)}/2<{perMetre},\"CANNOT FLY: slack riser\","
                + $"IF(AND(ISNUMBER({twist}),{twist}<{warns}),\"sudden torque can twist risers\","
                + $"IF({At(WhatIfLayout.FirstEffortColumn + 1)}>1,\"cannot be held\","
                + $"IF({worstEffort}>1,\"not held at every leverage\",\"can be held\")))))",
            cached,
            "General");
    }

    private double Leverage(int setting) => WhatIfPhases.LeverageOf(report, setting, phase);

    private double Effort(int setting) =>
        Math.Abs(coefficients.Residual(offset, Leverage(setting))) / coefficients.Authority(Leverage(setting));

    private string LeverageCell(int setting) => setting == 1
        ? At(WhatIfLayout.StudyLeverageColumn)
        : CellAddress.Absolute(WhatIfLayout.LeverageRow, WhatIfLayout.FirstResidualColumn + setting);

    private string AuthorityFormula(int setting) =>
        $"({WhatIfLayout.Interpolate(phase, 4)}+{LeverageCell(setting)}*{WhatIfLayout.Interpolate(phase, 5)})";

    private string At(int column) => CellAddress.Absolute(row, column);

    private void Cell(int column, string formula, object cached, string format) =>
        book.AddFormula(sheet.Cell(row, column), new Formula(IfValid(formula), cached), format);
}
