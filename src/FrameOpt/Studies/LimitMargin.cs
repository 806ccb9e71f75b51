using FrameOpt.Model;

namespace FrameOpt.Studies;

/// <summary>An error of one dimension alone that violates a limit.</summary>
/// <param name="Limit">Kept by the design as drawn.</param>
/// <param name="Factor">The dimension, with its unit.</param>
/// <param name="ChangeSi">The smallest such error to one side, m or rad, with its sign.</param>
public sealed record LimitMargin(StudyLimit Limit, StudyFactor Factor, double ChangeSi)
{
    /// <summary>The error over what a builder can hold: below 1 nobody can build it so that the limit is met for sure.</summary>
    public double InTolerances => Math.Abs(ChangeSi) / BuildTolerance.Si(Factor.Input);
}

/// <summary>What a builder can hold of a dimension (common practice, no source).</summary>
public static class BuildTolerance
{
    /// <summary>A drill and a weld, m.</summary>
    public const double LengthMetres = 0.001;

    /// <summary>A mount, rad.</summary>
    public const double AngleRadians = 0.5 * Math.PI / 180;

    /// <summary>Of an input, m or rad.</summary>
    public static double Si(GeometryInput input) => input.Kind == InputKind.Angle ? AngleRadians : LengthMetres;
}
