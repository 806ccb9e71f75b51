using CsCheck;
using FrameOpt.Model;
using FrameOpt.Model.Balance;
using FrameOpt.Model.Propulsion;

namespace FrameOpt.Tests.Model.Balance;

/// <summary>One body hung in one phase: all that the balance needs, drawn at random over more than a builder would build.</summary>
public sealed record HangCase(
    Machine Machine, Phase Phase, PhaseConditions Conditions, OperatingPoint Point, FrameGeometry Geometry, double RollMetres,
        double YawMetres)
{
    /// <summary>Random cases that have an equilibrium.</summary>
    public static Gen<HangCase> Any { get; } = Gen.Double[0, 1].Array[36].Select(Draw)
        .Where(c => c.Body.Failure == FailureKind.None && c.Balance.Failure == FailureKind.None);

    public SuspendedBody Body => SuspendedBody.Of(Machine, Phase, Conditions, Point, Geometry, ThrustDirection.Of(Geometry));

    public RestAttitude Rest => RestAttitude.Of(Geometry, Body.Pitch, Body.Load);

    public RollYawBalance Balance => RollYawBalance.Of(Body, RollMetres, YawMetres, Rest);

    public HangForces Forces => HangForces.Of(this);

    private static HangCase Draw(double[] u)
    {
        var next = 0;
        double Between(double low, double high) => low + (high - low) * u[next++];
        FramePoint Point(double reach) => new(Between(-reach, reach), Between(-reach, reach), Between(-reach, reach));
        var propeller = new Propeller(
            1.3,
            Between(0, 1) < 0.5 ? Rotation.Clockwise : Rotation.CounterClockwise,
            Point(0.5),
            Between(-0.1, 0.2),
            Between(0, 0.2),
            new PropellerTable([new(0, 0.1, 0.05), new(1, 0, 0.03)]));
        var machine = new Machine(
            [new MassItem("pilot", Between(50, 110), Point(0.1), true), new MassItem("frame", Between(15, 40), Point(0.3), false)],
            Between(-0.1, 0.1),
            propeller,
            null,
            new Pilot(0.08, 0.4, Point(0.2)));
        var phase = new Phase("any", 1, new FlightSpeed.AtAirspeed(10), new PhasePower.AtRpm(2000),
            PitchRateRadiansPerSecond: Between(-0.5, 0.5), Settled: Between(0, 1) < 0.7);
        var conditions = new PhaseConditions(
            1.2, 10, 6, 130, Between(0.7, 1.5) * machine.MassKilograms * Constants.StandardGravity, Between(0, 60), 10,
            SideslipLeverage: Between(0.5, 3), TwistedWingNewtons: Between(0, 2000), WingWeightNewtonMetres: Between(100, 700),
            FailureKind.None);
        var point = new OperatingPoint(Between(1000, 2800), Between(0, 600), Between(0, 70), double.PositiveInfinity, FailureKind.None);
        var geometry = FrameGeometry.On(machine, Between(0.3, 0.6), Between(-0.08, 0.08), Between(0.3, 0.6), Between(-0.15, 0.15));
        geometry = geometry with { HangHeightDifferenceMetres = Between(-0.02, 0.02), StrapDifferenceMetres = Between(-0.02, 0.02) };
        return new HangCase(machine, phase, conditions, point, geometry, Between(0.1, 0.5), Between(0.04, 0.1));
    }
}
