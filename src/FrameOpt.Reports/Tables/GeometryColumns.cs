using FrameOpt.Model;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Tables;

/// <summary>The dimensions of a design that every table of designs shows.</summary>
public static class GeometryColumns
{
    /// <summary>Every factor in the user's unit, then the drilling dimensions of both sides in the unit of the spacing.</summary>
    /// <param name="study">Says the factors and their units.</param>
    /// <param name="design">The design of a row, or null to leave its cells blank.</param>
    public static IReadOnlyList<Column> Of(Study study, Func<int, FrameGeometry?> design)
    {
        var spacing = study.Factors.First(factor => factor.Input == GeometryInput.HangPointSpacing).Unit;
        return
        [
            .. study.Factors.Select(factor => Column(factor.Name, factor.Unit, geometry => geometry[factor.Input])),
            Column("drill_left_of_symmetry", spacing, DrillingDimensions.LeftMetres),
            Column("drill_right_of_symmetry", spacing, DrillingDimensions.RightMetres),
        ];

        Column Column(string name, DisplayUnit unit, Func<FrameGeometry, double> si) => Tables.Column.OfNumbers(
            name, unit.Symbol, Tables.Column.GeneralFormat, row => design(row) is { } own ? unit.FromSi(si(own)) : double.NaN);
    }
}
