namespace FrameOpt.Search.Fronts;

/// <summary>The exact front of rows in lexicographic order, by divide and conquer on one objective after the other.</summary>
/// <remarks>Source: Kung, Luccio and Preparata, On finding the maxima of a set of vectors, J. ACM 22 (1975) 469-476, from memory; here the
/// recursion ends in small sets compared directly, many rows at once. n rows of d objectives take at most O(n (log n)^(d-1)) steps. Rows
/// are distinct and in lexicographic order, so that an earlier row dominates a later one exactly when none of its other ranks is higher:
/// ties need no care beyond "not higher".</remarks>
internal sealed class DivideAndConquerFront(int ranks)
{
    private const int SmallFront = 64;
    private const int PairsPerRow = 64;
    private const int MinRowsPerThread = 2048;

    private readonly RankBlock block = new();

    /// <summary>Moves the front of <paramref name="rows"/> to their beginning, in any order, and gives its size.</summary>
    /// <param name="rows">Distinct rows in lexicographic order.</param>
    /// <param name="ranks">How many ranks a row has: the number of objectives less one.</param>
    /// <param name="threads">Worker threads, at least 1.</param>
    public static int Keep(Memory<RankRow> rows, int ranks, int threads)
    {
        if (ranks == 1)
            return Sweep(rows.Span);
        if (threads == 1 || rows.Length < MinRowsPerThread)
            return new DivideAndConquerFront(ranks).Keep(rows.Span);
        var (first, second) = (rows[..(rows.Length / 2)], rows[(rows.Length / 2)..]);
        Parallel.Invoke(
            () => first = first[..Keep(first, ranks, threads - threads / 2)],
            () => second = second[..Keep(second, ranks, threads / 2)]);
        var kept = Filter(first.Span, second, ranks, threads);
        second[..kept].CopyTo(rows[first.Length..]);
        return first.Length + kept;
    }

    /// <summary>As the other filter, with the later rows divided among the threads. The division reorders its rows, so each thread has its
    /// own copy of the earlier rows.</summary>
    private static int Filter(ReadOnlySpan<RankRow> earlier, Memory<RankRow> later, int ranks, int threads)
    {
        var copies = new RankRow[threads][];
        for (var t = 0; t < threads; t++)
            copies[t] = earlier.ToArray();
        var kept = new int[threads];
        var share = later.Length / threads + 1;
        Memory<RankRow> Part(int t) => later[Math.Min(t * share, later.Length)..Math.Min((t + 1) * share, later.Length)];
        Parallel.For(0, threads, t => kept[t] = new DivideAndConquerFront(ranks).Filter(copies[t], Part(t).Span, 0));
        var total = 0;
        for (var t = 0; t < threads; t++)
        {
            Part(t)[..kept[t]].CopyTo(later[total..]);
            total += kept[t];
        }
        return total;
    }

    private static int Sweep(Span<RankRow> rows)
    {
        var kept = 0;
        var lowest = int.MaxValue;
        foreach (var row in rows)
        {
            if (row.Ranks[0] >= lowest)
                continue;
            lowest = row.Ranks[0];
            rows[kept++] = row;
        }
        return kept;
    }

    private int Keep(Span<RankRow> rows)
    {
        if (rows.Length <= SmallFront)
            return KeepSmall(rows);
        var first = rows[..(rows.Length / 2)];
        var second = rows[first.Length..];
        first = first[..Keep(first)];
        second = second[..Keep(second)];
        second = second[..Filter(first, second, 0)];
        second.CopyTo(rows[first.Length..]);
        return first.Length + second.Length;
    }

    private int KeepSmall(Span<RankRow> rows)
    {
        block.Clear();
        var kept = 0;
        foreach (ref readonly var row in rows)
        {
            if (block.WeaklyDominates(row, 0, ranks))
                continue;
            block.Add(row);
            rows[kept++] = row;
        }
        return kept;
    }

    /// <summary>Removes from <paramref name="later"/> what a row of <paramref name="earlier"/> covers from rank <paramref name="k"/> on;
    /// gives the number left.</summary>
    private int Filter(Span<RankRow> earlier, Span<RankRow> later, int k)
    {
        if (earlier.IsEmpty || later.IsEmpty)
            return later.Length;
        if ((long)earlier.Length * later.Length <= PairsPerRow * (long)(earlier.Length + later.Length))
            return FilterSmall(earlier, later, k);
        var (earlierLow, earlierHigh) = Range(earlier, k);
        var (laterLow, laterHigh) = Range(later, k);
        if (earlierLow > laterHigh)
            return later.Length;
        if (k == ranks - 1)
            return KeepBelow(later, k, earlierLow);
        if (earlierHigh <= laterLow)
            return Filter(earlier, later, k + 1);

        var low = Math.Min(earlierLow, laterLow);
        var high = Math.Max(earlierHigh, laterHigh);
        var middle = low + (high - low) / 2;
        var earlierSplit = Partition(earlier, k, middle);
        var laterSplit = Partition(later, k, middle);
        var kept = Filter(earlier[..earlierSplit], later[..laterSplit], k);
        var above = later[laterSplit..];
        above = above[..Filter(earlier[..earlierSplit], above, k + 1)];
        above = above[..Filter(earlier[earlierSplit..], above, k)];
        above.CopyTo(later[kept..]);
        return kept + above.Length;
    }

    private int FilterSmall(Span<RankRow> earlier, Span<RankRow> later, int k)
    {
        while (!earlier.IsEmpty)
        {
            var taken = Math.Min(earlier.Length, RankBlock.Capacity);
            block.Clear();
            foreach (ref readonly var row in earlier[..taken])
                block.Add(row);
            earlier = earlier[taken..];
            var kept = 0;
            foreach (ref readonly var row in later)
                if (!block.WeaklyDominates(row, k, ranks))
                    later[kept++] = row;
            later = later[..kept];
        }
        return later.Length;
    }

    private static int KeepBelow(Span<RankRow> rows, int k, int limit)
    {
        var kept = 0;
        foreach (ref readonly var row in rows)
            if (row.Ranks[k] < limit)
                rows[kept++] = row;
        return kept;
    }

    private static (int Low, int High) Range(Span<RankRow> rows, int k)
    {
        var (low, high) = (int.MaxValue, int.MinValue);
        foreach (ref readonly var row in rows)
        {
            low = Math.Min(low, row.Ranks[k]);
            high = Math.Max(high, row.Ranks[k]);
        }
        return (low, high);
    }

    /// <summary>Moves the rows with rank <paramref name="k"/> at most <paramref name="limit"/> to the beginning and gives their
    /// number.</summary>
    private static int Partition(Span<RankRow> rows, int k, int limit)
    {
        var low = 0;
        for (var i = 0; i < rows.Length; i++)
        {
            var row = rows[i];
            rows[i] = rows[low];
            rows[low] = row;
            low += row.Ranks[k] <= limit ? 1 : 0;
        }
        return low;
    }
}
