namespace FrameOpt.Plans;

/// <summary>Response-surface plans with three levels and no run at a corner: two or three factors at a time vary between their ends, the
/// others stay at their centre.</summary>
/// <remarks>Source: G. E. P. Box and D. W. Behnken 1960, Some new three level designs for the study of quantitative variables,
/// Technometrics 2:455-475 (from memory).</remarks>
public static class BoxBehnken
{
    private static readonly int[][] sixFactors = [[0, 1, 3], [1, 2, 4], [2, 3, 5], [0, 3, 4], [1, 4, 5], [0, 2, 5]];

    private static readonly int[][] sevenFactors = [[3, 4, 5], [0, 5, 6], [1, 4, 6], [0, 1, 3], [2, 3, 6], [0, 2, 4], [1, 2, 5]];

    /// <summary>A Box-Behnken plan: 12, 24, 40, 48 or 56 runs, and those at the middle.</summary>
    /// <param name="factors">The names, 3 to 7.</param>
    /// <param name="centrePoints">Centre points, at least 1: without one the quadratic model cannot be fitted.</param>
    /// <exception cref="ArgumentException">Another number of factors, or no run at the middle.</exception>
    public static Plan Build(IReadOnlyList<string> factors, int centrePoints)
    {
        PlanArguments.Factors(factors, "Box-Behnken plan", 3, 7);
        PlanArguments.AtLeast(1, centrePoints, "number of centre runs of a Box-Behnken plan");
        var edges = Together(factors.Count).SelectMany(together => Edges(factors.Count, together));
        return Plan.Numbered("Box-Behnken", factors, [.. Plan.Points(PointKind.Edge, edges), .. Plan.Centres(factors.Count, centrePoints)]);
    }

    /// <summary>The sets of factors that vary together.</summary>
    private static IEnumerable<int[]> Together(int factors) => factors switch
    {
        6 => sixFactors,
        7 => sevenFactors,
        _ => from first in Enumerable.Range(0, factors)
             from second in Enumerable.Range(first + 1, factors - first - 1)
             select (int[])[first, second],
    };

    private static IEnumerable<double[]> Edges(int factors, int[] together)
    {
        foreach (var corner in CodedLevels.Corners(together.Length))
        {
            var point = new double[factors];
            for (var t = 0; t < together.Length; t++)
                point[together[t]] = corner[t];
            yield return point;
        }
    }
}
