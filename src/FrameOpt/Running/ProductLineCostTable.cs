using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>The costs of all rows of customers: kept when they have room in memory, else worked out as they are asked for, some
/// ahead.</summary>
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

    /// <summary>All costs, a row a row; null when there is no room for them.</summary>
    public double[][]? Kept { get; }

    /// <summary>Works out what is kept, giving how many rows are done; nothing when nothing is kept.</summary>
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

    /// <summary>The costs of one row; the same numbers every time. Not to be called by several threads at once.</summary>
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
