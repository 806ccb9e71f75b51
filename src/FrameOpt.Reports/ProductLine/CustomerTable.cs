using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>Who gets which geometry, and what would have suited them best: the same columns in customers.csv and on a sheet.</summary>
internal static class CustomerTable
{
    /// <summary>One row for each customer, in the study's order.</summary>
    public static Table Of(ProductLineResult result) => Of(result, Assignments(result));

    /// <summary>The customers left with most, or all in the study's order if there are no more.</summary>
    public static Table WorstServed(ProductLineResult result, int count)
    {
        var all = Assignments(result);
        return Of(result, all.Count <= count ? all : [.. all.OrderByDescending(customer => customer.Served.Cost).Take(count)]);
    }

    private static Table Of(ProductLineResult result, IReadOnlyList<Assignment> rows)
    {
        var (setting, response) = (result.Setting, result.Setting.CostResponse.Response);
        var format = NumberFormat.FormatCode(response.Unit);
        return new(
            [
                Column.OfTexts("name", row => rows[row].Customer.Name),
                Column.OfNumbers("pilot_mass", "kg", "0.0", row => rows[row].Customer.PilotMassKilograms),
                .. setting.Options.Select((option, o) => Column.OfTexts(option.Name,
                    row => setting.Configurations[rows[row].Customer.Configuration].Choices[o])),
                Column.OfTexts("propeller_turns",
                    row => StudyText.RotationText(setting.Configurations[rows[row].Customer.Configuration].Rotation)),
                Column.OfNumbers("share", Column.GeneralFormat, row => rows[row].Customer.Share),
                Column.OfTexts("geometry", row => rows[row].Served.Geometry < 0 ? "none"
                    : ProductLineText.GeometryName(result, rows[row].Served.Geometry)),
                Column.OfNumbers(setting.CostResponse.Maximise ? $"shortfall_of_{response.Name}" : response.Name, response.Unit, format,
                    row => rows[row].Served.Cost),
                Column.OfNumbers("made_to_measure", response.Unit, format, row => rows[row].Served.BestCost),
                Column.OfNumbers("regret", response.Unit, format, row => rows[row].Served.Regret),
                .. !setting.CostResponse.Maximise && setting.CostResponse.Response.Entry == MissionQuantity.EffortWorst
                    ? Array.Empty<Column>()
                    : [Column.OfNumbers("effort_worst", NumberFormat.FormatCode(""), row => rows[row].Served.EffortWorst)],
                .. GeometryColumns.Of(result.Study, row => rows[row].Served.BestDesign)
                    .Select(column => column with { Name = $"own_{column.Name}", Unit = Unit(column, result.Study.Machine) }),
            ],
            rows.Count);
    }

    /// <summary>A height says which point it is measured from.</summary>
    private static string Unit(Column column, Machine machine) => column.Name != GeometryInput.SuspensionHeight.Name ? column.Unit
        : $"{column.Unit} above the datum: {(machine.Datum.Length > 0 ? machine.Datum : DatumText.Unnamed)}";

    private static IReadOnlyList<Assignment> Assignments(ProductLineResult result)
    {
        var rows = new Assignment[result.Setting.Customers.Count];
        foreach (var served in result.Assignments)
        {
            foreach (var c in served.Row.Customers)
                rows[c] = new(result.Setting.Customers[c], served);
        }

        return rows;
    }

    /// <summary>One customer and what it gets.</summary>
    private sealed record Assignment(ProductLineCustomer Customer, SegmentAssignment Served);
}
