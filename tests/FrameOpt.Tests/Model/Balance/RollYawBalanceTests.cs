using CsCheck;
using FrameOpt.Model;
using FrameOpt.Model.Balance;
using FrameOpt.Model.Propulsion;
using FrameOpt.Numerics;
using MathNet.Numerics;
using MathNet.Numerics.LinearAlgebra;

namespace FrameOpt.Tests.Model.Balance;

/// <summary>The 3 x 3 system of roll, yaw and bank against vectors, against its equations as written, and against an energy.</summary>
public class RollYawBalanceTests
{
    private const string Arithmetic = "arithmetic only: two ways to solve the same three equations";

    [Fact]
    public void Roll_yaw_and_bank_solve_the_system_built_from_vectors() => HangCase.Any.Sample(
        hang =>
        {
            var (matrix, right) = hang.Forces.RollYawSystem(hang);
            var solution = matrix.LU().Solve(right);
            var (balance, e) = (hang.Balance, hang.Geometry.OffsetMetres);

            // An almost singular system loses digits whatever the way it is solved: the tolerance grows with its condition.
            var tolerance = 1e-10 * solution.InfinityNorm() * Math.Max(1, matrix.ConditionNumber() / 1e4);
            Check.Close(solution[0], balance.BodyRoll.At(e), absolute: tolerance, because: Arithmetic);
            Check.Close(solution[1], balance.BodyYaw.At(e), absolute: tolerance, because: Arithmetic);
            Check.Close(solution[2], balance.WingBank.At(e), absolute: tolerance, because: Arithmetic);
        },
        iter: 500);

    // Source: docs/model.md, "What the risers hold", written out again here.
    [Fact]
    public void Roll_yaw_and_bank_satisfy_the_three_equations_as_written() => HangCase.Any.Sample(
        hang =>
        {
            var (b, f, e) = (hang.Balance, hang.Forces, hang.Geometry.OffsetMetres);
            double W = f.Weight.Z, D = -f.Drag.X, F = hang.Body.Load.Newtons, eps = hang.Body.Load.LeanRadians;
            double Kphi = F * hang.RollMetres, Kpsi = F * hang.YawMetres;
            double phi = b.BodyRoll.At(e), psi = b.BodyYaw.At(e), bank = b.WingBank.At(e);
            var (height, strap) = Rest(hang);
            var toLines = hang.Body.Pitch.Radians - eps;
            var a = phi * Math.Cos(eps) - psi * Math.Sin(eps) - bank - height * Math.Cos(toLines) - strap;
            var k = phi * Math.Sin(eps) + psi * Math.Cos(eps) + height * Math.Sin(toLines);
            var MT = f.HubArm.Z * f.Thrust.X - f.HubArm.X * f.Thrust.Z + f.Reaction.Y;
            var roll = W * f.WeightArm.Z * phi + D * f.DragArm.Z * psi + Kphi * a * Math.Cos(eps) + Kpsi * k * Math.Sin(eps);
            var yaw = -(MT - D * f.DragArm.Z) * phi - D * f.DragArm.X * psi - Kphi * a * Math.Sin(eps) + Kpsi * k * Math.Cos(eps);
            var side = hang.Phase.IsSettled ? f.Thrust.X * psi - f.Thrust.Z * phi + F * bank + f.Thrust.Y : bank;
            var scale = 1e-10 * (f.Scale + Kphi + F);
            Check.Close(f.Moment.X, roll, absolute: scale, because: Arithmetic);
            Check.Close(f.Moment.Z, yaw, absolute: scale, because: Arithmetic);
            Check.Close(0, side, absolute: scale, because: Arithmetic);
            Check.Close(Kphi * a, b.WingRollMoment.At(e), absolute: scale, because: Arithmetic);
            Check.Close(Kpsi * k, b.WingYawMoment.At(e), absolute: scale, because: Arithmetic);
        },
        iter: 500);

    [Fact]
    public void Pendulum_share_is_the_residual_that_one_more_unit_of_roll_moment_leaves() => HangCase.Any.Sample(
        hang =>
        {
            var more = RollYawBalance.Of(
                hang.Body with { Moments = hang.Body.Moments with { Roll = hang.Body.Moments.Roll + new LinearFunction(1, 0) } },
                hang.RollMetres, hang.YawMetres, hang.Rest);
            double Residual(RollYawBalance b) => StraightFlightResidual(hang, b);
            Check.Close(
                Residual(more) - Residual(hang.Balance),
                hang.Balance.PendulumShare,
                absolute: 1e-10 * (1 + Math.Abs(Residual(more)) + Math.Abs(hang.Balance.PendulumShare)),
                because: "the system is linear; a difference of two larger numbers loses digits");
        },
        iter: 500);

    [Fact]
    public void Residual_is_the_sum_of_roll_part_yaw_part_and_wing_weight() => HangCase.Any.Sample(
        hang =>
        {
            var (b, e) = (hang.Balance, hang.Geometry.OffsetMetres);
            var sizes = Math.Abs(b.WingRollMoment.At(e)) + 10 * Math.Abs(b.WingYawMoment.At(e)) + 700 * Math.Abs(b.WingBank.At(e));
            Check.Close(StraightFlightResidual(hang, b), b.Residual.At(e), absolute: 1e-10 * (1 + sizes), because: Arithmetic);
        },
        iter: 500);

    // Law: a wing still overhead is one whose bank is held at zero: the moment equations of a settled phase with Phi = 0, written out here
    // and solved by others.
    [Fact]
    public void Phase_that_has_not_settled_is_the_settled_one_with_the_bank_held_at_zero() => HangCase.Any.Sample(
        hang =>
        {
            var settled = hang with { Phase = hang.Phase with { Settled = true } };
            var first = hang with { Phase = hang.Phase with { Settled = false } };
            var (b, f, e) = (first.Balance, settled.Forces, hang.Geometry.OffsetMetres);
            if (b.Failure != FailureKind.None)
                return;
            double W = f.Weight.Z, D = -f.Drag.X, F = settled.Body.Load.Newtons, eps = settled.Body.Load.LeanRadians;
            double Kphi = F * hang.RollMetres, Kpsi = F * hang.YawMetres, sin = Math.Sin(eps), cos = Math.Cos(eps);
            var MT = f.HubArm.Z * f.Thrust.X - f.HubArm.X * f.Thrust.Z + f.Reaction.Y;
            var matrix = Matrix<double>.Build.DenseOfArray(new[,]
            {
                { W * f.WeightArm.Z + Kphi * cos * cos + Kpsi * sin * sin, D * f.DragArm.Z + (Kpsi - Kphi) * sin * cos },
                { -(MT - D * f.DragArm.Z) + (Kpsi - Kphi) * sin * cos, -D * f.DragArm.X + Kphi * sin * sin + Kpsi * cos * cos },
            });
            var (height, strap) = Rest(hang);
            var toLines = settled.Body.Pitch.Radians - eps;
            double restRoll = Kphi * (height * Math.Cos(toLines) + strap), restTwist = -Kpsi * height * Math.Sin(toLines);
            var solution = matrix.LU().Solve(Vector<double>.Build.Dense(
                [f.Moment.X + cos * restRoll + sin * restTwist, f.Moment.Z - sin * restRoll + cos * restTwist]));
            var tolerance = 1e-10 * solution.InfinityNorm() * Math.Max(1, matrix.ConditionNumber() / 1e4);
            Check.Close(solution[0], b.BodyRoll.At(e), absolute: tolerance, because: Arithmetic);
            Check.Close(solution[1], b.BodyYaw.At(e), absolute: tolerance, because: Arithmetic);
            Assert.True(double.IsPositive(b.WingBank.At(e)) && b.WingBank.At(e) == 0);
        },
        iter: 500);

    // Law: with no thrust, drag and lean the body settles where (K_phi (phi - phi_0)² + W Z_c phi²) / 2 - R0 phi is least.
    [Fact]
    public void Still_body_settles_at_the_least_energy() =>
        Gen.Select(Gen.Double[0.1, 0.5], Gen.Double[0.1, 0.5], Gen.Double[-0.05, 0.05], Gen.Double[-0.02, 0.02]).Sample(
            (rollMetres, height, offset, longer) =>
            {
                var machine = WorkedMachine.Machine with
                {
                    Masses = [new MassItem("pilot", 100, new FramePoint(-0.06, 0, 0), true)],
                    Pilot = new Pilot(0.08, 0, new FramePoint(0, 0, 0)),
                };
                machine = new Machine(machine.Masses, machine.HangLineForwardMetres, machine.Propeller, null, machine.Pilot);
                var weight = 100 * 9.80665;
                var conditions = new PhaseConditions(1.2, 10, 6, 106, weight, 0, 10, 1, 0, 0, FailureKind.None);
                var phase = new Phase("still", 1, new FlightSpeed.AtFraction(0), new PhasePower.EngineOff());
                var design = FrameGeometry.On(machine, 0.44, offset, height, 0);
                var body = SuspendedBody.Of(machine, phase, conditions, OperatingPoint.Off, design, ThrustDirection.Of(design));
                design = design with { StrapDifferenceMetres = longer };
                var balance = RollYawBalance.Of(body, rollMetres, 0.06, RestAttitude.Of(design, body.Pitch, body.Load));

                double stiffness = weight * rollMetres, moment = -weight * offset, rest = longer / 0.44;
                double Energy(double phi) =>
                    stiffness * (phi - rest) * (phi - rest) / 2 + weight * height * phi * phi / 2 - moment * phi;
                var settled = FindMinimum.OfScalarFunction(Energy, 0);
                Check.Close(
                    stiffness * (settled - rest),
                    balance.WingRollMoment.At(offset),
                    absolute: 1e-5 * weight,
                    because: "a numerical minimum is found to the root of the machine's precision");
                Check.Close(
                    (moment - weight * height * rest) * stiffness / (stiffness + weight * height),
                    balance.WingRollMoment.At(offset),
                    absolute: 1e-12 * weight,
                    because: "(R0 - W Z_c phi_0) K/(K + W Z_c): arithmetic only");
            },
            iter: 200);

    /// <summary>The roll at which each of the two differences alone would be level, in the body's axes and in those of the lines.</summary>
    private static (double Height, double Strap) Rest(HangCase hang) => (
        hang.Geometry.HangHeightDifferenceMetres / hang.Geometry.SpacingMetres,
        hang.Geometry.StrapDifferenceMetres / hang.Geometry.SpacingMetres);

    /// <summary>M_w + Gamma N_w + n m_w g L Phi, from the case itself.</summary>
    private static double StraightFlightResidual(HangCase hang, RollYawBalance balance)
    {
        var e = hang.Geometry.OffsetMetres;
        var leverage = hang.Conditions.SideslipLeverage - hang.Conditions.TwistedWingNewtons / hang.Body.Load.Newtons;
        return balance.WingRollMoment.At(e) + leverage * balance.WingYawMoment.At(e)
            + hang.Conditions.WingWeightNewtonMetres * balance.WingBank.At(e);
    }
}
