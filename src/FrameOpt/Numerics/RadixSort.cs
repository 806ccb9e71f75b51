using System.Buffers;

namespace FrameOpt.Numerics;

/// <summary>Sorting of 64-bit keys with an index each, stable, in time proportional to their number.</summary>
/// <remarks>Source: Knuth, The Art of Computer Programming vol. 3, section 5.2.5 (least significant digit first); from memory.</remarks>
internal static class RadixSort
{
    private const int DigitBits = 11;
    private const int Buckets = 1 << DigitBits;
    private const int RadixThreshold = 700;
    private const int Digits = (64 + DigitBits - 1) / DigitBits;

    /// <summary>A key whose order as a whole number is the order of the doubles; both zeros have the same key.</summary>
    public static ulong KeyOf(double value)
    {
        var bits = BitConverter.DoubleToInt64Bits(value + 0.0);
        return (ulong)(bits ^ ((bits >> 63) | long.MinValue));
    }

    /// <summary>Sorts both spans by key, equal keys in any order: a few by comparison, many by digits.</summary>
    public static void SortUnstable(Span<ulong> keys, Span<int> indices)
    {
        if (keys.Length < RadixThreshold)
            keys.Sort(indices);
        else
            Sort(keys, indices);
    }

    /// <summary>Sorts both spans by key.</summary>
    public static void Sort(Span<ulong> keys, Span<int> indices)
    {
        var keyRoom = ArrayPool<ulong>.Shared.Rent(keys.Length);
        var indexRoom = ArrayPool<int>.Shared.Rent(keys.Length);
        var counts = CountDigits(keys);
        var fromKeys = keys;
        var fromIndices = indices;
        var toKeys = keyRoom.AsSpan(0, keys.Length);
        var toIndices = indexRoom.AsSpan(0, keys.Length);
        for (var digit = 0; digit < Digits; digit++)
        {
            var starts = counts.AsSpan(digit * Buckets, Buckets);
            if (starts.Contains(keys.Length))
                continue;
            TurnIntoStarts(starts);
            Distribute(fromKeys, fromIndices, toKeys, toIndices, starts, digit * DigitBits);
            var spareKeys = fromKeys;
            var spareIndices = fromIndices;
            fromKeys = toKeys;
            fromIndices = toIndices;
            toKeys = spareKeys;
            toIndices = spareIndices;
        }
        fromKeys.CopyTo(keys);
        fromIndices.CopyTo(indices);
        ArrayPool<ulong>.Shared.Return(keyRoom);
        ArrayPool<int>.Shared.Return(indexRoom);
    }

    private static int[] CountDigits(ReadOnlySpan<ulong> keys)
    {
        var counts = new int[Digits * Buckets];
        foreach (var key in keys)
            for (var digit = 0; digit < Digits; digit++)
                counts[digit * Buckets + ((int)(key >> (digit * DigitBits)) & (Buckets - 1))]++;
        return counts;
    }

    private static void TurnIntoStarts(Span<int> counts)
    {
        var start = 0;
        foreach (ref var count in counts)
            (count, start) = (start, start + count);
    }

    private static void Distribute(ReadOnlySpan<ulong> keys, ReadOnlySpan<int> indices, Span<ulong> toKeys, Span<int> toIndices,
        Span<int> starts, int shift)
    {
        for (var i = 0; i < keys.Length; i++)
        {
            var to = starts[(int)(keys[i] >> shift) & (Buckets - 1)]++;
            toKeys[to] = keys[i];
            toIndices[to] = indices[i];
        }
    }
}
