using FrameOpt.ProductLine;
using FrameOpt.ProductLine.PMedian;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>How sure a choice is, in words.</summary>
internal static class ProductLineOptimality
{
    /// <summary>"proven best", or how far it can be from it, for a table.</summary>
    public static string Status(ProductLineSolution solution) => solution switch
    {
        { Feasible: false } => "leaves customers out",
        { Proven: true } => "proven best",
        { Bound: > 0 } => $"at most {NumberFormat.SignificantDigits(100 * solution.Gap / solution.Bound, 2)} % above the best",
        _ => "not proven best",
    };

    /// <summary>Sentences.</summary>
    public static IEnumerable<string> Of(ProductLineResult result)
    {
        var (setting, solution) = (result.Setting, result.Solution);
        var segments = NumberFormat.Count(result.Assignments.Count);
        yield return $"Chosen out of {NumberFormat.Count(result.Candidates)} candidates ({result.CandidatesDescription}) for "
            + $"{NumberFormat.Count(setting.Customers.Count)} customers ({setting.CustomersDescription}), "
            + $"{segments} of them unlike each other. {ProductLineText.CommonalityText(setting)}".TrimEnd();
        if (solution.Feasible)
        {
            yield return solution.Proven
                ? $"Proven best: no other choice of {ProductLineText.Geometries(setting.Count)} out of these candidates has a smaller "
                    + $"{ProductLineText.Value(setting)}. Gap 0."
                : $"NOT PROVEN BEST: {Why(solution.Stop)}. No choice can be below {Fine(setting, solution.Bound)}: "
                    + $"the gap is {Fine(setting, solution.Gap)}, "
                    + $"{NumberFormat.SignificantDigits(100 * solution.Gap / solution.Value, 2)} % of the value.";
        }

        if (result.Aggregated is { } line)
        {
            yield return $"Chosen for {NumberFormat.Count(line.Aggregation.Representatives.Count)} customers that stand for all, then "
                + "worked out for every one: "
                + $"for no choice do the two differ by more than {Fine(setting, line.ErrorBound)}.";
        }
    }

    private static string Fine(ProductLineSetting setting, double amount) =>
        $"{NumberFormat.SignificantDigits(amount, 3)} {setting.CostResponse.Response.Unit}".TrimEnd();

    private static string Why(ProductLineStopReason stop) => stop switch
    {
        ProductLineStopReason.TimeLimit => "the time was up",
        ProductLineStopReason.Cancelled => "it was stopped",
        _ => "it is proven best for customers that stand for all",
    };
}
