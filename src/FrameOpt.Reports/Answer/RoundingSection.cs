using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>A design of continuous factors as built to whole millimetres and tenths of a degree.</summary>
internal static class RoundingSection
{
    private const double LengthMetres = 0.001;
    private const double AngleRadians = 0.1 * Math.PI / 180;

    /// <summary>The section; none when every factor has levels, which are assumed to be buildable.</summary>
    public static IEnumerable<AnswerSection> Of(StudyResult result, DesignEvaluation design)
    {
        var continuous = result.Study.Factors.Where(factor => factor.IsContinuous).ToList();
        if (continuous.Count == 0)
            yield break;
        var rounded = result.Mission.Evaluate(Rounded(continuous, design.Geometry));
        yield return new AnswerSection("Rounded to whole millimetres and tenths of a degree",
        [
            $"{GeometryText.Of(result.Study, rounded.Geometry)}: "
                + $"LEFT hang point {Millimetres(DrillingDimensions.LeftMetres(rounded.Geometry))}, RIGHT hang point "
                + $"{Millimetres(DrillingDimensions.RightMetres(rounded.Geometry))} from the plane of symmetry.",
            rounded.Failure is { } failure
                ? $"IT CANNOT FLY: {FailureText.Describe(failure)}. Build to the unrounded dimensions above, or choose another design."
                : $"It gives {string.Join(", ", result.Study.Objectives.Select(objective => Change(objective, design, rounded)))}. "
                    + Limits(result.Study, rounded),
        ]);
    }

    private static FrameGeometry Rounded(IEnumerable<StudyFactor> factors, FrameGeometry geometry) =>
        factors.Aggregate(geometry, (built, factor) =>
    {
        var step = factor.Input.Kind == InputKind.Angle ? AngleRadians : LengthMetres;
        return built.With(factor.Input, Math.Clamp(Math.Round(geometry[factor.Input] / step) * step, factor.LevelsSi[0],
            factor.LevelsSi[^1]));
    });

    private static string Change(StudyObjective objective, DesignEvaluation before, DesignEvaluation after)
    {
        var unit = objective.Response.Unit;
        return $"{StudyText.Title(objective.Response, objective.Magnitude)} {NumberFormat.Text(objective.ValueOf(after), unit)} (unrounded "
            + $"{NumberFormat.Text(objective.ValueOf(before), unit)})";
    }

    private static string Limits(Study study, DesignEvaluation rounded)
    {
        var broken = study.Limits.Where(limit => !limit.IsMetBy(rounded))
            .Select(StudyText.LimitTitle).ToList();
        return broken.Count == 0 ? "It meets every limit." : $"IT VIOLATES {string.Join(" and ", broken)}.";
    }

    private static string Millimetres(double metres) => FormattableString.Invariant($"{1000 * metres:0.#} mm");
}
