using FrameOpt.Model;
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
        var row = new MissionRow(mission);
        return [.. study.BuildDimensions.SelectMany(factor => (double[])[1, -1], (factor, side) => (factor, side)).SelectMany(item =>
        {
            var step = item.side * BuildTolerance.Si(item.factor.Input);
            double? Value(StudyLimit limit, double tolerances) => row.PrepareDesign(design.Geometry.With(
                item.factor.Input, design.Geometry[item.factor.Input] + tolerances * step)).Kind == FailureKind.None
                ? limit.Response.Of(row, limit.Magnitude) : null;
            return kept.Select(limit => Broken(limit, tolerances => Value(limit, tolerances)) is { } tolerances
                ? new LimitMargin(limit, item.factor, tolerances * step) : null).OfType<LimitMargin>();
        })];
    }

    /// <summary>The error, in tolerances, at which the limit is violated, or null.</summary>
    /// <param name="limit">Met as drawn.</param>
    /// <param name="value">Of its response, that many tolerances off; null where the design does not fly.</param>
    private static double? Broken(StudyLimit limit, Func<double, double?> value)
    {
        var first = Array.FindIndex(tried, tolerances => value(tolerances) is not { } off || !limit.IsMetBy(off));
        if (first < 0)
            return null;
        double kept = first == 0 ? 0 : tried[first - 1], broken = tried[first];
        double Excess(double tolerances) => value(tolerances) is { } off ? Beyond(limit, off) : 1;
        return Excess(kept) < 0 && double.IsFinite(Excess(broken))
            && Brent.TryFindRoot(Excess, kept, broken, Accuracy, MostIterations, out var root) ? root : kept;
    }

    /// <summary>How far a value lies beyond its bound, in the limit's unit; below 0 when it meets it.</summary>
    private static double Beyond(StudyLimit limit, double value) => Math.Max(
        limit.AtLeast is { } least ? least - value : double.NegativeInfinity,
        limit.AtMost is { } most ? value - most : double.NegativeInfinity);
}
