namespace FrameOpt.Reports.Drafting.Template;

/// <summary>Holes and outline in true size for a program that draws or cuts: mm from the plane of symmetry and above the datum, seen from
/// behind.</summary>
internal static class HoleOutline
{
    /// <summary>The drawing of a design.</summary>
    public static Sheet Of(DrawnDesign design)
    {
        var (geometry, propeller) = (design.Geometry, design.Machine.Propeller);
        var sheet = new SheetBuilder("FrameOpt holes and outline", 0, 0);
        var (hubX, hubY, radius) = (1000 * geometry.HubRightMetres, 1000 * geometry.HubUpMetres, 500 * propeller.DiameterMetres);
        sheet.Line(Pen.Centre, 0, hubY - radius - 20, 0, hubY + radius + 20);
        sheet.Circle(Pen.Moving, hubX, hubY, radius);
        sheet.Cross(Pen.Outline, hubX, hubY, 15);
        var (left, right) = (design.HangPoints[0], design.HangPoints[1]);
        sheet.Line(Pen.Centre, 1000 * left.RightMetres - 30, 1000 * left.UpMetres, 1000 * right.RightMetres + 30, 1000 * right.UpMetres);
        sheet.Cross(Pen.Fine, 0, 0, 15);
        sheet.Text(20, -20, 10, "datum");
        sheet.Text(hubX + 20, hubY + 5, 10, "hub");
        foreach (var hole in design.OtherHoles)
            DrillMarks.OtherHole(sheet, 1000 * hole.RightMetres, 1000 * hole.UpMetres, hole.IsDrilled);
        foreach (var point in design.HangPoints)
        {
            DrillMarks.Centre(sheet, 1000 * point.RightMetres, 1000 * point.UpMetres);
            sheet.Text(1000 * point.RightMetres, 1000 * point.UpMetres + 14, 10, $"{point.Name} {Sheet.Length(point.RightMetres)}", 0.5);
        }

        var y = hubY - radius - 40;
        foreach (var line in (string[])["SEEN FROM BEHIND, pilot's RIGHT on the right, 1 unit is 1 mm",
            "circles show centres, not the size of a hole",
            design.Origin, FrameSheetNotes.Caution])
            y = sheet.Paragraph(-radius, y, 10, line, 1.3 * radius) - 8;
        return sheet.Build();
    }
}
