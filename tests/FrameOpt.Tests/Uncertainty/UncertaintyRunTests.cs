using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Model.Propulsion;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;
using FrameOpt.Tests.Model;
using FrameOpt.Tests.Reports;
using FrameOpt.Uncertainty;

namespace FrameOpt.Tests.Uncertainty;

/// <summary>How sure a design of the worked machine is.</summary>
public class UncertaintyRunTests
{
    /// <summary>Sources that a mirror turns about.</summary>
    private static readonly NoiseSource[] sided =
    [
        NoiseSource.SeatRight, NoiseSource.FrameRight, NoiseSource.OffsetBuilt, NoiseSource.AngleBuilt, NoiseSource.HubRightBuilt,
        NoiseSource.HangHeightsBuilt, NoiseSource.Straps, NoiseSource.BladePull,
    ];

    private static readonly Machine mirroredMachine = Mirrored(WorkedMachine.Machine);

    // The residual is linear in the lateral offset (docs/model.md), so that of a normal offset is normal: its 90 % point is 1.281552
    // standard deviations above the middle.
    [Fact]
    public void Linear_response_of_normal_noise_has_the_closed_form()
    {
        const double deviation = 0.002;
        var study = ReportFixture.Study() with { Noise = new([(NoiseSource.OffsetBuilt, new Spread.Normal(deviation))], []) };
        var uncertainty = Of(study, WorkedMachine.Mission, ReportFixture.WorkedGeometry);
        double Residual(double offset, int p) => WorkedMachine.Mission.Evaluate(
            ReportFixture.WorkedGeometry with { OffsetMetres = ReportFixture.WorkedGeometry.OffsetMetres + offset })
            .Phases[p][PhaseQuantity.Residual];
        for (var p = 0; p < study.Mission.Count; p++)
        {
            var standard = Math.Abs(Residual(1e-3, p) - Residual(-1e-3, p)) / 2e-3 * deviation;
            var points = uncertainty.Sample.Phases[p].Residual;
            const string steps = "each of the 256 steps of a sample has one point: 1/256 over the density 0.1755 at the 90 % point";
            Check.Close(Residual(0, p), points.Median, absolute: 0.03 * standard, because: steps);
            Check.Close(1.281552 * standard, points.NineTenths - Residual(0, p), absolute: 0.03 * standard, because: steps);
            Check.Close(1.281552 * standard, Residual(0, p) - points.Tenth, absolute: 0.03 * standard, because: steps);
        }
    }

    [Fact]
    public void Case_of_a_mirrored_machine_with_its_deviations_mirrored_is_the_case_mirrored()
    {
        var mirrored = new MissionModel(mirroredMachine, WorkedMachine.Wing, WorkedMachine.Phases, ResponseReferences.None);
        var sample = new NoiseSample(NoiseSetting.Usual, 64, 1);
        for (var i = 0; i < sample.Count; i++)
        {
            var off = NoiseSource.All.Zip(sample.Deviations(i)).ToList();
            var here = Evaluate(NoiseSample.Case(WorkedMachine.Mission, off), ReportFixture.WorkedGeometry);
            var there = Evaluate(NoiseSample.Case(mirrored, off.Select(one =>
                (one.First, sided.Contains(one.First) ? -one.Second : one.Second))), Mirrored(ReportFixture.WorkedGeometry));
            Assert.Equal(here.Failure is null, there.Failure is null);
            Assert.All(here.Phases.Zip(there.Phases), pair => Check.Close(
                -pair.First[PhaseQuantity.Residual], pair.Second[PhaseQuantity.Residual], absolute: 1e-9, because: "rounding"));
        }
    }

    [Fact]
    public void Percentiles_of_a_mirrored_machine_are_mirrored()
    {
        var study = ReportFixture.Study();
        var here = Of(study, WorkedMachine.Mission, ReportFixture.WorkedGeometry).Sample;
        var mirrored = study with { Machine = mirroredMachine };
        var there = Of(mirrored, new MissionModel(mirroredMachine, study.Wing, study.Mission, ResponseReferences.None),
            Mirrored(ReportFixture.WorkedGeometry)).Sample;
        const string sampling = "three standard errors of a 10 % point of a plain random sample of 2,048, times the square root of two";
        foreach (var (phase, other) in here.Phases.Zip(there.Phases))
        {
            var spread = (phase.Residual.NineTenths - phase.Residual.Tenth) / (2 * 1.281552);
            var allowed = 3 * Math.Sqrt(2 * 0.09 / here.Cases) / 0.1755 * spread;
            Check.Close(-phase.Residual.Tenth, other.Residual.NineTenths, absolute: allowed, because: sampling);
            Check.Close(-phase.Residual.NineTenths, other.Residual.Tenth, absolute: allowed, because: sampling);
        }
    }

    [Fact]
    public void Shares_are_those_of_the_cases_looked_at_one_after_the_other()
    {
        var study = ReportFixture.Study();
        var sample = Of(study, WorkedMachine.Mission, ReportFixture.WorkedGeometry).Sample;
        var all = Enumerable.Range(1, UncertaintyRun.Samples)
            .SelectMany(seed => new NoiseSample(study.Noise, NoiseSetting.Usual.Cases, (uint)seed).Cases(WorkedMachine.Mission))
            .Select(one => Evaluate(one, ReportFixture.WorkedGeometry)).ToList();
        Assert.Equal(all.Count, sample.Cases);
        double Share(Func<DesignEvaluation, bool> holds) => all.Count(holds) / (double)all.Count;
        const string sums = "sums in another order";
        Check.Close(Share(one => study.Limits.All(limit => limit.IsMetBy(one))), sample.LimitsMet.Value, absolute: 1e-12, because: sums);
        Check.Close(Share(one => one.Failure is null && one.Phases.All(phase => !phase.CannotBeHeld)), sample.Held.Value,
            absolute: 1e-12, because: sums);
        Assert.InRange(sample.LimitsMet.Value, 0.01, 0.99);
    }

    [Fact]
    public void A_bar_is_the_design_with_that_number_alone_at_its_10_and_90_percent_points()
    {
        var uncertainty = Of(ReportFixture.Study(), WorkedMachine.Mission, ReportFixture.WorkedGeometry);
        Assert.Equal(NoiseSource.All.Count, uncertainty.Bars.Count);
        var built = uncertainty.Bars.Single(bar => bar.Source == NoiseSource.OffsetBuilt);
        Check.Close(-1.281552e-3, built.LowDeviation, relative: 1e-6, because: "printed digits");
        var moved = WorkedMachine.Mission.Evaluate(ReportFixture.WorkedGeometry with
        {
            OffsetMetres = ReportFixture.WorkedGeometry.OffsetMetres + built.HighDeviation,
        });
        Assert.Equal(moved.Phases[2][PhaseQuantity.Residual], built.High.Phases[2][PhaseQuantity.Residual]);
        var cruise = uncertainty.Bars.Select(bar => bar.Moves(2)).ToList();
        Assert.Equal(cruise.OrderDescending(), cruise);
    }

    [Fact]
    public void Without_noise_there_are_no_bars()
    {
        var study = ReportFixture.Study() with { Noise = NoiseSetting.None };
        Assert.Empty(Of(study, WorkedMachine.Mission, ReportFixture.WorkedGeometry).Bars);
    }

    private static UncertaintyResult Of(Study study, MissionModel mission, FrameGeometry design) =>
        UncertaintyRun.Of(study, mission, [], design, [], Environment.ProcessorCount);

    private static DesignEvaluation Evaluate(SampledCase one, FrameGeometry design) => one.Model.Evaluate(design + one.BuiltOff);

    private static Machine Mirrored(Machine machine) => new(
        [.. machine.Masses.Select(item => item with { At = item.At with { RightMetres = -item.At.RightMetres } })],
        machine.HangLineForwardMetres,
        machine.Propeller with
        {
            Rotation = machine.Propeller.Rotation == Rotation.Clockwise ? Rotation.CounterClockwise : Rotation.Clockwise,
        },
        machine.Engine, machine.Pilot);

    private static FrameGeometry Mirrored(FrameGeometry design) => FactorCatalogue.All.Where(input => input.IsSided)
        .Aggregate(design, (mirrored, input) => mirrored.With(input, -design[input]));
}
