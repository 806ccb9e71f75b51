using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace FrameOpt.Model;

/// <summary>Formulas over a row of lateral offsets, several at a time. Every lane and the rest of a row that does not fill one
/// are computed by the same operations, so a design has the same value alone and in any row.</summary>
public static class OffsetSpan
{
    /// <summary>The straight quantity itself.</summary>
    public static void Straight(OffsetLine line, ReadOnlySpan<double> offsets, Span<double> values)
    {
        Vector512<double> a = Vector512.Create(line.AtZero), b = Vector512.Create(line.PerMetre);
        var done = 0;
        for (; done <= offsets.Length - Vector512<double>.Count; done += Vector512<double>.Count)
            (a + b * Load(offsets, done)).StoreUnsafe(ref values[done]);
        for (; done < offsets.Length; done++)
            values[done] = line.At(offsets[done]);
    }

    /// <summary>The size of a straight quantity.</summary>
    public static void Size(OffsetLine line, ReadOnlySpan<double> offsets, Span<double> values) => LargestSize([line], offsets, values);

    /// <summary>The largest size of several straight quantities.</summary>
    public static void LargestSize(ReadOnlySpan<OffsetLine> lines, ReadOnlySpan<double> offsets, Span<double> values)
    {
        var done = 0;
        for (; done <= offsets.Length - Vector512<double>.Count; done += Vector512<double>.Count)
        {
            var offset = Load(offsets, done);
            var largest = Vector512<double>.Zero;
            foreach (var line in lines)
                largest = Vector512.MaxNative(largest, Vector512.Abs(Vector512.Create(line.AtZero) + Vector512.Create(line.PerMetre) * offset));
            largest.StoreUnsafe(ref values[done]);
        }

        for (; done < offsets.Length; done++)
        {
            var largest = 0.0;
            foreach (var line in lines)
                largest = Math.Max(largest, Math.Abs(line.At(offsets[done])));
            values[done] = largest;
        }
    }

    /// <summary>The weighted root mean square of several straight quantities.</summary>
    /// <param name="lines">The quantities.</param>
    /// <param name="weights">One each, not all zero.</param>
    /// <param name="offsets">Lateral offsets in m.</param>
    /// <param name="values">As many as offsets.</param>
    public static void RootMeanSquare(
        ReadOnlySpan<OffsetLine> lines, ReadOnlySpan<double> weights, ReadOnlySpan<double> offsets, Span<double> values)
    {
        var total = 0.0;
        foreach (var weight in weights)
            total += weight;
        var share = 1 / total;
        var done = 0;
        for (; done <= offsets.Length - Vector512<double>.Count; done += Vector512<double>.Count)
        {
            var offset = Load(offsets, done);
            var sum = Vector512<double>.Zero;
            for (var i = 0; i < lines.Length; i++)
            {
                var value = Vector512.Create(lines[i].AtZero) + Vector512.Create(lines[i].PerMetre) * offset;
                sum += Vector512.Create(weights[i]) * (value * value);
            }

            Vector512.Sqrt(sum * Vector512.Create(share)).StoreUnsafe(ref values[done]);
        }

        for (; done < offsets.Length; done++)
        {
            var sum = 0.0;
            for (var i = 0; i < lines.Length; i++)
            {
                var value = lines[i].At(offsets[done]);
                sum += weights[i] * (value * value);
            }

            values[done] = Math.Sqrt(sum * share);
        }
    }

    /// <summary>A capacity over the size of a straight quantity; infinite where that is zero.</summary>
    public static void Margin(double capacity, OffsetLine line, ReadOnlySpan<double> offsets, Span<double> values)
    {
        var done = 0;
        for (; done <= offsets.Length - Vector512<double>.Count; done += Vector512<double>.Count)
        {
            var size = Vector512.Abs(Vector512.Create(line.AtZero) + Vector512.Create(line.PerMetre) * Load(offsets, done));
            (Vector512.Create(capacity) / size).StoreUnsafe(ref values[done]);
        }

        for (; done < offsets.Length; done++)
            values[done] = capacity / Math.Abs(line.At(offsets[done]));
    }

    /// <summary>Turns the sign of every value.</summary>
    public static void Negate(Span<double> values)
    {
        var done = 0;
        for (; done <= values.Length - Vector512<double>.Count; done += Vector512<double>.Count)
            (-Load(values, done)).StoreUnsafe(ref values[done]);
        for (; done < values.Length; done++)
            values[done] = -values[done];
    }

    /// <summary>Takes the size of every value.</summary>
    public static void Absolute(Span<double> values)
    {
        var done = 0;
        for (; done <= values.Length - Vector512<double>.Count; done += Vector512<double>.Count)
            Vector512.Abs(Load(values, done)).StoreUnsafe(ref values[done]);
        for (; done < values.Length; done++)
            values[done] = Math.Abs(values[done]);
    }

    private static Vector512<double> Load(ReadOnlySpan<double> from, int index) =>
        Vector512.LoadUnsafe(ref MemoryMarshal.GetReference(from), (nuint)index);
}
