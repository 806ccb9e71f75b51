using FrameOpt.ProductLine;
using FrameOpt.ProductLine.PMedian;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>How sure a choice is, in words.</summary>
internal static class ProductLineOptimality
{
    /// <summary>"proven optimal", or how far it can be from it, for a table.</summary>
    public static string Status(ProductLineSolution solution) => solution switch
    {
        { Feasible: false } => "customers unserved",
        { Proven: true } => "proven optimal",
        { Stop: ProductLineStopReason.Fixed } => "as given",
        { Bound: > 0 } => $"at most {NumberFormat.SignificantDigits(100 * solution.Gap / solution.Bound, 2)} % above the optimum",
        _ => "optimality not proven",
    };

    /// <summary>Sentences.</summary>
    public static IEnumerable<string> Of(ProductLineResult result)
    {
        var (setting, solution) = (result.Setting, result.Solution);
        var segments = NumberFormat.Count(result.Assignments.Count);
        yield return $"Chosen from {NumberFormat.Count(result.Candidates, "candidate")} ({result.CandidatesDescription}) for "
            + $"{NumberFormat.Count(setting.Customers.Count, "customer")} ({setting.CustomersDescription}), "
            + $"{segments} of them distinct. {ProductLineText.CommonalityText(setting)}".TrimEnd();
        if (solution.Stop == ProductLineStopReason.Fixed)
        {
            yield return "Nothing was chosen: the study gives all geometries, and each customer takes the best of them.";
        }
        else if (solution.Feasible)
        {
            yield return solution.Proven
                ? $"Proven optimal: no other selection of {ProductLineText.Chosen(setting)} from these candidates has a lower "
                    + $"{ProductLineText.Value(setting)}. Gap 0."
                : $"OPTIMALITY NOT PROVEN: {Why(solution.Stop)}. No selection can be below {Fine(setting, solution.Bound)}: "
                    + $"the gap is {Fine(setting, solution.Gap)}, "
                    + $"{NumberFormat.SignificantDigits(100 * solution.Gap / solution.Value, 2)} % of the value.";
        }

        if (setting.Serve < 1 && solution.Feasible)
            yield return $"This holds for the customers that are left: whom to leave out, at most {NumberFormat.SignificantDigits(100
                * (1 - setting.Serve), 3)} % by weight, was decided first{(result.Aggregated is null ? ""
                    : ", among the representative customers; a customer can use the geometries that the representative can, so the share "
                        + "that is served is exact")}. That leaving out others would not give less is not proven.";
        if (result.Aggregated is { } line)
        {
            yield return $"Chosen for {NumberFormat.Count(line.Aggregation.Representatives.Count)} representative customers, then "
                + $"evaluated for every customer: "
                + $"for any selection the two values differ by at most {Fine(setting, line.ErrorBound)}.";
        }
    }

    private static string Fine(ProductLineSetting setting, double amount) =>
        $"{NumberFormat.SignificantDigits(amount, 3)} {setting.CostResponse.Response.Unit}".TrimEnd();

    private static string Why(ProductLineStopReason stop) => stop switch
    {
        ProductLineStopReason.TimeLimit => "the time limit was reached",
        ProductLineStopReason.Cancelled => "the run was stopped",
        _ => "it is proven for the representative customers only",
    };
}
