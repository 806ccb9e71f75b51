namespace FrameOpt.Line;

/// <summary>Makes a solution of a choice: who gets what.</summary>
internal static class LineAnswer
{
    /// <param name="problem">The whole.</param>
    /// <param name="servable">Customers that some candidate is allowed for.</param>
    /// <param name="chosen">Candidates; may be none.</param>
    /// <param name="bound">Proven.</param>
    /// <param name="stop">Why the search ended.</param>
    public static LineSolution Of(LineProblem problem, int[] servable, int[] chosen, double bound, LineStop stop)
    {
        int[] assigned = [.. problem.Costs.Select(row => Assign(row, chosen))];
        double[] costs = [.. assigned.Select((candidate, i) => candidate < 0 ? double.PositiveInfinity : problem.Costs[i][candidate])];
        return new LineSolution
        {
            Chosen = [.. assigned.Where(candidate => candidate >= 0).Distinct().Order()],
            Assigned = assigned,
            CustomerCosts = costs,
            Value = servable.Length == 0 ? double.PositiveInfinity
                : LineValue.Of(problem.Objective, [.. servable.Select(i => problem.Shares[i])], [.. servable.Select(i => costs[i])]),
            Bound = bound,
            Stop = stop,
            Unservable = [.. Enumerable.Range(0, assigned.Length).Except(servable)],
            LeftOut = [.. servable.Where(i => assigned[i] < 0)],
        };
    }

    private static int Assign(double[] costs, int[] chosen)
    {
        var best = -1;
        foreach (var candidate in chosen.Order())
        {
            if (costs[candidate] < (best < 0 ? double.PositiveInfinity : costs[best]))
                best = candidate;
        }

        return best;
    }
}
