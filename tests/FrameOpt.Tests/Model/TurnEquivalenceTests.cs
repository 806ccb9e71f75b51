using CsCheck;
using FrameOpt.Model;
using FrameOpt.Model.Mission;

namespace FrameOpt.Tests.Model;

/// <summary>How roll and yaw moments turn a wing, against the steady turn itself.</summary>
public class TurnEquivalenceTests
{
    // Source of the coefficients: C. Toglia, M. Vendittelli, "Modeling and motion analysis of autonomous paragliders", Dept. of Computer
    // and System
    // Sciences Technical Report 2(5), Sapienza University of Rome, 2010, Table 2: Cl_phi -0.05, Cn_r -0.07; their wing has 21 m² and 7 m
    // span.
    private static readonly Wing published = WorkedMachine.Wing with
    {
        AreaSquareMetres = 21,
        SpanMetres = 7,
        RollRestoring = 0.05,
        YawLeverage = new YawLeverage.FromCoefficients(0.05, 0.07),
    };

    // Worked by hand: 2 x 100 x 0.05 / (9.80665 x 7 x 0.07) = 10 / 4.80526.
    [Fact]
    public void Published_coefficients_give_a_leverage_of_2_08_at_10_metres_per_second() =>
        Check.Close(2.0811, TurnEquivalence.YawLeverage(published, 10), absolute: 5e-5, because: "five printed digits");

    // Law: in a steady turn bank and roll moment balance, M = q S b |Cl_phi| Phi with r = g Phi / V, and yaw moment and damping balance,
    // N = q S b² |Cn_r| r / 2 V. Two moments that turn the wing equally fast stand in the ratio Gamma.
    [Fact]
    public void Roll_and_yaw_moments_of_equal_turn_rate_stand_in_the_ratio_of_the_leverage() =>
        Gen.Select(Gen.Double[7, 18], Gen.Double[0.9, 1.25], Gen.Double[0.02, 0.1], Gen.Double[0.03, 0.3], Gen.Double[0.01, 0.5]).Sample(
            (speed, density, restoring, damping, rate) =>
            {
                var wing = published with { RollRestoring = restoring, YawLeverage = new YawLeverage.FromCoefficients(restoring, damping) };
                var pressure = density * speed * speed / 2;
                var bank = rate * speed / 9.80665;
                var roll = pressure * 21 * 7 * restoring * bank;
                var yaw = pressure * 21 * 7 * damping * (rate * 7 / (2 * speed));
                Check.Close(roll / yaw, TurnEquivalence.YawLeverage(wing, speed), relative: 1e-12, because: "arithmetic only");
                Check.Close(rate, roll * TurnEquivalence.TurnRatePerTorque(wing, density, speed), relative: 1e-12,
                    because: "arithmetic only");
            },
            iter: 200);

    [Fact]
    public void Given_leverage_holds_in_every_phase_and_changes_the_residual_by_its_yaw_part()
    {
        var geometry = WorkedMachine.Geometry(420, 22, 230, 1.5);
        var given = WorkedMachine.Mission.WithYawLeverage(0.6).Evaluate(geometry);
        foreach (var phase in given.Phases)
        {
            Assert.Equal(0.6, phase[PhaseQuantity.YawLeverage]);
            Check.Close(
                phase[PhaseQuantity.WingRollMoment] + 0.6 * phase[PhaseQuantity.WingYawMoment],
                phase[PhaseQuantity.Residual],
                absolute: 1e-11,
                because: "arithmetic only");
        }
    }
}
