namespace FrameOpt.Studies;

/// <summary>Customers that nothing tells apart: one outfit, one pilot mass.</summary>
/// <param name="Outfit">Which.</param>
/// <param name="PilotMassKilograms">Of each.</param>
/// <param name="Share">Of all of them together.</param>
/// <param name="Customers">Their numbers, ascending.</param>
public sealed record LineRow(int Outfit, double PilotMassKilograms, double Share, IReadOnlyList<int> Customers)
{
    /// <summary>All rows of some customers, by outfit and then by pilot mass.</summary>
    public static IReadOnlyList<LineRow> Of(IReadOnlyList<LineCustomer> customers) =>
    [
        .. Enumerable.Range(0, customers.Count)
            .GroupBy(c => (customers[c].Outfit, customers[c].PilotMassKilograms))
            .OrderBy(alike => alike.Key)
            .Select(alike => new LineRow(alike.Key.Outfit, alike.Key.PilotMassKilograms, alike.Sum(c => customers[c].Share), [.. alike])),
    ];
}
