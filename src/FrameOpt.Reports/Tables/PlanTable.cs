using FrameOpt.Forms;
using FrameOpt.Plans;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Tables;

/// <summary>The runs of a plan, with the model's value of each response analysed.</summary>
public static class PlanTable
{
    /// <summary>Of the order of runs to make, so that a table is the same on every screen.</summary>
    public const ulong Seed = 1;

    /// <summary>Significant digits of the model's values beside which somebody measures.</summary>
    private const int Digits = 6;

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
                .. WholePlots(runs),
                .. plan.Factors.Select(factor => Column.OfNumbers(factor.Name, factor.Unit.Symbol, Column.GeneralFormat,
                    row => factor.Unit.FromSi(plan.Designs[row][factor.Input]))),
                .. answer.Surfaces.Select(surface => Column.OfNumbers(surface.Response.Name, surface.Response.Unit, Column.GeneralFormat,
                    row => surface.Values[row])),
            ],
            runs.Count);
    }

    /// <summary>The runs to make, in random order within their blocks and whole plots, each with an empty cell for what will be measured
    /// and the model's value beside it.</summary>
    /// <param name="answer">The plan.</param>
    /// <param name="seed">Another seed gives another order.</param>
    public static Table ToMeasure(PlanResult answer, ulong seed)
    {
        var plan = answer.Plan;
        var runs = plan.Plan.InRandomOrder(seed);
        return new(
            [
                Column.OfNumbers("order", "0", row => row + 1),
                Column.OfNumbers("run", "0", row => runs[row].Number),
                Column.OfNumbers("block", "0", row => runs[row].Block),
                .. WholePlots(runs),
                Column.OfTexts("kind", row => runs[row].Kind.ToString().ToLowerInvariant()),
                .. plan.Factors.Select(factor => Column.OfNumbers(factor.Name, factor.Unit.Symbol, Column.GeneralFormat,
                    row => factor.Unit.FromSi(plan.Designs[runs[row].Number - 1][factor.Input]))),
                .. answer.Surfaces.SelectMany(surface => new[]
                {
                    Column.OfNumbers(surface.Response.Name, surface.Response.Unit, Column.GeneralFormat, _ => double.NaN),
                    Column.OfNumbers(RunHeading.ModelPrefix + surface.Response.Name, surface.Response.Unit, Column.GeneralFormat,
                        row => NumberFormat.RoundedTo(surface.Values[runs[row].Number - 1], Digits)),
                }),
            ],
            runs.Count);
    }

    /// <summary>The column of whole plots; none where no factor is hard to change.</summary>
    internal static IEnumerable<Column> WholePlots(IReadOnlyList<PlanRun> runs) => runs.All(run => run.WholePlot == 0) ? []
        : [Column.OfNumbers(RunHeading.WholePlot, "0", row => runs[row].WholePlot)];
}
