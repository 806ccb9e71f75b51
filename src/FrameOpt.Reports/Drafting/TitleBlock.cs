using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Drafting;

/// <summary>The title block in the lower right corner; what people decide is left blank for their hand.</summary>
/// <remarks>Source: the fields of ISO 7200, from memory.</remarks>
internal static class TitleBlock
{
    /// <summary>How high it is, mm.</summary>
    public const double Height = 77;

    private const double Caption = 1.8;
    private const double Letters = 2.5;

    public static void Draw(SheetBuilder sheet, DrawnDesign design, int reduction, double left, double bottom, double right)
    {
        var middle = (left + right) / 2;
        sheet.Line(Pen.Outline, left, bottom + Height, right, bottom + Height);
        foreach (var y in (double[])[10, 20, 29, 38, 47, 64])
            sheet.Line(Pen.Fine, left, bottom + y, right, bottom + y);
        sheet.Line(Pen.Fine, middle, bottom + 20, middle, bottom + 38);
        sheet.Line(Pen.Fine, middle, bottom, middle, bottom + 10);
        void Field(double x, double top, string caption, string words, double room, int most = 1)
        {
            sheet.Text(x + 1.5, bottom + top - 3, Caption, caption);
            var lines = SheetFont.Wrap(words, Letters, room);
            foreach (var (i, line) in lines.Take(most).Index())
            {
                sheet.Text(x + 1.5, bottom + top - 5.2 - Letters - 1.5 * Letters * i, Letters,
                    i == most - 1 && lines.Count > most ? $"{line} …" : line);
            }
        }

        var (room, half) = (right - left - 8, middle - left - 4);
        Field(left, 77, "study", TextTruncation.Truncate(design.Study.FullTitle, 120), room, most: 2);
        Field(left, 64, "design", $"{design.Place}: " + string.Join(", ", design.Study.Factors
            .Select(factor => $"{factor.Input.ShortName} {GeometryText.Value(factor, design.Geometry[factor.Input])}")), room, most: 3);
        Field(left, 47, "study checksum, program", design.Origin, room);
        Field(left, 38, "decided by, decision", "", half);
        Field(middle, 38, "date of the decision", "", half);
        Field(left, 29, "revision", "", half);
        Field(middle, 29, "drawn for frame no.", "", half);
        Field(left, 20, "general tolerance", "ISO 2768-m; hang points ±" + Sheet.Length(BuildTolerance.LengthMetres)
            + ", thrust line ±" + Sheet.Angle(BuildTolerance.AngleRadians), room);
        Field(left, 10, "scale, paper", $"1:{reduction} on A3", half);
        sheet.Text(middle + 1.5, bottom + 7, Caption, "first-angle projection, mm");
        Projection(sheet, right - 17, bottom + 4.2);
    }

    /// <summary>First angle: a cone from its side, then to its right what is seen from the left.</summary>
    private static void Projection(SheetBuilder sheet, double x, double y)
    {
        sheet.Path(Pen.Fine, [(x - 6, y - 1.25), (x, y - 2.5), (x, y + 2.5), (x - 6, y + 1.25), (x - 6, y - 1.25)]);
        sheet.Circle(Pen.Fine, x + 8, y, 1.25);
        sheet.Circle(Pen.Fine, x + 8, y, 2.5);
        sheet.Line(Pen.Centre, x - 8, y, x + 12, y);
        sheet.Line(Pen.Centre, x + 8, y - 3.5, x + 8, y + 3.5);
    }
}
