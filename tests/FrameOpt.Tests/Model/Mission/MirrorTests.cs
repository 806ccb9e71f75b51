using CsCheck;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;

namespace FrameOpt.Tests.Model.Mission;

/// <summary>Law: seen in a mirror, every machine behaves as itself seen in a mirror, to the last bit.</summary>
public class MirrorTests
{
    private static readonly PhaseQuantity[] signed =
    [
        PhaseQuantity.RollMoment, PhaseQuantity.YawMoment, PhaseQuantity.BodyRoll, PhaseQuantity.BodyYaw, PhaseQuantity.WingBank,
        PhaseQuantity.WingRollMoment, PhaseQuantity.WingYawMoment, PhaseQuantity.Residual, PhaseQuantity.LoadDifference,
        PhaseQuantity.Lean, PhaseQuantity.TurnRate,
    ];

    [Fact]
    public void Mirrored_machine_and_design_give_the_mirrored_answer_bit_for_bit() =>
        Gen.Select(Gen.Double[0.3, 0.6], Gen.Double[-0.08, 0.08], Gen.Double[0.05, 0.5], Gen.Double[-0.06, 0.06], Gen.Double[-0.05, 0.05],
            Gen.Double[-0.1, 0.1]).Sample(
            (spacing, offset, height, angle, hubRight, dragRight) =>
            {
                var machine = Built(WorkedMachine.Machine, 1, hubRight, dragRight);
                var image = Built(WorkedMachine.Machine, -1, hubRight, dragRight);
                var here = Mission(machine).Evaluate(FrameGeometry.On(machine, spacing, offset, height, angle));
                var there = Mission(image).Evaluate(FrameGeometry.On(image, spacing, -offset, height, -angle));
                Assert.Equal(Words(here), Words(there));
                Assert.Equal(here.Mission, there.Mission);
                for (var p = 0; p < here.Phases.Count; p++)
                {
                    foreach (var quantity in Enum.GetValues<PhaseQuantity>())
                        Assert.True(Expected(here.Phases[p], quantity) == there.Phases[p][quantity], $"{quantity} in phase {p}");
                }
            },
            iter: 500);

    private static string Words(DesignEvaluation design) => design.Failure is { } failure ? FailureText.Describe(failure) : "";

    private static double Expected(PhaseResult here, PhaseQuantity quantity) => quantity switch
    {
        PhaseQuantity.LoadRight => here[PhaseQuantity.LoadLeft],
        PhaseQuantity.LoadLeft => here[PhaseQuantity.LoadRight],
        _ => signed.Contains(quantity) ? -here[quantity] : here[quantity],
    };

    private static MissionModel Mission(Machine machine) => new(machine, WorkedMachine.Wing, WorkedMachine.Phases, ResponseReferences.None);

    private static Machine Built(Machine machine, double side, double hubRight, double dragRight)
    {
        FramePoint Mirror(FramePoint p) => p with { RightMetres = side * p.RightMetres };
        return new Machine(
            [.. machine.Masses.Select(item => item with { At = Mirror(item.At) })],
            machine.HangLineForwardMetres,
            machine.Propeller with
            {
                Rotation = side > 0 ? Rotation.CounterClockwise : Rotation.Clockwise,
                Hub = machine.Propeller.Hub with { RightMetres = side * hubRight },
            },
            machine.Engine,
            machine.Pilot with { DragCentre = machine.Pilot.DragCentre with { RightMetres = side * dragRight } });
    }
}
