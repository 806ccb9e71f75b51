namespace FrameOpt.Plans;

/// <summary>Two-level screening plans in a multiple of four runs. Main effects are orthogonal to each other but not to interactions: in 12,
/// 20 and 24 runs each two-factor interaction is spread in part over all the other main effects.</summary>
/// <remarks>Source: R. L. Plackett and J. P. Burman 1946, The design of optimum multifactorial experiments, Biometrika 33:305-325 (first
/// rows from memory; orthogonality is tested).</remarks>
public static class PlackettBurman
{
    private static readonly Dictionary<int, string> firstRows = new()
    {
        [8] = "+++-+--",
        [12] = "++-+++---+-",
        [16] = "++++-+-++--+---",
        [20] = "++--++++-+-+----++-",
        [24] = "+++++-+-++--++--+-+----",
    };

    /// <summary>The plan in a number of runs: the first row shifted round, then a row of low levels.</summary>
    /// <param name="factors">The names, 2 to one less than the runs.</param>
    /// <param name="runs">8, 12, 16, 20 or 24.</param>
    /// <exception cref="ArgumentException">Another number of runs, or too many factors for it.</exception>
    public static Plan Build(IReadOnlyList<string> factors, int runs)
    {
        if (!firstRows.TryGetValue(runs, out var first))
            throw new ArgumentException($"a Plackett-Burman plan has {string.Join(", ", firstRows.Keys)} runs, not {runs}");
        PlanArguments.Factors(factors, $"Plackett-Burman plan in {runs} runs", 2, runs - 1);
        var columns = runs - 1;
        var rows = Enumerable.Range(0, runs).Select(run => Enumerable.Range(0, factors.Count)
            .Select(f => run < columns && first[(f - run + columns) % columns] == '+' ? 1.0 : -1.0).ToArray());
        return Plan.Numbered($"Plackett-Burman in {runs} runs", factors, Plan.Points(PointKind.Factorial, rows));
    }

    /// <summary>The plan in the fewest runs that hold the factors.</summary>
    /// <param name="factors">The names, 2 to 23.</param>
    /// <exception cref="ArgumentException">Fewer or more factors.</exception>
    public static Plan Build(IReadOnlyList<string> factors)
    {
        PlanArguments.Factors(factors, "Plackett-Burman plan", 2, firstRows.Keys.Max() - 1);
        return Build(factors, firstRows.Keys.Where(runs => runs > factors.Count).Min());
    }
}
