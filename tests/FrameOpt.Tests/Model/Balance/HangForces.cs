using FrameOpt.Model;
using MathNet.Numerics.LinearAlgebra;

namespace FrameOpt.Tests.Model.Balance;

/// <summary>Everything that acts on the hung body but the risers, as plain force and arm vectors from the middle of the hang line, with
/// the body turned about y by the pitch the model found. Written from mechanics alone; nothing of the model's algebra is used.</summary>
public sealed record HangForces(Vec WeightArm, Vec Weight, Vec DragArm, Vec Drag, Vec HubArm, Vec Thrust, Vec Reaction, Vec Gyroscopic)
{
    public Vec Force => Weight + Drag + Thrust;

    public Vec Moment => Vec.Cross(WeightArm, Weight) + Vec.Cross(DragArm, Drag) + Vec.Cross(HubArm, Thrust) + Reaction + Gyroscopic;

    /// <summary>Sizes of all terms added: what rounding is relative to.</summary>
    public double Scale => WeightArm.Magnitude * Weight.Magnitude + DragArm.Magnitude * Drag.Magnitude
        + HubArm.Magnitude * Thrust.Magnitude + Reaction.Magnitude + Gyroscopic.Magnitude;

    public static HangForces Of(HangCase hang)
    {
        var (machine, geometry, point) = (hang.Machine, hang.Geometry, hang.Point);
        var pitch = hang.Body.Pitch.Radians;
        Vec Arm(FramePoint p) => new Vec(
            p.ForwardMetres - geometry.HangLineForwardMetres, p.RightMetres - geometry.OffsetMetres,
                geometry.HeightMetres - p.UpMetres).AboutY(pitch);
        var line = new Vec(1, 0, 0).AboutY(geometry.TiltRadians).AboutZ(geometry.AngleRadians).AboutY(pitch);

        // Counter-clockwise from behind the propeller spins about the backward axis, and the frame feels the reaction about the forward
        // one.
        var spin = machine.Propeller.Rotation == Rotation.CounterClockwise ? -1 : 1;
        var momentum = spin * machine.Propeller.PolarInertia * (point.Rpm * 2 * Math.PI / 60) * line;
        var pitchRate = new Vec(0, hang.Phase.PitchRateRadiansPerSecond, 0);
        return new HangForces(
            Arm(machine.CentreOfGravity),
            new Vec(0, 0, hang.Conditions.WeightNewtons),
            Arm(machine.Pilot.DragCentre),
            new Vec(-hang.Conditions.DragNewtons, 0, 0),
            Arm(new FramePoint(geometry.HubForwardMetres, geometry.HubRightMetres, geometry.HubUpMetres)),
            point.ThrustNewtons * line,
            -spin * point.TorqueNewtonMetres * line,
            -Vec.Cross(pitchRate, momentum));
    }

    /// <summary>Change of the moment when the body turns a little: weight and drag keep their direction, thrust and torque go with
    /// it.</summary>
    public Vec MomentChange(Vec turn) =>
        Vec.Cross(Vec.Cross(turn, WeightArm), Weight) + Vec.Cross(Vec.Cross(turn, DragArm), Drag)
        + Vec.Cross(turn, Vec.Cross(HubArm, Thrust) + Reaction);

    /// <summary>The three linear equations for roll, yaw and bank: moments about x and z, and the force to the side, or no bank in a
    /// phase that has not settled.</summary>
    public (Matrix<double> Matrix, Vector<double> Right) RollYawSystem(HangCase hang)
    {
        Vec rollAxis = new(1, 0, 0), yawAxis = new(0, 0, 1);
        var load = Math.Sqrt(Force.X * Force.X + Force.Z * Force.Z);
        Vec lines = 1 / load * new Vec(Force.X, 0, Force.Z), normal = new(lines.Z, 0, -lines.X);
        double roll = load * hang.RollMetres, yaw = load * hang.YawMetres;
        Vec Held(Vec turn) => roll * Vec.Dot(normal, turn) * normal + yaw * Vec.Dot(lines, turn) * lines;
        Vec forRoll = Held(rollAxis) + -MomentChange(rollAxis), forYaw = Held(yawAxis) + -MomentChange(yawAxis), forBank = -roll * normal;
        var (side, sideForce) = hang.Phase.IsSettled
            ? ((Vec.Cross(rollAxis, Thrust).Y, Vec.Cross(yawAxis, Thrust).Y, load), -Thrust.Y)
            : ((0, 0, 1), 0);
        // From the left to the right upper end of the straps, body neither rolled nor yawed: the risers hold it until it is level and
        // square to the wing.
        var design = hang.Geometry;
        var acrossBody = new Vec(0, design.SpacingMetres, -design.HangHeightDifferenceMetres).AboutY(hang.Body.Pitch.Radians)
            + -design.StrapDifferenceMetres * lines;
        var atRest = roll * (Vec.Dot(acrossBody, lines) / design.SpacingMetres) * normal
            + yaw * (-Vec.Dot(acrossBody, normal) / design.SpacingMetres) * lines;
        var moment = Moment + -atRest;
        return (
            Matrix<double>.Build.DenseOfArray(new[,]
            {
                { forRoll.X, forYaw.X, forBank.X },
                { forRoll.Z, forYaw.Z, forBank.Z },
                { side.Item1, side.Item2, side.Item3 },
            }),
            Vector<double>.Build.Dense([moment.X, moment.Z, sideForce]));
    }
}
