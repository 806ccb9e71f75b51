using System.Text;
using System.Xml.Linq;
using FrameOpt.Reports.Page;
using FrameOpt.Running;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>Cards to print, a sheet of A4 for each customer, in one page that needs nothing else.</summary>
/// <param name="Line">The line they are served from.</param>
/// <param name="Customers">One or more.</param>
/// <param name="Info">Where and with what it was made.</param>
/// <param name="Scales">What two scales read of the one customer, or null.</param>
public sealed record CustomerCards(
    ProductLineResult Line, IReadOnlyList<CustomerFit> Customers, RunInfo Info, ScalesOnCustomer? Scales = null)
{
    /// <summary>Most cards of one file.</summary>
    public const int Most = 1_000;

    /// <summary>Writes the page; the same bytes for the same line.</summary>
    public void Write(Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true);
        writer.Write(PageTemplate.Of($"{Line.Study.FullTitle} - FrameOpt customer cards", PageTemplate.ReadResource("cards.css"),
            script: null,
            [new XElement("main", new XElement("h1", "Customer cards"), Customers.Select(fit => CustomerCard.Of(this, fit)))]));
    }

    /// <summary>A line for each customer, and what the scales say.</summary>
    public IEnumerable<string> Summary()
    {
        foreach (var fit in Customers)
            yield return $"{fit.Customer.Name}: {CustomerCard.Summary(Line, fit)}";
        foreach (var sentence in Scales is { } scales ? CustomerCard.Scales(Line, Customers[0], scales) : [])
            yield return sentence;
    }
}
