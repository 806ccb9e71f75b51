namespace FrameOpt.ProductLine;

/// <summary>Explains which customers a product line cannot serve.</summary>
public static class UnservedExplanation
{
    private const int NamesShown = 5;

    /// <summary>Sentences about customers that no candidate can serve and about a line that leaves some out; none when all are
    /// served.</summary>
    /// <param name="solution">The solution.</param>
    /// <param name="customers">The name of each customer.</param>
    /// <param name="count">How many variants could be chosen.</param>
    /// <param name="ofOneGroup">True when they had to be of one group.</param>
    /// <param name="fixedCount">How many others are in the line whatever is chosen.</param>
    public static IEnumerable<string> UnservedMessages(
        ProductLineSolution solution, IReadOnlyList<string> customers, int count, bool ofOneGroup, int fixedCount = 0)
    {
        if (solution.Unservable.Count > 0)
            yield return $"No candidate is allowed for {Names(solution.Unservable, customers)}, left out of the value. "
                + "Widen the ranges or their limits.";
        if (solution.SetAside.Count > 0)
            yield return $"Left out, because not all need be served: {Names(solution.SetAside, customers)}.";
        if (solution.Unserved.Count == 0)
            yield break;
        if (count == 0)
        {
            yield return $"The fixed variants leave unserved {Names(solution.Unserved, customers)}. Allow further variants, or widen the "
                + "limits of those customers.";
            yield break;
        }

        var group = ofOneGroup ? " of one group" : "";
        var variants = (count == 1 ? "one candidate" : $"{count} candidates") + group + (fixedCount > 0 ? " beside the fixed ones" : "");
        var fact = solution.Proven ? $"No choice of {variants} serves every customer"
            : $"No choice of {variants} that serves every customer was found";
        yield return $"{fact}: the closest leaves unserved {Names(solution.Unserved, customers)}. "
            + "Allow more variants, or widen the limits of those customers.";
    }

    private static string Names(IReadOnlyList<int> numbers, IReadOnlyList<string> customers)
    {
        var shown = string.Join(", ", numbers.Take(NamesShown).Select(number => customers[number]));
        return numbers.Count > NamesShown ? FormattableString.Invariant($"{shown} and {numbers.Count - NamesShown:N0} more") : shown;
    }
}

/// <summary>Regret of a customer: cost of the assigned variant less cost of the customer's own best candidate.</summary>
/// <param name="Customer">Index of the customer.</param>
/// <param name="Cost">Cost with the line; infinite when no chosen variant is allowed.</param>
/// <param name="BestCandidate">The candidate of least cost for this customer, the lowest index in case of a tie; -1 when none is
/// allowed.</param>
/// <param name="BestCost">Cost with that candidate.</param>
public sealed record CustomerRegret(int Customer, double Cost, int BestCandidate, double BestCost)
{
    /// <summary>Cost with the line less cost with the best candidate: at least 0; infinite when the line leaves the customer out, not a
    /// number when nothing could serve it.</summary>
    public double Regret => BestCandidate < 0 ? double.NaN : Cost - BestCost;

    /// <summary>The regret of one customer, given all its costs.</summary>
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
