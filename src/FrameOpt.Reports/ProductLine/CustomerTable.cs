using CsvHelper;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>customers.csv: who gets which geometry, and what would have suited them best.</summary>
public static class CustomerTable
{
    /// <summary>Writes one row for each customer, UTF-8, units in the header, plain decimal numbers, nothing where there is no
    /// number.</summary>
    /// <param name="result">Of the line.</param>
    /// <param name="stream">Left open.</param>
    public static void Write(ProductLineResult result, Stream stream)
    {
        using var csv = CsvWriter.Create(stream, CsvWriterOptions.Default with { NewLine = "\n" }, leaveOpen: true);
        var columns = CustomerColumns.Of(result);
        foreach (var column in columns)
            csv.WriteField(TextSanitizer.ForCsv(column.Header));
        csv.EndRecord();
        foreach (var line in CustomerAssignment.Of(result))
        {
            foreach (var column in columns)
                csv.WriteField(column.Value(line) switch
                {
                    double number =>
                    double.IsFinite(number) ? PlainNumber.Text(number) : "",
                    var text => TextSanitizer.ForCsv((string)text)
                });
            csv.EndRecord();
        }
    }
}

/// <summary>One customer and what it gets.</summary>
/// <param name="Customer">Who.</param>
/// <param name="Assignments">What.</param>
internal sealed record CustomerAssignment(ProductLineCustomer Customer, SegmentAssignment Assignments)
{
    /// <summary>All customers, in the study's order.</summary>
    public static IReadOnlyList<CustomerAssignment> Of(ProductLineResult result)
    {
        var lines = new CustomerAssignment[result.Setting.Customers.Count];
        foreach (var served in result.Assignments)
        {
            foreach (var c in served.Row.Customers)
                lines[c] = new CustomerAssignment(result.Setting.Customers[c], served);
        }

        return lines;
    }
}
