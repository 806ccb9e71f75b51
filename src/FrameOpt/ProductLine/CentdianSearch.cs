using FrameOpt.ProductLine.PMedian;

namespace FrameOpt.ProductLine;

/// <summary>The best blend of mean and worst cost within a part. It walks along the choices that are best in mean for a given worst cost,
/// from the largest
/// worst cost that could pay down, until no smaller worst cost could make up for the mean.</summary>
internal sealed class CentdianSearch(Subproblem part, double weight, SolverClock clock)
{
    private readonly ProductLineObjective objective = new ProductLineObjective.Blend(weight);
    private int[] best = [];
    private double value = double.PositiveInfinity;

    /// <param name="start">A choice that serves everybody.</param>
    /// <param name="centre">The choice of least worst cost, and what is proven of it.</param>
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
