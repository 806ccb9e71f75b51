using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace FrameOpt.Reports.Workbook.Cells;

/// <summary>Named cell styles, so that a user can change a look in one place. ClosedXML 0.95 writes none.</summary>
internal static class NamedStyles
{
    private static readonly (string Name, Func<Font, Fill, bool> Fits)[] styles =
    [
        ("FrameOpt title", (font, _) => IsColoured(font, Palette.Blue) && font.FontSize?.Val?.Value > SheetStyle.TextPoints),
        ("FrameOpt heading", (font, _) => IsColoured(font, Palette.Blue) && font.FontSize?.Val?.Value <= SheetStyle.TextPoints),
        ("FrameOpt table header", (_, fill) => IsFilled(fill, Palette.Blue)),
        ("FrameOpt input", (_, fill) => IsFilled(fill, SheetStyle.InputBlue)),
        ("FrameOpt warning", (_, fill) => IsFilled(fill, Palette.Yellow)),
    ];

    /// <summary>Adds the styles and gives each to every cell that looks so.</summary>
    public static void Add(WorkbookPart book)
    {
        var sheet = book.WorkbookStylesPart!.Stylesheet;
        var fonts = sheet.Fonts!.Elements<Font>().ToList();
        var fills = sheet.Fills!.Elements<Fill>().ToList();
        foreach (var (name, fits) in styles)
        {
            var cells = sheet.CellFormats!.Elements<CellFormat>()
                .Where(cell => fits(fonts[(int)cell.FontId!.Value], fills[(int)cell.FillId!.Value])).ToList();
            if (cells.Count > 0)
                Add(sheet, name, cells);
        }
    }

    private static void Add(Stylesheet sheet, string name, IReadOnlyList<CellFormat> cells)
    {
        var formats = sheet.CellStyleFormats!;
        var id = (uint)formats.Elements<CellFormat>().Count();
        formats.Append(new CellFormat
        {
            NumberFormatId = 0,
            FontId = cells[0].FontId,
            FillId = cells[0].FillId,
            BorderId = 0,
            ApplyFont = true,
            ApplyFill = true
        });
        formats.Count = id + 1;
        sheet.CellStyles!.Append(new CellStyle { Name = name, FormatId = id });
        sheet.CellStyles.Count = (uint)sheet.CellStyles.Elements<CellStyle>().Count();
        foreach (var cell in cells)
            cell.FormatId = id;
    }

    private static bool IsColoured(Font font, string colour) =>
        font.Color?.Rgb?.Value?.EndsWith(colour, StringComparison.OrdinalIgnoreCase) == true;

    private static bool IsFilled(Fill fill, string colour) =>
        fill.PatternFill?.ForegroundColor?.Rgb?.Value?.EndsWith(colour, StringComparison.OrdinalIgnoreCase) == true;
}
