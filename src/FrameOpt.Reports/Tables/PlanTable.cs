using FrameOpt.Studies;

namespace FrameOpt.Reports.Tables;

/// <summary>The runs of a plan, with the model's value of each response analysed.</summary>
public static class PlanTable
{
    /// <summary>One row for each run: number, kind, block, factors in the user's units, responses; no number where a design cannot
    /// fly.</summary>
    public static Table Of(PlanResult answer)
    {
        var (plan, runs) = (answer.Plan, answer.Plan.Plan.Runs);
        return new(
            [
                Column.OfNumbers("run", "0", row => runs[row].Number),
                Column.OfTexts("kind", row => runs[row].Kind.ToString().ToLowerInvariant()),
                Column.OfNumbers("block", "0", row => runs[row].Block),
                .. plan.Factors.Select(factor => Column.OfNumbers(factor.Name, factor.Unit.Symbol, Column.GeneralFormat,
                    row => factor.Unit.FromSi(plan.Designs[row][factor.Input]))),
                .. answer.Surfaces.Select(surface => Column.OfNumbers(surface.Response.Name, surface.Response.Unit, Column.GeneralFormat,
                    row => surface.Values[row])),
            ],
            runs.Count);
    }
}
