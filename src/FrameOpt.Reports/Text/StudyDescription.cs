using FrameOpt.Model;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Text;

/// <summary>A study as the tool understood it, in words.</summary>
public static class StudyDescription
{
    /// <summary>Every input that the answer rests on.</summary>
    public static IReadOnlyList<DescriptionRow> Of(Study study) => [.. ReasonText.Beside(study, Rows(study))];

    private static IEnumerable<DescriptionRow> Rows(Study study) =>
    [
        .. MachineDescription.Of(study.Machine),
        .. MachineDescription.Of(study.Wing),
        .. study.Mission.Select(phase => new DescriptionRow("Mission", phase.Name, PhaseWords(phase))
        {
            Paths = [$"mission.{phase.Name}"],
        }),
        .. study.Holes is { } holes ? (DescriptionRow[])
        [
            new("Factors", "left holes", HoleText.Row(holes.Left, holes.Unit)),
            new("Factors", "right holes", HoleText.Row(holes.Right, holes.Unit)),
        ] : [],
        .. study.Factors.Select(factor => new DescriptionRow("Factors", factor.Name, Levels(study, factor))
        {
            Paths = [$"factors.{factor.Name}"],
        }),
        .. study.Objectives.Select((objective, i) => new DescriptionRow(
            "Objectives", StudyText.Name(objective.Response, objective.Magnitude), ObjectiveWords(study, objective, i))
        {
            Paths = [ReasonText.Path(i, "objectives"), ReasonText.WeightOf(objective)],
        }),
        .. study.Limits.Select((limit, i) => new DescriptionRow("Limits", StudyText.Limit(limit), limit.Response.Entry.Meaning)
        {
            Paths = [ReasonText.Path(i, "limits")],
        }),
        .. Settings(study),
        .. ProductLineDescription.Of(study),
    ];

    private static string PhaseWords(Phase phase)
    {
        List<string> words = [$"weight {Plain(phase.Weight)}", StudyText.Power(phase.Power), StudyText.Speed(phase.Speed),
            $"altitude {Plain(phase.AltitudeMetres)} m"];
        if (phase.TemperatureOffsetKelvin != 0)
            words.Add($"{Plain(Math.Abs(phase.TemperatureOffsetKelvin))} K "
                + $"{(phase.TemperatureOffsetKelvin > 0 ? "warmer" : "colder")} than the standard day");
        if (phase.LoadFactor != 1)
            words.Add($"load factor {Plain(phase.LoadFactor)}");
        if (phase.CarriedShare != 1)
            words.Add($"{Plain(Math.Round(100 * phase.CarriedShare, 6))} % of the weight on the risers");
        if (phase.PitchRateRadiansPerSecond != 0)
            words.Add($"pitch rate {Plain(phase.PitchRateRadiansPerSecond)} rad/s");
        if (!phase.IsSettled)
            words.Add("not settled: the wing is still overhead");
        return string.Join("; ", words);
    }

    private static string Levels(Study study, StudyFactor factor) =>
        $"{Levels(factor)}{(study.FreeFactors.Contains(factor) ? "" : ", as the holes give")}";

    private static string Levels(StudyFactor factor) => factor.IsContinuous
        ? $"any value from {factor.Unit.Text(factor.LevelsSi[0])} to {factor.Unit.Text(factor.LevelsSi[^1])}"
        : factor.IsSwept
        ? $"{NumberFormat.Count(factor.LevelsSi.Count)} levels from {factor.Unit.Text(factor.LevelsSi[0])} to "
            + $"{factor.Unit.Text(factor.LevelsSi[^1])}"
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
        yield return new("Settings", "noise", NoiseText.Setting(study.Noise));
        yield return new("Settings", "strength figures", study.Strength is { } strength
            ? $"limit load factor {Plain(strength.LimitLoadFactor)}, overhang {Millimetres(strength.OverhangMetres)}"
            : "not requested");
        yield return new(
            "Settings", "balanced band",
                $"within {NumberFormat.Text(study.Band.WithinNewtonMetres, "N·m")} at the airspeed of "
                    + $"{study.Mission[study.Band.PhaseIndex].Name}");
        yield return new("Settings", "study file, SHA-256", study.Hash);
        foreach (var file in study.Files)
            yield return new("Settings", $"{file.Name}, SHA-256", file.Hash);
    }

    private static string Plain(double value) => PlainNumber.Text(Math.Round(value, 9));

    private static string Millimetres(double metres) => $"{PlainNumber.Text(Math.Round(1000 * metres, 6))} mm";
}

/// <summary>One property of a study in words.</summary>
/// <param name="Group">Machine, wing, mission and so on; the same for neighbouring rows.</param>
/// <param name="Label">Name of the property.</param>
/// <param name="Value">Its value, with the unit.</param>
public sealed record DescriptionRow(string Group, string Label, string Value)
{
    /// <summary>Where what it shows stands in the study file; none where that is not one place.</summary>
    public IReadOnlyList<string> Paths { get; init; } = [];
}

/// <summary>A study in a few lines, to see at a glance whether it is the intended one.</summary>
public static class StudyOverview
{
    private const string Group = "Overview";

    /// <summary>A row for each thing to check at a glance.</summary>
    /// <param name="study">The study as understood.</param>
    /// <param name="processors">Processors of this computer, from which the time of a run is estimated.</param>
    public static IReadOnlyList<DescriptionRow> Of(Study study, int processors) =>
    [
        new(Group, "title", study.FullTitle),
        .. study.Question.Length > 0 ? [new DescriptionRow(Group, "question", study.Question)] : Array.Empty<DescriptionRow>(),
        new(Group, "designs", Designs(study)),
        new(Group, "run time",
            $"{RunEstimate.InWords(RunEstimate.Seconds(study, processors))} on this computer, plus starting the program and writing the "
                + $"files"),
        new(Group, "varied", Factors(study, isSwept: true)),
        new(Group, "fixed", Factors(study, isSwept: false)),
        new(Group, "left hang point", Holes(study, left: true)),
        new(Group, "right hang point", Holes(study, left: false)),
        new(Group, "phases", Phases(study)),
        new(Group, "objectives", string.Join(", ", study.Objectives.Select(
            objective => $"{StudyText.Goal(objective)} {StudyText.Name(objective.Response, objective.Magnitude)}"))),
        new(Group, "limits", study.Limits.Count == 0 ? "none: only designs that cannot fly are excluded"
            : string.Join("; ", study.Limits.Select(StudyText.Limit))),
        new(Group, "assumed", study.Assumptions.Count == 0 ? "nothing"
            : $"{NumberFormat.Count(study.Assumptions.Count, "value")} not given in the study: see the list below"),
        new(Group, "variants", Variants(study)),
    ];

    private static string Designs(Study study)
    {
        if (study.Search is SearchSetting.Evolutionary evolutionary)
            return $"up to {NumberFormat.Count(evolutionary.Stop.Evaluations)} {StudyText.DesignSpace(study)}, "
                + $"each in {NumberFormat.Count(study.Mission.Count, "phase")}";
        List<string> counts =
        [
            .. study.Holes is { } holes ? [$"{NumberFormat.Count(holes.Pairs, "pair")} of holes"] : Array.Empty<string>(),
            .. study.FreeFactors.Where(factor => factor.IsSwept).Select(factor => NumberFormat.Count(factor.LevelsSi.Count)),
        ];
        var product = counts.Count > 1 ? $" = {string.Join(" x ", counts)} levels" : "";
        return $"{NumberFormat.Count(study.GridSize!.Value)}{product}, each in {NumberFormat.Count(study.Mission.Count, "phase")}";
    }

    private static string Factors(Study study, bool isSwept)
    {
        var words = study.Factors.Where(factor => factor.IsSwept == isSwept).Select(factor => isSwept
            ? $"{factor.Name} {factor.Unit.Text(factor.LevelsSi[0])} to {factor.Unit.Text(factor.LevelsSi[^1])}"
            : $"{factor.Name} at {factor.Unit.Text(factor.LevelsSi[0])}");
        return string.Join(", ", words) is { Length: > 0 } text ? text : "nothing";
    }

    /// <summary>The range that one hang point covers over the whole grid, to compare with the frame.</summary>
    private static string Holes(Study study, bool left)
    {
        var spacing = study.Factors.First(factor => factor.Input == GeometryInput.HangPointSpacing);
        var offset = study.Factors.First(factor => factor.Input == GeometryInput.LateralOffset).LevelsSi;
        // Metres to the right of the plane of symmetry.
        var (first, last) = study.Holes is { } holes
            ? left ? (-holes.Left.Places[^1], -holes.Left.Places[0]) : (holes.Right.Places[0], holes.Right.Places[^1])
            : left
            ? (-spacing.LevelsSi[^1] / 2 + offset[0], -spacing.LevelsSi[0] / 2 + offset[^1])
            : (spacing.LevelsSi[0] / 2 + offset[0], spacing.LevelsSi[^1] / 2 + offset[^1]);
        string Place(double right) => $"{spacing.Unit.Text(Math.Abs(right))} {SideText.Side(right)}";
        return $"{(first == last ? Place(first) : $"{Place(first)} to {Place(last)}")} of the plane of symmetry";
    }

    private static string Phases(Study study)
    {
        var totalWeight = study.Mission.Sum(phase => phase.Weight);
        return string.Join(", ", study.Mission.Select(phase => phase.Weight > 0
            ? FormattableString.Invariant($"{phase.Name} {100 * phase.Weight / totalWeight:0.#} %")
            : $"{phase.Name} not counted in the means"));
    }

    private static string Variants(Study study) => study.Variants.Count == 0
        ? "none"
        : $"{string.Join(", ", study.Variants)}; "
            + $"{(study.Variant.Length == 0 ? "this is the base study: choose a variant with --variant" : $"this is {study.Variant}")}";
}
