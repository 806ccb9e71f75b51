namespace FrameOpt.Studies;

/// <summary>Pilot masses, in whole kilograms, that one geometry suits best.</summary>
/// <param name="FromKilograms">The first.</param>
/// <param name="ToKilograms">The last.</param>
/// <param name="Geometry">Its index; -1 when none is allowed.</param>
public sealed record FittingSpan(int FromKilograms, int ToKilograms, int Geometry)
{
    /// <summary>The part of a column between two masses.</summary>
    public static IReadOnlyList<FittingSpan> Between(IReadOnlyList<FittingSpan> spans, int from, int to) =>
    [
        .. spans.Where(span => span.FromKilograms <= to && span.ToKilograms >= from)
            .Select(span => span with { FromKilograms = Math.Max(from, span.FromKilograms), ToKilograms = Math.Min(to, span.ToKilograms) }),
    ];
}
