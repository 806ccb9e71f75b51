using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook.LiveRanking;

/// <summary>Where things stand on the sheets Ranking and Ranking data, so that each can point at the other.</summary>
internal sealed class RankingLayout(RankedDesigns ranked)
{
    public const string Sheet = "Ranking";
    public const string DataSheetName = "Ranking data";
    public const int WingRow = 3;
    public const int BaselineRow = 4;
    public const int MessageRow = 5;
    public const int CriteriaHeaderRow = 6;
    public const int FirstCriterionRow = 7;
    public const int GoalColumn = 5;
    public const int WeightColumn = 6;
    public const int AtLeastColumn = 7;
    public const int AtMostColumn = 8;
    public const int BaselineColumn = 9;
    public const int BestColumn = 10;
    public const int WorstColumn = 11;
    public const int WholeBestColumn = 12;
    public const int WholeWorstColumn = 13;
    public const int WholeNormColumn = 14;
    public const int StudyBaselineColumn = 15;
    public static readonly int ShareColumn = StudyBaselineColumn + WingCases.All.Count;
    public static readonly int DivisorColumn = ShareColumn + 1;
    private const int FirstFactorColumn = 3;
    private const int DrillColumns = 2;

    public const int InputColumn = GoalColumn;
    public const int WingNumberColumn = AtMostColumn;

    public int Objectives => ranked.Study.Objectives.Count;

    public int Criteria => ranked.Criteria.Count;

    public int LastCriterionRow => FirstCriterionRow + Criteria - 1;

    public int TableHeaderRow => LastCriterionRow + 2;

    public static int FirstDataRow => DataSheet.HeaderRow + 1;

    public int LastDataRow => DataSheet.HeaderRow + ranked.Designs.Count;

    public int WithinColumn => SelectedColumn(Criteria);

    public int ScoreColumn => WithinColumn + 1;

    public int RankColumn => WithinColumn + 2;

    public int OrderColumn => WithinColumn + 3;

    /// <summary>Of one criterion with the wing of one case on the data sheet.</summary>
    public int ValueColumn(int criterion, int wingCase) =>
        FirstFactorColumn + ranked.Study.Factors.Count + DrillColumns + WingCases.All.Count * criterion + wingCase;

    /// <summary>Of one criterion with the wing chosen, on the data sheet.</summary>
    public int SelectedColumn(int criterion) => ValueColumn(Criteria, 0) + criterion;

    /// <summary>A whole column of the data sheet.</summary>
    public string Data(int column) => CellAddress.Column(DataSheetName, column, FirstDataRow, LastDataRow);

    /// <summary>A cell of the sheet Ranking, from any sheet.</summary>
    public static string Input(int row, int column) => $"{Sheet}!{CellAddress.Absolute(row, column)}";

    /// <summary>The number of the case of the wing chosen, from 1.</summary>
    public static string WingNumber => Input(WingRow, WingNumberColumn);

    /// <summary>The weights of all objectives.</summary>
    public string Weights =>
        $"{Input(FirstCriterionRow, WeightColumn)}:{CellAddress.Absolute(FirstCriterionRow + Objectives - 1, WeightColumn)}";
}
