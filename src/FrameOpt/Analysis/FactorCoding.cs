namespace FrameOpt.Analysis;

/// <summary>Factors on a common scale, -1 to 1 over their ranges: the scale on which directions and curvatures can be compared.</summary>
/// <param name="Centre">Middle of each factor, in its unit.</param>
/// <param name="HalfRange">Half of its range, over 0.</param>
public sealed record FactorCoding(IReadOnlyList<double> Centre, IReadOnlyList<double> HalfRange)
{
    /// <summary>The coding of ranges.</summary>
    public static FactorCoding OfRanges(IReadOnlyList<Interval> ranges) =>
        new([.. ranges.Select(range => (range.Low + range.High) / 2)], [.. ranges.Select(range => (range.High - range.Low) / 2)]);

    /// <summary>From the factors' units to -1..1.</summary>
    public double[] Coded(IReadOnlyList<double> design) => [.. design.Select((value, f) => (value - Centre[f]) / HalfRange[f])];

    /// <summary>From -1..1 to the factors' units.</summary>
    public double[] Uncoded(IReadOnlyList<double> coded) => [.. coded.Select((value, f) => Centre[f] + (value * HalfRange[f]))];
}
