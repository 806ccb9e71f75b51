using FrameOpt.Studies;

namespace FrameOpt.Reports;

/// <summary>One customer and what it gets.</summary>
/// <param name="Customer">Who.</param>
/// <param name="Served">What.</param>
internal sealed record CustomerLine(LineCustomer Customer, LineServed Served)
{
    /// <summary>All customers, in the study's order.</summary>
    public static IReadOnlyList<CustomerLine> Of(LineResult result)
    {
        var lines = new CustomerLine[result.Setting.Customers.Count];
        foreach (var served in result.Served)
        {
            foreach (var c in served.Row.Customers)
                lines[c] = new CustomerLine(result.Setting.Customers[c], served);
        }

        return lines;
    }
}
