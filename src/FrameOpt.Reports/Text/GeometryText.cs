using FrameOpt.Model;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Text;

/// <summary>A design in words, in the units the user typed.</summary>
public static class GeometryText
{
    /// <summary>Every factor of the study, in its order.</summary>
    public static string Of(Study study, FrameGeometry geometry) => Of(study.Factors, geometry);

    /// <summary>Every factor, in its order.</summary>
    public static string Of(IReadOnlyList<StudyFactor> factors, FrameGeometry geometry) =>
        string.Join("; ", factors.Select(factor => Of(factor, geometry[factor.Input])));

    /// <summary>One factor at one level, its sign in words.</summary>
    /// <param name="factor">Which, with its unit.</param>
    /// <param name="si">The level in m or rad.</param>
    public static string Of(StudyFactor factor, double si) => factor.Input.Words.Text(si, factor.Unit.Text(Math.Abs(si)));
}
