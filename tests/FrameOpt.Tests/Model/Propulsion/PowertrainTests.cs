using CsCheck;
using FrameOpt.Model;
using FrameOpt.Model.Propulsion;
using FrameOpt.Numerics;
using MathNet.Numerics.RootFinding;

namespace FrameOpt.Tests.Model.Propulsion;

/// <summary>Laws of the operating points over random tables; thrust and torque are written out again from their definitions.</summary>
public class PowertrainTests
{
    private const double Speed = 11, Density = 1.1, Diameter = 1.25;
    private const string Arithmetic = "arithmetic only: the root is exact but for rounding";

    /// <summary>Tables whose thrust falls all the way, as every measured one does: one speed for each thrust.</summary>
    private static readonly Gen<PropellerTable> falling = Rows(sorted: true);

    /// <summary>Tables whose thrust goes up and down.</summary>
    private static readonly Gen<PropellerTable> humped = Rows(sorted: false);

    private static readonly Gen<PropellerCurve> curves = Gen.OneOf(
        falling.Select(PropellerCurve (table) => table),
        humped.Select(PropellerCurve (table) => table),
        Gen.Select(Gen.Double[0.05, 0.15], Gen.Double[0.02, 0.08], Gen.Double[0.4, 0.9])
            .Select((ct, cp, j) => (PropellerCurve)new BenchPropeller(ct, cp, j)));

    // The advance ratio a thrust is drawn at is a part of the curve's range, away from where a bench curve has no thrust to compare.
    [Fact]
    public void Speed_found_for_a_thrust_gives_that_thrust() => Gen.Select(curves, Gen.Double[0.01, 0.95]).Sample(
        (curve, part) =>
        {
            var thrust = ThrustAt(curve, RatioAt(curve, part));
            var point = On(curve).ForThrust(thrust);
            if (point.Failure != FailureKind.None)
                Assert.IsType<PropellerTable>(curve);
            else
                Check.Close(thrust, ThrustAt(curve, Ratio(point)), relative: 1e-12, because: Arithmetic);
        },
        iter: 2000);

    [Fact]
    public void Speed_found_for_a_thrust_is_the_root_a_bracketing_search_finds() => Gen.Select(falling, Gen.Double[0.01, 0.99]).Sample(
        (curve, part) =>
        {
            var thrust = ThrustAt(curve, RatioAt(curve, part));
            double Excess(double n) => ThrustAt(curve, Math.Clamp(Speed / (n * Diameter), curve.SmallestAdvanceRatio,
                curve.LargestAdvanceRatio)) - thrust;
            var searched = Brent.FindRoot(
                Excess, Speed / (curve.LargestAdvanceRatio * Diameter), Speed / (curve.SmallestAdvanceRatio * Diameter), 1e-14, 200);
            Check.Close(searched, On(curve).ForThrust(thrust).Rpm / 60, relative: 1e-10,
                because: "the search stops at a width, the root does not");
        },
        iter: 1000);

    [Fact]
    public void Of_several_speeds_for_a_thrust_the_slowest_is_taken() => Gen.Select(humped, Gen.Double[0.01, 0.99]).Sample(
        (curve, part) =>
        {
            var thrust = ThrustAt(curve, RatioAt(curve, part));
            var point = On(curve).ForThrust(thrust);
            if (point.Failure == FailureKind.None)
                Assert.All(curve.Rows.Where(row => row.AdvanceRatio > Ratio(point)), row =>
                    Assert.True(ThrustAt(curve, row.AdvanceRatio) <= thrust));
        },
        iter: 1000);

    // By hand: CT - 0.2 J² is above zero at J = 0.2 and 0.5, below at 0.4 and 0.6; between 0.5 and 0.6 CT = 0.45 - 0.7 J, and
    // 0.2 J² + 0.7 J - 0.45 = 0 at J = (-0.7 + sqrt(0.85)) / 0.4.
    [Fact]
    public void Slowest_of_three_speeds_worked_by_hand()
    {
        var curve = new PropellerTable([new(0.2, 0.10, 0.05), new(0.4, 0.02, 0.05), new(0.5, 0.10, 0.05), new(0.6, 0.03, 0.05)]);
        var point = On(curve).ForThrust(0.2 * Density * Speed * Speed * Diameter * Diameter);
        Check.Close((-0.7 + Math.Sqrt(0.85)) / 0.4, Ratio(point), relative: 1e-12, because: "worked by hand, arithmetic only");
    }

    [Fact]
    public void Thrust_outside_the_rows_is_a_reason() => falling.Sample(
        curve =>
        {
            var (most, least) = (ThrustAt(curve, curve.SmallestAdvanceRatio), ThrustAt(curve, curve.LargestAdvanceRatio));
            Assert.Equal(FailureKind.ThrustAbovePropeller, On(curve).ForThrust(most * 1.001).Failure);
            Assert.Equal(FailureKind.ThrustBelowPropeller, On(curve).ForThrust(least * 0.999).Failure);
            Assert.Equal(FailureKind.ThrustAbovePropeller, On(curve).ForThrust(double.NaN).Failure);
        },
        iter: 200);

    [Fact]
    public void Full_throttle_is_the_first_balance_on_the_way_up() => Gen.Select(curves, Gen.Double[8, 24].Array[8]).Sample(
        (curve, torques) =>
        {
            var engine = new Engine(new LinearTable([.. torques.Select((_, i) => 3000.0 + 800 * i)], torques), 2.8, 0.97);
            var point = new Powertrain(Propeller(curve), engine, Speed, Density).FullThrottle();
            if (point.Failure != FailureKind.None)
                return;
            double Given(double rpm) => 2.8 * 0.97 * engine.CrankTorque.ValueAt(2.8 * rpm) * Density / 1.225;
            Check.Close(Given(point.Rpm), TorqueAt(curve, Ratio(point)), relative: 1e-11, because: Arithmetic);
            foreach (var rpm in engine.CrankTorque.Arguments.Select(crank => crank / 2.8).Where(rpm => rpm < point.Rpm))
            {
                var ratio = 60 * Speed / (rpm * Diameter);
                if (ratio >= curve.SmallestAdvanceRatio && ratio <= curve.LargestAdvanceRatio)
                    Assert.True(TorqueAt(curve, ratio) <= Given(rpm), $"{rpm} rpm before {point.Rpm}");
            }
        },
        iter: 1000);

    // Conservation of energy: an engine gives its own torque through the drive, less the losses, and no more.
    [Fact]
    public void Speed_that_needs_more_torque_than_the_engine_gives_is_a_reason() => Gen.Select(
        curves, Gen.OneOf(Gen.Double[0.5, 0.999], Gen.Double[1.001, 1.5])).Sample((curve, share) =>
        {
            var ratio = RatioAt(curve, 0.5);
            var revolutions = Speed / (ratio * Diameter);
            var crank = 60 * revolutions * 2.8;
            var torque = TorqueAt(curve, ratio) * share / (2.8 * 0.97 * Density / 1.225);
            var engine = new Engine(new LinearTable([crank - 1, crank + 1], [torque, torque]), 2.8, 0.97);
            var point = new Powertrain(Propeller(curve), engine, Speed, Density).AtRpm(60 * revolutions);
            Assert.Equal(share >= 1 ? FailureKind.None : FailureKind.EngineTooWeak, point.Failure);
        },
        iter: 300);

    [Fact]
    public void Falling_root_is_the_one_of_the_two_where_the_quadratic_falls() => Gen.Select(
        Gen.Double[0.1, 5], Gen.Double[-3, 3], Gen.Double[0.01, 4], Gen.Bool).Sample(
        (size, root, apart, opensUp) =>
        {
            // Opening up it falls at the smaller of its roots, opening down at the larger.
            var a = opensUp ? size : -size;
            var other = opensUp ? root + apart : root - apart;
            Check.Close(root, Quadratic.FallingRoot(a, -a * (root + other), a * root * other), absolute: 1e-11,
                because: "roots up to 7 over a distance of 0.01 or more");
        },
        iter: 1000);

    private static Gen<PropellerTable> Rows(bool sorted) => Gen.Select(
        Gen.Double[0.05, 0.2].Array[2, 8], Gen.Double[0.02, 0.12].Array[8], Gen.Double[0.01, 0.06].Array[8]).Select((steps, ct, cp) =>
        {
            var ratio = 0.0;
            if (sorted)
                Array.Sort(ct, (a, b) => b.CompareTo(a));
            return new PropellerTable([.. steps.Select((step, i) => new PropellerRow(ratio += step, ct[i], cp[i]))]);
        });

    private static Propeller Propeller(PropellerCurve curve) =>
        WorkedMachine.Machine.Propeller with { DiameterMetres = Diameter, Curve = curve };

    private static Powertrain On(PropellerCurve curve) => new(Propeller(curve), null, Speed, Density);

    private static double RatioAt(PropellerCurve curve, double part) =>
        curve.SmallestAdvanceRatio + part * (curve.LargestAdvanceRatio - curve.SmallestAdvanceRatio);

    private static double Ratio(OperatingPoint point) => 60 * Speed / (point.Rpm * Diameter);

    private static double ThrustAt(PropellerCurve curve, double ratio) =>
        curve.ThrustCoefficient(ratio) * Density * Math.Pow(Speed / ratio, 2) * Math.Pow(Diameter, 2);

    private static double TorqueAt(PropellerCurve curve, double ratio) =>
        curve.PowerCoefficient(ratio) * Density * Math.Pow(Speed / ratio, 2) * Math.Pow(Diameter, 3) / (2 * Math.PI);
}
