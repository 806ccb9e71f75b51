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

/// <summary>Figures that are easy to mark out.</summary>
public static class RoundFigure
{
    private const double StepMetres = 0.005;
    private const double StepRadians = Math.PI / 180;
    private const double Accuracy = 1e-6;

    /// <summary>How many factors of a study are on one in a design.</summary>
    public static int Count(Study study, FrameGeometry design) =>
        study.Factors.Count(factor => IsRound(factor.Input, design[factor.Input]));

    /// <summary>True for a multiple of 5 mm or of 1 deg.</summary>
    public static bool IsRound(GeometryInput input, double si)
    {
        var steps = si / (input.Kind == InputKind.Angle ? StepRadians : StepMetres);
        return Math.Abs(steps - Math.Round(steps)) < Accuracy;
    }
}
