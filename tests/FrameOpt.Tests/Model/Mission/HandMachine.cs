using FrameOpt.Model;
using FrameOpt.Model.Mission;

namespace FrameOpt.Tests.Model.Mission;

/// <summary>The hand machine, with one thing changed.</summary>
internal sealed record HandMachine
{
    private static readonly PropellerRow[] rows = [new(0, 0.1, 0.05), new(0.6, 0.04, 0.05)];

    public PhasePower Power { get; init; } = new PhasePower.Level();
    public FlightSpeed Speed { get; init; } = new FlightSpeed.AtFraction(0);
    public Engine? Engine { get; init; }
    public PropellerRow[] Rows { get; init; } = rows;
    public RiserCoupling Coupling { get; init; } = new RiserCoupling.Measured(0.33, 0.44);
    public FramePoint DragCentre { get; init; }
    public double DragArea { get; init; }
    public double LineSpread { get; init; } = 3.8;
    public double HubUp { get; init; } = 0.15;
    public double Tilt { get; init; }
    public double Height { get; init; } = 0.15;
    public double Offset { get; init; }

    public Machine Machine => new(
        [new MassItem("pilot", 94, new FramePoint(0, 0, 0), true)],
        0,
        new Propeller(1.3, Rotation.CounterClockwise, new FramePoint(0, 0, HubUp), Tilt, 0, new PropellerTable(Rows)),
        Engine,
        new Pilot(0.08, DragArea, DragCentre));

    public MissionModel Mission => new(
        Machine,
        new Wing(
            6, 25, 10.8, 7, LineSpread, new Polar(100, 1.225, [new PolarPoint(0, 10, 5), new PolarPoint(1, 13, 4)]), Coupling, 0.05,
                new YawLeverage.Constant(0.6)),
        [new Phase("cruise", 1, Speed, Power)],
        ResponseReferences.None);

    public FrameGeometry Geometry => FrameGeometry.On(Machine, 0.44, Offset, Height, 0);

    public DesignEvaluation Design => Mission.Evaluate(Geometry);

    public PhaseResult Phase => Design.Phases[0];
}
