using FrameOpt.Reports.Drafting;
using FrameOpt.Reports.Drafting.Template;

namespace FrameOpt.Tests.Reports.Drafting;

/// <summary>What a builder measures in the files is what the design says.</summary>
public class ReadBackTests
{
    private const string Because = "a tenth of what a drill centre can be marked to";
    private const double Allowed = 0.01;

    /// <summary>Of the drawing, on A3.</summary>
    private const double Scale = 10;

    private static readonly byte[] svg = DrawnDesigns.Bytes(stream => SheetSvg.Write(FrameSheet.Of(DrawnDesigns.Worked), stream));
    private static readonly byte[] pdf = DrawnDesigns.Bytes(
        stream => SheetPdf.Write("drawing", [FrameSheet.Of(DrawnDesigns.Worked)], stream));
    private static readonly byte[] dxf = DrawnDesigns.Bytes(stream => SheetDxf.Write(HoleOutline.Of(DrawnDesigns.Worked), stream));

    public static TheoryData<string> Papers => ["A4", "Letter"];

    [Theory]
    [InlineData("svg")]
    [InlineData("pdf")]
    public void Drawing_has_the_hang_points_hub_and_propeller_to_scale(string kind)
    {
        var sheet = kind == "svg" ? SheetReader.Svg(svg) : Assert.Single(SheetReader.Pdf(pdf));
        Check.Close(420, sheet.Width, absolute: Allowed, because: "A3");
        var propeller = sheet.Circles.MaxBy(circle => circle.Radius);
        // The propeller of 1.30 m turns about a hub in the plane of symmetry, 120 mm above the datum.
        Check.Close(650, Scale * propeller.Radius, absolute: Scale * Allowed, because: Because);
        var holes = sheet.Circles.Where(circle => circle.IsFilled && Math.Abs(circle.Y - propeller.Y) < 10
            && circle.X > propeller.X - propeller.Radius).OrderBy(circle => circle.X).ToList();
        Assert.Equal(2, holes.Count);
        Check.Close(-195, Scale * (holes[0].X - propeller.X), absolute: Scale * Allowed, because: Because);
        Check.Close(245, Scale * (holes[1].X - propeller.X), absolute: Scale * Allowed, because: Because);
        Check.Close(150 - 120, Scale * (holes[0].Y - propeller.Y), absolute: Scale * Allowed, because: Because);
    }

    [Theory]
    [InlineData("svg")]
    [InlineData("pdf")]
    public void Drawing_says_the_dimensions_and_the_sides(string kind)
    {
        var words = kind == "svg" ? SheetReader.Svg(svg).Words : SheetReader.Pdf(pdf)[0].Words;
        foreach (var expected in (string[])["LEFT 195 mm", "RIGHT 245 mm", "440 mm", "150 mm", "counter-clockwise seen from behind",
            "reaction: right side down", "pulls right without offset", "pilot's RIGHT", "0123456789abcdef", "1:10 on A3", "ISO 2768-m",
            "STRENGTH IS NOT VERIFIED", "thrust line, 5 deg upward", "420 mm", "centre of gravity"])
            Assert.Contains(expected, words);
    }

    [Fact]
    public void Outline_has_the_drill_centres_in_true_size_from_the_plane_of_symmetry_and_the_datum()
    {
        var holes = SheetReader.Dxf(dxf, "HOLES").Circles.OrderBy(circle => circle.X).ToList();
        Assert.Equal(2, holes.Count);
        Check.Close(-195, holes[0].X, absolute: Allowed, because: Because);
        Check.Close(245, holes[1].X, absolute: Allowed, because: Because);
        Assert.All(holes, hole => Check.Close(150, hole.Y, absolute: Allowed, because: Because));
        var propeller = Assert.Single(SheetReader.Dxf(dxf, "MOVING").Circles);
        Check.Close(650, propeller.Radius, absolute: Allowed, because: Because);
        Assert.Contains("LEFT 195 mm", SheetReader.Dxf(dxf, "TEXT").Words);
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void Every_sheet_of_the_template_has_scale_bars_of_100_mm_both_ways_inside_the_margins(string paper)
    {
        var sheets = Template(DrawnDesigns.Worked, paper);
        Assert.Equal(8, sheets.Count);
        Assert.All(sheets, sheet =>
        {
            Check.Close(paper == "A4" ? 297 : 279.4, sheet.Width, absolute: Allowed, because: paper);
            Check.Close(paper == "A4" ? 210 : 215.9, sheet.Height, absolute: Allowed, because: paper);
            Assert.Contains(sheet.Lines, line => Math.Abs(line.X2 - line.X1 - 100) < Allowed && Math.Abs(line.Y2 - line.Y1) < Allowed);
            Assert.Contains(sheet.Lines, line => Math.Abs(line.Y2 - line.Y1 - 100) < Allowed && Math.Abs(line.X2 - line.X1) < Allowed);
            // Common printers leave 6.4 mm (a quarter of an inch) white; common practice, no source.
            Assert.All(sheet.Lines, line => Assert.True(line.X1 > 6.4 && line.X2 < sheet.Width - 6.4 && line.Y1 > 6.4
                && line.Y2 < sheet.Height - 6.4));
        });
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void Sheets_joined_at_their_registration_marks_have_the_drill_centres_of_the_design(string paper)
    {
        var sheets = Template(DrawnDesigns.Worked, paper);
        var joined = Join([.. sheets.Where(IsTile).Where(sheet => sheet.Words.Contains("SEEN FROM BEHIND"))]);
        Check.Close(-195, joined.Centres[0], absolute: Allowed, because: Because);
        Check.Close(245, joined.Centres[1], absolute: Allowed, because: Because);
        var other = Join([.. sheets.Where(sheet => sheet.Words.Contains("OTHER SIDE: SEEN FROM THE FRONT"))]);
        Check.Close(-245, other.Centres[0], absolute: Allowed, because: Because);
        Check.Close(195, other.Centres[1], absolute: Allowed, because: Because);
    }

    [Fact]
    public void Sheets_joined_of_a_wide_and_uneven_frame_have_its_drill_centres_too()
    {
        // 612.34 mm apart, 31.17 mm to the left, the right hang point 90 mm higher: two rows of sheets are needed.
        var design = DrawnDesigns.Of(ReportFixture.WorkedGeometry with
        {
            SpacingMetres = 0.61234,
            OffsetMetres = -0.03117,
            HangHeightDifferenceMetres = 0.09,
        });
        var windows = Template(design, "A4").Where(IsTile).Where(sheet => sheet.Words.Contains("SEEN FROM BEHIND")).ToList();
        var row = windows.Count / 2;
        var (upper, lower) = (Join(windows[..row]), Join(windows[row..]));
        Check.Close(275, Assert.Single(upper.Centres), absolute: Allowed, because: Because);
        Check.Close(-337.34, Assert.Single(lower.Centres), absolute: Allowed, because: Because);
    }

    /// <summary>Neither the first page nor one of strips.</summary>
    private static bool IsTile(ReadSheet sheet) =>
        !sheet.Words.Contains("TEMPLATE FOR") && !sheet.Words.Contains("centre line and holes only");

    private static IReadOnlyList<ReadSheet> Template(DrawnDesign design, string paper) => SheetReader.Pdf(DrawnDesigns.Bytes(stream =>
        SheetPdf.Write("template", TemplateSheets.Of(design, paper == "A4" ? Paper.A4 : Paper.Letter), stream)));

    /// <summary>Drill centres from the plane of symmetry, after laying mark on mark from left to right.</summary>
    private static (IReadOnlyList<double> Centres, int Sheets) Join(IReadOnlyList<ReadSheet> sheets)
    {
        var (shift, symmetry, centres) = (0.0, double.NaN, new List<double>());
        for (var i = 0; i < sheets.Count; i++)
        {
            var marks = Marks(sheets[i]);
            if (i > 0)
                shift += Marks(sheets[i - 1]).Max() - marks.Min();
            centres.AddRange(sheets[i].Circles.Where(circle => Math.Abs(circle.Radius - 5) < Allowed).Select(circle => circle.X + shift));
            // The one upright line over the whole window that bears no mark.
            foreach (var line in sheets[i].Lines.Where(line => Math.Abs(line.X1 - line.X2) < Allowed && line.Y2 - line.Y1 > 103
                && marks.TrueForAll(mark => Math.Abs(mark - line.X1) > Allowed)))
                symmetry = line.X1 + shift;
        }

        // A centre in an overlap is on both sheets.
        return ([.. centres.Select(centre => Math.Round(centre - symmetry, 4)).Order().Aggregate(new List<double>(), (kept, centre) =>
            kept.Count > 0 && centre - kept[^1] < Allowed ? kept : [.. kept, centre])], sheets.Count);
    }

    /// <summary>Places of the registration marks across a sheet.</summary>
    private static List<double> Marks(ReadSheet sheet) =>
        [.. sheet.Circles.Where(circle => Math.Abs(circle.Radius - 2.5) < Allowed).Select(circle => circle.X)];
}
