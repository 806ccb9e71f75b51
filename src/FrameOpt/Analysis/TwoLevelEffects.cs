using FrameOpt.Plans;

namespace FrameOpt.Analysis;

/// <summary>Effects of a two-level plan by contrasts.</summary>
public static class TwoLevelEffects
{
    /// <summary>Every estimable effect, main effects first.</summary>
    /// <param name="x">The runs, each factor -1 or 1, balanced and orthogonal.</param>
    /// <param name="y">The response of each run.</param>
    /// <param name="order">Of the highest interaction looked at: 1 for main effects only, as a Plackett-Burman plan allows.</param>
    /// <exception cref="ArgumentException">A factor is not at -1 or 1, or the plan is not balanced and orthogonal: fit a regression
    /// then.</exception>
    public static IReadOnlyList<Effect> Of(IReadOnlyList<double[]> x, IReadOnlyList<double> y, int order)
    {
        if (x.Any(run => run.Any(level => level is not (-1 or 1))))
            throw new ArgumentException("a two-level plan has every factor at -1 or 1", nameof(x));
        return OrNull(x, y, order) ?? throw new ArgumentException(
            FormattableString.Invariant($"the effects of this plan up to order {order} are not orthogonal to each other"), nameof(x));
    }

    /// <summary>The same for runs at -1 and 1; null where they are not balanced and orthogonal.</summary>
    /// <remarks>Source: F. Yates 1937, The design and analysis of factorial experiments (from memory): effect = mean at high less mean at
    /// low, sum of squares = runs x effect² / 4.</remarks>
    internal static IReadOnlyList<Effect>? OrNull(IReadOnlyList<double[]> x, IReadOnlyList<double> y, int order)
    {
        if (Contrasts(x, order) is not { } contrasts)
            return null;
        var mean = y.Average();
        var total = y.Sum(value => (value - mean) * (value - mean));
        return [.. contrasts.Select(contrast =>
        {
            var effect = contrast.Signs.Zip(y).Sum(run => run.First * (run.Second - mean)) * 2 / x.Count;
            var sum = x.Count * effect * effect / 4;
            return new Effect(contrast.Term, contrast.Aliases, effect, sum, total > 0 ? 100 * sum / total : 0);
        })];
    }

    private static List<(ModelTerm Term, double[] Signs, List<EffectAlias> Aliases)>? Contrasts(IReadOnlyList<double[]> x, int order)
    {
        var contrasts = new List<(ModelTerm Term, double[] Signs, List<EffectAlias> Aliases)>();
        foreach (var term in Products(x[0].Length, order))
        {
            double[] signs = [.. x.Select(term.Value)];
            if (Math.Abs(signs.Sum()) == x.Count)
                continue; // Mixed with the mean.
            var like = contrasts.FirstOrDefault(other => Math.Abs(Product(other.Signs, signs)) == x.Count);
            if (like.Term is not null)
                like.Aliases.Add(new EffectAlias(term, Product(like.Signs, signs) < 0));
            else if (signs.Sum() != 0 || contrasts.Any(other => Product(other.Signs, signs) != 0))
                return null; // Not orthogonal to the others.
            else
                contrasts.Add((term, signs, []));
        }

        return contrasts;
    }

    private static double Product(double[] a, double[] b) => a.Zip(b).Sum(pair => pair.First * pair.Second);

    /// <summary>Products of different factors, by order and then in the order of the factors.</summary>
    private static IEnumerable<ModelTerm> Products(int factors, int order)
    {
        IEnumerable<int[]> chosen = [[]];
        for (var o = 1; o <= Math.Min(order, factors); o++)
        {
            chosen = [.. chosen.SelectMany(few => Enumerable.Range(few.Length > 0 ? few[^1] + 1 : 0,
                factors - (few.Length > 0 ? few[^1] + 1 : 0))
                .Select(next => (int[])[.. few, next]))];
            foreach (var few in chosen)
                yield return new ModelTerm([.. Enumerable.Range(0, factors).Select(f => few.Contains(f) ? 1 : 0)]);
        }
    }
}

/// <summary>An effect or interaction of a two-level plan.</summary>
/// <param name="Term">x1 for a main effect, x1x2 for an interaction.</param>
/// <param name="Aliases">Effects confounded with it: the value is that of all together, those with a minus less.</param>
/// <param name="Value">Mean response at the high less that at the low level, in the response's unit.</param>
/// <param name="SumOfSquares">In the square of that unit.</param>
/// <param name="ContributionPercent">Of the total sum of squares, %.</param>
public sealed record Effect(ModelTerm Term, IReadOnlyList<EffectAlias> Aliases, double Value, double SumOfSquares,
    double ContributionPercent);

/// <summary>An effect confounded with another.</summary>
/// <param name="Term">The effect.</param>
/// <param name="IsNegative">Whether it enters with a minus.</param>
public readonly record struct EffectAlias(ModelTerm Term, bool IsNegative);
