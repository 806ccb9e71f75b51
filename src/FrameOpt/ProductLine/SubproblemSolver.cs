using FrameOpt.ProductLine.PMedian;

namespace FrameOpt.ProductLine;

/// <summary>The best choice within one part for each objective, all by way of <see cref="BranchAndBound"/>.</summary>
internal sealed class SubproblemSolver(Subproblem part, ProductLineObjective objective, SolverClock clock)
{
    /// <summary>The best choice, or at least what is proven of those below <paramref name="cutoff"/>.</summary>
    /// <param name="start">A choice that serves everybody.</param>
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

    /// <summary>The smallest cost level that can be kept by enough customers, by halving the levels that are in question.</summary>
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
