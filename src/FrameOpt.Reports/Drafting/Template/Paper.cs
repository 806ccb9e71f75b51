namespace FrameOpt.Reports.Drafting.Template;

/// <summary>A size of paper, lying on its long side.</summary>
/// <param name="Name">As a printer calls it.</param>
/// <param name="Width">mm.</param>
/// <param name="Height">mm.</param>
internal sealed record Paper(string Name, double Width, double Height)
{
    /// <summary>ISO 216.</summary>
    public static readonly Paper A4 = new("A4", 297, 210);

    /// <summary>11 by 8.5 inches.</summary>
    public static readonly Paper Letter = new("Letter", 279.4, 215.9);

    /// <summary>Width of what is printed, the same on both papers, mm.</summary>
    public const double AreaWidth = 256;

    /// <summary>Height of what is printed, mm.</summary>
    public const double AreaHeight = 186;

    /// <summary>Left edge of what is printed.</summary>
    public double Left => (Width - AreaWidth) / 2;

    /// <summary>Lower edge of what is printed.</summary>
    public double Bottom => (Height - AreaHeight) / 2;
}
