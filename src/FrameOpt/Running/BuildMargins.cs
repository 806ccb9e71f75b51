using FrameOpt.Model.Mission;
using FrameOpt.Studies;
using MathNet.Numerics.RootFinding;

namespace FrameOpt.Running;

/// <summary>How far each dimension of a frame may be off, alone, before the design violates a limit of the study.</summary>
public static class BuildMargins
{
    /// <summary>Larger errors are not looked at: 40 mm, 20 deg.</summary>
    public const int MostTolerances = 40;

    /// <summary>The margin is found to this part of a tolerance.</summary>
    private const double Accuracy = 1e-3;

    private const int MostIterations = 60;

    /// <summary>Errors that are tried, in tolerances: a limit that is violated between two of them and met again is not seen.</summary>
    private static readonly int[] tried = [1, 3, 10, MostTolerances];

    /// <summary>The nearest error to either side that violates a limit, for each limit the design meets and each dimension.</summary>
    /// <param name="mission">The model.</param>
    /// <param name="study">Its limits and dimensions.</param>
    /// <param name="design">As drawn; it flies.</param>
    public static IReadOnlyList<LimitMargin> Of(MissionModel mission, Study study, DesignEvaluation design)
    {
        if (study.Limits.Count == 0)
            return [];
        var kept = study.Limits.Where(limit => !limit.Response.IsOverCases && limit.IsMetBy(design)).ToList();
        return [.. study.BuildDimensions.SelectMany(factor => (double[])[1, -1], (factor, side) => (factor, side)).SelectMany(item =>
        {
            var step = item.side * BuildTolerance.Si(item.factor.Input);
            DesignEvaluation Off(double tolerances) => mission.Evaluate(design.Geometry.With(
                item.factor.Input, design.Geometry[item.factor.Input] + tolerances * step));
            var off = tried.Select(tolerances => Off(tolerances)).ToArray();
            return kept.Select(limit => Broken(limit, off, Off) is { } tolerances
                ? new LimitMargin(limit, item.factor, tolerances * step) : null).OfType<LimitMargin>();
        })];
    }

    /// <summary>The error, in tolerances, at which the limit is violated, or null.</summary>
    private static double? Broken(StudyLimit limit, DesignEvaluation[] off, Func<double, DesignEvaluation> design)
    {
        var first = Array.FindIndex(off, one => !limit.IsMetBy(one));
        if (first < 0)
            return null;
        double kept = first == 0 ? 0 : tried[first - 1], broken = tried[first];
        double Excess(double tolerances) => design(tolerances) is { Failure: null } one ? Beyond(limit, limit.ValueOf(one)) : 1;
        return Excess(kept) < 0 && double.IsFinite(Excess(broken))
            && Brent.TryFindRoot(Excess, kept, broken, Accuracy, MostIterations, out var root) ? root : kept;
    }

    /// <summary>How far a value lies beyond its bound, in the limit's unit; below 0 when it meets it.</summary>
    private static double Beyond(StudyLimit limit, double value) => Math.Max(
        limit.AtLeast is { } least ? least - value : double.NegativeInfinity,
        limit.AtMost is { } most ? value - most : double.NegativeInfinity);
}
