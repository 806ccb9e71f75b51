using FrameOpt.Reports.Workbook.Cells;

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
    public const int LeverageRow = 15;
    public const int HeaderRow = 16;
    public const int FirstPhaseRow = 17;

    public const int WeightColumn = 2;
    public const int RollColumn = 3;
    public const int YawColumn = 4;
    public const int StudyLeverageColumn = 5;
    public const int FirstResidualColumn = 6;
    public const int SteersColumn = 9;
    public const int LeanColumn = 10;
    public const int FirstEffortColumn = 11;
    public const int TwistColumn = 14;
    public const int VerdictColumn = 15;

    public const int Corners = 8;
    public const int NumberColumn = 2;
    public const int FliesColumn = 6;
    public const int CornerWeightColumn = 7;
    public const int FirstCoefficientColumn = 8;
    public const int CoefficientsOfPhase = 7;

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

    public static int CoefficientColumn(int phase, int coefficient) => FirstCoefficientColumn + CoefficientsOfPhase * phase + coefficient;

    /// <summary>A column of the eight corners.</summary>
    public static string OfCorners(int column) => CellAddress.Column(DataSheetName, column, FirstCornerRow, FirstNodeRow - 1);

    /// <summary>A column of the table.</summary>
    public string OfNodes(int column) => CellAddress.Column(DataSheetName, column, FirstNodeRow, LastNodeRow);

    /// <summary>One coefficient read between the levels.</summary>
    public static string Interpolate(int phase, int coefficient) =>
        $"SUMPRODUCT({OfCorners(CornerWeightColumn)},{OfCorners(CoefficientColumn(phase, coefficient))})";
}
