using FrameOpt.ProductLine;
using FrameOpt.ProductLine.PMedian;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>How sure a choice is, in words.</summary>
internal static class ProductLineProof
{
    /// <summary>"proven best", or how far it can be from it, for a table.</summary>
    public static string Short(LineSolution solution) => solution switch
    {
        { Feasible: false } => "leaves customers out",
        { Proven: true } => "proven best",
        { Bound: > 0 } => $"at most {Figures.Significant(100 * solution.Gap / solution.Bound, 2)} % above the best",
        _ => "not proven best",
    };

    /// <summary>Sentences.</summary>
    public static IEnumerable<string> Of(LineResult result)
    {
        var (setting, solution) = (result.Setting, result.Solution);
        yield return $"Chosen out of {Figures.Count(result.Candidates)} candidates ({result.CandidatesWords}) for {Figures.Count(setting.Customers.Count)} customers ({setting.CustomersWords}), "
            + $"{Figures.Count(result.Served.Count)} of them unlike each other. {ProductLineWords.Common(setting)}".TrimEnd();
        if (solution.Feasible)
        {
            yield return solution.Proven
                ? $"Proven best: no other choice of {ProductLineWords.Geometries(setting.Count)} out of these candidates has a smaller {ProductLineWords.Value(setting)}. Gap 0."
                : $"NOT PROVEN BEST: {Why(solution.Stop)}. No choice can be below {Fine(setting, solution.Bound)}: "
                    + $"the gap is {Fine(setting, solution.Gap)}, {Figures.Significant(100 * solution.Gap / solution.Value, 2)} % of the value.";
        }

        if (result.Aggregated is { } line)
        {
            yield return $"Chosen for {Figures.Count(line.Aggregation.Representatives.Count)} customers that stand for all, then worked out for every one: "
                + $"for no choice do the two differ by more than {Fine(setting, line.ErrorBound)}.";
        }
    }

    private static string Fine(LineSetting setting, double amount) => $"{Figures.Significant(amount, 3)} {setting.Goal.Response.Unit}".TrimEnd();

    private static string Why(LineStop stop) => stop switch
    {
        LineStop.TimeLimit => "the time was up",
        LineStop.Cancelled => "it was stopped",
        _ => "it is proven best for customers that stand for all",
    };
}
