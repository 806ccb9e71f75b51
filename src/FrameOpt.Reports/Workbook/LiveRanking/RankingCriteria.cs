using ClosedXML.Excel;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook.LiveRanking;

/// <summary>The block of the sheet Ranking where weights and limits are typed, with the scale that follows.</summary>
internal static class RankingCriteria
{
    private const int NameColumns = 4;

    public static void Add(Spreadsheet book, IXLWorksheet sheet, RankedDesigns ranked, RankingLayout layout)
    {
        Header(sheet, ranked);
        for (var c = 0; c < ranked.Criteria.Count; c++)
            Row(book, sheet, ranked, layout, c);
        var names = sheet.Workbook.NamedRanges;
        int first = RankingLayout.FirstCriterionRow, last = layout.LastCriterionRow;
        names.Add("ranking_weights", sheet.Range(first, RankingLayout.WeightColumn, first + layout.Objectives - 1,
            RankingLayout.WeightColumn));
        names.Add("ranking_at_least", sheet.Range(first, RankingLayout.AtLeastColumn, last, RankingLayout.AtLeastColumn));
        names.Add("ranking_at_most", sheet.Range(first, RankingLayout.AtMostColumn, last, RankingLayout.AtMostColumn));
    }

    private static void Header(IXLWorksheet sheet, RankedDesigns ranked)
    {
        string[] headers =
        [
            "response [unit]", "", "", "", "goal", "weight", "at least", "at most", "baseline", "best", "worst", "best, whole front",
                "worst, whole front",
            "root of sum of squares, whole front", .. RankedDesigns.WingLabels.Select(label => $"study's baseline, {label}"),
                "share of all weights",
            ranked.IsTopsis ? "divisor: root of sum of squares" : "divisor: worst minus best",
        ];
        for (var c = 0; c < headers.Length; c++)
            SheetStyle.Text(sheet.Cell(RankingLayout.CriteriaHeaderRow, c + 1), headers[c]);
        sheet.Range(RankingLayout.CriteriaHeaderRow, 1, RankingLayout.CriteriaHeaderRow, NameColumns).Merge();
        var header = sheet.Range(RankingLayout.CriteriaHeaderRow, 1, RankingLayout.CriteriaHeaderRow, headers.Length);
        SheetStyle.TableHeader(header);
        header.Style.Alignment.SetHorizontal(XLAlignmentHorizontalValues.Center);
        sheet.Row(RankingLayout.CriteriaHeaderRow).Height = 48;
    }

    private static void Row(Spreadsheet book, IXLWorksheet sheet, RankedDesigns ranked, RankingLayout layout, int c)
    {
        var criterion = ranked.Criteria[c];
        var row = RankingLayout.FirstCriterionRow + c;
        sheet.Range(row, 1, row, NameColumns).Merge();
        SheetStyle.Text(sheet.Cell(row, 1), criterion.Header);
        SheetStyle.Text(sheet.Cell(row, RankingLayout.GoalColumn), criterion.Objective is { } objective ? StudyText.Goal(objective)
            : "limit only");
        Bound(sheet.Cell(row, RankingLayout.AtLeastColumn), criterion.AtLeast);
        Bound(sheet.Cell(row, RankingLayout.AtMostColumn), criterion.AtMost);
        for (var l = 0; l < ranked.Baseline.Count; l++)
            Number(sheet.Cell(row, RankingLayout.StudyBaselineColumn + l), criterion.ValueOf(ranked.Baseline[l]), criterion.FormatCode);
        book.AddFormula(sheet.Cell(row, RankingLayout.BaselineColumn), Baseline(ranked, layout, c), criterion.FormatCode);
        if (criterion.Objective is null)
            return;
        sheet.Cell(row, RankingLayout.WeightColumn).SetValue(criterion.Weight);
        sheet.Cell(row, RankingLayout.WeightColumn).Style.NumberFormat.Format = Column.GeneralFormat;
        SheetStyle.Input(sheet.Range(row, RankingLayout.WeightColumn, row, RankingLayout.WeightColumn));
        sheet.Cell(row, RankingLayout.WeightColumn).DataValidation.Decimal.EqualOrGreaterThan(0);
        Number(sheet.Cell(row, RankingLayout.WholeBestColumn), ranked.Best[c], criterion.FormatCode);
        Number(sheet.Cell(row, RankingLayout.WholeWorstColumn), ranked.Worst[c], criterion.FormatCode);
        Number(sheet.Cell(row, RankingLayout.WholeNormColumn), ranked.Norm[c], criterion.FormatCode);
        Scale(book, sheet, ranked, layout, c);
    }

    private static void Scale(Spreadsheet book, IXLWorksheet sheet, RankedDesigns ranked, RankingLayout layout, int c)
    {
        var criterion = ranked.Criteria[c];
        var row = RankingLayout.FirstCriterionRow + c;
        string At(int column) => CellAddress.Absolute(row, column);
        string Values(int wingCase) => layout.Data(layout.ValueColumn(c, wingCase));
        string Choose(string ofOthers, string whole) => $"CHOOSE({RankingLayout.WingNumber},"
            + $"{string.Join(',', WingCases.All.Select((_, w) => w == RankedDesigns.AsInStudy ? whole : $"{ofOthers}({Values(w)})"))})";
        var (best, worst, weights) = (At(RankingLayout.BestColumn), At(RankingLayout.WorstColumn), layout.Weights);
        book.AddFormula(sheet.Cell(row, RankingLayout.BestColumn),
            new(Choose(criterion.Maximise ? "MAX" : "MIN", At(RankingLayout.WholeBestColumn)), ranked.Best[c]), criterion.FormatCode);
        book.AddFormula(sheet.Cell(row, RankingLayout.WorstColumn),
            new(Choose(criterion.Maximise ? "MIN" : "MAX", At(RankingLayout.WholeWorstColumn)), ranked.Worst[c]), criterion.FormatCode);
        book.AddFormula(sheet.Cell(row, RankingLayout.ShareColumn), new(
            $"IF(OR(SUM({weights})<=0,{best}={worst}),0,{At(RankingLayout.WeightColumn)}/SUM({weights}))", ranked.WeightShare[c]), "0.000");
        var divisor = ranked.IsTopsis ? $"SQRT({Choose("SUMSQ", $"{At(RankingLayout.WholeNormColumn)}^2")})" : $"{worst}-{best}";
        var size = ranked.IsTopsis ? ranked.Norm[c] : ranked.Worst[c] - ranked.Best[c];
        book.AddFormula(sheet.Cell(row, RankingLayout.DivisorColumn),
            new($"IF({best}={worst},1,{divisor})", ranked.Best[c] == ranked.Worst[c] ? 1.0 : size), "0.000");
    }

    /// <summary>The baseline's value: of the design whose number is typed, else of the study's own with the wing chosen.</summary>
    private static Formula Baseline(RankedDesigns ranked, RankingLayout layout, int c)
    {
        var row = RankingLayout.FirstCriterionRow + c;
        var number = CellAddress.Absolute(RankingLayout.BaselineRow, RankingLayout.InputColumn);
        var typed = $"IFERROR(INDEX({layout.Data(layout.SelectedColumn(c))},MATCH({number},{layout.Data(1)},0)),\"not in the table\")";
        var ofEach = string.Join(',', Enumerable.Range(0, RankedDesigns.WingLabels.Count)
            .Select(l => CellAddress.Absolute(row, RankingLayout.StudyBaselineColumn + l)));
        var own = ranked.Baseline.Count == 0 ? "\"enter a number\"" : $"CHOOSE({RankingLayout.WingNumber},{ofEach})";
        var value = ranked.Criteria[c].ValueOf(ranked.Baseline.Count == 0 ? ranked.Evaluations[RankedDesigns.AsInStudy][0]
            : ranked.Baseline[RankedDesigns.AsInStudy]);
        return new($"IF({number}=\"\",{own},{typed})", RankedDesigns.Cell(value));
    }

    private static void Bound(IXLCell cell, double? bound)
    {
        if (bound is { } value)
            cell.SetValue(value);
        cell.Style.NumberFormat.Format = Column.GeneralFormat;
        SheetStyle.Input(cell.AsRange());
    }

    private static void Number(IXLCell cell, double value, string format)
    {
        if (RankedDesigns.Cell(value) is string words)
            SheetStyle.Text(cell, words);
        else
            cell.SetValue(value);
        cell.Style.NumberFormat.Format = format;
        cell.Style.Alignment.SetHorizontal(XLAlignmentHorizontalValues.Right);
    }
}

/// <summary>A response that the sheet Ranking weighs, limits, or both.</summary>
/// <param name="Response">Which.</param>
/// <param name="Magnitude">True when its size counts whatever the sign.</param>
/// <param name="Objective">As the study has it, or null for a response that is limited only.</param>
/// <param name="Weight">Of the objective.</param>
/// <param name="AtLeast">The study's limit, or null; in the response's unit.</param>
/// <param name="AtMost">The study's limit, or null; in the response's unit.</param>
internal sealed record RankingCriterion(
    Response Response, bool Magnitude, StudyObjective? Objective, double Weight, double? AtLeast, double? AtMost)
{
    public bool Maximise => Objective?.Maximise == true;

    /// <summary>Name and unit, as in the header of a column.</summary>
    public string Header => Response.Unit.Length == 0 ? StudyText.Name(Response, Magnitude)
        : $"{StudyText.Name(Response, Magnitude)} [{Response.Unit}]";

    public string FormatCode => NumberFormat.FormatCode(Response.Unit);

    /// <summary>NaN for a design that cannot fly.</summary>
    public double ValueOf(DesignEvaluation evaluation) => evaluation.Failure is not null ? double.NaN
        : Magnitude ? Math.Abs(evaluation[Response])
        : evaluation[Response];

    /// <summary>The study's objectives in their order, then what it limits besides.</summary>
    public static IReadOnlyList<RankingCriterion> Of(Study study)
    {
        var criteria = study.Objectives
            .Select((objective, i) => new RankingCriterion(objective.Response, objective.Magnitude, objective, study.Ranking.Weights[i],
                null, null))
            .ToList();
        foreach (var limit in study.Limits)
        {
            var at = criteria.FindIndex(criterion => criterion.Response == limit.Response && criterion.Magnitude == limit.Magnitude);
            if (at < 0)
                criteria.Add(new RankingCriterion(limit.Response, limit.Magnitude, null, 0, limit.AtLeast, limit.AtMost));
            else
                criteria[at] = criteria[at] with
                {
                    AtLeast = Tighter(criteria[at].AtLeast, limit.AtLeast, Math.Max),
                    AtMost = Tighter(criteria[at].AtMost, limit.AtMost, Math.Min)
                };
        }

        return criteria;
    }

    private static double? Tighter(double? one, double? other, Func<double, double, double> pick) =>
        one is { } a && other is { } b ? pick(a, b) : one ?? other;
}
