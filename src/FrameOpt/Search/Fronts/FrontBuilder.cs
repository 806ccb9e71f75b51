namespace FrameOpt.Search.Fronts;

/// <summary>Finds the exact front of designs that arrive in batches, all objectives to be minimised.</summary>
/// <remarks>Most designs are recognised as dominated on arrival and not kept; the rest are buffered and the front is recomputed when the
/// buffer is full. Memory is that of the front and about 260,000 designs, however many are added. The front depends on the designs only,
/// not on batches or threads. Designs equal in all objectives are all kept. Not to be called from several threads at once; it uses its
/// own.</remarks>
public sealed class FrontBuilder
{
    private const int SlicePerThread = 1 << 15;
    private const int HeldBeforeFront = 1 << 18;

    private readonly int objectives;
    private readonly int threads;
    private readonly PointColumns held;
    private readonly DominanceFilter filter;
    private byte[] feasibleCopy = [];
    private byte[] allFeasible = [];
    private int[] positions = [];
    private int heldWhenFiltered;
    private int heldWhenFront;

    /// <summary>Begins with no designs.</summary>
    /// <param name="objectives">Number of objectives, 2 to 5.</param>
    /// <param name="threads">Worker threads, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Either number is out of range.</exception>
    public FrontBuilder(int objectives, int threads)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(objectives, 2);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(objectives, RankRow.RowRanks.Length + 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(threads, 1);
        this.objectives = objectives;
        this.threads = threads;
        held = new PointColumns(objectives);
        filter = new DominanceFilter(objectives);
    }

    /// <summary>Adds a batch of designs with the ids firstId, firstId + 1, ...</summary>
    /// <param name="columns">One array for each objective; the first <paramref name="count"/> values count.</param>
    /// <param name="feasible">For each design, 0 to leave it out (infeasible or failed).</param>
    /// <param name="count">Number of designs.</param>
    /// <param name="firstId">The first design's id, not negative. An id must be given to one design only.</param>
    /// <exception cref="ArgumentException">The shapes do not agree, or an objective of a feasible design is not a number.</exception>
    public void Add(double[][] columns, ReadOnlySpan<byte> feasible, int count, long firstId)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        ArgumentOutOfRangeException.ThrowIfNegative(firstId);
        if (columns.Length != objectives || Array.Exists(columns, column => column.Length < count))
            throw new ArgumentException($"expected {objectives} columns of {count} values", nameof(columns));
        if (feasible.Length < count)
            throw new ArgumentException($"expected {count} flags", nameof(feasible));
        Grow(ref feasibleCopy, count);
        feasible[..count].CopyTo(feasibleCopy);
        var slice = SlicePerThread * threads;
        for (var start = 0; start < count; start += slice)
        {
            var kept = Survivors(columns, feasibleCopy, start, Math.Min(count, start + slice));
            held.Append(columns, kept, firstId);
            if (held.Count - heldWhenFiltered > Math.Max(filter.Corners / 4, heldWhenFiltered / 2))
                RebuildFilter();
            if (held.Count > Math.Max(HeldBeforeFront, 2 * heldWhenFront))
                KeepFront();
        }
    }

    /// <summary>The front of all designs added so far. More may be added afterwards.</summary>
    public FrontPoints Result()
    {
        KeepFront();
        return held.ById();
    }

    /// <summary>Rebuilds the filter from the buffered points and filters them.</summary>
    private void RebuildFilter()
    {
        filter.Rebuild(held.Columns, held.Count);
        Grow(ref allFeasible, held.Count);
        Array.Fill(allFeasible, (byte)1);
        held.Keep(Survivors(held.Columns, allFeasible, 0, held.Count));
        heldWhenFiltered = held.Count;
    }

    private void KeepFront()
    {
        Grow(ref positions, held.Count);
        using var ranked = new RankedPoints(held.Columns, held.Count, threads);
        var front = DivideAndConquerFront.Keep(ranked.Rows, objectives - 1, threads);
        var kept = ranked.PositionsOf(ranked.Rows.Span[..front], positions);
        held.Keep(positions.AsSpan(0, kept));
        heldWhenFront = heldWhenFiltered = held.Count;
    }

    private ReadOnlySpan<int> Survivors(double[][] columns, byte[] feasible, int start, int end)
    {
        Grow(ref positions, end - start);
        return positions.AsSpan(0, filter.Survivors(columns, feasible, start, end, positions, threads));
    }

    private static void Grow<T>(ref T[] array, int length)
    {
        if (array.Length < length)
            array = new T[length];
    }
}

/// <summary>A set of mutually non-dominated designs.</summary>
/// <param name="Ids">The designs' ids, ascending.</param>
/// <param name="Columns">One array for each objective, in the order of the ids.</param>
public sealed record FrontPoints(long[] Ids, double[][] Columns);
