using FrameOpt.ProductLine.PMedian;

namespace FrameOpt.ProductLine;

/// <summary>The best blend of mean and worst cost within a part. It walks along the choices that are best in mean for a given worst cost, from the largest
/// worst cost that could pay down, until no smaller worst cost could make up for the mean.</summary>
internal sealed class BlendSearch(LinePart part, double weight, LineClock clock)
{
    private readonly LineObjective objective = new LineObjective.Blend(weight);
    private int[] best = [];
    private double value = double.PositiveInfinity;

    /// <param name="start">A choice that serves everybody.</param>
    /// <param name="centre">The choice of least worst cost, and what is proven of it.</param>
    /// <param name="beat">Only choices below this matter.</param>
    public MedianAnswer Solve(int[] start, MedianAnswer centre, double beat)
    {
        Offer(start);
        Offer(centre.Chosen);
        var (problem, from) = (part.Mean(), start);
        var most = double.PositiveInfinity;
        while (true)
        {
            var beatMean = (Math.Min(value, beat) - (weight * centre.Bound)) / (1 - weight);
            if (beatMean <= 0 || most <= centre.Bound)
                return new MedianAnswer(best, value, Math.Min(value, beat));
            var answer = MedianSearch.Solve(problem, from, clock, beatMean);
            if (answer.Value < problem.Unserved)
                Offer(answer.Chosen);
            var cut = Math.Min(value, beat);
            if (answer.Value >= beatMean || clock.Stopped)
                return new MedianAnswer(best, value, Math.Min(cut, ((1 - weight) * answer.Bound) + (weight * centre.Bound)));
            most = Math.Min(part.Paid(answer.Chosen).Max(), Math.BitIncrement((cut - ((1 - weight) * answer.Bound)) / weight));
            problem = part.Mean(below: most);
            from = new[] { centre.Chosen, SwapSearch.Choose(problem, clock) }.MinBy(problem.Value)!;
        }
    }

    private void Offer(int[] chosen)
    {
        if (part.Value(objective, chosen) is var found && found < value)
            (best, value) = (chosen, found);
    }
}
