using FrameOpt.Analysis;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Studies;
using FrameOpt.Tests.Model;

namespace FrameOpt.Tests.StudyFile;

/// <summary>The worked study file against the same machine written out in C#, and against figures worked by hand.</summary>
public class WorkedStudyTests
{
    private const string Arithmetic = "the same figure through a conversion of units: a few units of the last place";

    private static readonly Study study = WorkedStudyText.Right(WorkedStudyText.Text);

    [Fact]
    public void Machine_is_that_of_the_worked_balance()
    {
        var expected = WorkedMachine.Machine;
        Assert.Equal(expected.Masses.Select(item => (item.Name, item.IsBody)),
            study.Machine.Masses.Select(item => (item.Name, item.IsBody)));
        foreach (var (wanted, read) in expected.Masses.Zip(study.Machine.Masses))
        {
            Close(wanted.MassKilograms, read.MassKilograms);
            Close(wanted.At, read.At);
        }

        Close(expected.HangLineForwardMetres, study.Machine.HangLineForwardMetres);
        Close(expected.Pilot.LeanMetres, study.Machine.Pilot.LeanMetres);
        Close(expected.Pilot.DragAreaSquareMetres, study.Machine.Pilot.DragAreaSquareMetres);
        Close(expected.Pilot.DragCentre, study.Machine.Pilot.DragCentre);
    }

    [Fact]
    public void Propeller_and_engine_are_those_of_the_worked_balance()
    {
        var (expected, read) = (WorkedMachine.Machine.Propeller, study.Machine.Propeller);
        Close(expected.DiameterMetres, read.DiameterMetres);
        Assert.Equal(Rotation.CounterClockwise, read.Rotation);
        Close(expected.Hub, read.Hub);
        Close(expected.TiltRadians, read.TiltRadians);
        Close(expected.PolarInertia, read.PolarInertia);
        foreach (var ratio in new[] { 0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6 })
        {
            Close(expected.Curve.ThrustCoefficient(ratio), read.Curve.ThrustCoefficient(ratio));
            Close(expected.Curve.PowerCoefficient(ratio), read.Curve.PowerCoefficient(ratio));
        }

        Assert.Equal([4000, 5000, 6000, 7000, 7800, 8500], study.Machine.Engine!.CrankTorque.Arguments);
        Assert.Equal([14, 18.5, 21.5, 22.5, 21.5, 18], study.Machine.Engine.CrankTorque.Values);
        Close(2.9, study.Machine.Engine.Reduction);
        Close(0.96, study.Machine.Engine.Efficiency);
    }

    [Fact]
    public void Wing_and_phases_are_those_of_the_worked_balance()
    {
        Assert.Equal(WorkedMachine.Wing with { Polar = study.Wing.Polar, RiserCoupling = study.Wing.RiserCoupling }, study.Wing);
        Assert.Equal(WorkedMachine.Wing.Polar.Points, study.Wing.Polar.Points);
        Close(115, study.Wing.Polar.ReferenceMassKilograms);
        Close(1.225, study.Wing.Polar.ReferenceDensity);
        var coupling = Assert.IsType<RiserCoupling.Measured>(study.Wing.RiserCoupling);
        Close(0.33, coupling.LengthMetres);
        Close(0.44, coupling.AtSpacingMetres);
        Assert.Equal(WorkedMachine.Phases, study.Mission);
    }

    [Fact]
    public void Factors_have_every_level_of_their_ranges()
    {
        Assert.Equal(FactorCatalogue.All.Take(4).Select(input => input.Name), study.Factors.Select(factor => factor.Name));
        Assert.Equal([21, 61, 31, 5], study.Factors.Select(factor => factor.LevelsSi.Count));
        Assert.Equal(21L * 61 * 31 * 5, study.GridSize);
        Close(0.380, study.Factors[0].LevelsSi[0]);
        Close(0.440, study.Factors[0].LevelsSi[12]);
        Close(0.480, study.Factors[0].LevelsSi[^1]);
        Close(-3 * Math.PI / 180, study.Factors[3].LevelsSi[0]);
        Assert.Equal(["mm", "mm", "mm", "deg"], study.Factors.Select(factor => factor.Unit.Symbol));
        Close(0.001, study.Factors[0].Unit.SiPerUnit);
        Close(Math.PI / 180, study.Factors[3].Unit.SiPerUnit);
    }

    [Fact]
    public void Objectives_limits_and_ranking_are_as_written()
    {
        Assert.Equal(
            [
                new StudyObjective(new Response.OfMission(MissionQuantity.ResidualRms), false, false, 0),
                new StudyObjective(new Response.OfPhase(PhaseQuantity.WeightShiftAuthority, 2, "cruise"), true, false, 0),
                new StudyObjective(new Response.OfMission(MissionQuantity.PitchSwing), false, false, 0),
            ],
            study.Objectives);
        Assert.Equal(
            [
                new StudyLimit(new Response.OfMission(MissionQuantity.TwistMarginWorst), false, 3, null),
                new StudyLimit(new Response.OfMission(MissionQuantity.EffortWorst), false, null, 0.6),
            ],
            study.Limits);
        Assert.Equal(RankingMethod.DistanceToIdeal, study.Ranking.Method);
        Assert.Equal([3, 1, 1], study.Ranking.Weights);
    }

    [Fact]
    public void Baseline_keeps_what_the_machine_has_built_in()
    {
        var baseline = study.Baseline!.Value;
        Close(0.44, baseline.SpacingMetres);
        Close(0.15, baseline.HeightMetres);
        Close(0, baseline.OffsetMetres);
        Close(5 * Math.PI / 180, baseline.TiltRadians);
        Close(-0.42, baseline.HubForwardMetres);
        Close(-0.06, baseline.HangLineForwardMetres);
    }

    [Fact]
    public void Every_default_taken_is_listed_with_its_source()
    {
        Assert.Contains(study.Assumptions, a => a.What.StartsWith("balanced band", StringComparison.Ordinal) && a.Value.Contains("cruise"));
        Assert.Contains(study.Assumptions, a => a.What == "temperature offset in every phase" && a.Value == "0 K");
        Assert.Contains(study.Assumptions, a => a.What == "share of the weight carried by the risers in climb, cruise, accelerated, glide");
        Assert.All(study.Assumptions, a => Assert.NotEmpty(a.Source));
        Assert.DoesNotContain(study.Assumptions, a => a.What.StartsWith("yaw leverage", StringComparison.Ordinal));
        Assert.StartsWith("study.yaml line 6: the machine does not give datum, hang_point and arms: ", Assert.Single(study.Warnings));
        Assert.Equal(new BandSetting(2, 5), study.Band);
        Assert.Null(study.Strength);
    }

    private static void Close(double expected, double actual) =>
        Check.Close(expected, actual, relative: 1e-14, absolute: 1e-17, because: Arithmetic);

    private static void Close(FramePoint expected, FramePoint actual)
    {
        Close(expected.ForwardMetres, actual.ForwardMetres);
        Close(expected.RightMetres, actual.RightMetres);
        Close(expected.UpMetres, actual.UpMetres);
    }
}
