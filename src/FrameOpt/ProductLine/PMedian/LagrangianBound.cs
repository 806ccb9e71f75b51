namespace FrameOpt.ProductLine.PMedian;

/// <summary>Lagrangian lower bound when some columns are chosen already and the rest must come from a list. Each row has a multiplier; the
/// reduced cost of a column is what it saves against the multipliers of all rows; the sum of the multipliers and of the smallest reduced
/// costs bounds every choice from below. The multipliers are improved by subgradient steps.</summary>
/// <remarks>Source: Lagrangean relaxation of the assignment constraints with subgradient steps; M. L. Fisher 1981, Management Science 27,
/// 1-18; J. E. Beasley 1993, European J. Operational Research 65, 383-399 (from memory).</remarks>
internal sealed class LagrangianBound
{
    private readonly PMedianProblem problem;
    private readonly Incumbent incumbent;
    private readonly int[] taken;
    private readonly double[] currentCosts;
    private readonly int wanted;
    private double[] reducedCosts = [];

    /// <param name="problem">All rows and columns.</param>
    /// <param name="incumbent">The best choice so far; the best columns of every step are tried as a new incumbent.</param>
    /// <param name="taken">Columns chosen already.</param>
    /// <param name="currentCosts">Cost of each row with the open columns.</param>
    /// <param name="columns">Columns that may still be chosen.</param>
    /// <param name="multipliers">Multipliers to start from.</param>
    public LagrangianBound(PMedianProblem problem, Incumbent incumbent, int[] taken, double[] currentCosts, int[] columns,
        double[] multipliers)
    {
        (this.problem, this.incumbent, this.taken, this.currentCosts) = (problem, incumbent, taken, currentCosts);
        wanted = Math.Min(problem.Count - taken.Length, columns.Length);
        (Columns, Multipliers) = (columns, [.. multipliers]);
        PMedianProblem.Lower(Multipliers, currentCosts);
    }

    /// <summary>Columns that may still belong to a better choice, smallest reduced cost first.</summary>
    public int[] Columns { get; private set; }

    /// <summary>Reduced cost of each of <see cref="Columns"/> at the best multipliers: 0 or less.</summary>
    public IReadOnlyList<double> ReducedCosts => reducedCosts;

    /// <summary>Best multipliers so far.</summary>
    public double[] Multipliers { get; private set; }

    /// <summary>Best bound so far.</summary>
    public double Value { get; private set; } = double.NegativeInfinity;

    /// <summary>Improves the multipliers and removes columns that cannot belong to a better choice.</summary>
    public void Improve(int steps, SolverClock clock)
    {
        var multipliers = (double[])Multipliers.Clone();
        var (length, idle) = (1.5, 0);
        for (var n = 0; n < steps && length > 0.02; n++)
        {
            var (bound, best) = Bound(multipliers);
            incumbent.TryImprove([.. taken, .. best.Select(place => Columns[place])]);
            idle = bound > Value + (1e-5 * Math.Abs(bound)) ? 0 : idle + 1;
            if (bound > Value)
            {
                (Value, Multipliers) = (bound, (double[])multipliers.Clone());
                FixByReducedCost(best);
            }

            if (Value >= incumbent.Cutoff || Columns.Length <= wanted || clock.Stopped)
                break;
            if (idle == 12)
                (length, idle, multipliers) = (length / 2, 0, (double[])Multipliers.Clone());
            else if (!SubgradientStep(multipliers, best, length * ((1.0001 * incumbent.Target) - bound)))
                break;
        }

        Bound(Multipliers);
        Columns = [.. Columns.Select((column, place) => (column, reducedCosts: reducedCosts[place])).OrderBy(pair => pair.reducedCosts)
            .ThenBy(pair => pair.column).Select(pair => pair.column)];
        Array.Sort(reducedCosts);
    }

    /// <summary>The sum of the multipliers and of the reduced costs of the best columns; stores the reduced costs of all.</summary>
    private (double Bound, int[] Best) Bound(double[] multipliers)
    {
        var all = PMedianProblem.Sum(multipliers);
        reducedCosts = new double[Columns.Length];
        for (var place = 0; place < reducedCosts.Length; place++)
            reducedCosts[place] = PMedianProblem.SumOfMinima(problem.Column(Columns[place]), multipliers) - all;
        var best = BestPlaces();
        return (all + best.Sum(place => reducedCosts[place]), best);
    }

    /// <summary>Indices of the columns with the smallest reduced costs, best first.</summary>
    private int[] BestPlaces()
    {
        var best = new List<int>(wanted + 1);
        for (var place = 0; place < reducedCosts.Length; place++)
        {
            if (best.Count == wanted && reducedCosts[place] >= reducedCosts[best[^1]])
                continue;
            var at = best.Count;
            while (at > 0 && reducedCosts[place] < reducedCosts[best[at - 1]])
                at--;
            best.Insert(at, place);
            if (best.Count > wanted)
                best.RemoveAt(wanted);
        }

        return [.. best];
    }

    /// <summary>Reduced-cost fixing: a column outside the best can enter only in place of the last of them, and is removed when even that
    /// reaches the cutoff.</summary>
    private void FixByReducedCost(int[] best)
    {
        var last = reducedCosts[best[^1]];
        var kept = Enumerable.Range(0, Columns.Length)
            .Where(place => reducedCosts[place] <= last || Value - last + reducedCosts[place] < incumbent.Cutoff).ToArray();
        if (kept.Length == Columns.Length)
            return;
        for (var i = 0; i < best.Length; i++)
            best[i] = Array.BinarySearch(kept, best[i]);
        Columns = [.. kept.Select(place => Columns[place])];
        reducedCosts = [.. kept.Select(place => reducedCosts[place])];
    }

    /// <summary>Raises the multipliers of rows that no best column serves and lowers those of rows served more than once.</summary>
    private bool SubgradientStep(double[] multipliers, int[] best, double distance)
    {
        var subgradient = new double[multipliers.Length];
        Array.Fill(subgradient, 1);
        foreach (var place in best)
        {
            var column = problem.Column(Columns[place]);
            for (var row = 0; row < subgradient.Length; row++)
                subgradient[row] -= column[row] < multipliers[row] ? 1 : 0;
        }

        var square = 0.0;
        for (var row = 0; row < subgradient.Length; row++)
        {
            if (subgradient[row] > 0 && multipliers[row] >= currentCosts[row])
                subgradient[row] = 0;
            square += subgradient[row] * subgradient[row];
        }

        if (square == 0)
            return false;
        for (var row = 0; row < multipliers.Length; row++)
            multipliers[row] = Math.Min(multipliers[row] + (distance / square * subgradient[row]), currentCosts[row]);
        return true;
    }
}
