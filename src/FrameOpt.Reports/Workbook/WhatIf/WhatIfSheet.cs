using ClosedXML.Excel;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Workbook.WhatIf;

/// <summary>One design's four numbers to type, and what follows in every phase.</summary>
internal static class WhatIfSheet
{
    private const double FirstWidth = 46;
    private const double OtherWidth = 11;

    /// <summary>Adds the sheet, and at the end of the workbook the table behind it.</summary>
    public static void Add(Spreadsheet book, RunReport report)
    {
        var table = new WhatIfTable(report.Result);
        var layout = new WhatIfLayout(table, report.Result.Study.Mission.Count);
        var sheet = book.AddSheet(WhatIfLayout.Sheet);
        sheet.ShowGridLines = false;
        sheet.Column(1).Width = FirstWidth;
        sheet.Columns(2, WhatIfLayout.VerdictColumn - 1).Width = OtherWidth;
        sheet.Column(WhatIfLayout.VerdictColumn).Width = 26;
        Notes(sheet, report, table);
        WhatIfInputs.Add(book, sheet, report, table, layout);
        WhatIfPhases.Add(book, sheet, report, table, layout);
        Levels(sheet, table, layout);
        sheet.SheetView.FreezeColumns(1);
        book.Print(sheet, pagesTall: 1);
        sheet.PageSetup.PrintAreas.Add(1, 1, layout.LevelsRow(2), WhatIfLayout.VerdictColumn);
        book.AddLast(() => WhatIfDataSheet.Add(book, report, table, layout));
    }

    private static void Notes(IXLWorksheet sheet, RunReport report, WhatIfTable table)
    {
        var characters = FirstWidth + (WhatIfLayout.VerdictColumn - 2) * OtherWidth + 26;
        var others = report.Result.Study.Factors.Where(factor => !factor.Input.IsRequired).ToList();
        var held = others.Count == 0 ? ""
            : " Fixed as in the chosen design: "
                + $"{string.Join("; ", others.Select(factor => GeometryText.Of(factor, report.Result.Chosen!.Geometry[factor.Input])))}.";
        var counts = $"{table.Spacings.Si.Count} x {table.Heights.Si.Count} x {table.Angles.Si.Count}";
        SheetStyle.Paragraph(
            sheet.Range(1, 1, 1, WhatIfLayout.VerdictColumn),
            "What if it is drilled differently? Enter a design in the framed blue cells; every phase is recalculated. The initial design "
                + $"is {(report.Result.Study.IsOneFrame ? "this frame" : "the best compromise of the run")}." + held,
            characters);
        SheetStyle.Paragraph(
            sheet.Range(2, 1, 2, WhatIfLayout.VerdictColumn),
            "Results are exact for any lateral offset. Spacing, suspension height and thrust-line angle are interpolated in a table of "
                + $"{counts} levels (below; data on the sheet {WhatIfLayout.DataSheetName}): "
                + "exact at its levels, linear between them. Midway between levels the residual torque is off by at most "
                + $"{table.LargestErrorNewtonMetres:0.###} N·m (checked in every cell of the table at the chosen offset). Before drilling, "
                    + "check the design with: frameopt evaluate.",
            characters);
    }

    private static void Levels(IXLWorksheet sheet, WhatIfTable table, WhatIfLayout layout)
    {
        SheetStyle.Heading(sheet.Range(layout.LevelsHeadingRow, 1, layout.LevelsHeadingRow, WhatIfLayout.VerdictColumn),
            "Levels in the table");
        var all = WhatIfDataSheet.Levels(table);
        for (var f = 0; f < all.Count; f++)
        {
            SheetStyle.Text(sheet.Cell(layout.LevelsRow(f), 1), $"{all[f].Factor.Name} [{all[f].Factor.Unit.Symbol}]");
            for (var l = 0; l < all[f].Si.Count; l++)
                sheet.Cell(layout.LevelsRow(f), 2 + l).SetValue(all[f].Factor.Unit.FromSi(all[f].Si[l]));
        }
    }
}
