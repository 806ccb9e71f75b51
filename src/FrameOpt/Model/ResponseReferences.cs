namespace FrameOpt.Model;

/// <summary>What some responses are reckoned against; a response without its reference is NaN.</summary>
/// <param name="LimitLoadFactor">For hang_point_load, or null.</param>
/// <param name="OverhangMetres">For arm_moment, or null.</param>
/// <param name="Baseline">For distance_from_baseline, or null.</param>
/// <param name="Ranges">Range of each swept factor in m or rad, for distance_from_baseline.</param>
public sealed record ResponseReferences(
    double? LimitLoadFactor,
    double? OverhangMetres,
    FrameGeometry? Baseline,
    IReadOnlyList<KeyValuePair<GeometryInput, double>> Ranges)
{
    /// <summary>No references: those responses are NaN.</summary>
    public static ResponseReferences None { get; } = new(null, null, null, []);
}
