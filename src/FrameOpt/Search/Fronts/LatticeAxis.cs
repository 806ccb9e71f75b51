using System.Runtime.Intrinsics;

namespace FrameOpt.Search.Fronts;

/// <summary>Equally spaced marks along one objective, numbered from 1 to <see cref="last"/>; index 0 means below the first mark and the
/// index after the last means above it. Indices are exact in spite of rounding: each is checked against its mark.</summary>
internal sealed class LatticeAxis
{
    private readonly double first;
    private readonly double markSpacing;
    private readonly double perUnit;
    private readonly double last;

    /// <summary>Marks from the lowest to the highest finite value; all at the lowest where the range is too narrow to divide.</summary>
    public LatticeAxis(ReadOnlySpan<double> values, int marks)
    {
        last = marks;
        perUnit = double.MaxValue;
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var value in values)
        {
            low = double.IsFinite(value) && value < low ? value : low;
            high = double.IsFinite(value) && value > high ? value : high;
        }
        if (low > high)
            return;
        first = low;
        var spacing = (high - low) / (marks - 1);
        var largest = Math.Max(Math.Abs(low), Math.Abs(high));
        // The spacing is several rounding errors wide, so the index before the check is at most one off.
        if (!(spacing > 8 * (Math.BitIncrement(largest) - largest)) || !double.IsFinite(1 / spacing) || !double.IsFinite(spacing))
            return;
        markSpacing = spacing;
        perUnit = 1 / spacing;
    }

    /// <summary>True when the marks differ.</summary>
    public bool Divides => markSpacing > 0;

    /// <summary>Replaces each corner index n by n x stride + the index of the lowest mark not below the value.</summary>
    public void NumberAbove(ReadOnlySpan<double> values, Span<double> corners, double stride)
    {
        for (var i = 0; i < values.Length; i += Vector512<double>.Count)
        {
            var value = Load(values, i);
            var number = Vector512.Ceiling(Near(value));
            number += Vector512.LessThan(Mark(number), value) & Vector512<double>.One;
            Append(number, corners, i, stride);
        }
    }

    /// <summary>Replaces each corner index n by n x stride + the index of the highest mark not above the value.</summary>
    public void NumberBelow(ReadOnlySpan<double> values, Span<double> corners, double stride)
    {
        for (var i = 0; i < values.Length; i += Vector512<double>.Count)
        {
            var value = Load(values, i);
            var number = Vector512.Floor(Near(value));
            number -= Vector512.GreaterThan(Mark(number), value) & Vector512<double>.One;
            Append(number, corners, i, stride);
        }
    }

    private static Vector512<double> Load(ReadOnlySpan<double> values, int start) =>
        start + Vector512<double>.Count <= values.Length ? Vector512.Create(values[start..]) : LoadRest(values[start..]);

    private static Vector512<double> LoadRest(ReadOnlySpan<double> values)
    {
        Span<double> padded = stackalloc double[Vector512<double>.Count];
        values.CopyTo(padded);
        return Vector512.Create<double>(padded);
    }

    private static void Append(Vector512<double> number, Span<double> corners, int start, double stride)
    {
        var place = corners.Slice(start, Vector512<double>.Count);
        (Vector512.Create<double>(place) * Vector512.Create(stride) + number).CopyTo(place);
    }

    private Vector512<double> Near(Vector512<double> value)
    {
        var number = (value - Vector512.Create(first)) * Vector512.Create(perUnit) + Vector512<double>.One;
        return Vector512.Min(Vector512.Max(number, Vector512<double>.One), Vector512.Create(last));
    }

    private Vector512<double> Mark(Vector512<double> number) =>
        (number - Vector512<double>.One) * Vector512.Create(markSpacing) + Vector512.Create(first);
}
