using FrameOpt.ProductLine.PMedian;

namespace FrameOpt.ProductLine;

/// <summary>Solves one group of candidates for each objective by <see cref="BranchAndBound"/>.</summary>
internal sealed class SubproblemSolver(Subproblem part, ProductLineObjective objective, SolverClock clock)
{
    /// <summary>The best choice, or a proven lower bound for those below <paramref name="cutoff"/>.</summary>
    /// <param name="start">A choice that serves every customer.</param>
    /// <param name="cutoff">Only choices below this matter.</param>
    public PMedianResult Solve(int[] start, double cutoff) => objective switch
    {
        ProductLineObjective.Mean or ProductLineObjective.Blend { WorstWeight: 0 } =>
            BranchAndBound.Solve(part.Mean(), start, clock, cutoff),
        ProductLineObjective.Blend { WorstWeight: 1 } => SmallestLevel(start, cutoff, new ProductLineObjective.Worst()),
        ProductLineObjective.Blend { WorstWeight: var weight } =>
            new CentdianSearch(part, weight, clock).Solve(
                start, SmallestLevel(start, double.PositiveInfinity, new ProductLineObjective.Worst()), cutoff),
        _ => SmallestLevel(start, cutoff, objective),
    };

    /// <summary>The smallest cost level that enough customers can keep, by bisection.</summary>
    /// <remarks>Source: E. Minieka 1970, SIAM Review 12, 138-139, the p-centre by a sequence of covering problems (from memory).</remarks>
    private PMedianResult SmallestLevel(int[] start, double cutoff, ProductLineObjective of)
    {
        var (chosen, value) = (start, part.Value(of, start));
        var levels = part.Levels(ObjectiveValue.Of(of, part.Shares, part.RowMinima), Math.Min(value, cutoff));
        var (open, end) = (0, levels.Length - (levels.Length > 0 && levels[^1] >= Math.Min(value, cutoff) ? 1 : 0));
        while (open < end && !clock.Stopped)
        {
            var middle = (open + end) / 2;
            var (problem, enough) = of is ProductLineObjective.Percentile { Part: < 1 and var kept }
                ? (part.ShareAbove(levels[middle]), 1 - kept + ObjectiveValue.ShareRounding) : (part.NumberAbove(levels[middle]), 0.5);
            var (smaller, columns) = PMedianReduction.Of(problem);
            var found = BranchAndBound.FindAtMost(smaller, VertexSubstitution.Choose(smaller, clock), enough, clock);
            var answer = found with { Chosen = Array.ConvertAll(found.Chosen, column => columns[column]) };
            if (answer.Value <= enough)
            {
                (chosen, value) = (answer.Chosen, part.Value(of, answer.Chosen));
                end = Math.Min(middle, Array.BinarySearch(levels, value));
            }
            else if (answer.Bound > enough)
            {
                open = middle + 1;
            }
            else
            {
                break;
            }
        }

        return new PMedianResult(chosen, value, open < levels.Length ? Math.Min(levels[open], value) : Math.Min(cutoff, value));
    }
}

/// <summary>The best weighted sum of mean and worst cost (centdian) within a group. It enumerates the choices of smallest mean for a
/// decreasing limit of the worst cost, until no smaller worst cost could compensate the mean.</summary>
internal sealed class CentdianSearch(Subproblem part, double weight, SolverClock clock)
{
    private readonly ProductLineObjective objective = new ProductLineObjective.Blend(weight);
    private int[] best = [];
    private double value = double.PositiveInfinity;

    /// <param name="start">A choice that serves every customer.</param>
    /// <param name="centre">The choice of smallest worst cost, and a proven lower bound for it.</param>
    /// <param name="cutoff">Only choices below this matter.</param>
    public PMedianResult Solve(int[] start, PMedianResult centre, double cutoff)
    {
        TryImprove(start);
        TryImprove(centre.Chosen);
        var (problem, from) = (part.Mean(), start);
        var most = double.PositiveInfinity;
        while (true)
        {
            var beatMean = (Math.Min(value, cutoff) - (weight * centre.Bound)) / (1 - weight);
            if (beatMean <= 0 || most <= centre.Bound)
                return new PMedianResult(best, value, Math.Min(value, cutoff));
            var answer = BranchAndBound.Solve(problem, from, clock, beatMean);
            if (answer.Value < problem.UnservedCost)
                TryImprove(answer.Chosen);
            var cut = Math.Min(value, cutoff);
            if (answer.Value >= beatMean || clock.Stopped)
                return new PMedianResult(best, value, Math.Min(cut, ((1 - weight) * answer.Bound) + (weight * centre.Bound)));
            most = Math.Min(part.RowCosts(answer.Chosen).Max(), Math.BitIncrement((cut - ((1 - weight) * answer.Bound)) / weight));
            problem = part.Mean(below: most);
            from = new[] { centre.Chosen, VertexSubstitution.Choose(problem, clock) }.MinBy(problem.Value)!;
        }
    }

    private void TryImprove(int[] chosen)
    {
        if (part.Value(objective, chosen) is var found && found < value)
            (best, value) = (chosen, found);
    }
}
