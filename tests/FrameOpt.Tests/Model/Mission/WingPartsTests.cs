using CsCheck;
using FrameOpt.Model;
using FrameOpt.Model.Mission;

namespace FrameOpt.Tests.Model.Mission;

/// <summary>The three parts of the residual torque in whole flights: what the wing's answer to yaw, twist and bank adds to the roll
/// moment.</summary>
public class WingPartsTests
{
    private const string Arithmetic = "arithmetic only: the same product another way";

    private static readonly Gen<FrameGeometry> geometries = Gen
        .Select(Gen.Double[360, 500], Gen.Double[0, 60], Gen.Double[100, 300], Gen.Double[-3, 3])
        .Select(WorkedMachine.Geometry)
        .Where(geometry => WorkedMachine.Mission.Evaluate(geometry).Failure is null);

    // Source: the twist of two lines, K_psi = F s b_top/(4 L), and an arched wing whose halves are pitched by eta s k/(2 L): 0.17 q S b
    // for each radian (own estimate). Line length 7 m, spread 3.8 m, area 25 m², span 10.8 m.
    [Fact]
    public void Wing_twisted_by_its_risers_takes_017_qSb_times_the_pitch_of_its_halves_from_the_residual() =>
        Gen.Select(geometries, Gen.Double[0.01, 1]).Sample((geometry, share) =>
        {
            var rigid = Evaluate(new YawLeverage.FromSpeed(0.17, 0), geometry);
            var twisted = Evaluate(new YawLeverage.FromSpeed(0.17, share), geometry);
            for (var p = 0; p < rigid.Phases.Count; p++)
            {
                var phase = twisted.Phases[p];
                var speed = Math.Min(phase[PhaseQuantity.Airspeed], TrimSpeed(p));
                var pressure = Atmosphere.DensityKgPerM3(300, 0) * speed * speed / 2;
                var stiffness = phase[PhaseQuantity.RiserLoad] * geometry.SpacingMetres * 3.8 / (4 * 7);
                var twist = phase[PhaseQuantity.WingYawMoment] / stiffness;
                var pitchOfHalves = share * geometry.SpacingMetres * twist / (2 * 7);
                Check.Close(
                    -0.17 * pressure * 25 * 10.8 * pitchOfHalves,
                    phase[PhaseQuantity.Residual] - rigid.Phases[p][PhaseQuantity.Residual],
                    absolute: 1e-10, because: "a difference of moments of some 50 N·m");

                // Nose right against the wing, and the residual moves to the left.
                Assert.True(twist * (phase[PhaseQuantity.YawPart] - rigid.Phases[p][PhaseQuantity.YawPart]) < 0);
            }
        });

    // Trim is 10.4 m/s at 115 kg and 1.225 kg/m³; all up it weighs 119 kg.
    private static double TrimSpeed(int phase) => 10.4 * Math.Sqrt(
        WorkedMachine.Phases[phase].LoadFactor * 119 / 115 * 1.225 / Atmosphere.DensityKgPerM3(300, 0));

    [Fact]
    public void Leverage_of_a_wing_rigid_in_torsion_is_the_speed_factor_times_the_airspeed() => geometries.Sample(geometry =>
        Assert.All(Evaluate(new YawLeverage.FromSpeed(0.2, 0), geometry).Phases, phase => Check.Close(
            0.2 * phase[PhaseQuantity.Airspeed], phase[PhaseQuantity.YawLeverage], relative: 1e-12, because: Arithmetic)));

    [Fact]
    public void Leverage_given_as_a_number_holds_in_every_phase_whatever_twists() => geometries.Sample(geometry =>
        Assert.All(Evaluate(new YawLeverage.Constant(0.6), geometry).Phases, phase =>
        {
            Assert.Equal(0.6, phase[PhaseQuantity.YawLeverage]);
            Check.Close(0.6 * phase[PhaseQuantity.WingYawMoment], phase[PhaseQuantity.YawPart], absolute: 1e-12, because: Arithmetic);
        }));

    // The slopes 0.34 and 0.17 x 10 have the ratio 0.2 x 10.
    [Fact]
    public void Slopes_of_a_sideslip_take_the_place_of_the_speed_factor_and_leave_the_twist()
    {
        var geometry = WorkedMachine.Geometry(440, 25, 150, 0);
        YawLeverage slopes = new YawLeverage.FromSideslip(-0.34, 0.17, 0.5), rigid = new YawLeverage.FromSideslip(-0.34, 0.17, 0);
        var (twisted, stiff) = (Evaluate(slopes, geometry), Evaluate(rigid, geometry));
        var bySpeed = Evaluate(new YawLeverage.FromSpeed(0.2, 0.5), geometry);
        for (var p = 0; p < stiff.Phases.Count; p++)
        {
            Check.Close(2, stiff.Phases[p][PhaseQuantity.YawLeverage], relative: 1e-12, because: Arithmetic);
            Check.Close(
                bySpeed.Phases[p][PhaseQuantity.YawLeverage] - 0.2 * bySpeed.Phases[p][PhaseQuantity.Airspeed],
                twisted.Phases[p][PhaseQuantity.YawLeverage] - 2, absolute: 1e-12, because: Arithmetic);
        }
    }

    // Law: a wing flies straight when one sideslip, wind from the right +, holds both moments: Cn beta q S b + N_w = 0 gives it, and
    // Cl beta q S b + M_w + m_w g L Phi is what it leaves of roll. All three vanish together with the residual.
    [Fact]
    public void Residual_is_the_roll_moment_that_the_sideslip_which_holds_the_yaw_moment_leaves() =>
        Gen.Select(geometries, Gen.Double[-0.9, -0.3], Gen.Double[0.1, 0.6]).Sample((geometry, roll, yaw) =>
        {
            var model = WorkedMachine.Mission.With(WorkedMachine.Wing with { YawLeverage = new YawLeverage.FromSideslip(roll, yaw, 0) });
            DesignEvaluation At(double offset) => model.Evaluate(geometry with { OffsetMetres = offset });
            double Left(PhaseResult phase)
            {
                var pressureAreaSpan = Atmosphere.DensityKgPerM3(300, 0) * Math.Pow(phase[PhaseQuantity.Airspeed], 2) / 2 * 25 * 10.8;
                var sideslip = -phase[PhaseQuantity.WingYawMoment] / (yaw * pressureAreaSpan);
                var bank = phase[PhaseQuantity.WingBank] * Math.PI / 180;
                return roll * sideslip * pressureAreaSpan + phase[PhaseQuantity.WingRollMoment] + 6 * 9.80665 * 7 * bank;
            }

            const string because = "a sum of moments of some 100 N·m";
            for (var p = 0; p < WorkedMachine.Phases.Count; p++)
            {
                var (first, second) = (At(0), At(0.02));
                Check.Close(Left(first.Phases[p]), first.Phases[p][PhaseQuantity.Residual], absolute: 1e-10, because: because);
                var (r0, r1) = (first.Phases[p][PhaseQuantity.Residual], second.Phases[p][PhaseQuantity.Residual]);
                if (At(0.02 * r0 / (r0 - r1)) is not { Failure: null } straight)
                    continue;
                Check.Close(0, straight.Phases[p][PhaseQuantity.Residual], absolute: 1e-9, because: because);
                Check.Close(0, Left(straight.Phases[p]), absolute: 1e-9, because: because);
            }
        }, iter: 30);

    // Law: the weight of the wing counts with its arm and bank, and not before the wing has had time to bank.
    [Fact]
    public void Weight_of_the_banked_wing_counts_in_settled_phases_under_thrust_only() => geometries.Sample(geometry =>
    {
        foreach (var phase in WorkedMachine.Mission.Evaluate(geometry).Phases)
        {
            var part = phase[PhaseQuantity.WingWeightPart];
            Check.Close(6 * 9.80665 * 7 * phase[PhaseQuantity.WingBank] * Math.PI / 180, part, absolute: 1e-12, because: Arithmetic);
            Assert.Equal(phase.Phase.Name is "launch" or "glide", part == 0);
        }
    });

    [Fact]
    public void Bank_and_wing_weight_of_a_phase_that_has_not_settled_are_zero_without_a_sign()
    {
        var launch = WorkedMachine.Mission.Evaluate(WorkedMachine.Geometry(420, -22, 230, -1.5)).Phases[0];
        foreach (var quantity in new[] { PhaseQuantity.WingBank, PhaseQuantity.WingWeightPart })
            Assert.True(launch[quantity] == 0 && double.IsPositive(launch[quantity]), quantity.Name);
    }

    [Fact]
    public void Wing_without_mass_has_no_wing_weight_part()
    {
        var weightless = WorkedMachine.Mission.With(WorkedMachine.Wing with { MassKilograms = 0 });
        Assert.All(weightless.Evaluate(WorkedMachine.Geometry(440, 25, 150, 0)).Phases,
            phase => Assert.Equal(0, phase[PhaseQuantity.WingWeightPart]));
    }

    // By hand: 6 kg x 9.80665 x 7 m at a load factor of 2.
    [Fact]
    public void Wing_weighs_on_its_arm_in_proportion_to_the_load_factor()
    {
        var pulled = WorkedMachine.Phases[2] with { LoadFactor = 2 };
        Check.Close(823.7586, PhaseConditions.Of(pulled, WorkedMachine.Machine, WorkedMachine.Wing).WingWeightNewtonMetres,
            absolute: 1e-9, because: Arithmetic);
    }

    private static DesignEvaluation Evaluate(YawLeverage leverage, FrameGeometry geometry) =>
        WorkedMachine.Mission.With(WorkedMachine.Wing with { YawLeverage = leverage }).Evaluate(geometry);
}
