using CsCheck;
using FrameOpt.Model;
using FrameOpt.Model.Balance;
using FrameOpt.Model.Mission;
using FrameOpt.Numerics;

namespace FrameOpt.Tests.Model.Mission;

/// <summary>Responses against plain recomputation from the phases of the same evaluation.</summary>
public class ResponsesTests
{
    private const string Arithmetic = "arithmetic only: the same sum in another order";
    private const double Limit = 4.5;
    private const double Overhang = 0.12;
    private static readonly FrameGeometry baseline = WorkedMachine.Geometry(440, 0, 150, 0);

    private static readonly MissionModel mission = new(
        WorkedMachine.Machine,
        WorkedMachine.Wing,
        WorkedMachine.Phases,
        new ResponseReferences(
            Limit, Overhang, baseline, [new(GeometryInput.HangPointSpacing, 0.1), new(GeometryInput.LateralOffset, 0.06),
                new(GeometryInput.ThrustLineAngle, 0.1)]));

    private static readonly Gen<DesignEvaluation> designs = Gen
        .Select(Gen.Double[360, 500], Gen.Double[0, 60], Gen.Double[100, 400], Gen.Double[-3, 3])
        .Select((spacing, offset, height, angle) => mission.Evaluate(WorkedMachine.Geometry(spacing, offset, height, angle)))
        .Where(design => design.Failure is null);

    [Fact]
    public void Mission_responses_are_what_their_phases_say() => designs.Sample(
        design =>
        {
            var weighted = design.Phases.Where(p => p.Phase.Weight > 0).ToList();
            var off = design.Phases.Single(p => p.Phase.Power is PhasePower.EngineOff);
            double Largest(IEnumerable<PhaseResult> phases, PhaseQuantity q) => phases.Max(p => Math.Abs(p[q]));
            var squares = weighted.Sum(p => p.Phase.Weight * Math.Pow(p[PhaseQuantity.Residual], 2));
            var load = Limit * design.Phases.Max(p => Math.Max(p[PhaseQuantity.LoadRight], p[PhaseQuantity.LoadLeft]));
            var g = design.Geometry;
            double spacing = (g.SpacingMetres - 0.44) / 0.1, offset = g.OffsetMetres / 0.06, angle = g.AngleRadians / 0.1;
            var expected = new Dictionary<MissionQuantity, double>
            {
                [MissionQuantity.ResidualRms] = Math.Sqrt(squares / weighted.Sum(p => p.Phase.Weight)),
                [MissionQuantity.ResidualWorst] = Largest(weighted, PhaseQuantity.Residual),
                [MissionQuantity.EffortWorst] = Largest(design.Phases.Where(p => p.Phase.Name != "launch"), PhaseQuantity.Effort),
                [MissionQuantity.PowerOffResidual] = Math.Abs(off[PhaseQuantity.Residual]),
                [MissionQuantity.PitchSwing] = design.Phases.Max(p => p[PhaseQuantity.BodyPitch]) - design.Phases.Min(
                    p => p[PhaseQuantity.BodyPitch]),
                [MissionQuantity.TwistMarginWorst] = design.Phases.Min(p => p[PhaseQuantity.TwistMargin]),
                [MissionQuantity.BodyYawWorst] = Largest(weighted, PhaseQuantity.BodyYaw),
                [MissionQuantity.LoadDifferenceWorst] = Largest(weighted, PhaseQuantity.LoadDifference),
                [MissionQuantity.HangPointLoad] = load,
                [MissionQuantity.ArmMoment] = load * Overhang,
                [MissionQuantity.TorqueMarginWorst] = weighted
                    .Where(p => p.Phase.Power is not PhasePower.FullThrottle).Min(p => p[PhaseQuantity.TorqueMargin]),
                [MissionQuantity.DistanceFromBaseline] = Math.Sqrt(spacing * spacing + offset * offset + angle * angle),
            };
            foreach (var quantity in ResponseCatalogue.OfMissions)
                Check.Close(expected[quantity], design[quantity], relative: 1e-11, because: $"{quantity}: {Arithmetic}");
        },
        iter: 200);

    // Source: the definitions in docs/model.md; W_pilot = 78 kg x 9.80665 x carried share, largest lean 80 mm, wing 25 m², 10.8 m and
    // 6 kg on 7 m, trim 10.4 m/s at 115 kg and 1.225 kg/m³.
    [Fact]
    public void Phase_responses_are_what_their_moments_say() => designs.Sample(
        design =>
        {
            foreach (var phase in design.Phases)
            {
                var yawPart = phase[PhaseQuantity.YawLeverage] * phase[PhaseQuantity.WingYawMoment];
                var wingWeight = 6 * 9.80665 * 7 * phase[PhaseQuantity.WingBank] * Math.PI / 180;
                var residual = phase[PhaseQuantity.WingRollMoment] + yawPart + wingWeight;
                var weight = 78 * 9.80665 * (phase.Phase.Name == "launch" ? 0.8 : 1);
                var share = phase[PhaseQuantity.PendulumShare];
                var v = 10.4 * Math.Sqrt(119.0 / 115 * 1.225 / Atmosphere.DensityKgPerM3(300, 0));
                var rate = residual * 9.80665 / (v * 0.5 * Atmosphere.DensityKgPerM3(300, 0) * v * v * 25 * 10.8 * 0.05);
                var stiffness = phase[PhaseQuantity.RiserLoad] * design.Geometry.SpacingMetres * 3.8 / 28;
                Same(yawPart, PhaseQuantity.YawPart);
                Same(wingWeight, PhaseQuantity.WingWeightPart);
                Same(residual, PhaseQuantity.Residual);
                if (share >= 0.2)
                {
                    Same(-1000 * residual / (share * weight), PhaseQuantity.Lean);
                    Same(Math.Abs(residual / (share * weight)) / 0.080, PhaseQuantity.Effort);
                }

                Same(share * weight * 0.080, PhaseQuantity.WeightShiftAuthority);
                Same(rate * 180 / Math.PI, PhaseQuantity.TurnRate);
                Same(stiffness / Math.Abs(phase[PhaseQuantity.WingYawMoment]), PhaseQuantity.TwistMargin, relative: 1e-8);
                Assert.Equal(Math.Abs(residual) <= 3 ? "straight" : residual < 0 ? "left" : "right", phase.Steers);

                void Same(double expected, PhaseQuantity quantity, double relative = 1e-11) => Check.Close(
                    expected, phase[quantity], relative, absolute: 1e-10, because: $"{quantity}: arithmetic, a sum that may cancel");
            }
        },
        iter: 200);

    // Law: the lean is what the pilot does, so moving the weight of the body by it leaves no residual.
    [Fact]
    public void Leaning_by_the_lean_needed_cancels_the_residual()
    {
        var geometry = WorkedMachine.Geometry(440, 25, 150, 0);
        var design = WorkedMachine.Mission.Evaluate(geometry);
        for (var p = 0; p < design.Phases.Count; p++)
        {
            var row = new MissionRow(WorkedMachine.Mission);
            row.Prepare(geometry);
            var lean = design.Phases[p][PhaseQuantity.Lean] / 1000;
            var pilotWeight = 78 * 9.80665 * (p == 0 ? 0.8 : 1);
            var moments = row.Bodies[p].Moments;
            var shifted = row.Bodies[p] with { Moments = moments with { Roll = moments.Roll + new LinearFunction(pilotWeight * lean, 0) } };
            var wing = WorkedMachine.Wing;
            var balance = RollYawBalance.Of(shifted, RiserStiffness.RollMetres(wing, 0.44), RiserStiffness.YawMetres(wing, 0.44), default);
            var yawPart = design.Phases[p][PhaseQuantity.YawLeverage] * balance.WingYawMoment.At(0.025);
            Check.Close(
                0, balance.WingRollMoment.At(0.025) + yawPart + 6 * 9.80665 * 7 * balance.WingBank.At(0.025), absolute: 1e-9,
                    because: "a difference of moments of some 50 N·m");
        }
    }

    // Law: of two supports the busier one carries half of the whole or more, and a load is no smaller for not being weighted.
    [Fact]
    public void Strength_takes_the_hardest_phase_even_when_it_has_no_weight()
    {
        var pulled = WorkedMachine.Phases[4] with { LoadFactor = 2 };
        var study = new MissionModel(WorkedMachine.Machine, WorkedMachine.Wing, [.. WorkedMachine.Phases.Take(4), pulled],
            new ResponseReferences(Limit, Overhang, null, []));
        var design = study.Evaluate(WorkedMachine.Geometry(440, 25, 150, 0));
        Assert.Equal(0, pulled.Weight);
        Assert.True(design[MissionQuantity.HangPointLoad] >= Limit * design.Phases[4][PhaseQuantity.RiserLoad] / 2);
        Assert.True(design[MissionQuantity.ArmMoment] >= Overhang * Limit * design.Phases[4][PhaseQuantity.RiserLoad] / 2);
    }

    [Fact]
    public void Torque_margin_of_full_throttle_alone_has_no_bound()
    {
        var study = new MissionModel(WorkedMachine.Machine, WorkedMachine.Wing, [WorkedMachine.Phases[0], WorkedMachine.Phases[4]],
            ResponseReferences.None);
        Assert.Equal(double.PositiveInfinity, study.Evaluate(WorkedMachine.Geometry(440, 25, 150, 0))[MissionQuantity.TorqueMarginWorst]);
    }

    [Fact]
    public void Responses_without_their_reference_are_not_a_number()
    {
        var design = WorkedMachine.Mission.Evaluate(baseline);
        Assert.True(double.IsNaN(design[MissionQuantity.HangPointLoad]));
        Assert.True(double.IsNaN(design[MissionQuantity.ArmMoment]));
        Assert.True(double.IsNaN(design[MissionQuantity.DistanceFromBaseline]));
        Assert.Equal(0, mission.Evaluate(baseline)[MissionQuantity.DistanceFromBaseline]);
    }

    [Fact]
    public void Response_by_name_reads_the_same_value()
    {
        var design = mission.Evaluate(baseline);
        Response residual = new Response.OfPhase(PhaseQuantity.Residual, 2, "cruise"),
            swing = new Response.OfMission(MissionQuantity.PitchSwing);
        Assert.Equal("residual[cruise]", residual.Name);
        Assert.Equal("N·m", residual.Unit);
        Assert.Equal(design.Phases[2][PhaseQuantity.Residual], design[residual]);
        Assert.Equal("pitch_swing", swing.Name);
        Assert.Equal(design[MissionQuantity.PitchSwing], design[swing]);
    }
}
