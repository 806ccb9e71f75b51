using System.Globalization;
using System.Text;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Drafting;

/// <summary>Sheets as the pages of a PDF, in true size, with the font in it.</summary>
internal static class SheetPdf
{
    private const double PointsPerMillimetre = 72 / 25.4;

    /// <summary>Distance of a Bezier curve's handles for a quarter of a circle, over the radius.</summary>
    private const double Handle = 0.5522847498;

    /// <summary>Writes a file whose pages are the sheets. It asks the reader's program to print without scaling.</summary>
    public static void Write(string title, IReadOnlyList<Sheet> sheets, Stream stream)
    {
        var file = new PdfObjects();
        var (catalogue, pages, font) = (file.Reserve(), file.Reserve(), Font(file, sheets));
        var kids = sheets.Select(sheet =>
        {
            var content = file.AddStream("", Encoding.ASCII.GetBytes(Content(sheet)));
            return file.Add($"<< /Type /Page /Parent {pages} 0 R /MediaBox [0 0 {Points(sheet.Width)} {Points(sheet.Height)}] "
                + $"/Resources << /Font << /F {font} 0 R >> >> /Contents {content} 0 R >>");
        }).ToList();
        file.Fill(pages, $"<< /Type /Pages /Count {kids.Count} /Kids [{string.Join(' ', kids.Select(kid => $"{kid} 0 R"))}] >>");
        file.Fill(catalogue, $"<< /Type /Catalog /Pages {pages} 0 R /ViewerPreferences << /PrintScaling /None >> >>");
        file.Write(catalogue, file.Add($"<< /Title <{Utf16(title)}> /Producer (FrameOpt) >>"), stream);
    }

    private static string Points(double millimetres) => Sheet.Number(millimetres * PointsPerMillimetre);

    /// <summary>The drawing operators, in mm.</summary>
    private static string Content(Sheet sheet)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{PointsPerMillimetre:0.########} 0 0 {PointsPerMillimetre:0.########} 0 0 cm\n");
        foreach (var mark in sheet.Marks)
        {
            text.Append(mark switch
            {
                Mark.Line line => $"{Style(line.Pen)} {Sheet.Number(line.Points[0].X)} {Sheet.Number(line.Points[0].Y)} m "
                    + string.Concat(line.Points.Skip(1).Select(point => $"{Sheet.Number(point.X)} {Sheet.Number(point.Y)} l "))
                    + (line.IsFilled ? "b" : "S"),
                Mark.Circle circle => $"{Style(circle.Pen)} {Round(circle)}{(circle.IsFilled ? "b" : "s")}",
                Mark.Text words => $"BT /F {Sheet.Number(words.Height * SheetFont.SizePerCapital)} Tf "
                    + $"{(words.IsUpright ? "0 1 -1 0" : "1 0 0 1")} {Sheet.Number(words.X)} {Sheet.Number(words.Y)} Tm "
                    + $"<{string.Concat(words.Words.Select(letter => $"{SheetFont.Letter(letter).Glyph:X4}"))}> Tj ET",
                _ => throw new ArgumentOutOfRangeException(nameof(sheet)),
            }).Append('\n');
        }

        return text.ToString();
    }

    private static string Style(Pen pen) =>
        $"{Sheet.Number(pen.WidthMillimetres)} w [{string.Join(' ', pen.Dashes.Select(Sheet.Number))}] 0 d";

    private static string Round(Mark.Circle circle)
    {
        string At(double right, double up) =>
            $"{Sheet.Number(circle.X + right * circle.Radius)} {Sheet.Number(circle.Y + up * circle.Radius)} ";
        return At(1, 0) + "m " + At(1, Handle) + At(Handle, 1) + At(0, 1) + "c " + At(-Handle, 1) + At(-1, Handle) + At(-1, 0) + "c "
            + At(-1, -Handle) + At(-Handle, -1) + At(0, -1) + "c " + At(Handle, -1) + At(1, -Handle) + At(1, 0) + "c ";
    }

    /// <summary>The font with the widths of the letters used and what they are, so that text can be searched and copied.</summary>
    private static int Font(PdfObjects file, IReadOnlyList<Sheet> sheets)
    {
        var used = sheets.SelectMany(sheet => sheet.Marks).OfType<Mark.Text>().SelectMany(text => text.Words)
            .DistinctBy(letter => SheetFont.Letter(letter).Glyph).OrderBy(letter => SheetFont.Letter(letter).Glyph).ToList();
        var program = file.AddStream($"/Filter /FlateDecode /Length1 {SheetFont.PlainLength} ", SheetFont.Packed);
        var descriptor = file.Add($"<< /Type /FontDescriptor /FontName /{SheetFont.Name} /Flags 32 /FontBBox [-919 -463 1615 1233] "
            + $"/ItalicAngle 0 /Ascent 928 /Descent -236 /CapHeight 729 /StemV 80 /FontFile2 {program} 0 R >>");
        var widths = string.Join(' ', used.Select(letter => string.Create(CultureInfo.InvariantCulture,
            $"{SheetFont.Letter(letter).Glyph} [{1000.0 * SheetFont.Letter(letter).Advance / SheetFont.UnitsPerEm:0.###}]")));
        var descendant = file.Add($"<< /Type /Font /Subtype /CIDFontType2 /BaseFont /{SheetFont.Name} "
            + "/CIDSystemInfo << /Registry (Adobe) /Ordering (Identity) /Supplement 0 >> "
            + $"/FontDescriptor {descriptor} 0 R /CIDToGIDMap /Identity /DW 600 /W [{widths}] >>");
        var unicode = file.AddStream("", Encoding.ASCII.GetBytes(ToUnicode(used)));
        return file.Add($"<< /Type /Font /Subtype /Type0 /BaseFont /{SheetFont.Name} /Encoding /Identity-H "
            + $"/DescendantFonts [{descendant} 0 R] /ToUnicode {unicode} 0 R >>");
    }

    private static string ToUnicode(IReadOnlyList<char> letters) =>
        "/CIDInit /ProcSet findresource begin 12 dict begin begincmap /CMapName /FrameOpt def /CMapType 2 def\n"
        + "1 begincodespacerange <0000> <FFFF> endcodespacerange\n"
        + string.Concat(letters.Chunk(100).Select(some => $"{some.Length} beginbfchar\n"
            + string.Concat(some.Select(letter => $"<{SheetFont.Letter(letter).Glyph:X4}> <{(int)letter:X4}>\n")) + "endbfchar\n"))
        + "endcmap CMapName currentdict /CMap defineresource pop end end\n";

    private static string Utf16(string text) => "FEFF" + Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(TextSanitizer.Clean(text)));
}
