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
    public static string Of(StudyFactor factor, double si)
    {
        var size = factor.Unit.Text(Math.Abs(si));
        return factor.Input switch
        {
            GeometryInput.HangPointSpacing => $"hang points {size} apart",
            GeometryInput.LateralOffset => si == 0 ? "not offset" : $"both moved {size} to the pilot's {SideText.Side(si)}",
            GeometryInput.SuspensionHeight => $"hang line {size} {Vertical(si)} the datum",
            GeometryInput.ThrustLineAngle => si == 0 ? "thrust line straight ahead"
                : $"thrust line, followed forward, points {size} to the pilot's {SideText.Side(si)}",
            GeometryInput.ThrustLineTilt => $"thrust line tilted {size} {(si < 0 ? "downward" : "upward")}",
            GeometryInput.HubForward => $"hub {size} {ForeAft(si)} the datum",
            GeometryInput.HubRight => $"hub {size} to the {SideText.Side(si)} of the datum",
            GeometryInput.HubUp => $"hub {size} {Vertical(si)} the datum",
            GeometryInput.HangLineForward => $"hang line {size} {ForeAft(si)} the datum",
            _ => throw new ArgumentOutOfRangeException(nameof(factor)),
        };
    }

    private static string Vertical(double si) => si < 0 ? "below" : "above";

    private static string ForeAft(double si) => si < 0 ? "behind" : "in front of";
}
