using System.Globalization;
using Google.OrTools.Sat;

namespace FrameOpt.ProductLine.PMedian;

/// <summary>The choice among a few columns as a model for CP-SAT.</summary>
/// <remarks>For every row its distinct costs in order, and for every step a 0-1 variable "this row costs at least this": it may be 0 only
/// when a column at a lower cost is chosen. Source: S. García, M. Labbé and A. Marín 2011, INFORMS J. Computing 23, 546-556; G. Cornuéjols,
/// G. L. Nemhauser and L. A. Wolsey 1980 (from memory). Costs are whole multiples of a unit so small that rounding moves a sum by no more
/// than one part in 10^12.</remarks>
internal static class CpSatModel
{
    private const long Resolution = 1L << 45;

    /// <param name="problem">All rows and columns.</param>
    /// <param name="columns">Those that may be chosen.</param>
    /// <param name="incumbent">The best choice so far, given to the solver as a hint; a better one is offered to it.</param>
    /// <param name="clock">When to stop.</param>
    /// <returns>Proven lower bound for all choices among the columns.</returns>
    public static double Solve(PMedianProblem problem, int[] columns, Incumbent incumbent, SolverClock clock)
    {
        var unit = incumbent.Target / Resolution;
        var model = new CpModel();
        BoolVar[] takes = [.. columns.Select(column => model.NewBoolVar(column.ToString(CultureInfo.InvariantCulture)))];
        model.Add(LinearExpr.Sum(takes) <= problem.Count);
        for (var place = 0; place < columns.Length; place++)
            model.AddHint(takes[place], incumbent.Chosen.Contains(columns[place]));
        var steps = new List<BoolVar>();
        var lengths = new List<long>();
        var always = 0L;
        for (var row = 0; row < problem.Rows; row++)
            always += AddRow(model, [.. columns.Select(column => Units(problem.Column(column)[row], unit))], takes, steps, lengths);
        if (incumbent.IsFeasibilityQuestion)
            model.Add(LinearExpr.WeightedSum(steps, lengths) <= (long)(incumbent.Cutoff / unit) - always);
        else
            model.Minimize(LinearExpr.WeightedSum(steps, lengths));
        using var solver = new CpSolver { StringParameters = Parameters(clock) };
        using var stopped = clock.Cancel.Register(solver.StopSearch);
        var status = solver.Solve(model);
        if (status is CpSolverStatus.Optimal or CpSolverStatus.Feasible)
            incumbent.TryImprove([.. columns.Where((_, place) => solver.BooleanValue(takes[place]))]);
        if (incumbent.IsFeasibilityQuestion)
            return status == CpSolverStatus.Infeasible ? incumbent.Cutoff : 0;
        return (always + solver.BestObjectiveBound - problem.Rows) * unit;
    }

    private static long Units(double cost, double unit) => (long)Math.Min(Math.Round(cost / unit), Resolution + 1L);

    /// <summary>The steps of one row, and the cost it has in any case.</summary>
    private static long AddRow(CpModel model, long[] costs, BoolVar[] takes, List<BoolVar> steps, List<long> lengths)
    {
        long? lower = null;
        BoolVar? paysMore = null;
        foreach (var level in Enumerable.Range(0, costs.Length).GroupBy(place => costs[place]).OrderBy(level => level.Key))
        {
            if (lower is { } below)
            {
                lengths.Add(level.Key - below);
                steps.Add(paysMore!);
            }

            lower = level.Key;
            var served = level.Select(place => (ILiteral)takes[place]);
            var next = model.NewBoolVar("");
            model.AddBoolOr(paysMore is null ? served.Append(next) : served.Append(next).Append(paysMore.Not()));
            paysMore = next;
        }

        model.AddImplication(paysMore!, model.FalseLiteral());
        return costs.Min();
    }

    private static string Parameters(SolverClock clock)
    {
        var parameters = "num_workers:1,random_seed:0,linearization_level:2";
        return double.IsFinite(clock.SecondsLeft)
            ? parameters + ",max_time_in_seconds:" + Math.Max(0, clock.SecondsLeft).ToString("R", CultureInfo.InvariantCulture)
            : parameters;
    }
}
