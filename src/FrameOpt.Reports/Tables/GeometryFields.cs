using FrameOpt.Model;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Tables;

/// <summary>The dimensions of a design that every table of designs shows.</summary>
public static class GeometryFields
{
    /// <summary>Every factor in the user's unit, then the drilling dimensions of both sides in the unit of the spacing.</summary>
    public static IReadOnlyList<GeometryField> Of(Study study)
    {
        var unit = study.LengthUnit;
        return
        [
            .. study.Factors.Select(factor => new GeometryField(factor.Name, factor.Unit.Symbol, geometry =>
                factor.Unit.FromSi(geometry[factor.Input]))),
            new("drill_left_of_symmetry", unit.Symbol, geometry => unit.FromSi(DrillingDimensions.LeftMetres(geometry))),
            new("drill_right_of_symmetry", unit.Symbol, geometry => unit.FromSi(DrillingDimensions.RightMetres(geometry))),
        ];
    }
}

/// <summary>A dimension of a design as tables show it.</summary>
/// <param name="Name">As files for other programs write it.</param>
/// <param name="Unit">The user's.</param>
/// <param name="Value">Of a design, in that unit.</param>
public sealed record GeometryField(string Name, string Unit, Func<FrameGeometry, double> Value)
{
    /// <summary>How a spreadsheet shows it.</summary>
    public const string FormatCode = "General";

    /// <summary>Name and unit.</summary>
    public string Header => $"{Name} [{Unit}]";
}
