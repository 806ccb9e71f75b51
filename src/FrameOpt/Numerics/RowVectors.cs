using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace FrameOpt.Numerics;

/// <summary>Formulas over a row of arguments, several at a time in vector lanes. A row too short for one vector goes through the same
/// operations one by one, so a design has the same value alone and in any row.</summary>
public static class RowVectors
{
    /// <summary>The value of a linear function.</summary>
    public static void Linear(LinearFunction line, ReadOnlySpan<double> offsets, Span<double> values)
    {
        Vector512<double> a = Vector512.Create(line.AtZero), b = Vector512.Create(line.PerMetre);
        for (var next = 0; next < Lanes(offsets); next += Vector512<double>.Count)
        {
            var i = Start(next, offsets);
            (a + b * Load(offsets, i)).StoreUnsafe(ref values[i]);
        }

        for (var i = Lanes(offsets); i < offsets.Length; i++)
            values[i] = line.At(offsets[i]);
    }

    /// <summary>The magnitude of a linear function.</summary>
    public static void Magnitude(LinearFunction line, ReadOnlySpan<double> offsets, Span<double> values) =>
        MaxMagnitude([line], offsets, values);

    /// <summary>The largest magnitude of several linear functions.</summary>
    public static void MaxMagnitude(ReadOnlySpan<LinearFunction> lines, ReadOnlySpan<double> offsets, Span<double> values)
    {
        for (var next = 0; next < Lanes(offsets); next += Vector512<double>.Count)
        {
            var i = Start(next, offsets);
            var offset = Load(offsets, i);
            var largest = Vector512<double>.Zero;
            foreach (var line in lines)
                largest = Vector512.MaxNative(largest, Vector512.Abs(Vector512.Create(line.AtZero)
                    + Vector512.Create(line.PerMetre) * offset));
            largest.StoreUnsafe(ref values[i]);
        }

        for (var i = Lanes(offsets); i < offsets.Length; i++)
        {
            var largest = 0.0;
            foreach (var line in lines)
                largest = Math.Max(largest, Math.Abs(line.At(offsets[i])));
            values[i] = largest;
        }
    }

    /// <summary>The weighted root mean square of several linear functions.</summary>
    /// <param name="lines">The functions.</param>
    /// <param name="weights">One each, not all zero.</param>
    /// <param name="offsets">Lateral offsets in m.</param>
    /// <param name="values">As many as offsets.</param>
    public static void RootMeanSquare(
        ReadOnlySpan<LinearFunction> lines, ReadOnlySpan<double> weights, ReadOnlySpan<double> offsets, Span<double> values)
    {
        var total = 0.0;
        foreach (var weight in weights)
            total += weight;
        var share = 1 / total;
        for (var next = 0; next < Lanes(offsets); next += Vector512<double>.Count)
        {
            var at = Start(next, offsets);
            var offset = Load(offsets, at);
            var sum = Vector512<double>.Zero;
            for (var i = 0; i < lines.Length; i++)
            {
                var value = Vector512.Create(lines[i].AtZero) + Vector512.Create(lines[i].PerMetre) * offset;
                sum += Vector512.Create(weights[i]) * (value * value);
            }

            Vector512.Sqrt(sum * Vector512.Create(share)).StoreUnsafe(ref values[at]);
        }

        for (var at = Lanes(offsets); at < offsets.Length; at++)
        {
            var sum = 0.0;
            for (var i = 0; i < lines.Length; i++)
            {
                var value = lines[i].At(offsets[at]);
                sum += weights[i] * (value * value);
            }

            values[at] = Math.Sqrt(sum * share);
        }
    }

    /// <summary>A capacity over the magnitude of a linear function; infinite where that is zero.</summary>
    public static void Margin(double capacity, LinearFunction line, ReadOnlySpan<double> offsets, Span<double> values)
    {
        for (var next = 0; next < Lanes(offsets); next += Vector512<double>.Count)
        {
            var i = Start(next, offsets);
            var magnitude = Vector512.Abs(Vector512.Create(line.AtZero) + Vector512.Create(line.PerMetre) * Load(offsets, i));
            (Vector512.Create(capacity) / magnitude).StoreUnsafe(ref values[i]);
        }

        for (var i = Lanes(offsets); i < offsets.Length; i++)
            values[i] = capacity / Math.Abs(line.At(offsets[i]));
    }

    /// <summary>Multiplies every value by a factor.</summary>
    public static void Scale(double factor, Span<double> values)
    {
        var done = 0;
        for (; done <= values.Length - Vector512<double>.Count; done += Vector512<double>.Count)
            (Vector512.Create(factor) * Load(values, done)).StoreUnsafe(ref values[done]);
        for (; done < values.Length; done++)
            values[done] *= factor;
    }

    /// <summary>Reverses the sign of every value.</summary>
    public static void Negate(Span<double> values)
    {
        var done = 0;
        for (; done <= values.Length - Vector512<double>.Count; done += Vector512<double>.Count)
            (-Load(values, done)).StoreUnsafe(ref values[done]);
        for (; done < values.Length; done++)
            values[done] = -values[done];
    }

    /// <summary>Replaces every value by its magnitude.</summary>
    public static void Magnitudes(Span<double> values)
    {
        var done = 0;
        for (; done <= values.Length - Vector512<double>.Count; done += Vector512<double>.Count)
            Vector512.Abs(Load(values, done)).StoreUnsafe(ref values[done]);
        for (; done < values.Length; done++)
            values[done] = Math.Abs(values[done]);
    }

    /// <summary>How many offsets are computed in lanes: all of a row that fills at least one vector, else none.</summary>
    private static int Lanes(ReadOnlySpan<double> offsets) => offsets.Length < Vector512<double>.Count ? 0 : offsets.Length;

    /// <summary>Where the next vector begins: the last one reaches back so that it is full; what it computes twice comes out the
    /// same.</summary>
    private static int Start(int place, ReadOnlySpan<double> offsets) => Math.Min(place, offsets.Length - Vector512<double>.Count);

    private static Vector512<double> Load(ReadOnlySpan<double> from, int index) =>
        Vector512.LoadUnsafe(ref MemoryMarshal.GetReference(from), (nuint)index);
}
