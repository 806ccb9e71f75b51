using ClosedXML.Excel;
using FrameOpt.Model;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Workbook.WhatIf;

/// <summary>The coefficients behind the sheet What if: first the eight levels around the design typed there, then the whole
/// table.</summary>
internal static class WhatIfDataSheet
{
    private const string Note =
        "What the sheet What if reads. The first eight rows are the levels around the design typed there, with their weights; below stands the table. Roll and yaw parts are straight lines in the lateral offset. Nothing to type here.";

    public static DataRows Add(XLWorkbook book, RunReport report, WhatIfTable table, WhatIfLayout layout)
    {
        var unit = report.Result.Study.Factor(GeometryInput.LateralOffset).Unit.Symbol;
        List<DataColumn> columns =
        [
            new("level", DataColumn.TextFormat, 11),
            DataColumn.OfNumbers("number", "0"),
            .. Levels(table).Select(levels => DataColumn.OfNumbers($"{levels.Factor.Name} [{levels.Factor.Unit.Symbol}]", "General")),
            DataColumn.OfNumbers("flies (1 yes)", "0"),
            DataColumn.OfNumbers("part in the design typed", "0.000"),
        ];
        foreach (var phase in report.Result.Study.Mission)
        {
            columns.AddRange(((string[])
            [
                "roll part [N·m]", $"roll part per {unit} of offset [N·m/{unit}]", "yaw part [N·m]",
                    $"yaw part per {unit} of offset [N·m/{unit}]",
                "authority through roll [N·m]", "authority through yaw at leverage 1 [N·m]", "riser load [N]",
            ]).Select(what => DataColumn.OfNumbers($"{TextTruncation.Truncate(phase.Name, 40)}: {what}", "0.0000")));
        }

        return DataSheet.Add(book, report, WhatIfLayout.DataSheetName, Note, columns,
            [.. Corners(report, table, layout), .. Nodes(report, table)], filter: false);
    }

    public static IReadOnlyList<WhatIfLevels> Levels(WhatIfTable table) => [table.Spacings, table.Heights, table.Angles];

    private static IEnumerable<List<object>> Corners(RunReport report, WhatIfTable table, WhatIfLayout layout)
    {
        var corners = table.Corners(report.Result.Chosen!.Geometry);
        for (var corner = 0; corner < WhatIfLayout.Corners; corner++)
        {
            var node = corners[corner].Index;
            var here = FormattableString.Invariant($"$B{WhatIfLayout.FirstCornerRow + corner}");
            List<object> row = [FormattableString.Invariant($"around {corner + 1}"), new Formula(Number(table, corner), node + 1.0)];
            var cells = Cells(report, table, node);
            for (var c = 0; c < cells.Count; c++)
            {
                var column = WhatIfLayout.NumberColumn + 1 + c;
                row.Add(column == WhatIfLayout.CornerWeightColumn
                    ? new Formula(Weight(corner), corners[corner].Weight)
                    : new Formula($"INDEX({layout.OfNodes(column)},{here})", double.IsNaN(cells[c]) ? 0.0 : cells[c]));
            }

            yield return row;
        }
    }

    private static IEnumerable<List<object>> Nodes(RunReport report, WhatIfTable table)
    {
        for (var node = 0; node < table.Nodes.Count; node++)
            yield return ["table", node + 1.0, .. Cells(report, table, node).Cast<object>()];
    }

    /// <summary>Levels, flies, a blank for the weight, then the coefficients of every phase; NaN leaves a blank.</summary>
    private static List<double> Cells(RunReport report, WhatIfTable table, int node)
    {
        var spacing = node % table.Spacings.Si.Count;
        var height = node / table.Spacings.Si.Count % table.Heights.Si.Count;
        var angle = node / table.Spacings.Si.Count / table.Heights.Si.Count;
        List<double> cells =
        [
            table.Spacings.Factor.Unit.FromSi(table.Spacings.Si[spacing]),
            table.Heights.Factor.Unit.FromSi(table.Heights.Si[height]),
            table.Angles.Factor.Unit.FromSi(table.Angles.Si[angle]),
            table.Nodes[node] is null ? 0 : 1,
            double.NaN,
        ];
        var perUnit = report.Result.Study.Factor(GeometryInput.LateralOffset).Unit.SiPerUnit;
        for (var p = 0; p < report.Result.Study.Mission.Count; p++)
        {
            cells.AddRange(table.Nodes[node] is { } phases
                ?
                [
                    phases[p].Roll.AtZero, perUnit * phases[p].Roll.PerMetre, phases[p].Yaw.AtZero, perUnit * phases[p].Yaw.PerMetre,
                    phases[p].AuthorityRoll, phases[p].AuthorityYaw, phases[p].RiserLoadNewtons,
                ]
                : Enumerable.Repeat(double.NaN, WhatIfLayout.CoefficientsOfPhase));
        }

        return cells;
    }

    private static bool IsUpper(int corner, int factor) => (corner & (1 << factor)) != 0;

    private static string Number(WhatIfTable table, int corner)
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
