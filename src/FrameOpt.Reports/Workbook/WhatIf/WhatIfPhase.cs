using ClosedXML.Excel;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook.WhatIf;

/// <summary>One phase's row on the sheet What if.</summary>
internal sealed class WhatIfPhase(Spreadsheet book, IXLWorksheet sheet, RunReport report, int phase, PhaseCoefficients coefficients)
{
    /// <summary>In place of an effort that no lean brings down.</summary>
    public const string Unbounded = "unbounded";

    private const string NotSettled = "not settled";
    private const string CannotBeHeld = "cannot be held";
    private const int AsGiven = (int)WingCase.AsGiven;
    private readonly int row = WhatIfLayout.FirstPhaseRow + phase;
    private readonly double offset = report.Result.Chosen!.Geometry.OffsetMetres;
    private readonly PhaseResult chosen = report.Result.Chosen!.Phases[phase];

    /// <summary>A formula that gives nothing while the design typed is outside the table.</summary>
    public static string IfValid(string formula) =>
        $"IF({CellAddress.Absolute(WhatIfLayout.StateRow, WhatIfLayout.InputColumn)}<>\"yes\",\"\",{formula})";

    private static string TypedSpacing => CellAddress.Absolute(WhatIfLayout.FirstInputRow, WhatIfLayout.InputColumn);

    private bool IsSettled => chosen.Phase.IsSettled;

    private double LargestLeanMillimetres => 1000 * report.Result.Study.Machine.Pilot.LeanMetres;

    /// <summary>The authority below which the pendulum share is too small for a lean to cure anything, N·m.</summary>
    private double LeastAuthority =>
        PhaseResponses.LeastPendulumShare / chosen[PhaseQuantity.PendulumShare] * chosen[PhaseQuantity.WeightShiftAuthority];

    public void Write()
    {
        SheetStyle.Text(sheet.Cell(row, 1), chosen.Phase.Name);
        sheet.Cell(row, WhatIfLayout.WeightColumn).SetValue(chosen.Phase.Weight);
        Parts();
        foreach (var wingCase in WingCases.All)
            Case((int)wingCase);
        Steers();
        TwistMargin();
        Verdict();
        SheetStyle.TableRow(sheet.Range(row, 1, row, WhatIfLayout.VerdictColumn));
        foreach (var column in (int[])[WhatIfLayout.SteersColumn, WhatIfLayout.VerdictColumn])
            sheet.Cell(row, column).Style.Alignment.SetHorizontal(XLAlignmentHorizontalValues.Left).Alignment.SetIndent(1);
        sheet.Row(row).Height = SheetStyle.HeightPoints((chosen.Phase.Name, 46));
    }

    /// <summary>The effort with the wing of one case, as written.</summary>
    public object Effort(int wingCase) => !IsSettled ? NotSettled
        : coefficients.Cases[wingCase].Authority < LeastAuthority ? Unbounded
        : Math.Abs(coefficients.Cases[wingCase].Residual.At(offset)) / coefficients.Cases[wingCase].Authority;

    /// <summary>Roll part, yaw part and wing weight, which sum to the residual with the wing as given.</summary>
    private void Parts()
    {
        var (roll, yaw) = (coefficients.Roll.At(offset), coefficients.YawLeverage * coefficients.Yaw.At(offset));
        Cell(WhatIfLayout.RollColumn, WhatIfLayout.AtOffset(phase, WhatIfLayout.RollCoefficient), roll, "0.00");
        Cell(WhatIfLayout.LeverageColumn, WhatIfLayout.Interpolate(phase, WhatIfLayout.LeverageCoefficient), coefficients.YawLeverage,
            "0.00");
        Cell(WhatIfLayout.YawColumn, $"{At(WhatIfLayout.LeverageColumn)}*({YawMoment})", yaw, "0.00");
        Cell(WhatIfLayout.WingWeightColumn,
            $"{At(WhatIfLayout.ResidualColumn(AsGiven))}-{At(WhatIfLayout.RollColumn)}-{At(WhatIfLayout.YawColumn)}",
            coefficients.Cases[AsGiven].Residual.At(offset) - roll - yaw, "0.00");
    }

    private static string OrUnbounded(string authority, string least, string formula) =>
        $"IF({authority}<{least},\"{Unbounded}\",{formula})";

    private void Case(int wingCase)
    {
        var residual = coefficients.Cases[wingCase].Residual.At(offset);
        Cell(WhatIfLayout.ResidualColumn(wingCase), WhatIfLayout.AtOffset(phase, WhatIfLayout.ResidualCoefficient(wingCase)), residual,
            "0.00");
        var authority = WhatIfLayout.Interpolate(phase, WhatIfLayout.AuthorityCoefficient(wingCase));
        var least = PlainNumber.Text(LeastAuthority);
        Cell(
            WhatIfLayout.EffortColumn(wingCase),
            IsSettled ? OrUnbounded(authority, least, $"ABS({At(WhatIfLayout.ResidualColumn(wingCase))})/{authority}")
                : $"\"{NotSettled}\"",
            Effort(wingCase),
            "0.00");
        if (wingCase != AsGiven)
            return;
        var lean = CellAddress.Absolute(WhatIfLayout.LeanRow, 2);
        Cell(
            WhatIfLayout.LeanColumn,
            IsSettled ? OrUnbounded(authority, least, $"-{At(WhatIfLayout.ResidualColumn(AsGiven))}/{authority}*{lean}")
                : $"\"{NotSettled}\"",
            Effort(AsGiven) is double ? -residual / coefficients.Cases[AsGiven].Authority * LargestLeanMillimetres : Effort(AsGiven),
            "0.0");
    }

    private void Steers()
    {
        var residual = At(WhatIfLayout.ResidualColumn(AsGiven));
        Cell(
            WhatIfLayout.SteersColumn,
            $"IF(ABS({residual})<={PlainNumber.Text(PhaseResult.StraightWithinNewtonMetres)},\"straight\","
                + $"IF({residual}>0,\"right\",\"left\"))",
            PhaseResult.SteersWith(coefficients.Cases[AsGiven].Residual.At(offset)),
            "General");
    }

    private void TwistMargin()
    {
        var stiffness = $"{RiserLoad}*{TypedSpacing}*{CellAddress.Absolute(WhatIfLayout.YawRow, 2)}";
        var margin = chosen[PhaseQuantity.TwistMargin];
        Cell(WhatIfLayout.TwistColumn, $"IF({YawMoment}=0,\"{Unbounded}\",{stiffness}/ABS({YawMoment}))",
            double.IsFinite(margin) ? margin : Unbounded, "0.00");
    }

    private void Verdict()
    {
        var twist = At(WhatIfLayout.TwistColumn);
        var spacing = report.Result.Study.LengthUnit.SiPerUnit;
        var perMetre = $"ABS({At(WhatIfLayout.RollColumn)})/({TypedSpacing}*{PlainNumber.Text(spacing)})";
        var warns = PlainNumber.Text(Cautions.SuddenTorqueTwistMargin);
        Cell(
            WhatIfLayout.VerdictColumn,
            $"IF(AND(ISNUMBER({twist}),{twist}<1),\"CANNOT FLY: risers twist\","
                + $"IF({RiserLoad}/2<{perMetre},\"CANNOT FLY: slack riser\","
                + $"IF(AND(ISNUMBER({twist}),{twist}<{warns}),\"sudden torque can twist risers\",{HeldFormula})))",
            chosen[PhaseQuantity.TwistMargin] < Cautions.SuddenTorqueTwistMargin ? "sudden torque can twist risers" : Held,
            "General");
    }

    private const string SeeTwist = "not settled: see twist";
    private const string NotHeldIfWingDiffers = "not held if the wing differs";
    private const string CanBeHeld = "can be held";

    private string Held => !IsSettled ? SeeTwist
        : IsTooMuch(Effort(AsGiven)) ? CannotBeHeld
        : WingCases.All.Any(wingCase => IsTooMuch(Effort((int)wingCase))) ? NotHeldIfWingDiffers
        : CanBeHeld;

    /// <summary>In a spreadsheet a word is larger than any number, so "unbounded" is above 1.</summary>
    private string HeldFormula => IsSettled
        ? $"IF({At(WhatIfLayout.EffortColumn(AsGiven))}>1,\"{CannotBeHeld}\","
            + $"IF(OR({string.Join(',', WingCases.All.Select(wingCase => $"{At(WhatIfLayout.EffortColumn((int)wingCase))}>1"))}),"
            + $"\"{NotHeldIfWingDiffers}\",\"{CanBeHeld}\"))"
        : $"\"{SeeTwist}\"";

    private static bool IsTooMuch(object effort) => effort is not double number || number > 1;

    private string RiserLoad => WhatIfLayout.Interpolate(phase, WhatIfLayout.RiserLoadCoefficient);

    private string YawMoment => WhatIfLayout.AtOffset(phase, WhatIfLayout.YawCoefficient);

    private string At(int column) => CellAddress.Absolute(row, column);

    private void Cell(int column, string formula, object cached, string format) =>
        book.AddFormula(sheet.Cell(row, column), new Formula(IfValid(formula), cached), format);
}
