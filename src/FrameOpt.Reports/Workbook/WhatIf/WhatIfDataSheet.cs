using FrameOpt.Model;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook.WhatIf;

/// <summary>The coefficients behind the sheet What if: first the eight levels around the design typed there, then the whole
/// table.</summary>
internal sealed class WhatIfDataSheet
{
    private const string Note =
        "Data of the sheet What if. The first eight rows are the grid points around the design entered there, with their interpolation "
            + "weights; the table follows below. Moments and residuals are linear in the lateral offset. No input on this sheet.";

    private readonly Study study;
    private readonly WhatIfTable table;
    private readonly WhatIfLayout layout;
    private readonly IReadOnlyList<(int Index, double Weight)> corners;

    private WhatIfDataSheet(RunReport report, WhatIfTable table, WhatIfLayout layout)
    {
        (study, this.table, this.layout) = (report.Result.Study, table, layout);
        corners = table.Corners(report.Result.Chosen!.Geometry);
    }

    public static void Add(Spreadsheet book, RunReport report, WhatIfTable table, WhatIfLayout layout) => DataSheet.Add(
        book,
        WhatIfLayout.DataSheetName,
        Note,
        new Table([.. new WhatIfDataSheet(report, table, layout).Columns()], WhatIfLayout.Corners + table.Nodes.Count),
        filter: false);

    public static IReadOnlyList<WhatIfLevels> Levels(WhatIfTable table) => [table.Spacings, table.Heights, table.Angles];

    private IEnumerable<Column> Columns()
    {
        yield return Column.OfTexts("level", row => IsCorner(row) ? FormattableString.Invariant($"around {row + 1}") : "table")
            with
        { WidthCharacters = 11 };
        yield return new("number", "", "0", row => IsCorner(row) ? new Formula(Number(row), Node(row) + 1.0) : Node(row) + 1.0);
        var nodesPerLevel = 1;
        foreach (var (f, levels) in Levels(table).Index())
        {
            var below = nodesPerLevel;
            yield return Read(
                $"{levels.Factor.Name} [{levels.Factor.Unit.Symbol}]", Column.GeneralFormat, WhatIfLayout.NumberColumn + 1 + f,
                node => levels.Factor.Unit.FromSi(levels.Si[node / below % levels.Si.Count]));
            nodesPerLevel *= levels.Si.Count;
        }

        yield return Read("flies (1 yes)", "0", WhatIfLayout.FliesColumn, node => table.Nodes[node] is null ? 0 : 1);
        yield return new("interpolation weight", "", "0.000",
            row => IsCorner(row) ? new Formula(Weight(row), corners[row].Weight) : double.NaN);
        var offset = study.Factor(GeometryInput.LateralOffset).Unit;
        foreach (var (p, phase) in study.Mission.Index())
        {
            foreach (var (c, (what, value)) in Coefficients(offset).Index())
                yield return Read(
                    $"{TextTruncation.Truncate(phase.Name, 40)}: {what}", "0.0000", WhatIfLayout.CoefficientColumn(p, c),
                    node => table.Nodes[node] is { } phases ? value(phases[p]) : double.NaN);
        }
    }

    private static IReadOnlyList<(string What, Func<PhaseCoefficients, double> Value)> Coefficients(DisplayUnit offset) =>
    [
        ("roll moment [N·m]", phase => phase.Roll.AtZero),
        ($"roll moment per {offset.Symbol} of offset [N·m/{offset.Symbol}]", phase => offset.SiPerUnit * phase.Roll.PerMetre),
        ("yaw moment [N·m]", phase => phase.Yaw.AtZero),
        ($"yaw moment per {offset.Symbol} of offset [N·m/{offset.Symbol}]", phase => offset.SiPerUnit * phase.Yaw.PerMetre),
        ("yaw leverage", phase => phase.YawLeverage),
        ("riser load [N]", phase => phase.RiserLoadNewtons),
        .. WingCases.All.SelectMany(wingCase => OfCase(StudyText.Name(wingCase), (int)wingCase, offset)),
    ];

    private static IEnumerable<(string What, Func<PhaseCoefficients, double> Value)> OfCase(
        string name, int wingCase, DisplayUnit offset) =>
    [
        ($"residual, {name} [N·m]", phase => phase.Cases[wingCase].Residual.AtZero),
        ($"residual, {name}, per {offset.Symbol} of offset [N·m/{offset.Symbol}]",
            phase => offset.SiPerUnit * phase.Cases[wingCase].Residual.PerMetre),
        ($"authority, {name} [N·m]", phase => phase.Cases[wingCase].Authority),
    ];

    /// <summary>A column of the table that the rows of the corners read by formula.</summary>
    private Column Read(string header, string formatCode, int column, Func<int, double> value) => new(header, "", formatCode, row =>
    {
        var own = value(Node(row));
        return IsCorner(row)
            ? new Formula(
                FormattableString.Invariant($"INDEX({layout.OfNodes(column)},$B{WhatIfLayout.FirstCornerRow + row})"),
                double.IsNaN(own) ? 0.0 : own)
            : own;
    });

    private static bool IsCorner(int row) => row < WhatIfLayout.Corners;

    private int Node(int row) => IsCorner(row) ? corners[row].Index : row - WhatIfLayout.Corners;

    private static bool IsUpper(int corner, int factor) => (corner & (1 << factor)) != 0;

    private string Number(int corner)
    {
        string Level(int factor) => WhatIfLayout.Input(WhatIfLayout.InputRow(factor),
            IsUpper(corner, factor) ? WhatIfLayout.UpperColumn : WhatIfLayout.LowerColumn);
        return FormattableString.Invariant($"(({Level(2)}-1)*{table.Heights.Si.Count}+{Level(1)}-1)*{table.Spacings.Si.Count}+{Level(0)}");
    }

    private static string Weight(int corner) => string.Join('*', Enumerable.Range(0, 3).Select(factor =>
    {
        var fraction = WhatIfLayout.Input(WhatIfLayout.InputRow(factor), WhatIfLayout.FractionColumn);
        return IsUpper(corner, factor) ? fraction : $"(1-{fraction})";
    }));
}
