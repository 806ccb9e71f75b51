using FrameOpt.ProductLine.PMedian;

namespace FrameOpt.ProductLine;

/// <summary>Chooses the variants of a product line and proves optimality.</summary>
/// <remarks>The same problem gives the same answer, to the bit, unless it is stopped by time or cancelled. Of choices with equal values the
/// one found first is kept, the same every time; of two equally good candidates a customer gets the one of lower index.</remarks>
public static class ProductLineSolver
{
    /// <summary>Relative optimality gap at which a solution counts as optimal.</summary>
    internal const double Tolerance = 1e-9;

    /// <summary>Relative rounding error of bounds, which are sums of costs; it decides where the value is tiny compared with the
    /// costs.</summary>
    private const double Rounding = 1e-13;

    /// <summary>The best choice that can be found within the settings.</summary>
    public static ProductLineSolution Solve(ProductLineProblem problem, ProductLineSolverSettings settings)
    {
        var clock = new SolverClock(settings);
        int[] servable = [.. Enumerable.Range(0, problem.Costs.Length).Where(customer => problem.Costs[customer].Any(double.IsFinite))];
        if (servable.Length == 0)
            return ProductLineSolutionBuilder.Of(problem, servable, [], double.PositiveInfinity, ProductLineStopReason.Proven);
        Subproblem[] parts = [.. Groups(problem).Select(group => Part(problem, servable, group))];
        PMedianResult[] starts = [.. parts.Select(part => Start(part, clock))];
        if (starts.All(start => start.Value > 0))
            return NearestMiss(problem, servable, parts, starts, clock);

        return Best(problem, servable, [.. parts.Zip(starts).Where(pair => pair.Second.Value == 0)], clock,
            starts.All(start => start.Value == 0 || start.Bound > 0));
    }

    private static ProductLineSolution Best(
        ProductLineProblem problem, int[] servable, (Subproblem Part, PMedianResult Start)[] feasible, SolverClock clock, bool othersProven)
    {
        double[] values = [.. feasible.Select(pair => pair.Part.Value(problem.Objective, pair.Start.Chosen))];
        var first = Array.IndexOf(values, values.Min());
        var (chosen, value, bound) = (Numbers(feasible[first].Part, feasible[first].Start.Chosen), values[first], double.PositiveInfinity);
        foreach (var i in Enumerable.Range(0, feasible.Length).OrderBy(i => values[i]))
        {
            var (part, start) = feasible[i];
            var least = ObjectiveValue.Of(problem.Objective, part.Shares, part.RowMinima);
            if (least < value && !clock.Stopped)
            {
                var answer = new SubproblemSolver(part, problem.Objective, clock).Solve(
                    start.Chosen, i == first ? double.PositiveInfinity : value);
                least = Math.Max(least, answer.Bound);
                var found = part.Value(problem.Objective, answer.Chosen);
                if (found < value)
                    (chosen, value) = (Numbers(part, answer.Chosen), found);
            }

            bound = Math.Min(bound, least);
        }

        if (!othersProven)
            bound = Math.Min(bound, ObjectiveValue.Of(problem.Objective, [.. servable.Select(i => problem.Shares[i])],
                [.. servable.Select(i => problem.Costs[i].Min())]));
        var largest = feasible.Max(pair => pair.Part.Largest);
        var proven = value - bound <= (Tolerance * value) + (Rounding * largest);
        var solution = ProductLineSolutionBuilder.Of(
            problem, servable, chosen, bound, proven ? ProductLineStopReason.Proven : clock.Stop ?? ProductLineStopReason.TimeLimit);
        return proven ? solution with { Bound = solution.Value } : solution;
    }

    /// <summary>A choice that serves every customer (value 0), or the one found to leave out the fewest customers.</summary>
    private static PMedianResult Start(Subproblem part, SolverClock clock)
    {
        var leftOut = part.UnservedCountProblem();
        var chosen = VertexSubstitution.Choose(part.Mean(), clock);
        if (leftOut.Value(chosen) == 0)
            return new PMedianResult(chosen, 0, 0);
        return BranchAndBound.Solve(leftOut, VertexSubstitution.Choose(leftOut, clock), clock);
    }

    private static ProductLineSolution NearestMiss(
        ProductLineProblem problem, int[] servable, Subproblem[] parts, PMedianResult[] starts, SolverClock clock)
    {
        var nearest = Enumerable.Range(0, parts.Length).MinBy(i => starts[i].Value);
        var none = starts.All(start => start.Bound > 0);
        return ProductLineSolutionBuilder.Of(problem, servable, Numbers(parts[nearest], starts[nearest].Chosen),
            none ? double.PositiveInfinity : ObjectiveValue.Of(problem.Objective, parts[0].Shares,
                [.. servable.Select(i => problem.Costs[i].Min())]),
            clock.Stop ?? ProductLineStopReason.Proven);
    }

    private static Subproblem Part(ProductLineProblem problem, int[] servable, int[] candidates) =>
        new([.. servable.Select(i => problem.Costs[i])], [.. servable.Select(i => problem.Shares[i])], problem.Count, candidates);

    private static int[] Numbers(Subproblem part, int[] columns) => [.. columns.Select(column => part.Candidates[column])];

    /// <summary>The candidates of each group, in the order of their first members.</summary>
    private static IEnumerable<int[]> Groups(ProductLineProblem problem) => problem.Groups is { } groups
        ? Enumerable.Range(0, problem.Candidates).GroupBy(candidate => groups[candidate]).Select(group => group.ToArray())
        : [[.. Enumerable.Range(0, problem.Candidates)]];
}
