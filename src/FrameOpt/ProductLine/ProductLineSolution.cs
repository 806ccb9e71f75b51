using FrameOpt.ProductLine.PMedian;

namespace FrameOpt.ProductLine;

/// <summary>The line chosen: which candidates to make, who gets which, and what is proven of it.</summary>
public sealed record ProductLineSolution
{
    /// <summary>The candidates to make, ascending; those that nobody would get are left out.</summary>
    public required IReadOnlyList<int> Chosen { get; init; }

    /// <summary>The candidate of each customer: of the chosen the one of least cost, of equal ones the lowest; -1 when none is allowed for
    /// it.</summary>
    public required IReadOnlyList<int> Assigned { get; init; }

    /// <summary>What each customer is left with; infinite when no chosen candidate is allowed for it.</summary>
    public required IReadOnlyList<double> CustomerCosts { get; init; }

    /// <summary>The objective over all customers that some candidate is allowed for; infinite when some of those are left out.</summary>
    public required double Value { get; init; }

    /// <summary>No choice has a smaller value. Infinite when it is proven that no choice serves all.</summary>
    public required double Bound { get; init; }

    /// <summary>Why the search ended.</summary>
    public required ProductLineStopReason Stop { get; init; }

    /// <summary>Customers that no candidate at all is allowed for: they do not enter the value.</summary>
    public required IReadOnlyList<int> Unservable { get; init; }

    /// <summary>Customers that some candidate could serve but none of the chosen does: empty unless <see cref="Feasible"/> is
    /// false.</summary>
    public required IReadOnlyList<int> Unserved { get; init; }

    /// <summary>Whether every customer that can be served is. When not, the chosen are the nearest miss: as few customers left out as could
    /// be found.</summary>
    public bool Feasible => Unserved.Count == 0 && Chosen.Count > 0;

    /// <summary>How much smaller the value of an unknown choice could be; 0 when proven best.</summary>
    public double Gap => Feasible ? Value - Bound : 0;

    /// <summary>Whether the choice is proven best, or, when not feasible, that no choice serves all and none leaves out fewer.</summary>
    public bool Proven => Stop == ProductLineStopReason.Proven;
}
