using FrameOpt.Model.Propulsion;

namespace FrameOpt.Model.Balance;

/// <summary>The body under the hang points in one phase: its swing in pitch, what the risers carry, the moments on it. None of it
/// depends on the hang-point spacing, and only the moments depend on the offset.</summary>
/// <param name="Pitch">The swing in pitch.</param>
/// <param name="Load">What the risers carry.</param>
/// <param name="Moments">R0 and N.</param>
/// <param name="Stiffness">How the moments change with roll and yaw.</param>
/// <param name="Bank">How the wing banks; not at all in a phase that has not settled.</param>
/// <param name="Wing">How yaw moment and bank count beside the roll moment.</param>
/// <param name="Failure">Why there is no such equilibrium, or none; what was found by then is kept for the words.</param>
public readonly record struct SuspendedBody(
    PitchBalance Pitch, RiserLoad Load, BodyMoments Moments, AttitudeStiffness Stiffness, BankCoupling Bank, WingLeverage Wing,
    FailureKind Failure)
{
    /// <summary>The balance in pitch, then load and moments in the axes so turned.</summary>
    /// <param name="machine">Masses, propeller, drag centre.</param>
    /// <param name="phase">For the pitch rate, and whether it has settled.</param>
    /// <param name="conditions">Weight, drag and what the wing answers.</param>
    /// <param name="point">Thrust, torque, rpm.</param>
    /// <param name="design">Spacing and offset in it are not read.</param>
    /// <param name="thrust">Of the same design.</param>
    public static SuspendedBody Of(
        Machine machine, Phase phase, in PhaseConditions conditions, in OperatingPoint point, in FrameGeometry design,
        in ThrustDirection thrust)
    {
        var forces = BodyForces.Of(machine.Propeller, phase, conditions, point);
        var arms = BodyArms.Of(machine, design);
        var pitch = PitchBalance.Of(forces, arms, thrust);
        if (pitch.Failure != FailureKind.None)
            return new SuspendedBody { Pitch = pitch, Failure = pitch.Failure };

        var swungArms = arms.Swung(pitch);
        var swungThrust = thrust.Swung(pitch.Sine, pitch.Cosine);
        var load = RiserLoad.Of(forces, swungThrust);
        if (load.Failure != FailureKind.None)
            return new SuspendedBody { Pitch = pitch, Load = load, Failure = load.Failure };

        return new SuspendedBody(
            pitch,
            load,
            BodyMoments.Of(forces, swungArms, swungThrust, load),
            AttitudeStiffness.Of(forces, swungArms, swungThrust),
            phase.IsSettled ? BankCoupling.Of(forces.ThrustNewtons, swungThrust, load.Newtons) : default,
            WingLeverage.Of(conditions, load),
            swungArms.Weight.Z > 0 ? FailureKind.None : FailureKind.Unstable);
    }
}
