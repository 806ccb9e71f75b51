using System.Globalization;

namespace FrameOpt.Reports.Drafting;

/// <summary>What is drawn, once for every kind of file: marks in mm, x to the right and y up from the lower left corner.</summary>
/// <param name="Title">In a few words.</param>
/// <param name="Width">mm.</param>
/// <param name="Height">mm.</param>
/// <param name="Marks">In the order they are drawn.</param>
internal sealed record Sheet(string Title, double Width, double Height, IReadOnlyList<Mark> Marks)
{
    /// <summary>A coordinate in mm, to a ten-thousandth.</summary>
    public static string Number(double millimetres) =>
        (Math.Round(millimetres, 4) + 0.0).ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>A length as a drawing says it: "207.5 mm", to a hundredth of a millimetre.</summary>
    public static string Length(double metres) =>
        (Math.Round(1000 * Math.Abs(metres), 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture) + " mm";

    /// <summary>An angle as a drawing says it: "1.5 deg".</summary>
    public static string Angle(double radians) =>
        (Math.Round(180 / Math.PI * Math.Abs(radians), 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture) + " deg";
}

/// <summary>One thing on a sheet.</summary>
internal abstract record Mark
{
    private Mark()
    {
    }

    /// <summary>Straight lines from point to point.</summary>
    /// <param name="Pen">Line type.</param>
    /// <param name="Points">Two or more, mm.</param>
    /// <param name="IsFilled">Closed and black inside.</param>
    internal sealed record Line(Pen Pen, IReadOnlyList<(double X, double Y)> Points, bool IsFilled = false) : Mark;

    /// <summary>A circle.</summary>
    /// <param name="Pen">Line type.</param>
    /// <param name="X">Centre, mm.</param>
    /// <param name="Y">Centre, mm.</param>
    /// <param name="Radius">mm.</param>
    /// <param name="IsFilled">Black inside.</param>
    internal sealed record Circle(Pen Pen, double X, double Y, double Radius, bool IsFilled = false) : Mark;

    /// <summary>One line of text.</summary>
    /// <param name="X">Left end of its base line, mm; its lower end when upright.</param>
    /// <param name="Y">Base line, mm.</param>
    /// <param name="Height">Of a capital letter, mm: 2.5, 3.5, 5, 7 or 10 (ISO 3098).</param>
    /// <param name="Words">Not empty.</param>
    /// <param name="IsUpright">Read from the right of the sheet.</param>
    internal sealed record Text(double X, double Y, double Height, string Words, bool IsUpright = false) : Mark
    {
        /// <summary>How long it is in the font of the sheet, mm.</summary>
        public double Length { get; } = SheetFont.Width(Words, Height);
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
