namespace FrameOpt.Reports.Drafting;

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
