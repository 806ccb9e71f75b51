using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Numerics;

namespace FrameOpt.Tests.Model;

/// <summary>The machine, wing and mission of the worked balance: an invented scenario, see References/README.md.</summary>
public static class WorkedMachine
{
    public static Machine Machine { get; } = new(
        [
            new MassItem("pilot", 78, new FramePoint(0.020, 0, 0), IsBody: true),
            new MassItem("clothing", 5, new FramePoint(0.020, 0, 0.050), IsBody: false),
            new MassItem("frame and engine", 24.5, new FramePoint(-0.280, 0.010, 0.060), IsBody: false),
            new MassItem("fuel", 5.5, new FramePoint(-0.220, -0.020, -0.140), IsBody: false),
        ],
        -0.060,
        new Propeller(
            1.30,
            Rotation.CounterClockwise,
            new FramePoint(-0.420, 0, 0.120),
            5 * Math.PI / 180,
            0.085,
            new PropellerTable([
                new(0.0, 0.1050, 0.05200), new(0.1, 0.0959, 0.05245), new(0.2, 0.0856, 0.05140), new(0.3, 0.0741, 0.04885),
                new(0.4, 0.0614, 0.04480), new(0.5, 0.0475, 0.03925), new(0.6, 0.0324, 0.03220)])),
        new Engine(new LinearTable([4000, 5000, 6000, 7000, 7800, 8500], [14, 18.5, 21.5, 22.5, 21.5, 18]), 2.9, 0.96),
        new Pilot(0.080, 0.45, new FramePoint(0, 0, 0.100)));

    public static Wing Wing { get; } = new(
        6,
        25,
        10.8,
        7.0,
        3.8,
        new Polar(115, 1.225, [new PolarPoint(0, 10.4, 6.2), new PolarPoint(1, 13.6, 5.0)]),
        new RiserCoupling.Measured(0.33, 0.44),
        0.05,
        new YawLeverage.FromSpeed(0.17, 0.5));

    public static IReadOnlyList<Phase> Phases { get; } =
    [
        new("launch", 0.05, new FlightSpeed.AtAirspeed(8.5), new PhasePower.FullThrottle(), 300, CarriedShare: 0.8,
            PitchRateRadiansPerSecond: 0.3),
        new("climb", 0.20, new FlightSpeed.AtFraction(0), new PhasePower.Climb(1.8), 300),
        new("cruise", 0.55, new FlightSpeed.AtFraction(0), new PhasePower.Level(), 300),
        new("accelerated", 0.20, new FlightSpeed.AtFraction(1), new PhasePower.Level(), 300),
        new("glide", 0, new FlightSpeed.AtFraction(0), new PhasePower.EngineOff(), 300),
    ];

    public static MissionModel Mission { get; } = new(Machine, Wing, Phases, ResponseReferences.None);

    public static FrameGeometry Geometry(double spacingMillimetres, double offsetMillimetres, double heightMillimetres,
        double angleDegrees) =>
        FrameGeometry.On(
            Machine, spacingMillimetres / 1000, offsetMillimetres / 1000, heightMillimetres / 1000, angleDegrees * Math.PI / 180);
}
