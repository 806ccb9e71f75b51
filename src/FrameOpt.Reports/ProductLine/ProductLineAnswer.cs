using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;
using static System.FormattableString;

namespace FrameOpt.Reports.ProductLine;

/// <summary>A product line in plain words, for the terminal, the workbook and the page alike.</summary>
public static class ProductLineAnswer
{
    private const int MaxWorstServed = 5;

    /// <summary>Words the answer.</summary>
    public static RunAnswer Of(ProductLineResult result)
    {
        var (headline, isWarning) = Headline(result);
        return new RunAnswer(result.Study.FullTitle, result.Study.Question, headline, isWarning,
        [
            .. LineDecision.Of(result),
            Geometries(result),
            WhoGetsWhich(result),
            .. WorstServed(result, MaxWorstServed),
            Gain(result),
            .. LineStressSection.Of(result),
            .. LineSurenessSection.Of(result),
            new AnswerSection("Proof of optimality", [.. ProductLineOptimality.Of(result)]),
            new AnswerSection(
                "Cautions",
                [
                    .. result.Study.Warnings,
                    .. ServedRotation.Caution(result) is { } both ? [both] : Array.Empty<string>(),
                    "Every geometry is a compromise for most of its customers: each customer needs a hang check and first test flights, "
                        + "as with any frame.",
                    .. Cautions.FirstPage,
                ]),
        ]);
    }

    /// <summary>What to drill and build.</summary>
    internal static AnswerSection Geometries(ProductLineResult result)
    {
        var study = result.Study;
        var further = ProductLineText.OtherSweptFactors(study).ToList();
        return new AnswerSection(
            "The geometries to make, seen from behind (the pilot's right is on your right)",
            [
                "Hang points are measured from the plane of symmetry.",
                .. ServedRotation.Notes(result),
                DatumText.Sentence(study.Machine),
                .. result.Geometries.Count < result.Setting.Count && result.Solution is { Feasible: true, Proven: true }
                    ? [$"More than {ProductLineText.Geometries(result.Geometries.Count)} would bring no improvement."]
                        : Array.Empty<string>(),
                .. LimitsSection.RangeEndWarnings(result),
            ],
            new AnswerTable(
                ["geometry", "propeller turns", "LEFT hang point", "RIGHT hang point", "hole offset",
                    .. further.Select(factor => factor.Input.ShortName),
                    "for", "share", "would be missed by"],
                [.. result.Geometries.Select((geometry, index) =>
                {
                    var (left, right) = ProductLineText.DrillingPositions(study, geometry.Design);
                    return (IReadOnlyList<string>)
                    [
                        geometry.Name, ServedRotation.Cell(geometry), left, right,
                        ProductLineText.HoleOffset(study, geometry.Design),
                        .. further.Select(factor => factor.Unit.Text(geometry.Design[factor.Input])),
                        ProductLineText.Pieces(result.Setting, geometry.Share * result.Setting.Customers.Sum(customer => customer.Share)),
                        Invariant($"{100 * geometry.Share:0} %"),
                        ProductLineText.Pieces(result.Setting, LineHelp.Helped(result, index)),
                    ];
                })]));
    }

    /// <summary>Up to which pilot mass each fits.</summary>
    internal static AnswerSection WhoGetsWhich(ProductLineResult result) =>
        new($"Assignment by the pilot's own mass{(result.Chart.ColumnOption.Length > 0 ? $" and {result.Chart.ColumnOption}" : "")}",
            [
                .. ProductLineText.Boundaries(result), .. FittingChartReasons.Of(result), .. FittingChartReasons.NotSold(result),
                .. ProductLineText.Unserved(result),
            ]);

    /// <summary>The customers left with most, and what would serve them.</summary>
    internal static IEnumerable<AnswerSection> WorstServed(ProductLineResult result, int count)
    {
        var worst = result.WorstServed(count);
        if (worst.Count == 0)
            yield break;
        var setting = result.Setting;
        yield return new AnswerSection(
            $"Worst-served customers ({ProductLineText.Cost(setting)}), and the geometry that would suit them",
            [],
            new AnswerTable(
                ["customer", "pilot, configuration", "propeller turns", "geometry", "hardest", "cost", "cost made to measure",
                    "made-to-measure geometry"],
                [.. worst.Select(served => (IReadOnlyList<string>)
                [
                    ProductLineText.Name(setting, served.Row), ProductLineText.Configuration(setting, served.Row),
                    StudyText.RotationText(setting.Configurations[served.Row.Configuration].Rotation),
                    ProductLineText.GeometryName(result, served.Geometry), ServedWorst.Hardest(result, served),
                    ProductLineText.Amount(setting, served.Cost), ProductLineText.Amount(setting, served.BestCost),
                    served.Regret > 0 ? ProductLineText.Design(result.Study, served.BestDesign!.Value) : "the same",
                ])]));
    }

    /// <summary>Gain from each additional geometry.</summary>
    internal static AnswerSection Gain(ProductLineResult result)
    {
        var setting = result.Setting;
        var lines = new List<string>();
        if (result.OneMore is { } more)
        {
            lines.Add(more switch
            {
                { Solution.Feasible: false } => "One more geometry would still leave customers unserved.",
                { Gain: null } =>
                    $"With one more geometry every customer would be served: {ProductLineText.Value(setting)} "
                        + $"{ProductLineText.Amount(setting, more.Solution.Value)}.",
                { Gain: <= 0 } => "One more geometry would bring no improvement.",
                { Gain: { } gain } =>
                    $"One more geometry would improve it by {ProductLineText.Amount(setting, gain)}, "
                        + Invariant($"{100 * gain / result.Solution.Value:0.#} % of the {ProductLineText.Value(setting)}."),
            });
            if (more.Solution.Feasible && LineHelp.HelpedByOneMore(result) is { } helped)
                lines.Add($"It would help {ProductLineText.Pieces(setting, helped)}: those whose {ProductLineText.Cost(setting)} "
                    + "it lowers by "
                    + $"more than {LineHelp.BuildToleranceText(result)}, which hang points built off to one side by the usual error "
                    + "change on average.");
        }

        return new AnswerSection("Gain from one more geometry", lines, new AnswerTable(
            ["geometries", ProductLineText.Value(setting), "gain from the last one", "proof"],
            [.. result.Curve.Select(point => (IReadOnlyList<string>)
            [
                Invariant($"{point.Count}"), point.Solution.Feasible ? ProductLineText.Amount(setting, point.Solution.Value) : "-",
                point.Gain is { } gain && point.Solution.Feasible ? ProductLineText.Amount(setting, gain) : "-",
                    ProductLineOptimality.Status(point.Solution),
            ])]));
    }

    private static (string Description, bool IsWarning) Headline(ProductLineResult result)
    {
        var (text, isWarning) = OfLine(result);
        var arms = DatumText.MovingArms(result.Study.Machine);
        return (arms + text, isWarning || arms.Length > 0);
    }

    private static (string Description, bool IsWarning) OfLine(ProductLineResult result)
    {
        var (setting, solution) = (result.Setting, result.Solution);
        var stopped = result.IsComplete ? "" : "STOPPED EARLY, best selection so far. ";
        if (result.Geometries.Count == 0)
            return ($"{stopped}NO CANDIDATE IS ALLOWED FOR ANY CUSTOMER: there is no geometry to make.", true);
        if (!solution.Feasible)
            return ($"{stopped}NO LINE OF {setting.Count} SERVES EVERY CUSTOMER. The closest, {Making(result)}, leaves unserved "
                + $"{Weight(result, solution.Unserved)} of {ProductLineText.Pieces(setting, setting.Customers.Sum(one => one.Share))}. "
                + $"{Worst(result)}", true);
        var worst = result.Assignments.Where(served => served.Geometry >= 0).Max(served => served.EffortWorst);
        var effort = worst > 1
            ? Invariant($" CAUTION: effort up to {worst:0.00}: at least one customer cannot hold it; see customers.csv.") : "";
        var alone = solution.Unservable.Count == 0 ? ""
            : $" No candidate serves {Weight(result, solution.Unservable)}: that takes a custom frame.";
        if (solution.SetAside.Count > 0)
            alone += $" {StudyText.Capitalised(Weight(result, solution.SetAside))} are left out, because not all need be served.";
        var both = ServedRotation.Caution(result) is { } caution ? $" {caution}" : "";
        return ($"{stopped}Make {Making(result)}: {ProductLineText.Value(setting)} {ProductLineText.Amount(setting, solution.Value)}, "
            + $"{ProductLineOptimality.Status(solution)}{LineSurenessSection.Beside(result)}. "
            + $"{string.Join(" ", LineHelp.Few(result).Append(Worst(result)))}{alone}{effort}{both}",
            effort.Length > 0 || alone.Length > 0 || both.Length > 0 || !result.IsComplete);
    }

    /// <summary>"A (62 pieces), B (64 pieces) and C (24 pieces)".</summary>
    private static string Making(ProductLineResult result)
    {
        var all = result.Setting.Customers.Sum(customer => customer.Share);
        string[] each = [.. result.Geometries.Select(geometry => $"{geometry.Name} ({(geometry.IsFixed ? "fixed, " : "")}"
            + $"{ProductLineText.Pieces(result.Setting, geometry.Share * all)})")];
        return each.Length < 2 ? string.Concat(each) : $"{string.Join(", ", each.SkipLast(1))} and {each[^1]}";
    }

    private static string Worst(ProductLineResult result) =>
        result.Assignments.Where(served => served.Geometry >= 0).MaxBy(served => served.Cost) is { } served
            ? ServedWorst.Sentence(result, served) : "";

    private static string Weight(ProductLineResult result, IReadOnlyList<int> rows) =>
        ProductLineText.Pieces(result.Setting, rows.Sum(row => result.Assignments[row].Row.Share));
}
