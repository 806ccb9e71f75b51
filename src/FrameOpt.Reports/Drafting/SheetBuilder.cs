using FrameOpt.Numerics;
using FrameOpt.Reports.Graphics;

namespace FrameOpt.Reports.Drafting;

/// <summary>Collects what is drawn on a sheet. Texts that may move are placed at the end, where they touch no other text and cross the
/// fewest lines.</summary>
internal sealed class SheetBuilder(string title, double width, double height)
{
    /// <summary>Room kept around a text, mm.</summary>
    private const double Clearance = 0.6;

    /// <summary>Straight lines that stand for a circle where a text looks for a place.</summary>
    private const int PartsOfCircle = 16;

    private readonly List<Mark> marks = [];
    private readonly List<(double X1, double Y1, double X2, double Y2)> lines = [];
    private readonly List<LabelLayout.LabelBox> taken = [];
    private readonly List<WaitingText> waiting = [];

    /// <summary>Texts added from now on that move stay inside.</summary>
    public SheetBounds Bounds { get; set; } = new(0, 0, width, height);

    /// <summary>A straight line.</summary>
    public void Line(Pen pen, double x1, double y1, double x2, double y2) => Path(pen, [(x1, y1), (x2, y2)]);

    /// <summary>Lines through points.</summary>
    public void Path(Pen pen, IReadOnlyList<(double X, double Y)> points, bool isFilled = false)
    {
        marks.Add(new Mark.Line(pen, points, isFilled));
        for (var i = 1; i < points.Count; i++)
            lines.Add((points[i - 1].X, points[i - 1].Y, points[i].X, points[i].Y));
    }

    /// <summary>A rectangle.</summary>
    public void Frame(Pen pen, double left, double bottom, double right, double top) =>
        Path(pen, [(left, bottom), (right, bottom), (right, top), (left, top), (left, bottom)]);

    /// <summary>A circle.</summary>
    public void Circle(Pen pen, double x, double y, double radius, bool isFilled = false)
    {
        marks.Add(new Mark.Circle(pen, x, y, radius, isFilled));
        for (var part = 0; part < PartsOfCircle; part++)
        {
            var ((sin1, cos1), (sin2, cos2)) = (Elementary.SinCos(2 * Math.PI * part / PartsOfCircle),
                Elementary.SinCos(2 * Math.PI * (part + 1) / PartsOfCircle));
            lines.Add((x + radius * cos1, y + radius * sin1, x + radius * cos2, y + radius * sin2));
        }
    }

    /// <summary>Two lines that cross at a point.</summary>
    public void Cross(Pen pen, double x, double y, double reach)
    {
        Line(pen, x - reach, y, x + reach, y);
        Line(pen, x, y - reach, x, y + reach);
    }

    /// <summary>A filled arrowhead, three times as long as wide (ISO 129-1), its tip at a point.</summary>
    /// <param name="x">Tip.</param>
    /// <param name="y">Tip.</param>
    /// <param name="radians">Where it points, from the right, counter-clockwise.</param>
    /// <param name="length">mm.</param>
    public void Arrow(double x, double y, double radians, double length = 3)
    {
        var (sin, cos) = Elementary.SinCos(radians);
        (double, double) Corner(double side) =>
            (x - length * cos - side * sin * length / 6, y - length * sin + side * cos * length / 6);
        Path(Pen.Fine, [(x, y), Corner(1), Corner(-1)], isFilled: true);
    }

    /// <summary>A text that stays where it is put.</summary>
    /// <param name="x">Where it is anchored.</param>
    /// <param name="y">Base line.</param>
    /// <param name="letters">Height of a capital, mm.</param>
    /// <param name="words">One line.</param>
    /// <param name="anchor">0 at its start, 0.5 in its middle, 1 at its end.</param>
    /// <param name="isUpright">Read from the right.</param>
    public void Text(double x, double y, double letters, string words, double anchor = 0, bool isUpright = false)
    {
        var text = At(x, y, letters, words, anchor, isUpright);
        marks.Add(text);
        taken.Add(Box(text));
    }

    /// <summary>Lines of a text one below the other; gives the base line for what follows.</summary>
    public double Paragraph(double x, double y, double letters, string words, double room)
    {
        foreach (var line in SheetFont.Wrap(words, letters, room))
        {
            Text(x, y, letters, line);
            y -= 1.7 * letters;
        }

        return y;
    }

    /// <summary>A text near a point, with a leader line where it finds no room beside it.</summary>
    /// <param name="x">The point.</param>
    /// <param name="y">The point.</param>
    /// <param name="gap">From the point to the text, mm.</param>
    /// <param name="letters">Height of a capital, mm.</param>
    /// <param name="words">One line.</param>
    public void Label(double x, double y, double gap, double letters, string words) => waiting.Add(new WaitingText(
    [
        .. ((double[])[gap, gap + 4, gap + 8, gap + 14, gap + 20, gap + 28]).SelectMany(reach => (Mark.Text[])
        [
            At(x + reach, y - letters / 2, letters, words, 0),
            At(x - reach, y - letters / 2, letters, words, 1),
            At(x + 0.7 * reach, y - 0.7 * reach - letters, letters, words, 0),
            At(x - 0.7 * reach, y - 0.7 * reach - letters, letters, words, 1),
            At(x + 0.7 * reach, y + 0.7 * reach, letters, words, 0),
            At(x - 0.7 * reach, y + 0.7 * reach, letters, words, 1),
            At(x, y - reach - letters, letters, words, 0.5),
            At(x, y + reach, letters, words, 0.5),
        ]),
    ], (x, y), Bounds));

    /// <summary>A figure that stands at the first of some places that is free.</summary>
    /// <param name="places">Best first.</param>
    public void Figure(params IReadOnlyList<Mark.Text> places) => waiting.Add(new WaitingText(places, null, Bounds));

    /// <summary>A text to be placed, by its anchor.</summary>
    public static Mark.Text At(double x, double y, double letters, string words, double anchor, bool isUpright = false)
    {
        var text = new Mark.Text(x, y, letters, words, isUpright);
        return isUpright ? text with { Y = y - anchor * text.Length } : text with { X = x - anchor * text.Length };
    }

    /// <summary>The sheet, with every text in its place.</summary>
    public Sheet Build()
    {
        foreach (var (places, to, bounds) in waiting)
        {
            var text = places.Concat(Further(places[0])).Select((place, order) => (Place: place, Box: Box(place), Order: order))
                .Where(place => IsFree(place.Box, bounds)).Take(places.Count)
                .DefaultIfEmpty().MinBy(place => 3 * Crossings(place.Box) + place.Order).Place ?? places[0];
            marks.Add(text);
            taken.Add(Box(text));
            if (to is { } point)
                Lead(text, point.X, point.Y);
        }

        waiting.Clear();
        return new Sheet(title, width, height, [.. marks]);
    }

    /// <summary>Places ever further from the first.</summary>
    private static IEnumerable<Mark.Text> Further(Mark.Text first) => Enumerable.Range(1, 200).SelectMany(step =>
        ((double X, double Y)[])[(0, -1), (0, 1), (1, 0), (-1, 0), (1, -1), (-1, -1), (1, 1), (-1, 1)],
        (step, way) => first with { X = first.X + step * way.X, Y = first.Y + step * way.Y });

    /// <summary>A leader line from a text to its point, where they are apart.</summary>
    private void Lead(Mark.Text text, double x, double y)
    {
        var box = Box(text);
        var (nearX, nearY) = (Math.Clamp(x, box.Left, box.Right), Math.Clamp(y, box.Top, box.Bottom));
        if (Math.Max(Math.Abs(nearX - x), Math.Abs(nearY - y)) > 7)
            Line(Pen.Fine, nearX, nearY, x, y);
    }

    private bool IsFree(LabelLayout.LabelBox box, SheetBounds bounds) => box.Left >= bounds.Left && box.Right <= bounds.Right
        && box.Top >= bounds.Bottom && box.Bottom <= bounds.Top && !taken.Exists(box.Touches);

    /// <summary>What a text covers, with its clearance; letters go a little below the base line.</summary>
    internal static LabelLayout.LabelBox Box(Mark.Text text) => text.IsUpright
        ? new(text.X - text.Height - Clearance, text.Y - Clearance,
            text.X + 0.3 * text.Height + Clearance, text.Y + text.Length + Clearance)
        : new(text.X - Clearance, text.Y - 0.3 * text.Height - Clearance,
            text.X + text.Length + Clearance, text.Y + text.Height + Clearance);

    private int Crossings(LabelLayout.LabelBox box)
    {
        var count = 0;
        foreach (var line in lines)
            count += Crosses(line, box) ? 1 : 0;
        return count;
    }

    /// <summary>Whether a straight line meets a rectangle: they share room both ways, and corners lie on both sides of the line.</summary>
    private static bool Crosses((double X1, double Y1, double X2, double Y2) line, LabelLayout.LabelBox box)
    {
        if (Math.Max(line.X1, line.X2) < box.Left || Math.Min(line.X1, line.X2) > box.Right
            || Math.Max(line.Y1, line.Y2) < box.Top || Math.Min(line.Y1, line.Y2) > box.Bottom)
            return false;
        var (right, up) = (line.X2 - line.X1, line.Y2 - line.Y1);
        double Side(double x, double y) => right * (y - line.Y1) - up * (x - line.X1);
        var (a, b, c, d) = (Side(box.Left, box.Top), Side(box.Right, box.Top), Side(box.Left, box.Bottom), Side(box.Right, box.Bottom));
        return Math.Min(Math.Min(a, b), Math.Min(c, d)) <= 0 && Math.Max(Math.Max(a, b), Math.Max(c, d)) >= 0;
    }
}
