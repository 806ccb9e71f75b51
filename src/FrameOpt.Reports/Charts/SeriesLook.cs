namespace FrameOpt.Reports;

/// <summary>How a series is drawn; never told apart by colour alone.</summary>
/// <param name="Colour">Of the published set that the colour-blind can tell apart.</param>
/// <param name="Marker">Shape: circle, square, diamond, triangle, x, or null for none.</param>
/// <param name="MarkerPoints">Its size.</param>
/// <param name="LinePoints">Width of the line between points; 0 for none.</param>
/// <param name="Dash">solid, dash, sysDot.</param>
/// <param name="Pattern">Of a bar: null for plain, else a hatch.</param>
/// <remarks>Colours: M. Okabe, K. Ito, Color Universal Design, 2008.</remarks>
internal sealed record SeriesLook(string Colour, string? Marker = null, int MarkerPoints = 7, double LinePoints = 0, string Dash = "solid", string? Pattern = null)
{
    public const string Blue = "0072B2";
    public const string SkyBlue = "56B4E9";
    public const string Orange = "E69F00";
    public const string Vermillion = "D55E00";
    public const string Green = "009E73";
    public const string Purple = "CC79A7";
    public const string Black = "000000";
}
