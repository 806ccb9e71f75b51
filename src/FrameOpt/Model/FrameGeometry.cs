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
public readonly record struct FrameGeometry(
    double SpacingMetres,
    double OffsetMetres,
    double HeightMetres,
    double AngleRadians,
    double TiltRadians,
    double HubForwardMetres,
    double HubRightMetres,
    double HubUpMetres,
    double HangLineForwardMetres)
{
    /// <summary>The four design factors on a machine whose other geometry stays as built.</summary>
    public static FrameGeometry On(Machine machine, double spacingMetres, double offsetMetres, double heightMetres, double angleRadians) =>
        new(
        spacingMetres,
        offsetMetres,
        heightMetres,
        angleRadians,
        machine.Propeller.TiltRadians,
        machine.Propeller.Hub.ForwardMetres,
        machine.Propeller.Hub.RightMetres,
        machine.Propeller.Hub.UpMetres,
        machine.HangLineForwardMetres);

    /// <summary>A geometry from all inputs, in the order of <see cref="GeometryInput"/>.</summary>
    public static FrameGeometry Of(ReadOnlySpan<double> inputs) => new(
        inputs[0], inputs[1], inputs[2], inputs[3], inputs[4], inputs[5], inputs[6], inputs[7], inputs[8]);

    /// <summary>Reads one input.</summary>
    public double this[GeometryInput input] => input switch
    {
        GeometryInput.HangPointSpacing => SpacingMetres,
        GeometryInput.LateralOffset => OffsetMetres,
        GeometryInput.SuspensionHeight => HeightMetres,
        GeometryInput.ThrustLineAngle => AngleRadians,
        GeometryInput.ThrustLineTilt => TiltRadians,
        GeometryInput.HubForward => HubForwardMetres,
        GeometryInput.HubRight => HubRightMetres,
        GeometryInput.HubUp => HubUpMetres,
        GeometryInput.HangLineForward => HangLineForwardMetres,
        _ => throw new ArgumentOutOfRangeException(nameof(input)),
    };

    /// <summary>The same geometry with one input changed.</summary>
    public FrameGeometry With(GeometryInput input, double value) => input switch
    {
        GeometryInput.HangPointSpacing => this with { SpacingMetres = value },
        GeometryInput.LateralOffset => this with { OffsetMetres = value },
        GeometryInput.SuspensionHeight => this with { HeightMetres = value },
        GeometryInput.ThrustLineAngle => this with { AngleRadians = value },
        GeometryInput.ThrustLineTilt => this with { TiltRadians = value },
        GeometryInput.HubForward => this with { HubForwardMetres = value },
        GeometryInput.HubRight => this with { HubRightMetres = value },
        GeometryInput.HubUp => this with { HubUpMetres = value },
        GeometryInput.HangLineForward => this with { HangLineForwardMetres = value },
        _ => throw new ArgumentOutOfRangeException(nameof(input)),
    };
}

/// <summary>The geometry inputs a study may sweep. The first four are the design factors of every study.</summary>
public enum GeometryInput
{
    /// <summary>hang_point_spacing, m.</summary>
    HangPointSpacing,

    /// <summary>lateral_offset, m, right +.</summary>
    LateralOffset,

    /// <summary>suspension_height, m above the datum.</summary>
    SuspensionHeight,

    /// <summary>thrust_line_angle, rad, to the right +.</summary>
    ThrustLineAngle,

    /// <summary>thrust_line_tilt, rad, upward +.</summary>
    ThrustLineTilt,

    /// <summary>hub_forward, m.</summary>
    HubForward,

    /// <summary>hub_right, m.</summary>
    HubRight,

    /// <summary>hub_up, m.</summary>
    HubUp,

    /// <summary>hang_line_forward, m.</summary>
    HangLineForward,
}
