using FrameOpt.Model;
using FrameOpt.Studies;

namespace FrameOpt.Reports;

/// <summary>One column of the table of the front, the same in the workbook, in designs.csv and in run.json, which has more.</summary>
/// <param name="Name">As files for other programs write it.</param>
/// <param name="Unit">Of its values; empty for a plain number.</param>
/// <param name="NumberFormat">How a spreadsheet shows it.</param>
/// <param name="Value">Of one design of the front and its evaluation; NaN where there is none.</param>
public sealed record FrontColumn(
    string Name, string Unit, string NumberFormat, Func<FrontDesign, DesignEvaluation, double> Value)
{
    /// <summary>Name and unit in one text: "lateral_offset [mm]".</summary>
    public string Header => Unit.Length == 0 ? Name : $"{Name} [{Unit}]";
}
