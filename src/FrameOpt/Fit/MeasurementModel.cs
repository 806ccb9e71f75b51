using FrameOpt.Model;
using FrameOpt.Model.Balance;
using FrameOpt.Model.Mission;
using FrameOpt.Model.Propulsion;
using FrameOpt.Numerics;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Fit;

/// <summary>Machine and wing as they may really be, and what is off in the measuring itself.</summary>
/// <param name="Case">Machine, wing, how the frame is built off its drawing.</param>
/// <param name="CheckStrapsMetres">By how much the strap that hangs on the right as marked is longer than the other.</param>
/// <param name="OwnTurnNewtonMetres">Residual torque of the wing's own trim, turns right +.</param>
public readonly record struct MeasuredState(NoiseCase Case, double CheckStrapsMetres, double OwnTurnNewtonMetres)
{
    /// <summary>Nothing is off.</summary>
    public static MeasuredState AsWritten(Study study) => new(NoiseCase.Of(study.Machine, study.Wing, study.Mission), 0, 0);
}

/// <summary>What an instrument would read, from the formulas of the model.</summary>
public static class MeasurementModel
{
    private const double DegreesPerRadian = 180 / Math.PI;

    /// <summary>One value for each kind; NaN where the model has no answer.</summary>
    /// <param name="run">How it was set; its readings are not read.</param>
    /// <param name="kinds">Of those that the run can have.</param>
    /// <param name="state">Machine and wing.</param>
    public static double[] Predict(MeasuredRun run, IReadOnlyList<ReadingKind> kinds, in MeasuredState state)
    {
        var machine = state.Case.Machine.With(state.Case.Masses);
        switch (run)
        {
            case MeasuredRun.Bench bench:
                var n = bench.PropellerRpm / 60;
                var (curve, diameter) = (machine.Propeller.Curve, machine.Propeller.DiameterMetres);
                var thrust = PropellerLoads.ThrustOf(
                    curve.ThrustCoefficient(curve.SmallestAdvanceRatio), bench.Density, n, Elementary.Pow(diameter, 4));
                var torque = PropellerLoads.TorqueOf(
                    curve.PowerCoefficient(curve.SmallestAdvanceRatio), bench.Density, n, Elementary.Pow(diameter, 5));
                return [.. kinds.Select(kind => kind == ReadingKind.Thrust ? thrust : torque)];
            case MeasuredRun.Hang hang:
                var straps = (hang.IsChangedOver ? -1 : 1) * state.CheckStrapsMetres;
                var frame = hang.Hung + state.Case.BuiltOff;
                var check = HangCheck.Of(machine, frame with { StrapDifferenceMetres = frame.StrapDifferenceMetres + straps });
                return [.. kinds.Select(kind => kind == ReadingKind.LeftScale ? check.LeftNewtons : check.RightNewtons)];
            case MeasuredRun.Angle angle:
                var hung = angle.Hung + state.Case.BuiltOff;
                var pitch = PitchBalance.Of(
                    new BodyForces(machine.MassKilograms * Constants.StandardGravity, 0, angle.PullNewtons, 0, 0),
                    BodyArms.Of(machine, hung), ThrustDirection.Of(hung));
                return [.. kinds.Select(_ => pitch.Failure == FailureKind.None ? DegreesPerRadian * pitch.Radians : double.NaN)];
            case MeasuredRun.Flight flight:
                var flown = FlownState.Of(flight, machine, state);
                return [.. kinds.Select(kind => flown?.Reading(kind) ?? double.NaN)];
            default:
                throw new ArgumentOutOfRangeException(nameof(run));
        }
    }
}

/// <summary>A steady stretch of flight as the model has it.</summary>
/// <param name="Machine">With the pilot of that day and the lead.</param>
/// <param name="Wing">The wing.</param>
/// <param name="Conditions">Airspeed, weight, glide.</param>
/// <param name="Rpm">Of the propeller; 0 with the engine off.</param>
/// <param name="AlongPathNewtons">Thrust along the line of flight.</param>
/// <param name="LoadFactor">n.</param>
/// <param name="Balance">In roll and yaw.</param>
/// <param name="ResidualNewtonMetres">The wing's own turn included, turns right +.</param>
/// <param name="RelativeRollRadians">Of the bar between the hang points against the wing, right side down +.</param>
/// <param name="TwistMargin">Of the risers.</param>
public sealed record FlownState(
    Machine Machine, Wing Wing, PhaseConditions Conditions, double Rpm, double AlongPathNewtons, double LoadFactor, RollYawBalance Balance,
    double ResidualNewtonMetres, double RelativeRollRadians, double TwistMargin)
{
    /// <summary>The flight, or null when it cannot be flown so.</summary>
    /// <param name="flight">Power, speed, lead and pilot.</param>
    /// <param name="machine">As it may really be.</param>
    /// <param name="state">Wing, frame as built and the wing's own turn.</param>
    public static FlownState? Of(MeasuredRun.Flight flight, Machine machine, in MeasuredState state)
    {
        var design = flight.Flown + state.Case.BuiltOff;
        var flown = Loaded(flight, machine, design) with { Engine = null };
        var (wing, phase) = (state.Case.Wing, flight.Phase);
        var conditions = PhaseConditions.Of(phase, flown, wing);
        var thrust = ThrustDirection.Of(design);
        var point = new OperatingPointSolver(phase, conditions, flown).For(thrust);
        if (point.Failure != FailureKind.None)
            return null;
        var body = SuspendedBody.Of(flown, phase, conditions, point, design, thrust);
        if (body.Failure != FailureKind.None)
            return null;
        var balance = RollYawBalance.Of(body, RiserStiffness.RollMetres(wing, design.SpacingMetres),
            RiserStiffness.YawMetres(wing, design.SpacingMetres), RestAttitude.Of(design, body.Pitch, body.Load));
        var e = design.OffsetMetres;
        return balance.Failure != FailureKind.None ? null : new FlownState(
            flown, wing, conditions, point.Rpm, point.ThrustNewtons * thrust.Forward, phase.LoadFactor, balance,
            balance.Residual.At(e) + state.OwnTurnNewtonMetres, balance.BodyRoll.At(e) - balance.WingBank.At(e),
            balance.YawStiffness / Math.Abs(balance.WingYawMoment.At(e)));
    }

    /// <summary>The lean that holds it straight, m, to the right +.</summary>
    public double LeanMetres => -ResidualNewtonMetres
        / (Balance.PendulumShare * LoadFactor * Constants.StandardGravity * Machine.BodyMassKilograms);

    /// <summary>What an instrument reads, in the unit of the kind.</summary>
    public double Reading(ReadingKind kind) =>
        kind == ReadingKind.Airspeed ? Conditions.AirspeedMetresPerSecond
        : kind == ReadingKind.Climb ? Conditions.AirspeedMetresPerSecond
            * (AlongPathNewtons / (Conditions.AllUpMassKilograms * Constants.StandardGravity) - LoadFactor / Conditions.GlideRatio)
        : kind == ReadingKind.Lean ? 1000 * LeanMetres
        : kind == ReadingKind.Turn ? 180 / Math.PI * ResidualNewtonMetres
            * StraightFlight.TurnRatePerTorque(Wing, Conditions.Density, Conditions.TrimMetresPerSecond)
        : 180 / Math.PI * RelativeRollRadians;

    /// <summary>The machine with that day's pilot and the lead at a hang point.</summary>
    private static Machine Loaded(MeasuredRun.Flight flight, Machine machine, in FrameGeometry design)
    {
        var masses = machine.Masses;
        if (flight.PilotKilograms is { } pilot)
        {
            var factor = pilot / machine.BodyMassKilograms;
            masses = [.. masses.Select(item => item.IsBody ? item with { MassKilograms = factor * item.MassKilograms } : item)];
        }

        if (flight.LeadKilograms != 0)
        {
            var right = design.OffsetMetres + Math.Sign(flight.LeadKilograms) * design.SpacingMetres / 2;
            var at = new FramePoint(design.HangLineForwardMetres, right, design.HeightMetres);
            masses = [.. masses, new MassItem("lead", Math.Abs(flight.LeadKilograms), at, false)];
        }

        return ReferenceEquals(masses, machine.Masses) ? machine : machine.With(masses);
    }
}
