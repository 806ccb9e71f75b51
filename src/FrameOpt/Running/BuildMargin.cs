using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>How far a frame may be built beside its drawing before it breaks a limit of the study.</summary>
public static class BuildMargin
{
    /// <summary>What a drill and a weld hold, m (common practice, no source).</summary>
    private const double LengthTolerance = 0.001;

    /// <summary>What a mount holds, rad (common practice, no source).</summary>
    private const double AngleTolerance = 0.5 * Math.PI / 180;

    /// <summary>So many tolerances to each side are searched.</summary>
    private const int Tolerances = 40;

    /// <summary>A tolerance halved so often is far below what can be measured.</summary>
    private const int Halvings = 12;

    /// <summary>What a builder can hold of an input, m or rad.</summary>
    public static double ToleranceSi(GeometryInput input) => input.Kind == InputKind.Angle ? AngleTolerance : LengthTolerance;

    /// <summary>The change of one factor alone, counted in its tolerances, that breaks a limit first; null when none within forty
    /// tolerances does.</summary>
    /// <param name="mission">The model.</param>
    /// <param name="limit">Kept by the design.</param>
    /// <param name="design">As drawn.</param>
    /// <param name="factors">Those that may be off.</param>
    public static LimitMargin? Nearest(MissionModel mission, StudyLimit limit, FrameGeometry design, IReadOnlyList<StudyFactor> factors) =>
        factors.SelectMany(factor => (double[])[1, -1], (factor, side) => (Factor: factor, Step: side * ToleranceSi(factor.Input)))
            .Select(item => Change(mission, limit, design, item.Factor.Input, item.Step) is { } change
                ? new LimitMargin(item.Factor, change) : null)
            .OfType<LimitMargin>()
            .MinBy(margin => margin.InTolerances);

    /// <summary>The smallest change to one side that breaks the limit, found to a small part of a step.</summary>
    private static double? Change(MissionModel mission, StudyLimit limit, FrameGeometry design, GeometryInput input, double step)
    {
        bool IsKept(double change) => mission.Evaluate(design.With(input, design[input] + change)) is { Failure: null } off
            && limit.AsConstraint.IsSatisfiedBy(limit.ValueOf(off));
        for (var n = 1; n <= Tolerances; n++)
        {
            if (IsKept(n * step))
                continue;
            double kept = (n - 1) * step, broken = n * step;
            for (var i = 0; i < Halvings; i++)
            {
                var middle = (kept + broken) / 2;
                if (IsKept(middle))
                    kept = middle;
                else
                    broken = middle;
            }

            return broken;
        }

        return null;
    }
}

/// <summary>A change of one factor that breaks a limit.</summary>
/// <param name="Factor">Which, with its unit.</param>
/// <param name="ChangeSi">In m or rad, with its sign.</param>
public sealed record LimitMargin(StudyFactor Factor, double ChangeSi)
{
    /// <summary>The change over what a builder can hold.</summary>
    public double InTolerances => Math.Abs(ChangeSi) / BuildMargin.ToleranceSi(Factor.Input);
}
