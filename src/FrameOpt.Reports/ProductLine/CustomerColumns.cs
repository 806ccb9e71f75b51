using FrameOpt.Model.Mission;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>The columns of the table of customers, the same in the CSV and the workbook.</summary>
internal static class CustomerColumns
{
    public static IReadOnlyList<CustomerColumn> Of(LineResult result)
    {
        var (study, setting) = (result.Study, result.Setting);
        var cost = setting.Goal.Maximise ? $"shortfall_of_{setting.Goal.Response.Name}" : setting.Goal.Response.Name;
        var unit = setting.Goal.Response.Unit is { Length: > 0 } symbol ? $" [{symbol}]" : "";
        var format = Figures.NumberFormat(setting.Goal.Response.Unit);
        return
        [
            Text("name", line => line.Customer.Name),
            new("pilot_mass [kg]", "0.0", line => line.Customer.PilotMassKilograms),
            .. setting.Options.Select((option, o) => Text(option.Name, line => setting.Outfits[line.Customer.Outfit].Choices[o])),
            new("share", "General", line => line.Customer.Share),
            Text("geometry", line => line.Served.Geometry < 0 ? "none" : ProductLineWords.Letter(result, line.Served.Geometry)),
            new($"{cost}{unit}", format, line => line.Served.Cost),
            new($"made_to_measure{unit}", format, line => line.Served.OwnCost),
            new($"regret{unit}", format, line => line.Served.Regret),
            .. setting.Goal is { Maximise: false, Response: Response.OfMission { Quantity: MissionQuantity.EffortWorst } }
                ? Array.Empty<CustomerColumn>()
                : [new("effort_worst", Figures.NumberFormat(""), line => line.Served.EffortWorst)],
            .. GeometryFields.Of(study).Select(field => new CustomerColumn(
                $"own_{field.Header}", GeometryField.NumberFormat, line => line.Served.Own is { } own ? field.Value(own) : double.NaN)),
        ];
    }

    private static CustomerColumn Text(string header, Func<CustomerLine, string> value) => new(header, DataColumn.TextFormat, value);
}

/// <summary>A column of the table of customers.</summary>
/// <param name="Header">With its unit.</param>
/// <param name="NumberFormat">How a spreadsheet shows it; that of texts for texts.</param>
/// <param name="Value">Of one customer: a text or a number.</param>
internal sealed record CustomerColumn(string Header, string NumberFormat, Func<CustomerLine, object> Value);
