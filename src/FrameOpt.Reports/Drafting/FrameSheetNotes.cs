using FrameOpt.Model;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Drafting;

/// <summary>What the drawing says in words: dimensions to drill and build by, where the centre of gravity lies, and the cautions.</summary>
internal static class FrameSheetNotes
{
    private const double LineGap = 0.8;
    private const double PartGap = 3;

    /// <summary>The caution of every sheet that somebody may drill by.</summary>
    public const string Caution = "STRENGTH IS NOT VERIFIED: it must be shown by certified tests. Certification, national regulations "
        + "and the limits set by the frame and wing manufacturers take precedence over this sheet. Drilling and welding "
        + "of a load-bearing frame is work for qualified people.";

    /// <summary>Writes the notes from above to below.</summary>
    /// <param name="sheet">Drawn on.</param>
    /// <param name="design">What they are about.</param>
    /// <param name="extent">With its centre of gravity.</param>
    /// <param name="corner">Upper left corner of their room.</param>
    /// <param name="room">Its width.</param>
    /// <param name="bottom">Its lower edge; letters are smaller where they would pass it.</param>
    public static void Draw(
        SheetBuilder sheet, DrawnDesign design, FrameExtent extent, (double X, double Y) corner, double room, double bottom)
    {
        List<(string Title, List<string> Lines)> parts =
            [.. Parts(design, extent.Centre).Select(part => (part.Title, part.Lines.ToList()))];
        double Height(double letters) => parts.Sum(part => TitleStep(letters) + PartGap + part.Lines.Sum(line =>
            1.7 * letters * SheetFont.Wrap(line, letters, room).Count + LineGap));
        // Below the last line there is the step to a next one, which is not needed.
        bool Fits(double size) => corner.Y - Height(size) + 1.7 * size + PartGap >= bottom;
        var (y, letters) = (corner.Y, Fits(2.5) ? 2.5 : 1.8);
        foreach (var (title, lines) in parts)
        {
            sheet.Text(corner.X, y, letters > 2 ? 3.5 : 2.5, title);
            y -= TitleStep(letters);
            foreach (var line in lines)
                y = sheet.Paragraph(corner.X, y, letters, line, room) - LineGap;
            y -= PartGap;
        }
    }

    /// <summary>"hang point: drill" or "hang point: is there already", with its place.</summary>
    public static string HangPointLine(DrawnDesign design, HangPoint point) =>
        $"{point.Name} hang point: {point.Distance}, {Sheet.Length(point.UpMetres)} {(point.UpMetres < 0 ? "below" : "above")} the datum"
            + (design.IsDrilled(point) switch { null => ".", true => " (the hole is there already).", false => " (a new hole)." });

    private static IEnumerable<(string Title, IEnumerable<string> Lines)> Parts(DrawnDesign design, CentreRange range)
    {
        var (geometry, machine) = (design.Geometry, design.Machine);
        yield return ("HANG POINTS", [
            .. design.HangPoints.Select(point => HangPointLine(design, point)),
            "Measure both from the plane of symmetry, not from hole to hole.",
            .. OtherHoles(design),
            .. geometry.StrapDifferenceMetres == 0 ? Array.Empty<string>() : [Sentence(In(geometry, GeometryInput.StrapDifference))]]);
        var datum = TextTruncation.Truncate(DatumText.Datum(machine), 130);
        yield return ("MEASURED FROM", [datum, TextTruncation.Truncate(DatumText.HangPoint(machine), 130)]);
        yield return ("HUB AND THRUST LINE", [
            Sentence(In(geometry, GeometryInput.HubForward), In(geometry, GeometryInput.HubUp),
                geometry.HubRightMetres == 0 ? "hub in the plane of symmetry" : In(geometry, GeometryInput.HubRight)),
            Sentence(In(geometry, GeometryInput.ThrustLineAngle), In(geometry, GeometryInput.ThrustLineTilt)),
            .. ReasonsSection.Shim(geometry)]);
        yield return ("CENTRE OF GRAVITY", [.. Centre(design, range)]);
        yield return ("CAUTION", [
            .. AnswerHeadline.Warnings(design.Report.Result) is { Length: > 0 } warnings ? [TextTruncation.Truncate(warnings, 400)]
                : Array.Empty<string>(),
            Caution,
            $"{Cautions.Danger} {Cautions.GroundTestFirst}",
            "Template and drawing show one design: check the study's checksum on both."]);
    }

    private static double TitleStep(double letters) => 2.2 * letters;

    private static string Sentence(params IEnumerable<string> parts) => $"{StudyText.Capitalised(string.Join("; ", parts))}.";

    private static string In(FrameGeometry geometry, GeometryInput input)
    {
        var value = geometry[input];
        var size = input.Kind == InputKind.Angle ? Sheet.Angle(value) : Sheet.Length(value);
        return input.Words.Text(value, size);
    }

    private static IEnumerable<string> OtherHoles(DrawnDesign design)
    {
        foreach (var isDrilled in (bool[])[true, false])
        {
            var places = design.OtherHoles.Where(hole => hole.IsDrilled == isDrilled)
                .Select(hole => $"{Sheet.Length(hole.RightMetres)} {SideText.Side(hole.RightMetres)}").ToList();
            if (places.Count > 0)
            {
                yield return $"{(isDrilled ? "Not used, there already" : "Not used, not drilled")}: {string.Join(", ", places.Take(12))}"
                    + (places.Count > 12 ? $" and {places.Count - 12} more." : ".");
            }
        }
    }

    private static IEnumerable<string> Centre(DrawnDesign design, CentreRange range)
    {
        var centre = design.Machine.CentreOfGravity;
        yield return "Of all that hangs, as in the study, from the datum, then where 8 of 10 cases lie (pilot's mass and seat, frame, "
            + "load; fuel as in the study and none):";
        yield return Axis(centre.ForwardMetres, range.Low.ForwardMetres, range.High.ForwardMetres, "in front", "behind");
        yield return Axis(centre.RightMetres, range.Low.RightMetres, range.High.RightMetres, "right", "left");
        yield return Axis(centre.UpMetres, range.Low.UpMetres, range.High.UpMetres, "above", "below");
    }

    private static string Axis(double value, double low, double high, string positive, string negative)
    {
        string Place(double metres) => $"{NumberFormat.Meant(1000 * Math.Abs(metres), "mm")} {(metres < 0 ? negative : positive)}";
        return $"{Place(value)}; from {Place(low)} to {Place(high)}.";
    }
}
