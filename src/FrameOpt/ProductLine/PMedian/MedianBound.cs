namespace FrameOpt.ProductLine.PMedian;

/// <summary>How small the sum can be at least when some columns are chosen already and the rest must come from a list. Each row
/// offers a price for being served; a column's worth is what it saves against the prices of all rows; no choice can beat the prices plus the
/// worth of the best columns. Prices are improved step by step.</summary>
/// <remarks>Source: Lagrangean relaxation of the assignment constraints with subgradient steps; M. L. Fisher 1981, Management Science 27, 1-18;
/// J. E. Beasley 1993, European J. Operational Research 65, 383-399 (from memory).</remarks>
internal sealed class MedianBound
{
    private readonly MedianProblem problem;
    private readonly MedianIncumbent incumbent;
    private readonly int[] taken;
    private readonly double[] ceiling;
    private readonly int wanted;
    private double[] worth = [];

    /// <param name="problem">All rows and columns.</param>
    /// <param name="incumbent">The best choice so far; the best columns of every step are offered to it, for they may make a better one.</param>
    /// <param name="taken">Columns chosen already.</param>
    /// <param name="ceiling">What each row pays with those.</param>
    /// <param name="columns">What may be chosen still.</param>
    /// <param name="prices">To start from.</param>
    public MedianBound(MedianProblem problem, MedianIncumbent incumbent, int[] taken, double[] ceiling, int[] columns, double[] prices)
    {
        (this.problem, this.incumbent, this.taken, this.ceiling) = (problem, incumbent, taken, ceiling);
        wanted = Math.Min(problem.Count - taken.Length, columns.Length);
        (Columns, Prices) = (columns, [.. prices]);
        MedianProblem.Lower(Prices, ceiling);
    }

    /// <summary>What may still belong to a better choice, the most worth first.</summary>
    public int[] Columns { get; private set; }

    /// <summary>The worth of each of <see cref="Columns"/> at the best prices: 0 or less.</summary>
    public IReadOnlyList<double> Worth => worth;

    /// <summary>Best prices so far.</summary>
    public double[] Prices { get; private set; }

    /// <summary>Best bound so far.</summary>
    public double Value { get; private set; } = double.NegativeInfinity;

    /// <summary>Improves the prices and strikes out columns that cannot belong to a better choice.</summary>
    public void Improve(int steps, LineClock clock)
    {
        var prices = (double[])Prices.Clone();
        var (length, idle) = (1.5, 0);
        for (var n = 0; n < steps && length > 0.02; n++)
        {
            var (bound, best) = Bound(prices);
            incumbent.Offer([.. taken, .. best.Select(place => Columns[place])]);
            idle = bound > Value + (1e-5 * Math.Abs(bound)) ? 0 : idle + 1;
            if (bound > Value)
            {
                (Value, Prices) = (bound, (double[])prices.Clone());
                StrikeOut(best);
            }

            if (Value >= incumbent.Cut || Columns.Length <= wanted || clock.Stopped)
                break;
            if (idle == 12)
                (length, idle, prices) = (length / 2, 0, (double[])Prices.Clone());
            else if (!Step(prices, best, length * ((1.0001 * incumbent.Target) - bound)))
                break;
        }

        Bound(Prices);
        Columns = [.. Columns.Select((column, place) => (column, worth: worth[place])).OrderBy(pair => pair.worth).ThenBy(pair => pair.column).Select(pair => pair.column)];
        Array.Sort(worth);
    }

    /// <summary>The sum of prices and the worth (0 or less) of the best columns; leaves the worth of all.</summary>
    private (double Bound, int[] Best) Bound(double[] prices)
    {
        var all = MedianProblem.Sum(prices);
        worth = new double[Columns.Length];
        for (var place = 0; place < worth.Length; place++)
            worth[place] = MedianProblem.SumOfMinima(problem.Column(Columns[place]), prices) - all;
        var best = LeastPlaces();
        return (all + best.Sum(place => worth[place]), best);
    }

    /// <summary>Places of the wanted columns of most worth, best first.</summary>
    private int[] LeastPlaces()
    {
        var best = new List<int>(wanted + 1);
        for (var place = 0; place < worth.Length; place++)
        {
            if (best.Count == wanted && worth[place] >= worth[best[^1]])
                continue;
            var at = best.Count;
            while (at > 0 && worth[place] < worth[best[at - 1]])
                at--;
            best.Insert(at, place);
            if (best.Count > wanted)
                best.RemoveAt(wanted);
        }

        return [.. best];
    }

    /// <summary>A column outside the best can enter only in place of the last of them: struck out when even that reaches the cut.</summary>
    private void StrikeOut(int[] best)
    {
        var last = worth[best[^1]];
        var kept = Enumerable.Range(0, Columns.Length).Where(place => worth[place] <= last || Value - last + worth[place] < incumbent.Cut).ToArray();
        if (kept.Length == Columns.Length)
            return;
        for (var i = 0; i < best.Length; i++)
            best[i] = Array.BinarySearch(kept, best[i]);
        Columns = [.. kept.Select(place => Columns[place])];
        worth = [.. kept.Select(place => worth[place])];
    }

    /// <summary>Raises the prices of rows that no best column serves, lowers those of rows served more than once.</summary>
    private bool Step(double[] prices, int[] best, double distance)
    {
        var slope = new double[prices.Length];
        Array.Fill(slope, 1);
        foreach (var place in best)
        {
            var column = problem.Column(Columns[place]);
            for (var row = 0; row < slope.Length; row++)
                slope[row] -= column[row] < prices[row] ? 1 : 0;
        }

        var square = 0.0;
        for (var row = 0; row < slope.Length; row++)
        {
            if (slope[row] > 0 && prices[row] >= ceiling[row])
                slope[row] = 0;
            square += slope[row] * slope[row];
        }

        if (square == 0)
            return false;
        for (var row = 0; row < prices.Length; row++)
            prices[row] = Math.Min(prices[row] + (distance / square * slope[row]), ceiling[row]);
        return true;
    }
}
