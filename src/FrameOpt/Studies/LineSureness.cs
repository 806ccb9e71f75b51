using FrameOpt.Model;
using FrameOpt.ProductLine;

namespace FrameOpt.Studies;

/// <summary>How much hangs on the best line being exactly this one: simpler lines that are nearly as good, how far each geometry may be
/// changed, and what is best for other samples of the customers and other weights.</summary>
/// <param name="Simpler">The best of each kind that is simpler to make, proven like the line itself unless time ran out.</param>
/// <param name="Leeway">For each chosen geometry how far it may be changed alone.</param>
/// <param name="Samples">For customers drawn from those of the study, with replacement.</param>
/// <param name="Weights">For other weights of the mean and the worst customer.</param>
public sealed record LineSureness(
    IReadOnlyList<SimplerLine> Simpler, IReadOnlyList<GeometryLeeway> Leeway, IReadOnlyList<LineTrial> Samples,
    IReadOnlyList<LineTrial> Weights)
{
    /// <summary>A line so little above the best is nearly as good.</summary>
    public const double Nearly = 0.02;

    /// <summary>Holes at multiples of this are round, m.</summary>
    public const double RoundMetres = 0.005;

    /// <summary>True when both hang points are a multiple of 5 mm from the plane of symmetry.</summary>
    public static bool IsRound(FrameGeometry design) => IsRound(design.LeftMetres) && IsRound(design.RightMetres);

    /// <summary>How many different frames some designs need, holes apart: a jig for each.</summary>
    public static int Jigs(IEnumerable<FrameGeometry> designs) => designs.Select(design => (design with { OffsetMetres = 0 })).Distinct()
        .Count();

    private static bool IsRound(double metres) => Math.Abs(metres / RoundMetres - Math.Round(metres / RoundMetres)) < 1e-6;
}

/// <summary>A kind of line that is simpler to make.</summary>
public enum SimplerKind
{
    /// <summary>One frame: only the holes differ.</summary>
    OneFrame,

    /// <summary>One hang-point spacing.</summary>
    OneSpacing,

    /// <summary>Holes at whole 5 mm.</summary>
    RoundHoles,

    /// <summary>One frame, and holes at whole 5 mm.</summary>
    OneFrameWithRoundHoles,
}

/// <summary>The best line of a kind that is simpler to make.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Designs">Its geometries as built on the study's own machine.</param>
/// <param name="Value">What the line minimises.</param>
public sealed record SimplerLine(SimplerKind Kind, IReadOnlyList<FrameGeometry> Designs, double Value);

/// <summary>Which other candidates could take the place of one geometry of the line, the others staying, at nearly no loss.</summary>
/// <param name="Geometry">Index of the geometry.</param>
/// <param name="From">The lowest value of each factor among them, in the order of the study's factors.</param>
/// <param name="To">The highest.</param>
/// <param name="Count">How many there are.</param>
public sealed record GeometryLeeway(int Geometry, IReadOnlyList<double> From, IReadOnlyList<double> To, int Count);

/// <summary>What is best when the question is a little different.</summary>
/// <param name="Objective">The objective of the trial.</param>
/// <param name="Designs">The best geometries then.</param>
/// <param name="Best">What they leave.</param>
/// <param name="Ours">What the line of the study leaves.</param>
public sealed record LineTrial(ProductLineObjective Objective, IReadOnlyList<FrameGeometry> Designs, double Best, double Ours)
{
    /// <summary>How far the line of the study is above the best, as a share; 0 when it is the best.</summary>
    public double Above => Best > 0 ? Math.Max(0, Ours / Best - 1) : 0;
}
