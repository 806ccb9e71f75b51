namespace FrameOpt.Line;

/// <summary>Finds the best choice of columns and proves it.</summary>
/// <remarks>Branch and bound: of the columns that may still matter, the one of most worth is chosen or struck out, and so on, each part bounded by
/// <see cref="MedianBound"/>.</remarks>
internal sealed class MedianSearch
{
    private const int RootSteps = 500;
    private const int InnerSteps = 40;
    private readonly MedianProblem problem;
    private readonly MedianIncumbent incumbent;
    private readonly LineClock clock;

    private MedianSearch(MedianProblem problem, MedianIncumbent incumbent, LineClock clock) =>
        (this.problem, this.incumbent, this.clock) = (problem, incumbent, clock);

    public static long Nodes;
    public static int Left;
    public static double RootBound;

    /// <param name="problem">What to solve.</param>
    /// <param name="clock">When to stop.</param>
    /// <param name="beat">Only choices below this matter.</param>
    /// <param name="enough">When finite, any choice at or below this will do, and only those matter.</param>
    public static MedianAnswer Solve(MedianProblem problem, LineClock clock, double beat = double.PositiveInfinity, double enough = double.PositiveInfinity)
    {
        var incumbent = new MedianIncumbent(problem, SwapSearch.Choose(problem, clock), beat, enough);
        var bound = incumbent.Enough ? 0 : new MedianSearch(problem, incumbent, clock).FromRoot();
        return new MedianAnswer(incumbent.Chosen, incumbent.Value, Math.Clamp(bound, 0, incumbent.Value));
    }

    private double FromRoot()
    {
        var open = new double[problem.Rows];
        Array.Fill(open, problem.Unserved);
        var prices = (double[])open.Clone();
        foreach (var column in incumbent.Chosen)
            MedianProblem.Lower(prices, problem.Column(column));
        return Explore([], open, [.. Enumerable.Range(0, problem.Columns)], prices, RootSteps);
    }

    /// <summary>What is proven of all choices that hold the taken columns and otherwise only free ones.</summary>
    private double Explore(int[] taken, double[] paid, int[] free, double[] prices, int steps)
    {
        Nodes++;
        if (problem.Count - taken.Length == 1 || free.Length == 0)
            return Last(taken, paid, free);
        var bound = new MedianBound(problem, incumbent, taken, paid, free, prices);
        bound.Improve(steps, clock);
        if (taken.Length == 0) { Left = bound.Columns.Length; RootBound = bound.Value; }
        return bound.Value >= incumbent.Cut || incumbent.Enough || clock.Stopped ? bound.Value : Branch(taken, paid, bound);
    }

    private double Branch(int[] taken, double[] paid, MedianBound bound)
    {
        var proven = double.PositiveInfinity;
        var all = MedianProblem.Sum(bound.Prices);
        for (var i = 0; i < bound.Columns.Length; i++)
        {
            var rest = Math.Max(bound.Value, all + bound.Worth.Skip(i).Take(problem.Count - taken.Length).Sum());
            if (rest >= incumbent.Cut || incumbent.Enough || clock.Stopped)
                return Math.Min(proven, rest);
            var pays = (double[])paid.Clone();
            MedianProblem.Lower(pays, problem.Column(bound.Columns[i]));
            var part = Explore([.. taken, bound.Columns[i]], pays, bound.Columns[(i + 1)..], bound.Prices, InnerSteps);
            proven = Math.Min(proven, Math.Max(part, rest));
        }

        return proven;
    }

    /// <summary>One more column may be chosen: each is tried.</summary>
    private double Last(int[] taken, double[] paid, int[] free)
    {
        var least = taken.Length == 0 ? double.PositiveInfinity : MedianProblem.Sum(paid);
        int[]? best = taken.Length == 0 ? null : taken;
        foreach (var column in free)
        {
            var sum = MedianProblem.SumOfMinima(problem.Column(column), paid);
            if (sum < least)
                (least, best) = (sum, [.. taken, column]);
        }

        if (best is not null)
            incumbent.Offer(best);
        return least;
    }
}
