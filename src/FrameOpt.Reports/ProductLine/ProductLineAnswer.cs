using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;
using static System.FormattableString;

namespace FrameOpt.Reports.ProductLine;

/// <summary>A product line in plain words, for the terminal, the workbook and the page alike.</summary>
public static class ProductLineAnswer
{
    private const int WorstShown = 5;

    /// <summary>Words the answer.</summary>
    public static RunAnswer Of(LineResult result)
    {
        var (headline, isWarning) = Headline(result);
        return new RunAnswer(result.Study.FullTitle, result.Study.Question, headline, isWarning,
        [
            Geometries(result),
            WhoGetsWhich(result),
            .. WorstServed(result, WorstShown),
            Gain(result),
            new AnswerSection("How sure this is", [.. ProductLineProof.Of(result)]),
            new AnswerSection("Cautions", [.. result.Study.Warnings, "Every geometry is a compromise for most who get it: each customer's own hang check and first flights come as for any frame.", .. Cautions.FirstPage]),
        ]);
    }

    /// <summary>What to drill and build.</summary>
    internal static AnswerSection Geometries(LineResult result)
    {
        var study = result.Study;
        var further = ProductLineWords.Further(study).ToList();
        return new AnswerSection(
            "The geometries to make, seen from behind (the pilot's right is on your right)",
            [
                $"Hang points are measured from the plane of symmetry. Propeller {StudyWords.Turns(study.Machine.Propeller.Rotation)} seen from behind.",
                .. result.Geometries.Count < result.Setting.Count && result.Solution is { Feasible: true, Proven: true } ? [$"More than {ProductLineWords.Geometries(result.Geometries.Count)} would gain nothing."] : Array.Empty<string>(),
            ],
            new AnswerTable(
                ["geometry", "LEFT hang point", "RIGHT hang point", "holes moved", .. further.Select(ProductLineWords.Short), "customers", "share"],
                [.. result.Geometries.Select(geometry =>
                {
                    var (left, right) = ProductLineWords.Drill(study, geometry.Design);
                    return (IReadOnlyList<string>)
                    [
                        geometry.Letter.ToString(), left, right, ProductLineWords.Hole(study, geometry.Design),
                        .. further.Select(factor => factor.Unit.Text(geometry.Design[factor.Input])),
                        Figures.Count(geometry.Customers), Invariant($"{100 * geometry.Share:0} %"),
                    ];
                })]));
    }

    /// <summary>Up to which pilot mass each fits.</summary>
    internal static AnswerSection WhoGetsWhich(LineResult result) =>
        new($"Who gets which, by the pilot's own mass{(result.Chart.ColumnOption.Length > 0 ? $" and {result.Chart.ColumnOption}" : "")}", [.. ProductLineWords.Boundaries(result), .. result.Unserved]);

    /// <summary>The customers left with most, and what would serve them.</summary>
    internal static IEnumerable<AnswerSection> WorstServed(LineResult result, int count)
    {
        var worst = result.WorstServed(count);
        if (worst.Count == 0)
            yield break;
        var setting = result.Setting;
        yield return new AnswerSection(
            $"Who is served worst ({ProductLineWords.Cost(setting)}), and what would serve them",
            [],
            new AnswerTable(
                ["customer", "pilot, outfit", "gets", "left with", "made to measure", "that would be"],
                [.. worst.Select(served => (IReadOnlyList<string>)
                [
                    ProductLineWords.Name(setting, served.Row), ProductLineWords.Outfit(setting, served.Row), ProductLineWords.Letter(result, served.Geometry),
                    ProductLineWords.Amount(setting, served.Cost), ProductLineWords.Amount(setting, served.OwnCost),
                    served.Regret > 0 ? ProductLineWords.Design(result.Study, served.Own!.Value) : "this one",
                ])]));
    }

    /// <summary>What each further geometry buys.</summary>
    internal static AnswerSection Gain(LineResult result)
    {
        var setting = result.Setting;
        var lines = new List<string>();
        if (result.OneMore is { } more)
        {
            lines.Add(more switch
            {
                { Solution.Feasible: false } => "One more geometry would still leave customers out.",
                { Gain: null } => $"With one more geometry every customer would be served: {ProductLineWords.Value(setting)} {ProductLineWords.Amount(setting, more.Solution.Value)}.",
                { Gain: <= 0 } => "One more geometry would gain nothing.",
                { Gain: { } gain } => Invariant($"One more geometry would gain {ProductLineWords.Amount(setting, gain)}, {100 * gain / result.Solution.Value:0.#} % of the {ProductLineWords.Value(setting)}."),
            });
        }

        return new AnswerSection("What one more would buy", lines, new AnswerTable(
            ["geometries", ProductLineWords.Value(setting), "gain of the last one", "how sure"],
            [.. result.Curve.Select(point => (IReadOnlyList<string>)
            [
                Invariant($"{point.Count}"), point.Solution.Feasible ? ProductLineWords.Amount(setting, point.Solution.Value) : "-",
                point.Gain is { } gain && point.Solution.Feasible ? ProductLineWords.Amount(setting, gain) : "-", ProductLineProof.Short(point.Solution),
            ])]));
    }

    private static (string Words, bool IsWarning) Headline(LineResult result)
    {
        var (setting, solution) = (result.Setting, result.Solution);
        var stopped = result.IsComplete ? "" : "STOPPED EARLY, the best so far. ";
        if (result.Geometries.Count == 0)
            return ($"{stopped}NO CANDIDATE IS ALLOWED FOR ANY CUSTOMER: there is no geometry to make.", true);
        var letters = string.Join(", ", result.Geometries.Select(geometry => geometry.Letter));
        if (!solution.Feasible)
            return ($"{stopped}NO LINE OF {setting.Count} SERVES EVERY CUSTOMER. The nearest, {letters}, leaves out {Figures.Count(solution.LeftOut.Sum(row => result.Served[row].Row.Customers.Count))} of {Figures.Count(setting.Customers.Count)}.", true);
        var worst = result.Served.Where(served => served.Geometry >= 0).Max(served => served.EffortWorst);
        var effort = worst > 1 ? Invariant($" CAUTION: effort up to {worst:0.00}: somebody cannot hold it; see customers.csv.") : "";
        var alone = solution.Unservable.Count > 0 ? $" Nothing serves {Figures.Count(solution.Unservable.Sum(row => result.Served[row].Row.Customers.Count))} customers: measure and make." : "";
        return ($"{stopped}Make {ProductLineWords.Geometries(result.Geometries.Count)}, {letters}: {ProductLineWords.Value(setting)} {ProductLineWords.Amount(setting, solution.Value)}, "
            + $"{ProductLineProof.Short(solution)}.{alone}{effort}", effort.Length > 0 || alone.Length > 0 || !result.IsComplete);
    }
}
