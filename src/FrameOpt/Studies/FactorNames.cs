using FrameOpt.Model;

namespace FrameOpt.Studies;

/// <summary>The names of the geometry inputs in a study file.</summary>
public static class FactorNames
{
    private static readonly string[] names =
    [
        "hang_point_spacing",
        "lateral_offset",
        "suspension_height",
        "thrust_line_angle",
        "thrust_line_tilt",
        "hub_forward",
        "hub_right",
        "hub_up",
        "hang_line_forward",
    ];

    private static readonly string[] examples = ["440 mm", "25 mm", "230 mm", "1.5 deg", "5 deg", "-420 mm", "10 mm", "120 mm", "-60 mm"];

    /// <summary>All names, in the order of <see cref="GeometryInput"/>; the first four are in every study.</summary>
    public static IReadOnlyList<string> All => names;

    /// <summary>The name of one input.</summary>
    public static string Of(GeometryInput input) => names[(int)input];

    /// <summary>The input of that name, or null.</summary>
    public static GeometryInput? Find(string name)
    {
        var index = Array.IndexOf(names, name);
        return index < 0 ? null : (GeometryInput)index;
    }

    /// <summary>A likely value of an input with its unit, for messages.</summary>
    public static string ExampleOf(GeometryInput input) => examples[(int)input];

    /// <summary>A likely step of an input with its unit, for messages.</summary>
    public static string StepExampleOf(GeometryInput input) => IsAngle(input) ? "0.5 deg" : "5 mm";

    /// <summary>True for an input measured as an angle.</summary>
    public static bool IsAngle(GeometryInput input) => input is GeometryInput.ThrustLineAngle or GeometryInput.ThrustLineTilt;
}
