using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Tests.Model.Derivation;

namespace FrameOpt.Tests.Model.Mission;

/// <summary>Hang points at unequal height and straps of unequal length.</summary>
public class UnequalSidesTests
{
    // Source: Derivation/, the balance from plain vectors and root finding, without the program.
    [Theory]
    [InlineData(440, 25, 150, 0, 10, 0)]
    [InlineData(440, 25, 150, 0, 0, 10)]
    [InlineData(420, 22, 230, 1.5, -8, 3)]
    public void Every_figure_of_every_phase_follows_from_vectors_and_root_finding(
        double spacing, double offset, double height, double angle, double higher, double longer)
    {
        var design = WorkedMachine.Mission.Evaluate(WorkedMachine.Geometry(spacing, offset, height, angle) with
        {
            HangHeightDifferenceMetres = higher / 1000,
            StrapDifferenceMetres = longer / 1000,
        });
        var worked = new WorkedDesign(spacing, offset, height, angle, higher, longer);
        foreach (var (phase, p) in WorkedNumbers.Phases.Select((phase, p) => (phase, p)))
        {
            foreach (var (name, value) in WorkedDerivation.Of(worked, phase))
            {
                var quantity = ResponseCatalogue.OfPhases.Single(own => own.Name == name);
                Check.Close(value, design.Phases[p][quantity], relative: 1e-6, absolute: 1e-6,
                    because: $"{name}[{phase.Name}]: the derivation takes its slopes from steps of 1e-5 rad");
            }
        }
    }

    // Source: by hand, the least of (K (phi - phi_0)² + W Z phi²) / 2. 94 kg hang 150 mm below the hang points, no engine: W 921.825 N,
    // W Z 138.274 N·m, K = 921.825 x 0.33 = 304.202 N·m, phi_0 = 0.010/0.44 = 0.0227273, so 138.274 x 304.202/442.476 x 0.0227273 = 2.1605
    // N·m; the body hangs at 0.0227273 x 304.202/442.476 = 0.015625 rad = 0.89525 deg, right side down, its weight to the left.
    [Theory]
    [InlineData(10, 0)]
    [InlineData(0, 10)]
    [InlineData(4, 6)]
    public void Ten_millimetres_more_on_the_right_turn_a_gliding_frame_left_by_2_newton_metres(double higher, double longer)
    {
        var hand = new HandMachine { Power = new PhasePower.EngineOff() };
        var glide = hand.Mission.Evaluate(hand.Geometry with
        {
            HangHeightDifferenceMetres = higher / 1000,
            StrapDifferenceMetres = longer / 1000,
        }).Phases[0];
        Check.Close(-2.1605, glide[PhaseQuantity.Residual], absolute: 5e-5, because: "half of the last digit by hand");
        Check.Close(0.89525, glide[PhaseQuantity.BodyRoll], absolute: 5e-6, because: "half of the last digit by hand");
    }

    // Law: to both sides alike, in proportion, and nothing at all where nothing differs.
    [Fact]
    public void Residual_is_linear_in_both_differences()
    {
        double Residual(double higher, double longer, int phase) => WorkedMachine.Mission.Evaluate(
            WorkedMachine.Geometry(440, 25, 150, 1.5) with { HangHeightDifferenceMetres = higher, StrapDifferenceMetres = longer })
            .Phases[phase][PhaseQuantity.Residual];
        for (var p = 0; p < WorkedMachine.Phases.Count; p++)
        {
            var (none, one, other) = (Residual(0, 0, p), Residual(0.005, 0, p), Residual(0, 0.005, p));
            Check.Close(-2 * (one - none), Residual(-0.01, 0, p) - none, absolute: 1e-9, because: "a difference of two larger numbers");
            Check.Close(one + other - none, Residual(0.005, 0.005, p), absolute: 1e-9, because: "a difference of two larger numbers");
        }
    }

    // Law: what the scales read is the limit of risers too stiff to yield, one strap longer by what the hang point is higher.
    [Fact]
    public void Scales_of_the_hang_check_move_as_the_risers_of_a_stiff_wing()
    {
        var hand = new HandMachine { Power = new PhasePower.EngineOff(), Coupling = new RiserCoupling.Measured(3e6, 0.44), Offset = 0.02 };
        var design = hand.Geometry with { HangHeightDifferenceMetres = 0.004, StrapDifferenceMetres = 0.003 };
        var flight = hand.Mission.Evaluate(design).Phases[0][PhaseQuantity.LoadDifference];
        Check.Close(flight, HangCheck.Of(hand.Machine, design).DifferenceNewtons, relative: 1e-6,
            because: "3000 km of coupling length yield by a ten-millionth");
    }
}
