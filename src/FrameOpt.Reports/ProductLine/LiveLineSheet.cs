using ClosedXML.Excel;
using FrameOpt.ProductLine;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Studies;
using static System.FormattableString;

namespace FrameOpt.Reports.ProductLine;

/// <summary>The line as formulas: change how many pieces a customer takes, or which geometries are made, and see who gets which and what it
/// is worth.</summary>
internal sealed class LiveLineSheet
{
    /// <summary>The name of the sheet.</summary>
    public const string Name = "Live line";

    private const int NameColumn = 1, PiecesColumn = 3, WhoColumn = 4, CostColumn = 5, FirstCost = 6;
    private const int MeanRow = 4, WorstRow = 5, WeightRow = 6, ValueRow = 7, UnservedRow = 8, ProgramRow = 9;
    private const int NamesRow = 11, MadeRow = 12, SumRow = 13, HeaderRow = 14, FirstRow = 15;

    /// <summary>Stands for not allowed: larger than any cost.</summary>
    private const double NotAllowed = 1e9;

    private const string NotAllowedText = "1E9";
    private readonly Spreadsheet book;
    private readonly IXLWorksheet sheet;
    private readonly ProductLineResult result;
    private readonly LineCosts costs;
    private readonly int lastRow, lastCost;
    private readonly string format;

    private LiveLineSheet(Spreadsheet book, ProductLineResult result, LineCosts costs)
    {
        (this.book, this.result, this.costs) = (book, result, costs);
        (lastRow, lastCost) = (FirstRow + costs.Rows.Count - 1, FirstCost + costs.Designs.Count - 1);
        format = NumberFormat.FormatCode(result.Setting.CostResponse.Response.Unit);
        sheet = book.AddSheet(Name);
    }

    /// <summary>Adds the sheet where the result has its costs.</summary>
    public static void Add(Spreadsheet book, ProductLineResult result)
    {
        if (result.Costs is { } costs && result.Geometries.Count > 0)
            new LiveLineSheet(book, result, costs).Write();
    }

    private string Pieces => Down(PiecesColumn);

    private string Costs => Down(CostColumn);

    private void Write()
    {
        sheet.ShowGridLines = false;
        sheet.Column(NameColumn).Width = 30;
        sheet.Column(2).Width = 30;
        sheet.Columns(PiecesColumn, lastCost).Width = 13;
        SheetStyle.Title(sheet.Cell(1, 1), "Live line");
        SheetStyle.Paragraph(sheet.Range(2, 1, 2, Math.Max(lastCost, 9)),
            "Change a framed blue cell: how many pieces a customer takes, which geometries are made (1) or not (0), the "
                + "weight of the worst "
                + "customer. Who gets which, the pieces of each geometry and the value follow. The costs are figures of the program, "
                + $"{ProductLineText.Cost(result.Setting)} of each customer with each geometry; what is best for changed "
                + "customers it finds "
                + "only when it is run again.", 150);
        Summary();
        Geometries();
        string[] headers = ["customer", "pilot, configuration", result.Setting.InPieces ? "pieces" : "share", "geometry", "cost",
            .. Enumerable.Range(0, costs.Designs.Count).Select(g => $"cost with {GeometryName(g)}")];
        for (var c = 0; c < headers.Length; c++)
            SheetStyle.Text(sheet.Cell(HeaderRow, c + 1), headers[c]);
        SheetStyle.TableHeader(sheet.Range(HeaderRow, 1, HeaderRow, headers.Length));
        sheet.Row(HeaderRow).Height = 32;
        for (var r = 0; r < costs.Rows.Count; r++)
            Customer(r);
        SheetStyle.Input(sheet.Range(FirstRow, PiecesColumn, lastRow, PiecesColumn));
        sheet.SheetView.Freeze(HeaderRow, NameColumn);
        sheet.PageSetup.SetRowsToRepeatAtTop(HeaderRow, HeaderRow);
        book.Print(sheet);
    }

    private void Summary()
    {
        var (setting, value) = (result.Setting, result.Solution.Value);
        var served = result.Assignments.Where(one => one.Geometry >= 0).ToList();
        var all = served.Sum(one => one.Row.Share);
        double mean = served.Sum(one => one.Row.Share * one.Cost) / all, worst = served.Max(one => one.Cost);
        void Line(int row, string label, string formula, object cached)
        {
            SheetStyle.Text(sheet.Cell(row, NameColumn), label);
            book.AddFormula(sheet.Cell(row, PiecesColumn), new Formula(formula, cached), format);
        }

        var weights = $"SUMPRODUCT({Pieces}*({Costs}<{NotAllowedText}))";
        Line(MeanRow, "mean cost of those served", $"SUMPRODUCT({Pieces}*({Costs}<{NotAllowedText})*{Costs})/{weights}", mean);
        Line(WorstRow, "worst cost of those served",
            $"SUMPRODUCT(MAX(({Pieces}>0)*({Costs}<{NotAllowedText})*{Costs}))", worst);
        var weight = setting.Objective is ProductLineObjective.Blend { WorstWeight: var share } ? share
            : setting.Objective is ProductLineObjective.Worst ? 1 : 0;
        SheetStyle.Text(sheet.Cell(WeightRow, NameColumn), "weight of the worst customer, 0 to 1");
        sheet.Cell(WeightRow, PiecesColumn).SetValue(weight);
        SheetStyle.Input(sheet.Range(WeightRow, PiecesColumn, WeightRow, PiecesColumn));
        var (meanCell, worstCell, weightCell) = (At(MeanRow), At(WorstRow), At(WeightRow));
        Line(ValueRow, "value: mean and worst by that weight", $"(1-{weightCell})*{meanCell}+{weightCell}*{worstCell}",
            (1 - weight) * mean + weight * worst);
        Line(UnservedRow, "without a geometry", $"SUMPRODUCT({Pieces}*({Costs}>={NotAllowedText}))",
            result.Assignments.Where(one => one.Geometry < 0).Sum(one => one.Row.Share));
        sheet.Cell(UnservedRow, PiecesColumn).Style.NumberFormat.Format = "0.##";
        SheetStyle.Text(sheet.Cell(ProgramRow, NameColumn), $"the program: {ProductLineText.Value(setting)}");
        if (double.IsFinite(value))
            sheet.Cell(ProgramRow, PiecesColumn).SetValue(value).Style.NumberFormat.Format = format;
    }

    private void Geometries()
    {
        foreach (var (row, label) in new[] { (NamesRow, "geometry"), (MadeRow, "made: 1, not made: 0"),
            (SumRow, result.Setting.InPieces ? "pieces of it" : "share of it") })
            SheetStyle.Text(sheet.Cell(row, WhoColumn), label);
        for (var g = 0; g < costs.Designs.Count; g++)
        {
            SheetStyle.Text(sheet.Cell(NamesRow, FirstCost + g), GeometryName(g));
            SheetStyle.Text(sheet.Cell(NamesRow - 1, FirstCost + g), ProductLineText.Design(result.Study, costs.Designs[g]));
            sheet.Cell(NamesRow - 1, FirstCost + g).Style.Alignment.SetWrapText();
            sheet.Cell(MadeRow, FirstCost + g).SetValue(g < result.Geometries.Count ? 1 : 0);
            book.AddFormula(sheet.Cell(SumRow, FirstCost + g), new Formula(
                $"SUMPRODUCT(({Down(WhoColumn)}={CellAddress.Relative(NamesRow, FirstCost + g)})*{Pieces})",
                result.Assignments.Where(one => one.Geometry == g).Sum(one => one.Row.Share)), "0.##");
        }

        sheet.Row(NamesRow - 1).Height = 62;
        sheet.Range(NamesRow, WhoColumn, NamesRow, lastCost).Style.Font.SetBold();
        SheetStyle.Input(sheet.Range(MadeRow, FirstCost, MadeRow, lastCost));
    }

    private void Customer(int r)
    {
        var (row, served) = (FirstRow + r, result.Assignments[r]);
        SheetStyle.Text(sheet.Cell(row, NameColumn), ProductLineText.Name(result.Setting, served.Row));
        SheetStyle.Text(sheet.Cell(row, 2), ProductLineText.Configuration(result.Setting, served.Row));
        sheet.Cell(row, PiecesColumn).SetValue(served.Row.Share);
        for (var g = 0; g < costs.Designs.Count; g++)
            sheet.Cell(row, FirstCost + g).SetValue(double.IsFinite(costs.Rows[r][g]) ? costs.Rows[r][g] : NotAllowed)
                .Style.NumberFormat.Format = Invariant($"[>=1000000000]\"not allowed\";{format}");
        var own = Invariant($"({Across(row)}+{NotAllowedText}*(1-{Across(MadeRow, isFixed: true)}))");
        var cost = CellAddress.Relative(row, CostColumn);
        book.AddFormula(sheet.Cell(row, CostColumn), new Formula($"SUMPRODUCT(MIN({own}))",
            served.Geometry < 0 ? NotAllowed : served.Cost), Invariant($"[>=1000000000]\"not allowed\";{format}"));
        // The first column whose cost is the least.
        book.AddFormula(sheet.Cell(row, WhoColumn), new Formula(
            $"IF({cost}>={NotAllowedText},\"none\",INDEX({Across(NamesRow, isFixed: true)},1,"
                + Invariant($"SUMPRODUCT(MIN(1E6*({own}>{cost})+COLUMN({Across(row)})))-{FirstCost - 1}))"),
            served.Geometry < 0 ? "none" : GeometryName(served.Geometry)), Column.GeneralFormat);
    }

    /// <summary>Of the line, or of another that was the best for another number of geometries.</summary>
    private string GeometryName(int g) => g < result.Geometries.Count ? result.Geometries[g].Name
        : Invariant($"other {g - result.Geometries.Count + 1}");

    private string Down(int column) => $"{CellAddress.Absolute(FirstRow, column)}:{CellAddress.Absolute(lastRow, column)}";

    private string Across(int row, bool isFixed = false) => isFixed
        ? $"{CellAddress.Absolute(row, FirstCost)}:{CellAddress.Absolute(row, lastCost)}"
        : $"{CellAddress.Relative(row, FirstCost)}:{CellAddress.Relative(row, lastCost)}";

    private static string At(int row) => CellAddress.Absolute(row, PiecesColumn);
}
