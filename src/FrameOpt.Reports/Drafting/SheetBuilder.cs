using FrameOpt.Reports.Graphics;

namespace FrameOpt.Reports.Drafting;

/// <summary>Collects what is drawn on a sheet. Texts that may move are placed at the end, where they touch no other text and cross the
/// fewest lines.</summary>
internal sealed class SheetBuilder(string title, double width, double height)
{
    /// <summary>Room kept around a text, mm.</summary>
    private const double Clearance = 0.6;

    private readonly List<Mark> marks = [];
    private readonly List<LabelLayout.LabelBox> taken = [];
    private readonly List<WaitingText> waiting = [];

    /// <summary>Texts added from now on that move stay inside.</summary>
    public SheetBounds Bounds { get; set; } = new(0, 0, width, height);

    /// <summary>A straight line.</summary>
    public void Line(Pen pen, double x1, double y1, double x2, double y2) => marks.Add(new Mark.Line(pen, [(x1, y1), (x2, y2)]));

    /// <summary>Lines through points.</summary>
    public void Path(Pen pen, IReadOnlyList<(double X, double Y)> points, bool isFilled = false) =>
        marks.Add(new Mark.Line(pen, points, isFilled));

    /// <summary>A rectangle.</summary>
    public void Frame(Pen pen, double left, double bottom, double right, double top) =>
        Path(pen, [(left, bottom), (right, bottom), (right, top), (left, top), (left, bottom)]);

    /// <summary>A circle.</summary>
    public void Circle(Pen pen, double x, double y, double radius, bool isFilled = false) =>
        marks.Add(new Mark.Circle(pen, x, y, radius, isFilled));

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
        var (sin, cos) = Math.SinCos(radians);
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
        var before = anchor * SheetFont.Width(words, letters);
        return isUpright ? new Mark.Text(x, y - before, letters, words, true) : new Mark.Text(x - before, y, letters, words);
    }

    /// <summary>The sheet, with every text in its place.</summary>
    public Sheet Build()
    {
        foreach (var (places, to, bounds) in waiting)
        {
            var lines = marks.Where(mark => mark is not Mark.Text).ToList();
            var text = places.Concat(Further(places[0])).Select((place, order) => (Place: place, Box: Box(place), Order: order))
                .Where(place => IsFree(place.Box, bounds)).Take(places.Count)
                .DefaultIfEmpty().MinBy(place => 3 * lines.Sum(line => Crossings(line, place.Box)) + place.Order).Place ?? places[0];
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

    private static int Crossings(Mark mark, LabelLayout.LabelBox box) => mark switch
    {
        Mark.Line line => line.Points.Zip(line.Points.Skip(1)).Count(ends => Crosses(ends.First, ends.Second, box)),
        Mark.Circle circle => Enumerable.Range(0, 24).Count(part => Crosses(Around(circle, part), Around(circle, part + 1), box)),
        _ => 0,
    };

    private static (double X, double Y) Around(Mark.Circle circle, int part)
    {
        var (sin, cos) = Math.SinCos(Math.PI / 12 * part);
        return (circle.X + circle.Radius * cos, circle.Y + circle.Radius * sin);
    }

    /// <summary>Liang and Barsky's test of a line against a rectangle.</summary>
    private static bool Crosses((double X, double Y) from, (double X, double Y) to, LabelLayout.LabelBox box)
    {
        var (enter, leave) = (0.0, 1.0);
        foreach (var (step, room) in ((double, double)[])[(from.X - to.X, from.X - box.Left), (to.X - from.X, box.Right - from.X),
            (from.Y - to.Y, from.Y - box.Top), (to.Y - from.Y, box.Bottom - from.Y)])
        {
            if (step == 0 && room < 0)
                return false;
            if (step < 0)
                enter = Math.Max(enter, room / step);
            else if (step > 0)
                leave = Math.Min(leave, room / step);
        }

        return enter <= leave;
    }
}

/// <summary>A part of a sheet, mm.</summary>
/// <param name="Left">Edge.</param>
/// <param name="Bottom">Edge.</param>
/// <param name="Right">Edge.</param>
/// <param name="Top">Edge.</param>
internal readonly record struct SheetBounds(double Left, double Bottom, double Right, double Top);

/// <summary>A text that has not been placed.</summary>
/// <param name="Places">Where it may stand, best first.</param>
/// <param name="To">The point it belongs to, or null.</param>
/// <param name="Bounds">Where it must stay.</param>
internal sealed record WaitingText(IReadOnlyList<Mark.Text> Places, (double X, double Y)? To, SheetBounds Bounds);
