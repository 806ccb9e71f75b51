using FrameOpt.Numerics;
using FrameOpt.Plans;

namespace FrameOpt.Analysis;

/// <summary>The runs of an orthogonal two-level plan, by contrasts.</summary>
/// <param name="Effects">Main effects first.</param>
/// <param name="LostInBlocks">Those that are the difference of the blocks.</param>
/// <param name="Order">Of the highest interaction that was looked at.</param>
/// <param name="Margins">What errors alone would reach; null where runs are repeated, or effects are fewer than three. Of runs in whole
/// plots: for the effects within them.</param>
/// <param name="Curvature">From runs at the centre; null without, or with whole plots.</param>
public sealed record TwoLevelRuns(IReadOnlyList<Effect> Effects, IReadOnlyList<ModelTerm> LostInBlocks, int Order,
    LenthMargins? Margins, CurvatureTest? Curvature)
{
    private const int HighestOrder = 6;
    private const int FewestForMargins = 3;

    /// <summary>Effects between whole plots, which their errors decide; none where every run was set up by itself.</summary>
    public IReadOnlyList<ModelTerm> BetweenPlots { get; init; } = [];

    /// <summary>The same margins for the effects between whole plots; null where there are fewer than three, or plots are
    /// repeated.</summary>
    public LenthMargins? PlotMargins { get; init; }

    /// <summary>The error of an effect by repeated runs; null where none are repeated, or with whole plots.</summary>
    public EffectError? Error { get; init; }

    /// <summary>The margins that an effect is judged by.</summary>
    public LenthMargins? MarginsOf(Effect effect) => BetweenPlots.Contains(effect.Term) ? PlotMargins : Margins;

    /// <summary>Half-normal quantile of each effect among those with the same error.</summary>
    public IReadOnlyList<HalfNormalPoint> HalfNormalPoints()
    {
        int[] all = [.. Enumerable.Range(0, Effects.Count)];
        return [.. all.GroupBy(i => BetweenPlots.Contains(Effects[i].Term)).Select(group => group.ToArray()).SelectMany(group =>
            HalfNormal.Points([.. group.Select(i => Effects[i].Value)]).Select(point => point with { Index = group[point.Index] }))];
    }

    /// <summary>The effects of runs at -1 and +1, those at the centre aside.</summary>
    /// <param name="x">The factors of each run, coded.</param>
    /// <param name="y">The response.</param>
    /// <param name="blocks">Of each run; what blocks differ by is taken out first.</param>
    /// <param name="plots">The whole plot of each run; null where each was set up by itself.</param>
    /// <returns>Null when a run is elsewhere, or the runs are not balanced and orthogonal.</returns>
    internal static TwoLevelRuns? Of(
        IReadOnlyList<double[]> x, IReadOnlyList<double> y, IReadOnlyList<string> blocks, IReadOnlyList<string>? plots = null)
    {
        bool IsCentre(double[] run) => Array.TrueForAll(run, value => value == 0);
        int[] corners = [.. Enumerable.Range(0, x.Count).Where(i => !IsCentre(x[i]))];
        if (corners.Length < 4 || corners.Any(i => x[i].Any(value => value is not (1 or -1))))
            return null;
        var means = corners.ToLookup(i => blocks[i], i => y[i]).ToDictionary(block => block.Key, block => block.Average());
        double[][] at = [.. corners.Select(i => x[i])];
        double[] values = [.. corners.Select(i => y[i] - means[blocks[i]])];
        for (var order = Math.Min(at[0].Length, HighestOrder); order > 0; order--)
        {
            if (TwoLevelEffects.OrNull(at, values, order) is not { } all)
                continue;
            // What is the same throughout each block is the difference of the blocks, which was taken out.
            bool IsTheSameIn(IReadOnlyList<string> groups, Effect effect) => corners.Index().GroupBy(run => groups[run.Item])
                .All(group => group.Select(run => effect.Term.Value(at[run.Index])).Distinct().Count() == 1);
            bool IsLost(Effect effect) => means.Count > 1 && IsTheSameIn(blocks, effect);
            bool IsBalancedInBlocks(Effect effect) => corners.Index().GroupBy(run => blocks[run.Item])
                .All(block => block.Sum(run => effect.Term.Value(at[run.Index])) == 0);
            List<Effect> effects = [.. all.Where(effect => !IsLost(effect))];
            List<Effect> between = plots is null ? [] : [.. effects.Where(effect => IsTheSameIn(plots, effect))];
            var cells = at.Select(run => string.Join('|', run)).Distinct().Count();
            LenthMargins? Margins(IEnumerable<Effect> of) => cells < at.Length || of.Count() < FewestForMargins ? null
                : LenthMargins.Of([.. of.Select(one => one.Value)]);
            return new TwoLevelRuns(effects, [.. all.Where(IsLost).Select(effect => effect.Term)], order, Margins(effects.Except(between)),
                plots is not null ? null : CurvatureTest.Of([.. corners.Select(i => y[i])],
                    [.. Enumerable.Range(0, x.Count).Where(i => IsCentre(x[i])).Select(i => y[i])], means.Count == 1))
            {
                BetweenPlots = [.. between.Select(effect => effect.Term)],
                PlotMargins = Margins(between),
                Error = plots is null && cells == all.Count + 1 && effects.TrueForAll(IsBalancedInBlocks)
                    ? EffectError.Of(values, effects, at.Length - cells - (means.Count - 1 - all.Count(IsLost))) : null,
            };
        }

        return null;
    }
}

/// <summary>The error of an effect of a two-level plan, from what repeated runs differ by.</summary>
/// <param name="StandardError">Of every effect, in the response's unit.</param>
/// <param name="DegreesOfFreedom">1 or more.</param>
/// <remarks>Source: G. E. P. Box, W. G. Hunter and J. S. Hunter 1978, Statistics for Experimenters, section 10.6 (from memory): twice the
/// standard deviation of a run over the root of the number of runs.</remarks>
public sealed record EffectError(double StandardError, int DegreesOfFreedom)
{
    /// <summary>Effect over its standard error.</summary>
    public double T(Effect effect) => AnovaTable.Ratio(effect.Value, StandardError);

    /// <summary>Probability of a larger |t| by chance alone.</summary>
    public double P(Effect effect) => UpperTail.StudentTwoSided(T(effect), DegreesOfFreedom);

    internal static EffectError? Of(double[] values, IReadOnlyList<Effect> effects, int degrees)
    {
        if (degrees < 1)
            return null;
        var mean = values.Average();
        var left = values.Sum(value => (value - mean) * (value - mean)) - effects.Sum(effect => effect.SumOfSquares);
        return new EffectError(2 * Math.Sqrt(Math.Max(0, left) / degrees / values.Length), degrees);
    }
}

/// <summary>Whether the mean of the centre runs lies off the mean of the corners, which no two-level model allows for.</summary>
/// <param name="Difference">Mean of the corners less mean of the centre, in the response's unit.</param>
/// <param name="SumOfSquares">With one degree of freedom.</param>
/// <param name="P">Probability of a larger one by chance, against the repeats of the centre; null with one centre run.</param>
public sealed record CurvatureTest(double Difference, double SumOfSquares, double? P)
{
    /// <remarks>Source: R. H. Myers, D. C. Montgomery and C. M. Anderson-Cook 2009, Response Surface Methodology, section 4.5 (from
    /// memory): SS = nF nC (mean F - mean C)² / (nF + nC).</remarks>
    internal static CurvatureTest? Of(double[] corners, double[] centre, bool isOneBlock)
    {
        if (centre.Length == 0 || !isOneBlock)
            return null;
        var difference = corners.Average() - centre.Average();
        var sum = difference * difference * corners.Length * centre.Length / (corners.Length + centre.Length);
        if (centre.Length == 1)
            return new CurvatureTest(difference, sum, null);
        var mean = centre.Average();
        var pure = centre.Sum(value => (value - mean) * (value - mean)) / (centre.Length - 1);
        return new CurvatureTest(difference, sum, UpperTail.F(AnovaTable.Ratio(sum, pure), 1, centre.Length - 1));
    }
}
