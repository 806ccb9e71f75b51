using FrameOpt.ProductLine.PMedian;

namespace FrameOpt.ProductLine;

/// <summary>The best choice within one part for each objective, all by way of <see cref="MedianSearch"/>.</summary>
internal sealed class PartSearch(LinePart part, LineObjective objective, LineClock clock)
{
    /// <summary>The best choice, or at least what is proven of those below <paramref name="beat"/>.</summary>
    /// <param name="start">A choice that serves everybody.</param>
    /// <param name="beat">Only choices below this matter.</param>
    public MedianAnswer Solve(int[] start, double beat) => objective switch
    {
        LineObjective.Mean or LineObjective.Blend { WorstWeight: 0 } => MedianSearch.Solve(part.Mean(), start, clock, beat),
        LineObjective.Blend { WorstWeight: 1 } => LeastLevel(start, beat, new LineObjective.Worst()),
        LineObjective.Blend { WorstWeight: var weight } =>
            new BlendSearch(part, weight, clock).Solve(start, LeastLevel(start, double.PositiveInfinity, new LineObjective.Worst()), beat),
        _ => LeastLevel(start, beat, objective),
    };

    /// <summary>The smallest cost level that can be kept by enough customers, by halving the levels that are in question.</summary>
    /// <remarks>Source: E. Minieka 1970, SIAM Review 12, 138-139, the p-centre by a sequence of covering problems (from memory).</remarks>
    private MedianAnswer LeastLevel(int[] start, double beat, LineObjective of)
    {
        var (chosen, value) = (start, part.Value(of, start));
        var levels = part.Levels(LineValue.Of(of, part.Shares, part.RowMinima), Math.Min(value, beat));
        var (open, end) = (0, levels.Length - (levels.Length > 0 && levels[^1] >= Math.Min(value, beat) ? 1 : 0));
        while (open < end && !clock.Stopped)
        {
            var middle = (open + end) / 2;
            var (problem, enough) = of is LineObjective.Percentile { Part: < 1 and var kept }
                ? (part.ShareAbove(levels[middle]), 1 - kept + LineValue.ShareRounding) : (part.NumberAbove(levels[middle]), 0.5);
            var (smaller, columns) = MedianReduction.Of(problem);
            var found = MedianSearch.Ask(smaller, SwapSearch.Choose(smaller, clock), enough, clock);
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

        return new MedianAnswer(chosen, value, open < levels.Length ? Math.Min(levels[open], value) : Math.Min(beat, value));
    }
}
