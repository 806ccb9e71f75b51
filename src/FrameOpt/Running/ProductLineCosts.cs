using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>Cost of a customer with each candidate.</summary>
/// <param name="setting">States the response that is the cost.</param>
/// <param name="candidates">The candidates.</param>
public sealed class ProductLineCosts(ProductLineSetting setting, ProductLineCandidates candidates)
{
    private readonly int[] firsts = Firsts(candidates);

    /// <summary>Fills the costs of one customer: at least 0 in the response's unit, infinite where the candidate cannot fly, breaks a
    /// limit of the study or is for engines that turn the other way.</summary>
    /// <param name="configuration">The customer's value.</param>
    /// <param name="pilotKilograms">The customer's value.</param>
    /// <param name="costs">One per candidate.</param>
    /// <remarks>The cost of a response to maximise is its shortfall from the best value of any allowed candidate for this
    /// customer.</remarks>
    public void Fill(ProductLineConfiguration configuration, double pilotKilograms, Span<double> costs)
    {
        var study = configuration.For(pilotKilograms);
        var row = new MissionRow(StudyProblem.Model(study));
        for (var r = 0; r < firsts.Length; r++)
            FillRow(row, study, r, costs.Slice(firsts[r], candidates.Offsets[r].Length));
        if (setting.CostResponse.Maximise)
            ToShortfalls(costs);
        foreach (ref var cost in costs)
        {
            if (double.IsNaN(cost))
                cost = double.PositiveInfinity;
        }
    }

    /// <summary>The response, not a number where the candidate is not allowed.</summary>
    private void FillRow(MissionRow row, Study study, int r, Span<double> values)
    {
        var offsets = candidates.Offsets[r];
        if (!candidates.Suits(study.Machine, firsts[r]) || row.Prepare(candidates.On(study.Machine, firsts[r])).Kind != FailureKind.None)
        {
            values.Fill(double.NaN);
            return;
        }

        var codes = new ushort[offsets.Length];
        row.FindFailures(offsets, codes);
        setting.CostResponse.Response.Fill(row, setting.CostResponse.Magnitude, offsets, values);
        for (var i = 0; i < codes.Length; i++)
        {
            if (codes[i] != 0)
                values[i] = double.NaN;
        }

        var bounded = new double[offsets.Length];
        foreach (var limit in study.Limits)
        {
            limit.Response.Fill(row, limit.Magnitude, offsets, bounded);
            var bound = limit.AsConstraint;
            for (var i = 0; i < bounded.Length; i++)
            {
                if (!bound.IsSatisfiedBy(bounded[i]))
                    values[i] = double.NaN;
            }
        }
    }

    private static void ToShortfalls(Span<double> values)
    {
        var best = double.NegativeInfinity;
        foreach (var value in values)
        {
            if (double.IsFinite(value))
                best = Math.Max(best, value);
        }

        foreach (ref var value in values)
            value = Math.Max(0, best - value);
    }

    private static int[] Firsts(ProductLineCandidates candidates)
    {
        var firsts = new int[candidates.Offsets.Count];
        for (var r = 1; r < firsts.Length; r++)
            firsts[r] = firsts[r - 1] + candidates.Offsets[r - 1].Length;
        return firsts;
    }
}

/// <summary>The costs of all customer segments: kept when they fit in memory, otherwise computed on demand, some in advance.</summary>
internal sealed class ProductLineCostTable
{
    private const long MaxKept = 25_000_000;
    private const int AheadPerThread = 16;

    private readonly ProductLineSetting setting;
    private readonly ProductLineCosts costs;
    private readonly IReadOnlyList<CustomerSegment> rows;
    private readonly int candidates;
    private readonly int threads;
    private readonly double[][] ahead;
    private int aheadFrom;
    private int aheadCount;
    private int last = -2;

    public ProductLineCostTable(ProductLineSetting setting, IReadOnlyList<CustomerSegment> rows, ProductLineCandidates candidates,
        int threads)
    {
        (this.setting, this.rows, this.candidates, this.threads) = (setting, rows, candidates.Count, threads);
        costs = new ProductLineCosts(setting, candidates);
        if ((long)rows.Count * candidates.Count <= MaxKept)
            Kept = new double[rows.Count][];
        ahead = Kept is null ? new double[AheadPerThread * threads][] : [];
    }

    /// <summary>All costs, one row per segment; null when they do not fit in memory.</summary>
    public double[][]? Kept { get; }

    /// <summary>Computes the kept costs and gives the number of rows done; gives nothing when none are kept.</summary>
    public IEnumerable<int> Fill()
    {
        var wave = AheadPerThread * threads;
        for (var from = 0; Kept is not null && from < rows.Count; from += wave)
        {
            var to = Math.Min(from + wave, rows.Count);
            InParallel(from, to, (row, values) => Kept[row] = values);
            yield return to;
        }
    }

    /// <summary>The costs of one row; the same values every time. Not thread-safe.</summary>
    public void Row(int row, Span<double> values)
    {
        if (Kept is not null)
        {
            Kept[row].CopyTo(values);
            return;
        }

        var follows = row == last + 1;
        last = row;
        if (row < aheadFrom || row >= aheadFrom + aheadCount)
        {
            if (!follows)
            {
                costs.Fill(setting.Configurations[rows[row].Configuration], rows[row].PilotMassKilograms, values);
                return;
            }

            (aheadFrom, aheadCount) = (row, Math.Min(ahead.Length, rows.Count - row));
            InParallel(row, row + aheadCount, (one, own) => ahead[one - aheadFrom] = own);
        }

        ahead[row - aheadFrom].CopyTo(values);
    }

    private void InParallel(int from, int to, Action<int, double[]> take) =>
        Parallel.For(from, to, new ParallelOptions { MaxDegreeOfParallelism = threads }, row =>
        {
            var own = new double[candidates];
            costs.Fill(setting.Configurations[rows[row].Configuration], rows[row].PilotMassKilograms, own);
            take(row, own);
        });
}
