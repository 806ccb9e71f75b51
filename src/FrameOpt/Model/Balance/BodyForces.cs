using FrameOpt.Model.Propulsion;

namespace FrameOpt.Model.Balance;

/// <summary>What acts on the suspended body in a phase, the risers left out.</summary>
/// <param name="WeightNewtons">W, the weight that hangs from the risers.</param>
/// <param name="DragNewtons">D, straight back.</param>
/// <param name="ThrustNewtons">T, along the thrust line.</param>
/// <param name="ReactionNewtonMetres">sigma Q, the propeller's reaction about the thrust line, right side down +.</param>
/// <param name="GyroscopicNewtonMetres">H_q, the spin of the propeller times the pitch rate.</param>
public readonly record struct BodyForces(
    double WeightNewtons, double DragNewtons, double ThrustNewtons, double ReactionNewtonMetres, double GyroscopicNewtonMetres)
{
    /// <summary>The forces and torques of one phase at its operating point.</summary>
    /// <remarks>Source: H_q = sigma I_p 2 pi n q, the gyroscopic moment of a rotor whose axis turns at the rate q.</remarks>
    public static BodyForces Of(Propeller propeller, Phase phase, in PhaseConditions conditions, in OperatingPoint point) => new(
        conditions.WeightNewtons,
        conditions.DragNewtons,
        point.ThrustNewtons,
        propeller.ReactionSign * point.TorqueNewtonMetres,
        propeller.ReactionSign * propeller.PolarInertia * 2 * Math.PI * point.Rpm / 60 * phase.PitchRateRadiansPerSecond);
}

/// <summary>Where these forces act, from H: the middle between the hang points at no lateral offset.</summary>
/// <param name="Weight">The centre of gravity (x_c, y_c, h).</param>
/// <param name="Hub">The propeller hub (x_p, y_p, z_p).</param>
/// <param name="Drag">The centre of the drag (x_d, y_d, z_d).</param>
public readonly record struct BodyArms(Arm Weight, Arm Hub, Arm Drag)
{
    /// <summary>The arms of a design.</summary>
    /// <param name="machine">Centre of gravity and drag centre.</param>
    /// <param name="design">Hub, hang line and suspension height; spacing and offset are not read.</param>
    public static BodyArms Of(Machine machine, in FrameGeometry design) => new(
        Arm.To(machine.CentreOfGravity, design),
        Arm.To(new FramePoint(design.HubForwardMetres, design.HubRightMetres, design.HubUpMetres), design),
        Arm.To(machine.Pilot.DragCentre, design));

    /// <summary>The same arms after the body has swung in pitch.</summary>
    public BodyArms Swung(in PitchBalance pitch) => new(Weight.Swung(pitch), Hub.Swung(pitch), Drag.Swung(pitch));
}

/// <summary>An arm from H in metres.</summary>
/// <param name="X">Forward.</param>
/// <param name="Y">To the right, at no lateral offset.</param>
/// <param name="Z">Down.</param>
public readonly record struct Arm(double X, double Y, double Z)
{
    /// <summary>The arm to a point of the frame.</summary>
    public static Arm To(FramePoint point, in FrameGeometry design) => new(
        point.ForwardMetres - design.HangLineForwardMetres, point.RightMetres, design.HeightMetres - point.UpMetres);

    /// <summary>The arm after the body has swung in pitch: (x cos theta + z sin theta, y, z cos theta - x sin theta).</summary>
    public Arm Swung(in PitchBalance pitch) =>
        new(X * pitch.Cosine + Z * pitch.Sine, Y, Z * pitch.Cosine - X * pitch.Sine);
}
