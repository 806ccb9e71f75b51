namespace FrameOpt.ProductLine.PMedian;

/// <summary>Greedy construction followed by vertex substitution: swaps one column for another while that lowers the sum.</summary>
/// <remarks>Source: M. B. Teitz and P. Bart 1968, Operations Research 16, 955-961; the gains and losses of all swaps in one pass after R.
/// A. Whitaker 1983, INFOR 21, 95-108, as described in M. G. C. Resende and R. F. Werneck 2007, European J. Operational Research 174, 54-68
/// (all from memory).</remarks>
internal static class VertexSubstitution
{
    /// <summary>Ties go to the lowest column.</summary>
    public static int[] Choose(PMedianProblem problem, SolverClock clock)
    {
        var chosen = Greedy(problem, clock);
        while (!clock.Stopped && BestSwap(problem, chosen) is (int place, int column))
            chosen[place] = column;
        return [.. chosen.Order()];
    }

    private static List<int> Greedy(PMedianProblem problem, SolverClock clock)
    {
        var chosen = new List<int>();
        var least = new double[problem.Rows];
        Array.Fill(least, problem.UnservedCost);
        while (chosen.Count < problem.Count && !(clock.Stopped && chosen.Count > 0))
        {
            int best = -1;
            var bestSum = double.PositiveInfinity;
            for (var column = 0; column < problem.Columns; column++)
            {
                var sum = chosen.Contains(column) ? double.PositiveInfinity : PMedianProblem.SumOfMinima(problem.Column(column), least);
                if (sum < bestSum)
                    (best, bestSum) = (column, sum);
            }

            chosen.Add(best);
            PMedianProblem.Lower(least, problem.Column(best));
        }

        return chosen;
    }

    /// <summary>The swap that lowers the sum most, or null.</summary>
    private static (int Place, int Column)? BestSwap(PMedianProblem problem, List<int> chosen)
    {
        var near = Nearest.Of(problem, chosen);
        var leaving = new double[chosen.Count];
        (int, int)? best = null;
        var bestChange = -1e-12 * PMedianProblem.Sum(near.First);
        for (var column = 0; column < problem.Columns; column++)
        {
            var change = near.Change(problem.Column(column), leaving);
            for (var place = 0; place < leaving.Length; place++)
            {
                if (change + leaving[place] < bestChange && !chosen.Contains(column))
                    (best, bestChange) = ((place, column), change + leaving[place]);
            }
        }

        return best;
    }

    /// <summary>For each row its cost, the index of the chosen column that serves it, and the cost without that column.</summary>
    private sealed record Nearest(double[] First, int[] Place, double[] Second)
    {
        public static Nearest Of(PMedianProblem problem, List<int> chosen)
        {
            var first = new double[problem.Rows];
            var second = new double[problem.Rows];
            Array.Fill(first, double.PositiveInfinity);
            Array.Fill(second, problem.UnservedCost);
            var place = new int[problem.Rows];
            for (var p = 0; p < chosen.Count; p++)
            {
                var column = problem.Column(chosen[p]);
                for (var row = 0; row < first.Length; row++)
                {
                    if (column[row] < first[row])
                        (second[row], first[row], place[row]) = (Math.Min(first[row], problem.UnservedCost), column[row], p);
                    else
                        second[row] = Math.Min(second[row], column[row]);
                }
            }

            return new Nearest(first, place, second);
        }

        /// <summary>Change of the sum when the column enters; in <paramref name="leaving"/> the further change when each chosen column
        /// leaves.</summary>
        public double Change(ReadOnlySpan<double> column, double[] leaving)
        {
            Array.Clear(leaving);
            var change = 0.0;
            for (var row = 0; row < column.Length; row++)
            {
                if (column[row] < First[row])
                    change += column[row] - First[row];
                else
                    leaving[Place[row]] += Math.Min(column[row], Second[row]) - First[row];
            }

            return change;
        }
    }
}
