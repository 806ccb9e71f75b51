using FrameOpt.Model;
using FrameOpt.Studies;

namespace FrameOpt.Web.Pictures;

/// <summary>The scale of the three views: room for every place the holes can go, so that nothing jumps while one is dragged.</summary>
/// <param name="PerMetre">Picture units for a metre.</param>
/// <param name="Top">Upper edge, m above the datum.</param>
/// <param name="Bottom">Lower edge, m above the datum.</param>
/// <param name="Front">Forward edge, m in front of the datum.</param>
/// <param name="Rear">Rearward edge, m in front of the datum.</param>
public sealed record FrameView(double PerMetre, double Top, double Bottom, double Front, double Rear)
{
    /// <summary>Width of each view, picture units.</summary>
    public const double Width = 360;

    private const double Margin = 12, Head = 44, Foot = 26, ArrowMetres = 0.3;

    /// <summary>Height of the views from behind and from the side, picture units.</summary>
    public double UprightHeight => Head + (Top - Bottom) * PerMetre + Foot;

    /// <summary>Height of the view from above, picture units.</summary>
    public double FlatHeight => Head + (Front - Rear) * PerMetre + Foot;

    /// <summary>The scale for a study.</summary>
    public static FrameView Of(Study study)
    {
        var (machine, hub) = (study.Machine, study.Machine.Propeller.Hub);
        var radius = machine.Propeller.DiameterMetres / 2;
        double Largest(GeometryInput input) => study.Factor(input).LevelsSi.Max(Math.Abs);
        var half = Math.Max(radius + Math.Abs(hub.RightMetres),
            Largest(GeometryInput.HangPointSpacing) / 2 + Largest(GeometryInput.LateralOffset) + 0.06);
        var highest = study.Factor(GeometryInput.SuspensionHeight).LevelsSi[^1];
        var depth = Math.Min(hub.ForwardMetres - 0.08, Math.Min(machine.HangLineForwardMetres, machine.CentreOfGravity.ForwardMetres));
        return new FrameView((Width / 2 - Margin) / half, Math.Max(hub.UpMetres + radius, highest + 0.12),
            Math.Min(hub.UpMetres - radius, Math.Min(-0.1, machine.CentreOfGravity.UpMetres)),
            Math.Max(0.08, Math.Max(machine.HangLineForwardMetres, hub.ForwardMetres + ArrowMetres)), depth);
    }

    /// <summary>Across, from m to the pilot's right.</summary>
    public double X(double right) => Width / 2 + right * PerMetre;

    /// <summary>Up the views from behind and from the side, from m above the datum.</summary>
    public double Y(double up) => Head + (Top - up) * PerMetre;

    /// <summary>Along the view from the side, from m in front of the datum.</summary>
    public double Side(double forward) => Width / 2 + (forward - (Front + Rear) / 2) * PerMetre;

    /// <summary>Up the view from above, from m in front of the datum.</summary>
    public double Flat(double forward) => Head + (Front - forward) * PerMetre;
}
