using FrameOpt.Numerics;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Drafting;

/// <summary>The drawing of the frame on one sheet of A3: three views to scale in first-angle projection, notes and title block.</summary>
internal static class FrameSheet
{
    private const double Width = 420;
    private const double Height = 297;
    private const double Edge = 10;

    /// <summary>Right edge of the views, left edge of notes and title block.</summary>
    private const double Column = 303;

    /// <summary>Filing margin of ISO 5457.</summary>
    private const double FilingEdge = 20;

    /// <summary>Name and marks above a view.</summary>
    private const double Head = 28;

    /// <summary>Pilot's left and right below a view.</summary>
    private const double Foot = 9;

    /// <summary>Dimensions beside a view, on both sides together.</summary>
    private const double Beside = 42;

    /// <summary>Reductions of ISO 5455 and half-way ones below them.</summary>
    private static readonly int[] reductions = [2, 5, 10, 20, 50, 100, 200];

    /// <summary>The sheet of a design.</summary>
    public static Sheet Of(DrawnDesign design)
    {
        var extent = FrameExtent.Of(design);
        var reduction = reductions.First(reduction => Fits(extent, 1000.0 / reduction) || reduction == reductions[^1]);
        var scale = 1000.0 / reduction;
        var sheet = new SheetBuilder($"FrameOpt drawing: {TextTruncation.Truncate(design.Study.FullTitle, 80)}", Width, Height);
        sheet.Frame(Pen.Outline, FilingEdge, Edge, Width - Edge, Height - Edge);
        sheet.Line(Pen.Outline, Column, Edge, Column, Height - Edge);
        // What is left of the room goes beside the views.
        var division = FilingEdge + SideWidth(extent, scale)
            + (Column - FilingEdge - SideWidth(extent, scale) - RearWidth(extent, scale)) / 2;
        var sideLeft = (FilingEdge + division - scale * (extent.Front + extent.Rear)) / 2;
        var middle = (division + Column) / 2;
        var datum = Height - Edge - Head - scale * extent.TopAt(scale);
        var foot = datum + scale * extent.Bottom - Foot;
        Heading(sheet, design, "SEEN FROM THE PILOT'S RIGHT", FilingEdge + 4, Height - Edge, division - FilingEdge - 8);
        Heading(sheet, design, "SEEN FROM BEHIND", division, Height - Edge, Column - division - 4);
        Heading(sheet, design, "SEEN FROM ABOVE", division, foot - 1, Column - division - 4);
        Sides(sheet, "◀ rear", "front ▶", FilingEdge + 4, division - 8, foot + 1);
        Sides(sheet, "◀ pilot's LEFT", "pilot's RIGHT ▶", division, Column - 4, foot + 1);
        var top = new SheetView(middle, foot - 1 - Head - scale * extent.Front, scale);
        Sides(sheet, "◀ pilot's LEFT", "pilot's RIGHT ▶", division, Column - 4, Math.Max(Edge + 2, top.Y(extent.Rear) - Foot + 1));
        sheet.Bounds = new SheetBounds(FilingEdge + 1, Edge + 1, Column - 1, Height - Edge - 1);
        RearElevation.Draw(sheet, design, new SheetView(middle, datum, scale), extent);
        SideElevation.Draw(sheet, design, new SheetView(sideLeft, datum, scale), extent);
        PlanView.Draw(sheet, design, top, extent);
        FrameSheetNotes.Draw(sheet, design, extent, (Column + 3, Height - Edge - 7), Width - Edge - Column - 6, Edge + TitleBlock.Height);
        TitleBlock.Draw(sheet, design, reduction, Column, Edge, Width - Edge);
        return sheet.Build();
    }

    private static bool Fits(FrameExtent extent, double scale) =>
        SideWidth(extent, scale) + RearWidth(extent, scale) <= Column - FilingEdge
            && scale * (extent.TopAt(scale) - extent.Bottom + extent.Depth) + 2 * (Head + Foot) + 2 <= Height - 2 * Edge;


    /// <summary>Room for the side view with its dimensions, and for its name at least.</summary>
    private static double SideWidth(FrameExtent extent, double scale) => Math.Max(80, scale * extent.Depth + Beside);

    private static double RearWidth(FrameExtent extent, double scale) => Math.Max(100, 2 * scale * extent.Half + Beside);

    private static void Heading(SheetBuilder sheet, DrawnDesign design, string name, double x, double top, double room)
    {
        sheet.Text(x, top - 6, 3.5, name);
        var y = sheet.Paragraph(x, top - 11, 2.5, design.RotationLine, room);
        sheet.Paragraph(x, y, 2.5, design.PullLine, room);
    }

    private static void Sides(SheetBuilder sheet, string left, string right, double from, double to, double y)
    {
        sheet.Text(from, y, 2.5, left);
        sheet.Text(to, y, 2.5, right, 1);
    }
}

/// <summary>How far a frame reaches from the datum, m, with its propeller and the range of its centre of gravity.</summary>
/// <param name="Half">To either side of the plane of symmetry.</param>
/// <param name="Top">Upward.</param>
/// <param name="Bottom">Downward, -.</param>
/// <param name="Front">Forward.</param>
/// <param name="Rear">Backward, -.</param>
/// <param name="HangUp">The higher hang point.</param>
/// <param name="Centre">Of gravity.</param>
internal sealed record FrameExtent(
    double Half, double Top, double Bottom, double Front, double Rear, double HangUp, CentreRange Centre)
{
    /// <summary>From rear to front.</summary>
    public double Depth => Front - Rear;

    /// <summary>Upward, with room for the rows of dimensions above the hang points.</summary>
    /// <param name="scale">mm on the sheet for a metre.</param>
    public double TopAt(double scale) => Math.Max(Top, HangUp + RearElevation.RowsAbove / scale);

    /// <summary>Of one design.</summary>
    public static FrameExtent Of(DrawnDesign design)
    {
        var (geometry, centre) = (design.Geometry, CentreRange.Of(design.Report.Result));
        var radius = design.Machine.Propeller.DiameterMetres / 2;
        var lean = radius * Math.Max(Math.Abs(Elementary.Sin(geometry.AngleRadians)), Math.Abs(Elementary.Sin(geometry.TiltRadians)));
        double[] aside = [Math.Abs(geometry.HubRightMetres) + radius, .. design.HangPoints.Select(point => Math.Abs(point.RightMetres)),
            .. design.OtherHoles.Select(hole => Math.Abs(hole.RightMetres)),
            Math.Abs(centre.Low.RightMetres), Math.Abs(centre.High.RightMetres)];
        var hang = design.HangPoints.Max(point => point.UpMetres);
        double[] up = [geometry.HubUpMetres + radius, hang, centre.High.UpMetres, 0];
        double[] down = [geometry.HubUpMetres - radius, design.HangPoints.Min(point => point.UpMetres), centre.Low.UpMetres, 0];
        double[] forward = [geometry.HubForwardMetres + lean, geometry.HangLineForwardMetres, centre.High.ForwardMetres, 0];
        double[] back = [geometry.HubForwardMetres - lean, geometry.HangLineForwardMetres, centre.Low.ForwardMetres, 0];
        return new FrameExtent(aside.Max(), up.Max(), down.Min(), forward.Max(), back.Min(), hang, centre);
    }
}

/// <summary>Where a view stands on its sheet, and how large.</summary>
/// <param name="OriginX">Of the datum, mm.</param>
/// <param name="OriginY">Of the datum, mm.</param>
/// <param name="Scale">mm on the sheet for a metre.</param>
internal readonly record struct SheetView(double OriginX, double OriginY, double Scale)
{
    /// <summary>Metres across, on the sheet.</summary>
    public double X(double metres) => OriginX + Scale * metres;

    /// <summary>Metres up, on the sheet.</summary>
    public double Y(double metres) => OriginY + Scale * metres;
}
