using FrameOpt.Model;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Text;

/// <summary>A design in words, in the units the user typed.</summary>
public static class GeometryText
{
    /// <summary>Every factor of the study, in the study's order.</summary>
    public static string Of(Study study, FrameGeometry geometry) => Of(study.Factors, geometry);

    /// <summary>Every factor, in the order given.</summary>
    public static string Of(IReadOnlyList<StudyFactor> factors, FrameGeometry geometry) =>
        string.Join("; ", factors.Select(factor => Of(factor, geometry[factor.Input])));

    /// <summary>One factor at one level, its sign in words.</summary>
    /// <param name="factor">The factor, with its unit.</param>
    /// <param name="si">The level in m or rad.</param>
    public static string Of(StudyFactor factor, double si) => factor.Input.Words.Text(si, factor.Unit.Text(Math.Abs(si)));

    /// <summary>One factor at one level in a cell of a table: "440 mm", "18 mm left", "5 mm higher on the right".</summary>
    /// <param name="factor">The factor, with its unit.</param>
    /// <param name="si">The level in m or rad.</param>
    public static string Value(StudyFactor factor, double si) => si == 0 ? factor.Unit.Text(si)
        : factor.Input.ChangeWords is { } words ? words.Text(si, factor.Unit.Text(Math.Abs(si)))
        : factor.Input.IsSided ? $"{factor.Unit.Text(Math.Abs(si))} {SideText.Side(si)}"
        : factor.Unit.Text(si);

    /// <summary>What a design has that another has not, in a few words: "spacing 440 mm, lateral offset 18 mm left"; empty for the
    /// same.</summary>
    /// <param name="study">Its factors.</param>
    /// <param name="design">In words.</param>
    /// <param name="other">The one it is compared with.</param>
    public static string Difference(Study study, FrameGeometry design, FrameGeometry other) => string.Join(", ", study.Factors
        .Select(factor => (Factor: factor, Own: Value(factor, design[factor.Input]), Other: Value(factor, other[factor.Input])))
        .Where(pair => pair.Own != pair.Other).Select(pair => $"{pair.Factor.Input.ShortName} {pair.Own}"));
}

/// <summary>How far each hang point lies from the frame's plane of symmetry, seen from behind.</summary>
public static class DrillingDimensions
{
    /// <summary>s/2 + e: the hang point on the pilot's right, in metres to the right.</summary>
    public static double RightMetres(FrameGeometry geometry) => geometry.RightMetres;

    /// <summary>s/2 - e: the hang point on the pilot's left, in metres to the left.</summary>
    public static double LeftMetres(FrameGeometry geometry) => geometry.LeftMetres;

    /// <summary>Both hang points: where to drill.</summary>
    /// <param name="geometry">The design.</param>
    /// <param name="unit">The user's unit of the spacing.</param>
    public static string Sentence(FrameGeometry geometry, DisplayUnit unit) =>
        $"LEFT hang point {Place(-LeftMetres(geometry), unit)}{Height(geometry, geometry.LeftHeightMetres, unit)}; "
        + $"RIGHT hang point {Place(RightMetres(geometry), unit)}{Height(geometry, geometry.RightHeightMetres, unit)}. "
        + "Measure both from the plane of symmetry, not from hole to hole.";

    /// <summary>", 205 mm above the datum" where the two hang points differ in height; else the height of the hang line says
    /// it.</summary>
    private static string Height(FrameGeometry geometry, double metres, DisplayUnit unit) => geometry.HangHeightDifferenceMetres == 0 ? ""
        : $", {unit.Text(Math.Abs(metres))} {(metres < 0 ? "below" : "above")} the datum";

    /// <summary>"207 mm to the left", in millimetres too where the unit is another.</summary>
    /// <param name="rightMetres">Metres to the right of the plane of symmetry.</param>
    /// <param name="unit">The user's unit of the spacing.</param>
    public static string Place(double rightMetres, DisplayUnit unit)
    {
        var magnitude = Math.Abs(rightMetres);
        var inMillimetres = unit.Symbol == "mm" ? "" : FormattableString.Invariant($" ({1000 * magnitude:0.0} mm)");
        return $"{unit.Text(magnitude)}{inMillimetres} to the {SideText.Side(rightMetres)}";
    }
}
