namespace FrameOpt.Reports.Drafting.Template;

/// <summary>The holes in true size on a plane: mm to the reader's right of the plane of symmetry, and above the middle of the hang
/// line.</summary>
/// <param name="Points">To be drilled.</param>
/// <param name="OtherHoles">Of the bar, not used.</param>
/// <param name="IsMirrored">True for the plane seen from the front of the frame.</param>
internal sealed record TemplatePlane(
    IReadOnlyList<TemplatePoint> Points, IReadOnlyList<(double Right, double Up, bool IsDrilled)> OtherHoles, bool IsMirrored)
{
    /// <summary>From the plane of symmetry to the outermost hole.</summary>
    public double HalfWidth => Points.Select(point => Math.Abs(point.Right)).Concat(OtherHoles.Select(hole => Math.Abs(hole.Right))).Max();

    /// <summary>From the middle of the hang line to the highest hole.</summary>
    public double HalfHeight => Points.Max(point => Math.Abs(point.Up));

    /// <summary>Seen from the other side.</summary>
    public TemplatePlane Mirrored => new(
        [.. Points.Select(point => point with { Right = -point.Right })],
        [.. OtherHoles.Select(hole => (-hole.Right, hole.Up, hole.IsDrilled))], !IsMirrored);

    /// <summary>Seen from behind.</summary>
    public static TemplatePlane Of(DrawnDesign design)
    {
        var middle = design.Geometry.HeightMetres;
        return new TemplatePlane(
            [.. design.HangPoints.Select(point => new TemplatePoint(
                point.Name, point.Side, 1000 * point.RightMetres, 1000 * (point.UpMetres - middle),
                $"{point.Distance} of the plane of symmetry", design.IsDrilled(point) switch
                {
                    null => "drill centre",
                    true => "the hole is there already",
                    false => "drill centre, a new hole",
                }))],
            [.. design.OtherHoles.Select(hole => (1000 * hole.RightMetres, 1000 * (hole.UpMetres - middle), hole.IsDrilled))],
            IsMirrored: false);
    }
}

/// <summary>A hang point on the plane.</summary>
/// <param name="Name">LEFT or RIGHT, of the pilot.</param>
/// <param name="Side">-1 for the pilot's left, +1 for the right.</param>
/// <param name="Right">mm to the reader's right of the plane of symmetry.</param>
/// <param name="Up">mm above the middle of the hang line.</param>
/// <param name="Distance">In words.</param>
/// <param name="Task">What to do there.</param>
internal sealed record TemplatePoint(string Name, int Side, double Right, double Up, string Distance, string Task);
