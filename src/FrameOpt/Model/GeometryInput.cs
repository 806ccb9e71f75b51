namespace FrameOpt.Model;

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
