namespace FrameOpt.Analysis;

/// <summary>What one factor contributes to the variance of a response.</summary>
/// <param name="Alone">First-order Sobol index: the share of the variance of the means at each level.</param>
/// <param name="Total">Total Sobol index: the share that is left, on average, when all other factors are known.</param>
/// <param name="Shapley">Shapley effect: what is due to several factors together is divided evenly; the effects of all factors add up
/// to 1.</param>
public readonly record struct FactorShare(double Alone, double Total, double Shapley);

/// <summary>Divides the variance of responses among factors from every design of a grid, or of a part of one: each design counts once, and
/// nothing is sampled.</summary>
/// <remarks>Source: closed Sobol indices, I. M. Sobol', Mathematics and Computers in Simulation 55 (2001) 271-280; Shapley effects from
/// them, A. B. Owen, SIAM/ASA Journal on Uncertainty Quantification 2 (2014) 245-251; in a part of a grid, where the factors depend on each
/// other, E. Song, B. L. Nelson and J. Staum, the same journal 4 (2016) 1060-1083. From memory.</remarks>
public static class VarianceShares
{
    /// <summary>The shares of each factor in each response; none for a response that is the same in every design.</summary>
    /// <param name="levels">For each factor the level of each design, from 0.</param>
    /// <param name="values">For each response its value in each design, finite.</param>
    public static IReadOnlyList<IReadOnlyList<FactorShare>> Of(IReadOnlyList<int[]> levels, IReadOnlyList<double[]> values)
    {
        var centred = values.Select(Centred).ToArray();
        var closed = values.Select(_ => new double[1 << levels.Count]).ToArray();
        if (values.Count > 0 && values[0].Length > 0)
            AddSubsets(levels, centred, closed, new int[values[0].Length], groups: 1, subset: 0, first: 0);
        return [.. closed.Select(ofResponse => Shares(ofResponse, levels.Count))];
    }

    private static double[] Centred(double[] values)
    {
        var mean = values.Length == 0 ? 0 : values.Average();
        return Array.ConvertAll(values, value => value - mean);
    }

    /// <summary>The variance of the means over each combination of levels, for every set that adds some of the later factors.</summary>
    private static void AddSubsets(
        IReadOnlyList<int[]> levels, double[][] centred, double[][] closed, int[] group, int groups, int subset, int first)
    {
        for (var f = first; f < levels.Count; f++)
        {
            var count = levels[f].Max() + 1;
            var finer = new int[group.Length];
            for (var i = 0; i < finer.Length; i++)
                finer[i] = group[i] * count + levels[f][i];
            var bigger = subset | 1 << f;
            var designs = new int[groups * count];
            foreach (var one in finer)
                designs[one]++;
            for (var r = 0; r < centred.Length; r++)
                closed[r][bigger] = VarianceOfMeans(finer, designs, centred[r]);
            AddSubsets(levels, centred, closed, finer, groups * count, bigger, f + 1);
        }
    }

    private static double VarianceOfMeans(int[] group, int[] designs, double[] centred)
    {
        var sums = new double[designs.Length];
        for (var i = 0; i < group.Length; i++)
            sums[group[i]] += centred[i];
        var squares = 0.0;
        for (var g = 0; g < sums.Length; g++)
        {
            if (designs[g] > 0)
                squares += sums[g] * sums[g] / designs[g];
        }

        return squares / group.Length;
    }

    private static IReadOnlyList<FactorShare> Shares(double[] closed, int factors)
    {
        var (whole, everything) = (closed[^1], closed.Length - 1);
        if (!(whole > 0))
            return [];
        return [.. Enumerable.Range(0, factors).Select(f =>
        {
            var shapley = 0.0;
            for (var subset = 0; subset <= everything; subset++)
            {
                if ((subset >> f & 1) == 0)
                    shapley += Weight(int.PopCount(subset), factors) * (closed[subset | 1 << f] - closed[subset]);
            }

            return new FactorShare(closed[1 << f] / whole, 1 - closed[everything ^ 1 << f] / whole, shapley / whole);
        })];
    }

    /// <summary>|S|! (d - |S| - 1)! / d!</summary>
    private static double Weight(int size, int factors)
    {
        var weight = 1.0 / factors;
        for (var i = 1; i <= size; i++)
            weight *= (double)i / (factors - i);
        return weight;
    }
}
