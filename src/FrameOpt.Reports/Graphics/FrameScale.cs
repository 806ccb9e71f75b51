using FrameOpt.Model;

namespace FrameOpt.Reports.Graphics;

/// <summary>How the two views of the frame are scaled: alike, and with room for every design that may be shown.</summary>
/// <param name="UnitsPerMetre">Picture units for a metre.</param>
/// <param name="TopMetres">Upper edge of the front view, metres above the datum.</param>
/// <param name="BottomMetres">Lower edge of the front view.</param>
/// <param name="FrontMetres">Upper edge of the top view, metres before the datum.</param>
/// <param name="RearMetres">Lower edge of the top view.</param>
internal sealed record FrameScale(double UnitsPerMetre, double TopMetres, double BottomMetres, double FrontMetres, double RearMetres)
{
    /// <summary>Of both pictures.</summary>
    public const double Width = 340;

    private const double Edge = 14;

    /// <summary>The scale for one machine in several geometries.</summary>
    public static FrameScale Of(Machine machine, IReadOnlyList<FrameGeometry> geometries)
    {
        var radius = machine.Propeller.DiameterMetres / 2;
        var centre = machine.CentreOfGravity;
        var half = geometries.Max(g => Math.Max(radius + Math.Abs(g.HubRightMetres), g.SpacingMetres / 2 + Math.Abs(g.OffsetMetres)));
        var perMetre = (Width / 2 - Edge) / half;
        // Above the hang line stand two dimension lines.
        var highest = geometries.Max(g => Math.Max(g.HubUpMetres + radius, g.HeightMetres + 60 / perMetre));
        var lowest = Math.Min(geometries.Min(g => g.HubUpMetres - radius), Math.Min(0, centre.UpMetres));
        var forward = Math.Max(geometries.Max(g => Math.Max(g.HangLineForwardMetres, g.HubForwardMetres)),
            Math.Max(0, centre.ForwardMetres));
        var back = Math.Min(geometries.Min(g => Math.Min(g.HangLineForwardMetres, g.HubForwardMetres)), Math.Min(0, centre.ForwardMetres));
        return new FrameScale(perMetre, highest, lowest, forward, back);
    }

    /// <summary>Across, in both views: the pilot's right is on the right.</summary>
    public double X(double rightMetres) => Width / 2 + rightMetres * UnitsPerMetre;
}
