using FrameOpt.Model.Propulsion;
using FrameOpt.Numerics;

namespace FrameOpt.Model.Balance;

/// <summary>Steps 1 to 3 of the balance: how the body swings in pitch, what the risers carry, and the roll and yaw moments on it.
/// None of it depends on the hang-point spacing, and only the moments on the offset.</summary>
/// <param name="PitchRadians">theta, nose up +.</param>
/// <param name="RiserLoadNewtons">F.</param>
/// <param name="LeanSine">sin(eps), eps the lean of the lines.</param>
/// <param name="LeanCosine">cos(eps).</param>
/// <param name="BankPerRoll">Bank of the wing for each radian of body roll: T t_z / F.</param>
/// <param name="BankPerYaw">Bank of the wing for each radian of body yaw: -T t_x / F.</param>
/// <param name="BankAtZeroAttitude">Bank of the wing with the body straight, rad: -T t_y / F.</param>
/// <param name="PendulumStiffnessNewtonMetres">W Z_c: roll moment of the weight for each radian of roll.</param>
/// <param name="DragDownNewtonMetres">D_p Z_d.</param>
/// <param name="DragForwardNewtonMetres">D_p X_d.</param>
/// <param name="ThrustPitchingMomentNewtonMetres">M_T: pitching moment of thrust and reaction torque in the turned axes.</param>
/// <param name="RollMoment">R0, of everything but the risers, right side down +.</param>
/// <param name="YawMoment">N, of everything but the risers, nose right +.</param>
/// <param name="Failure">Why there is no such equilibrium, or none.</param>
/// <remarks>Source: statics of a rigid body hung from a line of two points; axes x forward, y right, z down (ISO 1151).</remarks>
public readonly record struct SuspendedBody(
    double PitchRadians,
    double RiserLoadNewtons,
    double LeanSine,
    double LeanCosine,
    double BankPerRoll,
    double BankPerYaw,
    double BankAtZeroAttitude,
    double PendulumStiffnessNewtonMetres,
    double DragDownNewtonMetres,
    double DragForwardNewtonMetres,
    double ThrustPitchingMomentNewtonMetres,
    LinearFunction RollMoment,
    LinearFunction YawMoment,
    FailureKind Failure)
{
    /// <summary>eps, the lean of the lines: hang points forward of the wing +.</summary>
    public double LineLeanRadians => Math.Atan2(LeanSine, LeanCosine);

    /// <summary>The balance in pitch and the moments about the hang line.</summary>
    /// <param name="machine">Masses, propeller, drag centre.</param>
    /// <param name="phase">For the pitch rate.</param>
    /// <param name="conditions">Weight and drag.</param>
    /// <param name="point">Thrust, torque, rpm.</param>
    /// <param name="design">Spacing and offset in it are not read.</param>
    /// <param name="thrust">Of the same design.</param>
    public static SuspendedBody Of(
        Machine machine, Phase phase, in PhaseConditions conditions, in OperatingPoint point, in FrameGeometry design,
            in ThrustDirection thrust)
    {
        double W = conditions.WeightNewtons, D = conditions.DragNewtons, T = point.ThrustNewtons;
        var sigmaQ = machine.Propeller.ReactionSign * point.TorqueNewtonMetres;

        // Arms from the middle of the hang line, before the swing; right-hand ones at no offset.
        var cg = machine.CentreOfGravity;
        double xc = cg.ForwardMetres - design.HangLineForwardMetres, h = design.HeightMetres - cg.UpMetres;
        double xp = design.HubForwardMetres - design.HangLineForwardMetres, zp = design.HeightMetres - design.HubUpMetres;
        var drag = machine.Pilot.DragCentre;
        double xd = drag.ForwardMetres - design.HangLineForwardMetres, zd = design.HeightMetres - drag.UpMetres;

        // 1. Pitch: A sin(theta) + B cos(theta) = M, theta = asin(M / hypot(A, B)) - atan2(B, A) written out.
        double A = W * h - D * xd, B = W * xc + D * zd;
        var M = T * (zp * thrust.Forward - xp * thrust.Down) + sigmaQ * thrust.Right;
        double square = A * A + B * B, stiffness = Math.Sqrt(square);
        if (!(Math.Abs(M) <= stiffness))
            return new SuspendedBody
            {
                Failure = FailureKind.NoPitchEquilibrium,
                ThrustPitchingMomentNewtonMetres = M,
                PendulumStiffnessNewtonMetres = stiffness
            };
        var rest = Math.Sqrt((stiffness - M) * (stiffness + M));
        double sin = (A * M - B * rest) / square, cos = (A * rest + B * M) / square;
        if (!(cos > 0))
            return new SuspendedBody { Failure = FailureKind.TurnedOver, PitchRadians = Math.Atan2(sin, cos) };

        double tx = thrust.Forward * cos + thrust.Down * sin, ty = thrust.Right, tz = thrust.Down * cos - thrust.Forward * sin;
        double Xp = xp * cos + zp * sin, Zp = zp * cos - xp * sin, Zc = h * cos - xc * sin;
        double Xd = xd * cos + zd * sin, Zd = zd * cos - xd * sin;

        // 2. Load in the risers and lean of the lines.
        double Fv = W + T * tz, Fx = T * tx - D;
        if (!(Fv > 0))
            return new SuspendedBody { Failure = FailureKind.NoRiserLoad, RiserLoadNewtons = Fv };

        // 3. Roll and yaw moments of everything but the risers; y = right - e, so each is straight in e.
        var gyro = machine.Propeller.ReactionSign * machine.Propeller.PolarInertia * 2 * Math.PI * point.Rpm / 60 * phase.PitchRateRadiansPerSecond;
        var R0 = new LinearFunction(
            sigmaQ * tx + W * cg.RightMetres + T * (design.HubRightMetres * tz - Zp * ty) + gyro * tz,
            -Fv);
        var N = new LinearFunction(
            T * (Xp * ty - design.HubRightMetres * tx) + drag.RightMetres * D + sigmaQ * tz - gyro * tx,
            Fx);
        var F = Math.Sqrt(Fv * Fv + Fx * Fx);
        return new SuspendedBody(
            Math.Atan2(sin, cos),
            F,
            Fx / F,
            Fv / F,
            T * tz / F,
            -T * tx / F,
            -T * ty / F,
            W * Zc,
            D * Zd,
            D * Xd,
            T * (Zp * tx - Xp * tz) + sigmaQ * ty,
            R0,
            N,
            Zc > 0 ? FailureKind.None : FailureKind.Unstable);
    }
}
