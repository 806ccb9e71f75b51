using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook.WhatIf;

/// <summary>Where things stand on the sheets What if and What if data, so that each can point at the other.</summary>
internal sealed class WhatIfLayout(WhatIfTable table, int phases)
{
    public const string Sheet = "What if";
    public const string DataSheetName = "What if data";

    public const int FirstInputRow = 4;
    public const int InputColumn = 2;
    public const int LowerColumn = 6;
    public const int UpperColumn = 7;
    public const int FractionColumn = 8;
    public const int StateRow = 9;
    public const int DrillRow = 10;
    public const int LeanRow = 12;
    public const int YawRow = 13;
    public const int HeaderRow = 15;
    public const int FirstPhaseRow = 16;

    public const int WeightColumn = 2;
    public const int RollColumn = 3;
    public const int YawColumn = 4;
    public const int WingWeightColumn = 5;
    public const int LeverageColumn = 6;
    private const int FirstResidualColumn = 7;
    public static readonly int SteersColumn = FirstResidualColumn + WingCases.All.Count;
    public static readonly int LeanColumn = SteersColumn + 1;
    private static readonly int firstEffortColumn = LeanColumn + 1;
    public static readonly int TwistColumn = firstEffortColumn + WingCases.All.Count;
    public static readonly int VerdictColumn = TwistColumn + 1;

    public const int Corners = 8;
    public const int NumberColumn = 2;
    public const int FliesColumn = 6;
    public const int CornerWeightColumn = 7;
    public const int FirstCoefficientColumn = 8;

    /// <summary>The coefficients of a phase: the roll and the yaw moment at no offset and per unit of offset, then leverage and load, then
    /// residual at no offset and per unit of offset and authority of each case of the wing.</summary>
    public const int RollCoefficient = 0;
    public const int YawCoefficient = 2;
    public const int LeverageCoefficient = 4;
    public const int RiserLoadCoefficient = 5;
    private const int FirstCaseCoefficient = 6;
    private const int CoefficientsOfCase = 3;
    private static readonly int coefficientsOfPhase = FirstCaseCoefficient + CoefficientsOfCase * WingCases.All.Count;

    public int LastPhaseRow => FirstPhaseRow + phases - 1;

    public int LevelsHeadingRow => LastPhaseRow + 4;

    /// <summary>The rows of the levels of spacing, height and angle.</summary>
    public int LevelsRow(int factor) => LevelsHeadingRow + 1 + factor;

    public static int FirstCornerRow => DataSheet.HeaderRow + 1;

    public static int FirstNodeRow => FirstCornerRow + Corners;

    public int LastNodeRow => FirstNodeRow + table.Nodes.Count - 1;

    /// <summary>The typed value of spacing (0), height (1) or angle (2); the offset stands between them.</summary>
    public static int InputRow(int factor) => FirstInputRow + (factor == 0 ? 0 : factor + 1);

    public static int OffsetRow => FirstInputRow + 1;

    public static string Input(int row, int column) => $"'{Sheet}'!{CellAddress.Absolute(row, column)}";

    public static int CoefficientColumn(int phase, int coefficient) => FirstCoefficientColumn + coefficientsOfPhase * phase + coefficient;

    /// <summary>A column of the eight corners.</summary>
    public static string OfCorners(int column) => CellAddress.Column(DataSheetName, column, FirstCornerRow, FirstNodeRow - 1);

    /// <summary>A column of the table.</summary>
    public string OfNodes(int column) => CellAddress.Column(DataSheetName, column, FirstNodeRow, LastNodeRow);

    /// <summary>The residual with the wing of one case, on the sheet.</summary>
    public static int ResidualColumn(int wingCase) => FirstResidualColumn + wingCase;

    /// <summary>The effort with the wing of one case, on the sheet.</summary>
    public static int EffortColumn(int wingCase) => firstEffortColumn + wingCase;

    /// <summary>The residual at no offset with the wing of one case; the next one is per unit of offset.</summary>
    public static int ResidualCoefficient(int wingCase) => FirstCaseCoefficient + CoefficientsOfCase * wingCase;

    /// <summary>The authority with the wing of one case.</summary>
    public static int AuthorityCoefficient(int wingCase) => ResidualCoefficient(wingCase) + 2;

    /// <summary>A quantity linear in the offset, at the offset typed.</summary>
    public static string AtOffset(int phase, int coefficient) =>
        $"{Interpolate(phase, coefficient)}+{CellAddress.Absolute(OffsetRow, InputColumn)}*{Interpolate(phase, coefficient + 1)}";

    /// <summary>One coefficient read between the levels.</summary>
    public static string Interpolate(int phase, int coefficient) =>
        $"SUMPRODUCT({OfCorners(CornerWeightColumn)},{OfCorners(CoefficientColumn(phase, coefficient))})";
}
