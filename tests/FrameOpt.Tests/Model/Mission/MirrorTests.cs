using CsCheck;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;

namespace FrameOpt.Tests.Model.Mission;

/// <summary>Law: seen in a mirror, every machine behaves as itself seen in a mirror, to the last bit.</summary>
public class MirrorTests
{
    private static readonly YawLeverage[] leverages =
        [new YawLeverage.FromSpeed(0.17, 0.5), new YawLeverage.FromSideslip(-0.667, 0.32, 1), new YawLeverage.Constant(0.6)];

    private static readonly RiserCoupling[] couplings =
        [new RiserCoupling.Measured(0.33, 0.44), new RiserCoupling.FromLines(), RiserCoupling.Soft];

    private static readonly Gen<FrameGeometry> designs = Gen
        .Select(Gen.Double[0.3, 0.6], Gen.Double[-0.08, 0.08], Gen.Double[0.05, 0.5], Gen.Double[-0.06, 0.06], Gen.Double[-0.02, 0.02],
            Gen.Double[-0.02, 0.02])
        .Select((spacing, offset, height, angle, higher, longer) =>
            FrameGeometry.On(WorkedMachine.Machine, spacing, offset, height, angle) with
            {
                HangHeightDifferenceMetres = higher,
                StrapDifferenceMetres = longer,
            });

    private static readonly Gen<Sides> sides = Gen.Select(
        Gen.Enum<Rotation>(), Gen.Double[-0.05, 0.05], Gen.Double[-0.1, 0.1], Gen.Double[-0.1, 0.1],
        (rotation, hub, drag, pilot) => new Sides(rotation, hub, drag, pilot));

    private static readonly Gen<MissionModel> flights = Gen.Select(
        Gen.Int[0, 2], Gen.Int[0, 2], Gen.Double[0.7, 2], Gen.Double[-20, 20], Gen.Bool.Array[5],
        (leverage, coupling, loadFactor, warmer, settled) => new MissionModel(
            WorkedMachine.Machine,
            WorkedMachine.Wing with { YawLeverage = leverages[leverage], RiserCoupling = couplings[coupling] },
            [
                .. WorkedMachine.Phases.Select((phase, p) => phase with
                {
                    // Full throttle covers any weight; what asks for more thrust than the engine has would hide the rest.
                    LoadFactor = phase.Power is PhasePower.FullThrottle or PhasePower.EngineOff ? loadFactor : 1,
                    TemperatureOffsetKelvin = warmer,
                    Settled = settled[p],
                }),
            ],
            ResponseReferences.None));

    [Fact]
    public void Mirrored_machine_and_design_give_the_mirrored_answer_bit_for_bit()
    {
        var flown = 0;
        Gen.Select(flights, designs, sides).Sample(
            (flight, design, side) =>
            {
                design = design.With(GeometryInput.HubRight, side.Hub);
                var here = Mission(flight, side).Evaluate(design);
                var there = Mission(flight, side.Mirrored).Evaluate(FactorCatalogue.All.Where(input => input.IsSided)
                    .Aggregate(design, (mirrored, input) => mirrored.With(input, -design[input])));
                Assert.Equal(Words(here), Words(there));
                if (here.Failure is not null)
                    return;
                Interlocked.Increment(ref flown);
                foreach (var quantity in ResponseCatalogue.OfMissions)
                    AssertMirrored(quantity, here[quantity], here[quantity], there[quantity]);
                for (var p = 0; p < here.Phases.Count; p++)
                {
                    foreach (var quantity in ResponseCatalogue.OfPhases)
                        AssertMirrored(
                            quantity, here.Phases[p][quantity], OtherSide(here.Phases[p], quantity), there.Phases[p][quantity]);
                }
            },
            iter: 1000);
        Assert.True(flown > 300, $"only {flown} of the designs drawn could fly");
    }

    private static string Words(DesignEvaluation design) => design.Failure is { } failure ? FailureText.Describe(failure) : "";

    /// <summary>What the catalogue says of a sign is what a mirror does to it. A lean that no weight shift gives has no side.</summary>
    private static void AssertMirrored(ResponseEntry entry, double here, double otherSide, double there)
    {
        Assert.True(entry.Sign != ResponseSign.NeverNegative || !(here < 0), $"{entry} is {here}, and never negative by the catalogue");
        var hasNoSide = entry == PhaseQuantity.Lean && double.IsPositiveInfinity(here);
        var expected = entry.Sign == ResponseSign.Side && !hasNoSide ? -otherSide : otherSide;
        Assert.True(expected.Equals(there), $"{entry}: {here} here, {there} in the mirror");
    }

    private static double OtherSide(PhaseResult here, PhaseQuantity quantity) =>
        quantity == PhaseQuantity.LoadRight ? here[PhaseQuantity.LoadLeft]
        : quantity == PhaseQuantity.LoadLeft ? here[PhaseQuantity.LoadRight]
        : here[quantity];

    /// <summary>The flight with a machine that has a left and a right: two items lean with the pilot, one of them to the side.</summary>
    private static MissionModel Mission(MissionModel flight, Sides sides)
    {
        var machine = flight.Machine;
        return new MissionModel(
            new Machine(
                [
                    .. machine.Masses.Select(item => item with { At = item.At with { RightMetres = sides.Sign * item.At.RightMetres } }),
                    new MassItem("bag", 4, new FramePoint(0.1, sides.Pilot, -0.1), IsBody: true),
                ],
                machine.HangLineForwardMetres,
                machine.Propeller with
                {
                    Rotation = sides.Rotation,
                    Hub = machine.Propeller.Hub with { RightMetres = sides.Hub },
                },
                machine.Engine,
                machine.Pilot with { DragCentre = machine.Pilot.DragCentre with { RightMetres = sides.Drag } }),
            flight.Wing, flight.Phases, flight.References);
    }

    /// <summary>All of a machine that has a side.</summary>
    private sealed record Sides(Rotation Rotation, double Hub, double Drag, double Pilot)
    {
        public int Sign { get; private init; } = 1;

        public Sides Mirrored => this with
        {
            Rotation = Rotation == Rotation.Clockwise ? Rotation.CounterClockwise : Rotation.Clockwise,
            Hub = -Hub,
            Drag = -Drag,
            Pilot = -Pilot,
            Sign = -Sign,
        };
    }
}
