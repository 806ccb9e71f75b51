using FrameOpt.Studies.Noise;
using FrameOpt.Uncertainty;
using MathNet.Numerics.Statistics;

namespace FrameOpt.Tests.Uncertainty;

/// <summary>The sample of cases against results of others. A tolerance is three standard errors of a plain random sample of that size; a
/// scrambled Sobol sample is nearer.</summary>
public class NoiseSampleTests
{
    private const int Cases = 65_536;
    private const string ThreeErrors = "three standard errors of a plain random sample";

    private static readonly Spread standardNormal = new Spread.Normal(1);
    private static readonly Spread standardRectangle = new Spread.Uniform(-Math.Sqrt(3), Math.Sqrt(3));
    private static readonly Spread wideRectangle = new Spread.Uniform(-10 * Math.Sqrt(3), 10 * Math.Sqrt(3));

    public static TheoryData<string, double, double, double> Additive => new()
    {
        // Source: JCGM 101:2008, 9.2.2 to 9.2.4: Y = X1 + X2 + X3 + X4; standard uncertainty, exact end of the shortest 95 % interval, and
        // the density of Y there: phi(1.96)/2, (4 - s)³/6/(2 sqrt 3) of the sum of four rectangles, 0.57/(20 sqrt 3).
        { "four normal", 2, 3.919927969, 0.0292 },
        { "four rectangular", 2, 3.879406741, 0.0328 },
        { "one ten times as wide", 10.148891565, 17.015814101, 0.0164 },
    };

    [Theory]
    [MemberData(nameof(Additive))]
    public void Additive_model_of_JCGM_101_comes_out(string model, double uncertainty, double end, double density)
    {
        Spread[] spreads = model switch
        {
            "four normal" => [standardNormal, standardNormal, standardNormal, standardNormal],
            "four rectangular" => [standardRectangle, standardRectangle, standardRectangle, standardRectangle],
            _ => [standardRectangle, standardRectangle, standardRectangle, wideRectangle],
        };
        var sample = Sample(spreads);
        double[] sums = [.. Enumerable.Range(0, Cases).Select(i => sample.Deviations(i).Sum()).Order()];
        Check.Close(uncertainty, sums.StandardDeviation(), relative: 3 / Math.Sqrt(2 * Cases), because: ThreeErrors);
        Check.Close(0, sums.Average(), absolute: 3 * uncertainty / Math.Sqrt(Cases), because: ThreeErrors);
        var allowed = 3 * Math.Sqrt(0.025 * 0.975 / Cases) / density;
        Check.Close(-end, sums[(int)(0.025 * Cases)], absolute: allowed, because: ThreeErrors);
        Check.Close(end, sums[(int)(0.975 * Cases)], absolute: allowed, because: ThreeErrors);
    }

    [Theory]
    [InlineData(0.6)]
    [InlineData(-0.8)]
    public void Rank_correlation_asked_for_is_reached_whatever_the_spreads(double rank)
    {
        const int cases = 4_096;
        var sample = new NoiseSample(new NoiseSetting(
            [(NoiseSource.SeatRight, standardNormal), (NoiseSource.GlideRatio, new Spread.Triangle(-1, 0, 3)),
                (NoiseSource.DragArea, standardNormal), (NoiseSource.PilotMass, standardNormal)],
            [new RankCorrelation(NoiseSource.SeatRight, NoiseSource.GlideRatio, rank),
                new RankCorrelation(NoiseSource.DragArea, NoiseSource.PilotMass, rank)]), cases, 1);
        double[] Column(int source) => [.. Enumerable.Range(0, cases).Select(i => sample.Deviations(i)[source])];
        Check.Close(rank, Correlation.Spearman(Column(0), Column(1)), absolute: 3 / Math.Sqrt(cases), because: ThreeErrors);
        // Source: K. Pearson 1907: the correlation of normal numbers whose rank correlation is rho.
        var pearson = 2 * Math.Sin(Math.PI / 6 * rank);
        Check.Close(pearson, Correlation.Pearson(Column(2), Column(3)), absolute: 3 * (1 - pearson * pearson) / Math.Sqrt(cases),
            because: ThreeErrors);
    }

    [Fact]
    public void Numbers_without_a_correlation_have_none()
    {
        var sample = Sample([standardNormal, standardNormal]);
        double[] Column(int source) => [.. Enumerable.Range(0, Cases).Select(i => sample.Deviations(i)[source])];
        Check.Close(0, Correlation.Pearson(Column(0), Column(1)), absolute: 3 / Math.Sqrt(Cases), because: ThreeErrors);
    }

    [Fact]
    public void Same_seed_gives_the_same_cases_and_another_seed_others()
    {
        NoiseSample Of(uint seed) => new(NoiseSetting.Usual, 16, seed);
        Assert.All(Enumerable.Range(0, 16), i => Assert.Equal(Of(3).Deviations(i), Of(3).Deviations(i)));
        Assert.NotEqual(Of(3).Deviations(0), Of(4).Deviations(0));
    }

    [Fact]
    public void Half_of_the_cases_lie_on_either_side_of_every_number() => Assert.All(
        Enumerable.Range(0, NoiseSource.All.Count), source =>
        {
            var sample = new NoiseSample(NoiseSetting.Usual, 256, 1);
            Assert.Equal(128, Enumerable.Range(0, 256).Count(i => sample.Deviations(i)[source] < 0));
        });

    private static NoiseSample Sample(IReadOnlyList<Spread> spreads) =>
        new(new NoiseSetting([.. spreads.Select((spread, s) => (NoiseSource.All[s], spread))], []), Cases, 1);
}
