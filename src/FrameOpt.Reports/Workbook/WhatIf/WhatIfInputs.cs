using ClosedXML.Excel;
using FrameOpt.Model;
using FrameOpt.Model.Balance;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook.WhatIf;

/// <summary>The block of the sheet What if where a design is typed, with its place in the table and its drilling dimensions.</summary>
internal static class WhatIfInputs
{
    private static readonly GeometryInput[] inputs = [.. FactorCatalogue.All.Where(input => input.IsRequired)];

    public static void Add(Spreadsheet book, IXLWorksheet sheet, RunReport report, WhatIfTable table, WhatIfLayout layout)
    {
        string[] headers = ["design", "value", "unit", "from", "to", "level below", "level above", "fraction between levels"];
        for (var c = 0; c < headers.Length; c++)
            SheetStyle.Text(sheet.Cell(WhatIfLayout.FirstInputRow - 1, c + 1), headers[c]);
        SheetStyle.TableHeader(sheet.Range(WhatIfLayout.FirstInputRow - 1, 1, WhatIfLayout.FirstInputRow - 1, headers.Length));
        sheet.Range(WhatIfLayout.FirstInputRow - 1, 2, WhatIfLayout.FirstInputRow - 1, headers.Length).Style.Alignment.SetHorizontal(
            XLAlignmentHorizontalValues.Center);
        sheet.Row(WhatIfLayout.FirstInputRow - 1).Height = 48;
        var geometry = report.Result.Chosen!.Geometry;
        for (var i = 0; i < inputs.Length; i++)
            Row(sheet, report.Result.Study.Factor(inputs[i]), geometry, WhatIfLayout.FirstInputRow + i);
        var levels = WhatIfDataSheet.Levels(table);
        for (var f = 0; f < levels.Count; f++)
            Place(book, sheet, levels[f], geometry, layout, f);
        State(book, sheet, levels);
        Drilling(book, sheet, report.Result.Study, geometry);
        Constants(sheet, report.Result.Study);
    }

    private static void Row(IXLWorksheet sheet, StudyFactor factor, FrameGeometry geometry, int row)
    {
        SheetStyle.Text(sheet.Cell(row, 1), factor.Name);
        var cell = sheet.Cell(row, WhatIfLayout.InputColumn);
        cell.SetValue(factor.Unit.FromSi(geometry[factor.Input]));
        SheetStyle.Input(cell.AsRange());
        SheetStyle.UnitText(sheet.Cell(row, 3), factor.Unit.Symbol + (factor.Input.IsSided ? ", right +" : ""));
        sheet.Cell(row, 4).SetValue(factor.Unit.FromSi(factor.LevelsSi[0]));
        sheet.Cell(row, 5).SetValue(factor.Unit.FromSi(factor.LevelsSi[^1]));
        if (factor.Input != GeometryInput.LateralOffset)
        {
            cell.DataValidation.Decimal.Between(factor.Unit.FromSi(factor.LevelsSi[0]), factor.Unit.FromSi(factor.LevelsSi[^1]));
            cell.DataValidation.ErrorMessage = "The table covers this range only.";
        }

        sheet.Workbook.NamedRanges.Add($"what_if_{factor.Name}", cell.AsRange());
    }

    private static void Place(
        Spreadsheet book, IXLWorksheet sheet, WhatIfLevels levels, FrameGeometry geometry, WhatIfLayout layout, int factor)
    {
        var row = WhatIfLayout.InputRow(factor);
        var (lower, upper, fraction) = levels.Bracket(geometry[levels.Factor.Input]);
        var typed = CellAddress.Absolute(row, WhatIfLayout.InputColumn);
        var all = CellAddress.Row(WhatIfLayout.Sheet, layout.LevelsRow(factor), 2, 1 + levels.Si.Count);
        string Level(int column) => $"INDEX({all},{CellAddress.Absolute(row, column)})";
        var (below, above) = (Level(WhatIfLayout.LowerColumn), Level(WhatIfLayout.UpperColumn));
        var isOne = levels.Si.Count == 1;
        void Cell(int column, string formula, double cached, string format) =>
            book.AddFormula(sheet.Cell(row, column), new Formula(formula, cached), format);

        Cell(WhatIfLayout.LowerColumn, isOne ? "1" : FormattableString.Invariant(
            $"MAX(1,MIN({levels.Si.Count - 1},IFERROR(MATCH({typed},{all},1),1)))"), lower + 1, "0");
        Cell(WhatIfLayout.UpperColumn, isOne ? "1" : $"{CellAddress.Absolute(row, WhatIfLayout.LowerColumn)}+1", upper + 1, "0");
        Cell(WhatIfLayout.FractionColumn, isOne ? "0" : $"({typed}-{below})/({above}-{below})", fraction, "0.000");
    }

    private static void State(Spreadsheet book, IXLWorksheet sheet, IReadOnlyList<WhatIfLevels> levels)
    {
        SheetStyle.Text(sheet.Cell(WhatIfLayout.StateRow, 1), "Covered by the table?");
        var outside = string.Join(',', levels.SelectMany((_, factor) =>
        {
            var row = WhatIfLayout.InputRow(factor);
            var typed = CellAddress.Absolute(row, WhatIfLayout.InputColumn);
            return (string[])[$"{typed}<{CellAddress.Absolute(row, 4)}", $"{typed}>{CellAddress.Absolute(row, 5)}"];
        }));
        var (weights, flies) = (WhatIfLayout.OfCorners(WhatIfLayout.CornerWeightColumn), WhatIfLayout.OfCorners(WhatIfLayout.FliesColumn));
        var cannotFly = $"SUMPRODUCT(({weights}>0)*({flies}=0))>0";
        book.AddFormula(sheet.Cell(WhatIfLayout.StateRow, WhatIfLayout.InputColumn), new Formula(
            $"IF(OR({outside}),\"outside the range of the study: no results\","
                + $"IF({cannotFly},\"an adjacent level cannot fly: no results\",\"yes\"))",
            "yes"));
        sheet.Cell(WhatIfLayout.StateRow, WhatIfLayout.InputColumn).Style.Font.SetBold();
    }

    private static void Drilling(Spreadsheet book, IXLWorksheet sheet, Study study, FrameGeometry geometry)
    {
        var spacing = study.LengthUnit;
        var offset = study.Factor(GeometryInput.LateralOffset).Unit;
        var scale = spacing.SiPerUnit == offset.SiPerUnit ? "" : $"*{PlainNumber.Text(offset.SiPerUnit / spacing.SiPerUnit)}";
        var half = $"{CellAddress.Absolute(WhatIfLayout.FirstInputRow, WhatIfLayout.InputColumn)}/2";
        var shift = $"{CellAddress.Absolute(WhatIfLayout.OffsetRow, WhatIfLayout.InputColumn)}{scale}";
        (string Text, string Formula, double Value)[] sides =
        [
            ($"LEFT hang point, to the left of symmetry [{spacing.Symbol}]", $"{half}-{shift}", DrillingDimensions.LeftMetres(geometry)),
            ($"RIGHT hang point, to the right of symmetry [{spacing.Symbol}]", $"{half}+{shift}", DrillingDimensions.RightMetres(geometry)),
        ];
        for (var i = 0; i < sides.Length; i++)
        {
            var row = WhatIfLayout.DrillRow + i;
            SheetStyle.Text(sheet.Cell(row, 1), sides[i].Text);
            var cell = sheet.Cell(row, WhatIfLayout.InputColumn);
            book.AddFormula(cell, new Formula(sides[i].Formula, spacing.FromSi(sides[i].Value)), "0.0###");
            cell.Style.Font.SetBold();
        }

        SheetStyle.UnitText(
            sheet.Cell(WhatIfLayout.DrillRow, 3), "drilling dimensions, seen from behind (the pilot's right is on your right)");
    }

    private static void Constants(IXLWorksheet sheet, Study study)
    {
        var spacing = study.LengthUnit;
        SheetStyle.Text(sheet.Cell(WhatIfLayout.LeanRow, 1), "largest lean of the pilot [mm]");
        sheet.Cell(WhatIfLayout.LeanRow, 2).SetValue(1000 * study.Machine.Pilot.LeanMetres);
        SheetStyle.Text(sheet.Cell(WhatIfLayout.YawRow, 1), $"yaw stiffness of the risers [N·m per rad, N and {spacing.Symbol}]");
        sheet.Cell(WhatIfLayout.YawRow, 2).SetValue(RiserStiffness.YawMetres(study.Wing, 1) * spacing.SiPerUnit);
        sheet.Cell(WhatIfLayout.YawRow, 2).Style.NumberFormat.Format = "0.000E+00";
        SheetStyle.UnitText(sheet.Cell(WhatIfLayout.YawRow, 3), "times riser load and spacing (two-line suspension)");
    }
}
