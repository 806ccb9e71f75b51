using FrameOpt.Model.Mission;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>The columns of the table of customers, the same in the CSV and the workbook.</summary>
internal static class CustomerColumns
{
    public static IReadOnlyList<CustomerColumn> Of(ProductLineResult result)
    {
        var (study, setting) = (result.Study, result.Setting);
        var cost = setting.CostResponse.Maximise ? $"shortfall_of_{setting.CostResponse.Response.Name}"
            : setting.CostResponse.Response.Name;
        var unit = setting.CostResponse.Response.Unit is { Length: > 0 } symbol ? $" [{symbol}]" : "";
        var format = NumberFormat.FormatCode(setting.CostResponse.Response.Unit);
        return
        [
            Text("name", line => line.Customer.Name),
            new("pilot_mass [kg]", "0.0", line => line.Customer.PilotMassKilograms),
            .. setting.Options.Select((option, o) => Text(option.Name, line =>
                setting.Configurations[line.Customer.Configuration].Choices[o])),
            new("share", "General", line => line.Customer.Share),
            Text("geometry", line => line.Assignments.Geometry < 0 ? "none" : ProductLineText.Letter(result, line.Assignments.Geometry)),
            new($"{cost}{unit}", format, line => line.Assignments.Cost),
            new($"made_to_measure{unit}", format, line => line.Assignments.BestCost),
            new($"regret{unit}", format, line => line.Assignments.Regret),
            .. !setting.CostResponse.Maximise && setting.CostResponse.Response.Entry == MissionQuantity.EffortWorst
                ? Array.Empty<CustomerColumn>()
                : [new("effort_worst", NumberFormat.FormatCode(""), line => line.Assignments.EffortWorst)],
            .. GeometryFields.Of(study).Select(field => new CustomerColumn(
                $"own_{field.Header}", GeometryField.FormatCode, line =>
                    line.Assignments.BestDesign is { } own ? field.Value(own) : double.NaN)),
        ];
    }

    private static CustomerColumn Text(string header, Func<CustomerAssignment, string> value) => new(header, DataColumn.TextFormat, value);
}

/// <summary>A column of the table of customers.</summary>
/// <param name="Header">With its unit.</param>
/// <param name="FormatCode">How a spreadsheet shows it; that of texts for texts.</param>
/// <param name="Value">Of one customer: a text or a number.</param>
internal sealed record CustomerColumn(string Header, string FormatCode, Func<CustomerAssignment, object> Value);
