using FrameOpt.Model;

namespace FrameOpt.Reports;

/// <summary>A dimension of a design as tables show it.</summary>
/// <param name="Name">As files for other programs write it.</param>
/// <param name="Unit">The user's.</param>
/// <param name="Value">Of a design, in that unit.</param>
public sealed record GeometryField(string Name, string Unit, Func<FrameGeometry, double> Value)
{
    /// <summary>How a spreadsheet shows it.</summary>
    public const string NumberFormat = "General";

    /// <summary>Name and unit.</summary>
    public string Header => $"{Name} [{Unit}]";
}
