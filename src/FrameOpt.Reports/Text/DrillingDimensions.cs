using FrameOpt.Model;

namespace FrameOpt.Reports.Text;

/// <summary>How far each hang point lies from the frame's plane of symmetry, seen from behind.</summary>
public static class DrillingDimensions
{
    /// <summary>s/2 + e: the hang point on the pilot's right, in metres to the right.</summary>
    public static double RightMetres(FrameGeometry geometry) => geometry.SpacingMetres / 2 + geometry.OffsetMetres;

    /// <summary>s/2 - e: the hang point on the pilot's left, in metres to the left.</summary>
    public static double LeftMetres(FrameGeometry geometry) => geometry.SpacingMetres / 2 - geometry.OffsetMetres;
}
