namespace FrameOpt.ProductLine;

/// <summary>Says what a line cannot do.</summary>
public static class UnservedExplanation
{
    private const int NamesShown = 5;

    /// <summary>Sentences about customers that nobody can serve and about a line that leaves some out; none when all are served.</summary>
    /// <param name="problem">What was asked.</param>
    /// <param name="solution">What came out.</param>
    /// <param name="customers">The name of each customer.</param>
    public static IEnumerable<string> UnservedMessages(
        ProductLineProblem problem, ProductLineSolution solution, IReadOnlyList<string> customers)
    {
        if (solution.Unservable.Count > 0)
            yield return $"No candidate is allowed for {Names(solution.Unservable, customers)}: they are left out of the value. Widen the ranges or their limits.";
        if (solution.Unserved.Count == 0)
            yield break;
        var group = problem.Groups is null ? "" : " of one group";
        var variants = problem.Count == 1 ? "one candidate" : $"{problem.Count} candidates";
        var fact = solution.Proven ? $"No choice of {variants}{group} serves every customer"
            : $"No choice of {variants}{group} that serves every customer was found";
        yield return $"{fact}: the nearest leaves out {Names(solution.Unserved, customers)}. Allow more variants, or widen the limits of those customers.";
    }

    private static string Names(IReadOnlyList<int> numbers, IReadOnlyList<string> customers)
    {
        var shown = string.Join(", ", numbers.Take(NamesShown).Select(number => customers[number]));
        return numbers.Count > NamesShown ? $"{shown} and {numbers.Count - NamesShown} more" : shown;
    }
}

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
}
