using FrameOpt.Model.Mission;
using FrameOpt.Studies.Noise;
using FrameOpt.Tests.Model;
using FrameOpt.Tests.Reports;
using FrameOpt.Uncertainty;

namespace FrameOpt.Tests.Uncertainty;

/// <summary>What the spread comes from.</summary>
public class SpreadSharesTests
{
    // Law: of a sum of independent normal numbers each has the share of its variance, both as Shapley effect and as total index (I. M.
    // Sobol 2001; A. B. Owen 2014). The residual is linear in the offset, and the seat moves it as the weight beside it does.
    [Fact]
    public void Two_numbers_that_only_add_share_by_their_variances()
    {
        var setting = new NoiseSetting(
            [(NoiseSource.OffsetBuilt, new Spread.Normal(0.003)), (NoiseSource.SeatRight, new Spread.Normal(0.004))], []);
        foreach (var phase in SpreadSharesRun.Of(setting, WorkedMachine.Mission, ReportFixture.WorkedGeometry, 2))
        {
            var moves = setting.Sources.ToDictionary(pair => pair.Source, pair =>
                (At(pair.Source, 1e-3, phase.Phase) - At(pair.Source, -1e-3, phase.Phase)) / 2e-3
                    * ((Spread.Normal)pair.Spread).StandardDeviation);
            var variance = moves.Values.Sum(move => move * move);
            const string even = "512 points of an even sample";
            const string sampled = "512 pairs: the square of a normal difference has a relative error of sqrt(2/512), 6 in 100";
            Check.Close(Math.Sqrt(variance), phase.StandardDeviation, relative: 0.02, because: even);
            Assert.All(phase.Shares, share =>
            {
                var expected = moves[share.Source] * moves[share.Source] / variance;
                Check.Close(expected, share.Shapley, absolute: 0.06, because: sampled);
                Check.Close(expected, share.Total, absolute: 0.08, because: sampled);
            });
        }
    }

    // Law: Shapley effects add up to 1 (A. B. Owen 2014).
    [Fact]
    public void Shapley_shares_of_every_phase_add_up_to_one() => Assert.All(
        SpreadSharesRun.Of(NoiseSetting.Usual, WorkedMachine.Mission, ReportFixture.WorkedGeometry, 2),
        phase => Check.Close(1, phase.Shares.Sum(share => share.Shapley), absolute: 1e-9, because: "the steps of a walk telescope"));

    [Fact]
    public void Correlated_sources_have_no_shares()
    {
        var setting = NoiseSetting.Usual with { Correlations = [new RankCorrelation(NoiseSource.SeatRight, NoiseSource.FrameRight, 0.5)] };
        Assert.Empty(SpreadSharesRun.Of(setting, WorkedMachine.Mission, ReportFixture.WorkedGeometry, 2));
    }

    private static double At(NoiseSource source, double deviation, int phase)
    {
        var one = NoiseSample.Case(WorkedMachine.Mission, [(source, deviation)]);
        return one.Model.Evaluate(ReportFixture.WorkedGeometry + one.BuiltOff).Phases[phase][PhaseQuantity.Residual];
    }
}
