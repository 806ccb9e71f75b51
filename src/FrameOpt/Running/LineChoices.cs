using FrameOpt.ProductLine;
using FrameOpt.ProductLine.PMedian;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>Chooses the best line of any number of geometries: for every row of customers, or for representatives where there are too many.</summary>
internal sealed class LineChoices(LineSetting setting, IReadOnlyList<LineRow> rows, LineCandidates candidates, LineCostTable table, CancellationToken cancel)
{
    private const int MostRows = 5_000;
    private const long MostCosts = 12_000_000;
    private const int Representatives = 400;
    private const int Explained = 5;

    private readonly double[] shares = [.. rows.Select(row => row.Share)];
    private readonly int[]? groups = candidates.Groups(setting.Common);

    public LineChoice Of(int count)
    {
        var settings = new LineSettings(setting.Time, cancel);
        if (table.Kept is { } costs && rows.Count <= MostRows && (long)rows.Count * candidates.Count <= MostCosts)
        {
            var problem = new LineProblem(costs, shares, count, setting.Objective, groups);
            var solution = LineSearch.Solve(problem, settings);
            return new LineChoice(solution, null, Unserved(problem, solution));
        }

        LineProblem? representatives = null;
        var line = AggregatedLine.Solve(
            shares, candidates.Count, table.Row, (rowCosts, rowShares) => representatives = new LineProblem(rowCosts, rowShares, count, setting.Objective, groups), Representatives, settings);
        return new LineChoice(line.Solution, line, Unserved(representatives!, line.Solution));
    }

    private IReadOnlyList<string> Unserved(LineProblem problem, LineSolution solution) =>
    [
        .. LineWords.Unserved(problem, solution, [.. rows.Select(Name)]),
        .. solution.Unservable.Take(Explained).Select(row => $"{Name(rows[row])}: {LineReason.Of(setting.Outfits[rows[row].Outfit], rows[row].PilotMassKilograms, candidates)}."),
    ];

    private string Name(LineRow row)
    {
        var first = setting.Customers[row.Customers[0]].Name;
        return row.Customers.Count == 1 ? first : $"{first} and {row.Customers.Count - 1} like it";
    }
}

/// <summary>The best line of one number of geometries.</summary>
/// <param name="Solution">Over the rows of customers.</param>
/// <param name="Aggregated">When representatives were chosen for, or null.</param>
/// <param name="Unserved">Sentences on customers left out.</param>
internal sealed record LineChoice(LineSolution Solution, AggregatedLine? Aggregated, IReadOnlyList<string> Unserved);
