using FrameOpt.Model;
using FrameOpt.Studies;

namespace FrameOpt.Reports;

/// <summary>The dimensions of a design that every table of designs shows.</summary>
public static class GeometryFields
{
    /// <summary>Every factor in the user's unit, then the drilling dimensions of both sides in the unit of the spacing.</summary>
    public static IReadOnlyList<GeometryField> Of(Study study)
    {
        var unit = study.Factors.First(factor => factor.Input == GeometryInput.HangPointSpacing).Unit;
        return
        [
            .. study.Factors.Select(factor => new GeometryField(factor.Name, factor.Unit.Symbol, geometry => factor.Unit.FromSi(geometry[factor.Input]))),
            new("drill_left_of_symmetry", unit.Symbol, geometry => unit.FromSi(DrillingDimensions.LeftMetres(geometry))),
            new("drill_right_of_symmetry", unit.Symbol, geometry => unit.FromSi(DrillingDimensions.RightMetres(geometry))),
        ];
    }
}
