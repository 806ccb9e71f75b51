using CsCheck;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;

namespace FrameOpt.Tests.Model.Mission;

/// <summary>Law: seen in a mirror, every machine behaves as itself seen in a mirror, to the last bit.</summary>
public class MirrorTests
{
    [Fact]
    public void Mirrored_machine_and_design_give_the_mirrored_answer_bit_for_bit() =>
        Gen.Select(Gen.Double[0.3, 0.6], Gen.Double[-0.08, 0.08], Gen.Double[0.05, 0.5], Gen.Double[-0.06, 0.06], Gen.Double[-0.05, 0.05],
            Gen.Double[-0.1, 0.1]).Sample(
            (spacing, offset, height, angle, hubRight, dragRight) =>
            {
                var machine = Built(WorkedMachine.Machine, 1, hubRight, dragRight);
                var image = Built(WorkedMachine.Machine, -1, hubRight, dragRight);
                var design = FrameGeometry.On(machine, spacing, offset, height, angle);
                var here = Mission(machine).Evaluate(design);
                var there = Mission(image).Evaluate(FactorCatalogue.All.Where(input => input.IsSided)
                    .Aggregate(design, (mirrored, input) => mirrored.With(input, -design[input])));
                Assert.Equal(Words(here), Words(there));
                if (here.Failure is not null)
                    return;
                foreach (var quantity in ResponseCatalogue.OfMissions)
                    AssertMirrored(quantity, here[quantity], here[quantity], there[quantity]);
                for (var p = 0; p < here.Phases.Count; p++)
                {
                    foreach (var quantity in ResponseCatalogue.OfPhases)
                        AssertMirrored(
                            quantity, here.Phases[p][quantity], OtherSide(here.Phases[p], quantity), there.Phases[p][quantity]);
                }
            },
            iter: 500);

    private static string Words(DesignEvaluation design) => design.Failure is { } failure ? FailureText.Describe(failure) : "";

    /// <summary>What the catalogue says of a sign is what a mirror does to it.</summary>
    private static void AssertMirrored(ResponseEntry entry, double here, double otherSide, double there)
    {
        Assert.True(entry.Sign != ResponseSign.NeverNegative || !(here < 0), $"{entry} is {here}, and never negative by the catalogue");
        var expected = entry.Sign == ResponseSign.Side ? -otherSide : otherSide;
        Assert.True(expected.Equals(there), $"{entry}: {here} here, {there} in the mirror");
    }

    private static double OtherSide(PhaseResult here, PhaseQuantity quantity) =>
        quantity == PhaseQuantity.LoadRight ? here[PhaseQuantity.LoadLeft]
        : quantity == PhaseQuantity.LoadLeft ? here[PhaseQuantity.LoadRight]
        : here[quantity];

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
