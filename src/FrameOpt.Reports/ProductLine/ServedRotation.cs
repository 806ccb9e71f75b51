using FrameOpt.Model;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>How the propellers turn that a geometry is for: beside it in every table, picture and cell.</summary>
internal static class ServedRotation
{
    /// <summary>"↺ counter-clockwise", or both, marked.</summary>
    public static string Text(ProductLineGeometry geometry) => geometry.Rotations.Count == 1
        ? StudyText.RotationText(geometry.Rotations[0])
        : $"BOTH WAYS: {string.Join(" and ", geometry.Rotations.Select(StudyText.RotationText))}";

    /// <summary>The same for a narrow cell: "↺ counter-clockwise", "↺↻ BOTH WAYS".</summary>
    public static string Cell(ProductLineGeometry geometry) =>
        geometry.Rotations.Count == 1 ? Text(geometry) : $"{Signs(geometry)} BOTH WAYS";

    /// <summary>The same in a sign or two.</summary>
    public static string Signs(ProductLineGeometry geometry) =>
        string.Concat(geometry.Rotations.Select(rotation => StudyText.RotationText(rotation)[..1]));

    /// <summary>The study's own machine with a propeller that turns this way, to draw a geometry on.</summary>
    public static Machine On(Study study, Rotation rotation) =>
        study.Machine with { Propeller = study.Machine.Propeller with { Rotation = rotation } };

    /// <summary>What to know of the rotations before a hole is drilled.</summary>
    public static IEnumerable<string> Notes(ProductLineResult result)
    {
        if (result.Setting.Rotations.Count == 1)
            yield return $"Propeller {StudyText.RotationText(result.Setting.Rotations[0])} seen from behind, for every geometry.";
        else
            yield return "The engines of this line turn both ways: the propeller's rotation, seen from behind, stands beside each "
                + "geometry. Never fit a geometry to an engine that turns the other way.";
        if (Caution(result) is { } caution)
            yield return caution;
        foreach (var alike in result.Geometries.GroupBy(geometry => geometry.Design).Where(alike => alike.Count() > 1))
            yield return $"{string.Join(" and ", alike.Select(geometry => geometry.Name))} have the same dimensions; they count as two "
                + "because they are for propellers that turn opposite ways.";
    }

    /// <summary>Names the geometries that serve both rotations; null when none does.</summary>
    public static string? Caution(ProductLineResult result)
    {
        string[] both = [.. result.Geometries.Where(geometry => geometry.Rotations.Count > 1).Select(geometry => geometry.Name)];
        return both.Length == 0 ? null
            : $"CAUTION: {string.Join(", ", both)} {(both.Length == 1 ? "serves" : "serve")} engines of BOTH rotations, because the study "
                + "allows it: what opposes the reaction torque of one adds to that of the other.";
    }
}
