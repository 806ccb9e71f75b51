namespace FrameOpt.Reports.Drafting;

/// <summary>A line type of ISO 128: what it draws, how wide it is, and its dashes.</summary>
/// <param name="Layer">In a DXF file, where a program picks lines by it.</param>
/// <param name="WidthMillimetres">On paper.</param>
/// <param name="Dashes">Lengths of dashes and gaps in turn, mm; empty for a continuous line.</param>
/// <remarks>Source: ISO 128-2 (dash 12, long dash 24, gap 3, dot half a line width, narrow to wide 1 to 2), from memory.</remarks>
internal sealed record Pen(string Layer, double WidthMillimetres, IReadOnlyList<double> Dashes)
{
    private const double Narrow = 0.25;

    /// <summary>Continuous wide: visible edges, frames of tables.</summary>
    public static readonly Pen Outline = new("OUTLINE", 2 * Narrow, []);

    /// <summary>Continuous wide: the marks to drill by, on a layer of their own.</summary>
    public static readonly Pen Hole = new("HOLES", 2 * Narrow, []);

    /// <summary>Continuous narrow: dimension, extension and leader lines.</summary>
    public static readonly Pen Fine = new("FINE", Narrow, []);

    /// <summary>Dashed narrow: what is there and is not to be drilled, and where to cut.</summary>
    public static readonly Pen Dashed = new("DASHED", Narrow, [12 * Narrow, 3 * Narrow]);

    /// <summary>Long-dashed dotted narrow: centre lines and the plane of symmetry.</summary>
    public static readonly Pen Centre = new("CENTRELINES", Narrow, [24 * Narrow, 3 * Narrow, 0.5 * Narrow, 3 * Narrow]);

    /// <summary>Long-dashed double-dotted narrow: the path of the propeller, and the range of a centre of gravity.</summary>
    public static readonly Pen Moving = new(
        "MOVING", Narrow, [24 * Narrow, 3 * Narrow, 0.5 * Narrow, 3 * Narrow, 0.5 * Narrow, 3 * Narrow]);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Pen> All { get; } = [Outline, Hole, Fine, Dashed, Centre, Moving];
}
