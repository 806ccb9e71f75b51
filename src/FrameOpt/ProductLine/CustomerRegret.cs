namespace FrameOpt.ProductLine;

/// <summary>What a customer gives up by taking a variant of the line in place of the candidate that suits it best, "made to
/// measure".</summary>
/// <param name="Customer">Its number.</param>
/// <param name="Cost">With the line; infinite when no chosen variant is allowed.</param>
/// <param name="BestCandidate">The candidate of least cost for this customer, of equal ones the lowest; -1 when none is allowed.</param>
/// <param name="BestCost">With that candidate.</param>
public sealed record CustomerRegret(int Customer, double Cost, int BestCandidate, double BestCost)
{
    /// <summary>Cost with the line less cost made to measure: 0 or more; infinite when the line leaves the customer out, 0 when nothing
    /// could serve it.</summary>
    public double Regret => BestCandidate < 0 ? 0 : Cost - BestCost;

    /// <summary>Of every customer, in their order.</summary>
    public static IReadOnlyList<CustomerRegret> Of(ProductLineProblem problem, ProductLineSolution solution) =>
        [.. problem.Costs.Select((row, customer) => Of(customer, row, solution.CustomerCosts[customer]))];

    /// <summary>Of one customer, given all its costs.</summary>
    public static CustomerRegret Of(int customer, ReadOnlySpan<double> costs, double costWithLine)
    {
        var own = -1;
        for (var candidate = 0; candidate < costs.Length; candidate++)
        {
            if (costs[candidate] < (own < 0 ? double.PositiveInfinity : costs[own]))
                own = candidate;
        }

        return new CustomerRegret(customer, costWithLine, own, own < 0 ? double.PositiveInfinity : costs[own]);
    }

    /// <summary>The customers left with the largest cost, the worst first, of equal ones the lowest.</summary>
    public static IReadOnlyList<CustomerRegret> WorstServed(ProductLineProblem problem, ProductLineSolution solution, int count) =>
        [.. Of(problem, solution).OrderByDescending(regret => regret.Cost).Take(count)];
}
