namespace FrameOpt.Model;

/// <summary>Provisional.</summary>
public static class BalancedBands
{
    /// <summary>Provisional.</summary>
    public static IReadOnlyList<BalancedBand> Find(MissionModel mission, FrameGeometry geometry, int phaseIndex, double withinNewtonMetres) => [];
}
