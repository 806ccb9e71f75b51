namespace FrameOpt.ProductLine.PMedian;

/// <summary>Finds the best choice of columns and proves it.</summary>
/// <remarks>Branch and bound: branch on the column with the largest reduced-cost saving, taken or excluded, each subproblem bounded by
/// <see cref="LagrangianBound"/>. Feasibility questions, for which that bound is weak, go to <see cref="CpSatModel"/> (CP-SAT) after the
/// first bound. docs/speed.md has the measurements behind this division.</remarks>
internal sealed class BranchAndBound
{
    private const int RootSteps = 500;
    private const int InnerSteps = 40;
    private readonly PMedianProblem problem;
    private readonly Incumbent incumbent;
    private readonly SolverClock clock;

    private BranchAndBound(PMedianProblem problem, Incumbent incumbent, SolverClock clock) =>
        (this.problem, this.incumbent, this.clock) = (problem, incumbent, clock);

    private bool Over => incumbent.TargetMet || clock.Stopped;

    /// <summary>The choice of least value.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="start">A first choice, from <see cref="VertexSubstitution"/>.</param>
    /// <param name="clock">When to stop.</param>
    /// <param name="cutoff">Only choices below this matter.</param>
    public static PMedianResult Solve(PMedianProblem problem, int[] start, SolverClock clock, double cutoff = double.PositiveInfinity)
    {
        var incumbent = new Incumbent(problem, start, cutoff, double.PositiveInfinity);
        return new BranchAndBound(problem, incumbent, clock).Answer();
    }

    /// <summary>Whether some choice has a value of at most <paramref name="enough"/>. If there is one, the value of the result is at most
    /// that; if not, its bound is above.</summary>
    public static PMedianResult FindAtMost(PMedianProblem problem, int[] start, double enough, SolverClock clock)
    {
        var incumbent = new Incumbent(problem, start, double.PositiveInfinity, enough);
        return new BranchAndBound(problem, incumbent, clock).Answer();
    }

    private PMedianResult Answer()
    {
        var bound = incumbent.TargetMet ? 0 : FromRoot();
        return new PMedianResult(incumbent.Chosen, incumbent.Value, Math.Clamp(Math.Min(bound, incumbent.Cutoff), 0, incumbent.Value));
    }

    private double FromRoot()
    {
        var paid = new double[problem.Rows];
        Array.Fill(paid, problem.UnservedCost);
        var multipliers = (double[])paid.Clone();
        foreach (var column in incumbent.Chosen)
            PMedianProblem.Lower(multipliers, problem.Column(column));
        return Explore([], paid, [.. Enumerable.Range(0, problem.Columns)], multipliers, RootSteps);
    }

    /// <summary>Proven lower bound for all choices of the taken columns and some of the free ones.</summary>
    private double Explore(int[] taken, double[] paid, int[] free, double[] multipliers, int steps)
    {
        var wanted = problem.Count - taken.Length;
        if (free.Length <= wanted)
            return TakeAll(taken, free);
        if (wanted == 1)
            return Last(taken, paid, free);
        var bound = new LagrangianBound(problem, incumbent, taken, paid, free, multipliers);
        bound.Improve(steps, clock);
        if (bound.Value >= incumbent.Cutoff || Over)
            return bound.Value;
        if (bound.Columns.Length <= wanted)
            return TakeAll(taken, bound.Columns);
        // CP-SAT is machine code, which a browser cannot run: there the branches answer these questions too, slower.
        return incumbent.IsFeasibilityQuestion && !OperatingSystem.IsBrowser()
            ? Math.Max(bound.Value, CpSatModel.Solve(problem, bound.Columns, incumbent, clock)) : Branch(taken, paid, bound);
    }

    /// <summary>Branches on one column after another, excluding those branched on before.</summary>
    private double Branch(int[] taken, double[] paid, LagrangianBound bound)
    {
        var proven = double.PositiveInfinity;
        var all = PMedianProblem.Sum(bound.Multipliers);
        var reducedCosts = bound.Columns.Zip(bound.ReducedCosts).ToDictionary(pair => pair.First, pair => pair.Second);
        var free = bound.Columns.ToList();
        foreach (var column in BranchingColumns(paid, bound.Columns))
        {
            free.Remove(column);
            var rest = Math.Max(bound.Value, all + reducedCosts[column] + free
                .Take(problem.Count - taken.Length - 1).Sum(other => reducedCosts[other]));
            if (rest >= incumbent.Cutoff || Over)
                return Math.Min(proven, rest);
            var pays = (double[])paid.Clone();
            PMedianProblem.Lower(pays, problem.Column(column));
            var part = Explore([.. taken, column], pays, [.. free], bound.Multipliers, InnerSteps);
            proven = Math.Min(proven, Math.Max(part, rest));
        }

        return proven;
    }

    /// <summary>Columns of which one must be taken: those that serve the unserved row with the fewest, or all when every row is
    /// served.</summary>
    private int[] BranchingColumns(double[] paid, int[] columns)
    {
        var fewest = columns;
        for (var row = 0; row < paid.Length; row++)
        {
            if (paid[row] >= problem.UnservedCost && columns.Count(column =>
                problem.Column(column)[row] < problem.UnservedCost) is var count && count < fewest.Length)
                fewest = [.. columns.Where(column => problem.Column(column)[row] < problem.UnservedCost)];
        }

        return fewest;
    }

    /// <summary>Takes all columns, since no subset of them is better.</summary>
    private double TakeAll(int[] taken, int[] free)
    {
        int[] all = [.. taken, .. free];
        if (all.Length == 0)
            return double.PositiveInfinity;
        incumbent.TryImprove(all);
        return problem.Value(all);
    }

    /// <summary>Chooses the one remaining column by trying each.</summary>
    private double Last(int[] taken, double[] paid, int[] free)
    {
        var (least, best) = (double.PositiveInfinity, free[0]);
        foreach (var column in free)
        {
            var sum = PMedianProblem.SumOfMinima(problem.Column(column), paid);
            if (sum < least)
                (least, best) = (sum, column);
        }

        incumbent.TryImprove([.. taken, best]);
        return least;
    }
}

/// <summary>The best columns found and a proven lower bound.</summary>
/// <param name="Chosen">Columns, ascending.</param>
/// <param name="Value">Value of the chosen columns.</param>
/// <param name="Bound">Lower bound on the value of all choices, or the cutoff where that is smaller.</param>
internal sealed record PMedianResult(int[] Chosen, double Value, double Bound);
