using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace FrameOpt.Search.Fronts;

/// <summary>For each of many fronts, the rows needed to decide whether the front covers a later row. A row covers another if it is nowhere
/// above it. A row covered by a later row of its front is dropped: the later row covers everything it covers.</summary>
/// <remarks>Rows lie in blocks of eight, column by column, the blocks of a front in a chain with the latest, which alone may have room, at
/// its head. Empty slots hold NaN, which covers nothing.</remarks>
internal sealed class FrontArchives
{
    private const int Lanes = 8;
    private const int None = -1;

    private int width;
    private double[] blocks = [];
    private int[] next = [];
    private int blockCount;
    private int vacant = None;
    private int[] heads = [];
    private int[] rowsInHead = [];

    /// <summary>Number of fronts.</summary>
    public int Fronts { get; private set; }

    /// <summary>Clears all fronts; later rows have <paramref name="values"/> values.</summary>
    public void Clear(int values)
    {
        width = values;
        Fronts = blockCount = 0;
        vacant = None;
    }

    /// <summary>Whether some row of the front covers <paramref name="row"/>.</summary>
    public bool WeaklyDominates(int front, ReadOnlySpan<double> row)
    {
        ref var start = ref MemoryMarshal.GetArrayDataReference(blocks);
        for (var block = heads[front]; block != None; block = next[block])
        {
            var offset = (nuint)(block * width * Lanes);
            var covering = Vector512.LessThanOrEqual(Vector512.LoadUnsafe(ref start, offset), Vector512.Create(row[0]));
            for (var k = 1; k < row.Length; k++)
                covering &= Vector512.LessThanOrEqual(Vector512.LoadUnsafe(ref start, offset + (nuint)(k * Lanes)),
                    Vector512.Create(row[k]));
            if (covering.ExtractMostSignificantBits() != 0)
                return true;
        }
        return false;
    }

    /// <summary>Adds a row to a front, or to a new one if <paramref name="front"/> is the number of fronts.</summary>
    public void Add(int front, ReadOnlySpan<double> row)
    {
        if (front == Fronts)
            Begin();
        else
            RemoveDominated(front, row);
        if (heads[front] == None || rowsInHead[front] == Lanes)
        {
            heads[front] = Take(followedBy: heads[front]);
            rowsInHead[front] = 0;
        }
        var place = heads[front] * width * Lanes + rowsInHead[front]++;
        for (var k = 0; k < row.Length; k++)
            blocks[place + k * Lanes] = row[k];
    }

    private void Begin()
    {
        if (Fronts == heads.Length)
        {
            Array.Resize(ref heads, 2 * Fronts + 16);
            Array.Resize(ref rowsInHead, heads.Length);
        }
        heads[Fronts++] = None;
    }

    private void RemoveDominated(int front, ReadOnlySpan<double> row)
    {
        for (int block = heads[front], following; block != None; block = following)
        {
            following = next[block];
            var covered = Vector512.GreaterThanOrEqual(Vector512.Create<double>(Column(block, 0)), Vector512.Create(row[0]));
            for (var k = 1; k < row.Length; k++)
                covered &= Vector512.GreaterThanOrEqual(Vector512.Create<double>(Column(block, k)), Vector512.Create(row[k]));
            // From the last to the first, so that the row that fills a gap has been checked.
            for (var bits = covered.ExtractMostSignificantBits(); bits != 0;)
            {
                var lane = BitOperations.Log2(bits);
                bits ^= 1UL << lane;
                FillFromHead(front, block, lane);
            }
        }
    }

    /// <summary>Moves the last row of the head block to a slot that becomes free.</summary>
    private void FillFromHead(int front, int block, int lane)
    {
        var head = heads[front];
        var last = --rowsInHead[front];
        for (var k = 0; k < width; k++)
        {
            Column(block, k)[lane] = Column(head, k)[last];
            Column(head, k)[last] = double.NaN;
        }
        if (last > 0)
            return;
        heads[front] = next[head];
        rowsInHead[front] = Lanes;
        next[head] = vacant;
        vacant = head;
    }

    private int Take(int followedBy)
    {
        var block = vacant;
        if (block != None)
            vacant = next[block];
        else
            block = blockCount++;
        if (block == next.Length)
        {
            Array.Resize(ref next, 2 * block + 16);
            Array.Resize(ref blocks, next.Length * (PointArguments.MaxObjectives - 1) * Lanes);
        }
        blocks.AsSpan(block * width * Lanes, width * Lanes).Fill(double.NaN);
        next[block] = followedBy;
        return block;
    }

    private Span<double> Column(int block, int k) => blocks.AsSpan((block * width + k) * Lanes, Lanes);
}
