using FrameOpt.Model;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Text;

/// <summary>A study as the tool understood it, in words.</summary>
public static class StudyDescription
{
    /// <summary>Every input that the answer rests on.</summary>
    public static IReadOnlyList<DescriptionRow> Of(Study study) =>
    [
        .. MachineDescription.Of(study.Machine),
        .. WingRows(study.Wing),
        .. study.Mission.Select(phase => new DescriptionRow("Mission", phase.Name, PhaseWords(phase))),
        .. study.Factors.Select(factor => new DescriptionRow("Factors", factor.Name, Levels(factor))),
        .. study.Objectives.Select((objective, i) => new DescriptionRow(
            "Objectives", StudyText.Name(objective.Response, objective.Magnitude), ObjectiveWords(study, objective, i))),
        .. study.Limits.Select(limit => new DescriptionRow("Limits", StudyText.Limit(limit), limit.Response.Entry.Meaning)),
        .. Settings(study),
        .. ProductLineDescription.Of(study),
    ];

    private static IEnumerable<DescriptionRow> WingRows(Wing wing)
    {
        DescriptionRow Row(string what, string value) => new("Wing", what, value);
        yield return Row(
            "mass, area, span", $"{Plain(wing.MassKilograms)} kg; {Plain(wing.AreaSquareMetres)} m² flat; {Plain(wing.SpanMetres)} m flat");
        yield return Row(
            "lines", $"{Plain(wing.LineLengthMetres)} m from the hang line to the wing; {Plain(wing.LineSpreadMetres)} m between the centroids of the two halves");
        yield return Row("polar", $"at {Plain(wing.Polar.ReferenceMassKilograms)} kg and {Plain(wing.Polar.ReferenceDensity)} kg/m³: "
            + string.Join("; ", wing.Polar.Points.Select(
            point => $"fraction {Plain(point.Fraction)}: {Plain(point.AirspeedMetresPerSecond)} m/s, glide ratio {Plain(point.GlideRatio)}")));
        yield return Row("riser coupling", wing.RiserCoupling switch
        {
            RiserCoupling.Measured measured =>
                $"{Millimetres(measured.LengthMetres)} at a spacing of {Millimetres(measured.AtSpacingMetres)}, growing with the square of the spacing",
            _ => "from the geometry of the lines, at each design's own spacing",
        });
        yield return Row("roll restoring", $"{Plain(wing.RollRestoring)} per radian of bank (for the indicative turn rate)");
        yield return Row("yaw leverage", wing.YawLeverage switch
        {
            YawLeverage.Constant constant => $"{Plain(constant.Value)} in every phase",
            YawLeverage.FromCoefficients from =>
                $"from roll restoring {Plain(from.RollRestoring)} and yaw damping {Plain(from.YawDamping)}, growing with the square of the airspeed",
            _ => throw new InvalidOperationException(),
        });
    }

    private static string PhaseWords(Phase phase)
    {
        List<string> words = [$"weight {Plain(phase.Weight)}", StudyText.Power(phase.Power), StudyText.Speed(phase.Speed),
            $"altitude {Plain(phase.AltitudeMetres)} m"];
        if (phase.TemperatureOffsetKelvin != 0)
            words.Add($"{Plain(Math.Abs(phase.TemperatureOffsetKelvin))} K {(phase.TemperatureOffsetKelvin > 0 ? "warmer" : "colder")} than the standard day");
        if (phase.LoadFactor != 1)
            words.Add($"load factor {Plain(phase.LoadFactor)}");
        if (phase.CarriedShare != 1)
            words.Add($"{Plain(Math.Round(100 * phase.CarriedShare, 6))} % of the weight on the risers");
        if (phase.PitchRateRadiansPerSecond != 0)
            words.Add($"pitch rate {Plain(phase.PitchRateRadiansPerSecond)} rad/s");
        return string.Join("; ", words);
    }

    private static string Levels(StudyFactor factor) => factor.IsContinuous
        ? $"any value from {factor.Unit.Text(factor.LevelsSi[0])} to {factor.Unit.Text(factor.LevelsSi[^1])}"
        : factor.IsSwept
        ? $"{NumberFormat.Count(factor.LevelsSi.Count)} levels from {factor.Unit.Text(factor.LevelsSi[0])} to {factor.Unit.Text(factor.LevelsSi[^1])}"
        : $"fixed at {factor.Unit.Text(factor.LevelsSi[0])}";

    private static string ObjectiveWords(Study study, StudyObjective objective, int index) => string.Join(
        "; ",
        (string[])[
            StudyText.Goal(objective),
            $"weight {Plain(study.Ranking.Weights[index])}",
            .. objective.Resolution > 0
                ? [$"differences below {NumberFormat.Text(objective.Resolution, objective.Response.Unit)} not shown"]
                : Array.Empty<string>(),
            objective.Response.Entry.Meaning,
        ]);

    private static IEnumerable<DescriptionRow> Settings(Study study)
    {
        yield return new("Settings", "search", StudyText.Search(study.Search));
        yield return new("Settings", "ranking", StudyText.Method(study.Ranking.Method));
        yield return new("Settings", "baseline", study.Baseline is { } baseline ? GeometryText.Of(study, baseline) : "none");
        yield return new("Settings", "strength figures", study.Strength is { } strength
            ? $"limit load factor {Plain(strength.LimitLoadFactor)}, overhang {Millimetres(strength.OverhangMetres)}"
            : "not asked");
        yield return new(
            "Settings", "balanced band",
                $"within {NumberFormat.Text(study.Band.WithinNewtonMetres, "N·m")} at the airspeed of {study.Mission[study.Band.PhaseIndex].Name}");
        yield return new("Settings", "study file, SHA-256", study.Hash);
        foreach (var file in study.Files)
            yield return new("Settings", $"{file.Name}, SHA-256", file.Hash);
    }

    private static string Plain(double value) => PlainNumber.Text(value);

    private static string Millimetres(double metres) => $"{PlainNumber.Text(Math.Round(1000 * metres, 6))} mm";
}

/// <summary>One line of a study told in words.</summary>
/// <param name="Group">Machine, wing, mission and so on; the same for neighbouring rows.</param>
/// <param name="Label">The name of the thing.</param>
/// <param name="Value">With its unit.</param>
public sealed record DescriptionRow(string Group, string Label, string Value);
