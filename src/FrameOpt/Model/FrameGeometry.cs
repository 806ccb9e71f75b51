namespace FrameOpt.Model;

/// <summary>Every geometry input a design may change, in metres and radians.</summary>
/// <param name="SpacingMetres">Hang-point spacing s, above 0.</param>
/// <param name="OffsetMetres">Lateral offset e: both hang points moved to the pilot's right, +.</param>
/// <param name="HeightMetres">Suspension height: hang line above the datum.</param>
/// <param name="AngleRadians">Thrust-line angle psi: thrust turned to the pilot's right, +.</param>
/// <param name="TiltRadians">Thrust-line tilt, upward +.</param>
/// <param name="HubForwardMetres">Hub, forward of the datum.</param>
/// <param name="HubRightMetres">Hub, right of the datum.</param>
/// <param name="HubUpMetres">Hub, above the datum.</param>
/// <param name="HangLineForwardMetres">Hang points, forward of the datum.</param>
/// <param name="HangHeightDifferenceMetres">Right hang point above the left, +; the suspension height is the middle of the two.</param>
/// <param name="StrapDifferenceMetres">Right strap or carabiner longer than the left, +.</param>
public readonly record struct FrameGeometry(
    double SpacingMetres,
    double OffsetMetres,
    double HeightMetres,
    double AngleRadians,
    double TiltRadians,
    double HubForwardMetres,
    double HubRightMetres,
    double HubUpMetres,
    double HangLineForwardMetres,
    double HangHeightDifferenceMetres,
    double StrapDifferenceMetres)
{
    /// <summary>Reads one input, m or rad.</summary>
    public double this[GeometryInput input] => input.Of(this);

    /// <summary>s/2 + e: from the plane of symmetry to the hang point on the pilot's right.</summary>
    public double RightMetres => SpacingMetres / 2 + OffsetMetres;

    /// <summary>s/2 - e: from the plane of symmetry to the hang point on the pilot's left.</summary>
    public double LeftMetres => SpacingMetres / 2 - OffsetMetres;

    /// <summary>Height of the right hang point above the datum.</summary>
    public double RightHeightMetres => HeightMetres + HangHeightDifferenceMetres / 2;

    /// <summary>Height of the left hang point above the datum.</summary>
    public double LeftHeightMetres => HeightMetres - HangHeightDifferenceMetres / 2;

    /// <summary>A machine as built, with 0 for the four inputs that only a design says.</summary>
    public static FrameGeometry AsBuilt(Machine machine)
    {
        var geometry = default(FrameGeometry);
        foreach (var input in FactorCatalogue.All)
            geometry = input.In(geometry, input.AsBuilt(machine));
        return geometry;
    }

    /// <summary>The four design factors on a machine whose other geometry stays as built.</summary>
    public static FrameGeometry On(Machine machine, double spacingMetres, double offsetMetres, double heightMetres, double angleRadians) =>
        AsBuilt(machine) with
        {
            SpacingMetres = spacingMetres,
            OffsetMetres = offsetMetres,
            HeightMetres = heightMetres,
            AngleRadians = angleRadians,
        };

    /// <summary>Built off a drawing: the inputs of both added.</summary>
    /// <param name="design">As drawn.</param>
    /// <param name="deviation">How far each input is off.</param>
    public static FrameGeometry operator +(in FrameGeometry design, in FrameGeometry deviation) => new(
        design.SpacingMetres + deviation.SpacingMetres,
        design.OffsetMetres + deviation.OffsetMetres,
        design.HeightMetres + deviation.HeightMetres,
        design.AngleRadians + deviation.AngleRadians,
        design.TiltRadians + deviation.TiltRadians,
        design.HubForwardMetres + deviation.HubForwardMetres,
        design.HubRightMetres + deviation.HubRightMetres,
        design.HubUpMetres + deviation.HubUpMetres,
        design.HangLineForwardMetres + deviation.HangLineForwardMetres,
        design.HangHeightDifferenceMetres + deviation.HangHeightDifferenceMetres,
        design.StrapDifferenceMetres + deviation.StrapDifferenceMetres);

    /// <summary>The same geometry with one input changed.</summary>
    public FrameGeometry With(GeometryInput input, double si) => input.In(this, si);
}
