using FrameOpt.Line;

namespace FrameOpt.Studies;

/// <summary>What a study asks of a product line: how many fixed geometries, for whom, out of which.</summary>
/// <param name="Count">How many geometries to make, 1 to <see cref="MostGeometries"/>.</param>
/// <param name="Objective">What to make small of the customers' costs.</param>
/// <param name="Goal">The response that is a customer's cost; one to be high costs its shortfall from the best any candidate gives that customer.</param>
/// <param name="Options">What customers choose; may be none.</param>
/// <param name="Outfits">Every combination of choices, the last option changing first; one when there are no options.</param>
/// <param name="Customers">One or more.</param>
public sealed record LineSetting(
    int Count, LineObjective Objective, StudyObjective Goal, IReadOnlyList<LineOption> Options, IReadOnlyList<LineOutfit> Outfits, IReadOnlyList<LineCustomer> Customers)
{
    /// <summary>A letter for each.</summary>
    public const int MostGeometries = 26;

    /// <summary>Up to how many geometries the gain of each further one is worked out.</summary>
    public int UpTo { get; init; } = Count;

    /// <summary>True when every design of the grid may be chosen, false for the front of the study's own customer.</summary>
    public bool FromGrid { get; init; }

    /// <summary>What all geometries have alike.</summary>
    public LineCommon Common { get; init; }

    /// <summary>Lateral offsets are multiples of this, in m; null when any level may be taken.</summary>
    public double? HolePitchMetres { get; init; }

    /// <summary>For each number of geometries; null for as long as a proof takes.</summary>
    public TimeSpan? Time { get; init; }

    /// <summary>Where the customers are from, in words.</summary>
    public string CustomersWords { get; init; } = "";
}
