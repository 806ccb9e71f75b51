namespace FrameOpt.Search.Fronts;

/// <summary>How near an approximation comes to a reference front, both given point after point, all objectives to be minimised. Less is
/// better.</summary>
public static class Indicators
{
    /// <summary>Mean over the approximation's points of the Euclidean distance to the nearest reference point.</summary>
    /// <param name="approximation">One point or more, one after the other.</param>
    /// <param name="reference">The reference front, likewise.</param>
    /// <param name="objectives">How many objectives, 2 to 6.</param>
    /// <exception cref="ArgumentException">A set is empty, its length is no multiple of the number of objectives, or a value is not a
    /// number.</exception>
    /// <remarks>Source: Van Veldhuizen, Multiobjective evolutionary algorithms: classifications, analyses, and new innovations, 1999 (from
    /// memory);
    /// the plain mean, as most software has it.</remarks>
    public static double GenerationalDistance(ReadOnlySpan<double> approximation, ReadOnlySpan<double> reference, int objectives) =>
        Mean(approximation, reference, objectives, Distance);

    /// <summary>Mean over the reference points of the Euclidean distance to the nearest point of the approximation.</summary>
    /// <inheritdoc cref="GenerationalDistance"/>
    /// <remarks>Source: Coello Coello and Reyes Sierra, A study of the parallelization of a coevolutionary multi-objective evolutionary
    /// algorithm,
    /// MICAI 2004 (from memory).</remarks>
    public static double InvertedGenerationalDistance(ReadOnlySpan<double> approximation, ReadOnlySpan<double> reference, int objectives) =>
        Mean(reference, approximation, objectives, Distance);

    /// <summary>As the generational distance, counting only by how much the approximation's point is worse than the reference
    /// point.</summary>
    /// <inheritdoc cref="GenerationalDistance"/>
    /// <remarks>Source: Ishibuchi, Masuda, Tanigaki and Nojima, Modified distance calculation in generational distance and inverted
    /// generational
    /// distance, EMO 2015 (from memory).</remarks>
    public static double GenerationalDistancePlus(ReadOnlySpan<double> approximation, ReadOnlySpan<double> reference, int objectives) =>
        Mean(approximation, reference, objectives, Excess);

    /// <summary>As the inverted generational distance, counting only by how much the approximation's point is worse than the reference
    /// point.</summary>
    /// <inheritdoc cref="GenerationalDistancePlus"/>
    public static double InvertedGenerationalDistancePlus(
        ReadOnlySpan<double> approximation, ReadOnlySpan<double> reference, int objectives) =>
        Mean(reference, approximation, objectives, (point, other) => Excess(other, point));

    /// <summary>The least amount that, taken off every objective of the approximation, lets it cover every reference point.</summary>
    /// <inheritdoc cref="GenerationalDistance"/>
    /// <remarks>Source: Zitzler, Thiele, Laumanns, Fonseca and Grunert da Fonseca, Performance assessment of multiobjective optimizers: an
    /// analysis and
    /// review, IEEE Transactions on Evolutionary Computation 7 (2003) 117-132 (from memory).</remarks>
    public static double AdditiveEpsilon(ReadOnlySpan<double> approximation, ReadOnlySpan<double> reference, int objectives) =>
        Nearest(reference, approximation, objectives, (point, other) => Largest(other, point, (a, r) => a - r)).Max();

    /// <summary>The least factor by which every objective of the approximation is to be divided to let it cover every reference point; all
    /// values are above 0.</summary>
    /// <inheritdoc cref="AdditiveEpsilon"/>
    /// <exception cref="ArgumentException">As for the others, or a value is not above 0.</exception>
    public static double MultiplicativeEpsilon(ReadOnlySpan<double> approximation, ReadOnlySpan<double> reference, int objectives)
    {
        foreach (var value in (ReadOnlySpan<double>)[.. approximation, .. reference])
            if (value <= 0)
                throw new ArgumentException("a factor is defined for values above 0 only");
        return Nearest(reference, approximation, objectives, (point, other) => Largest(other, point, (a, r) => a / r)).Max();
    }

    private delegate double Measure(ReadOnlySpan<double> point, ReadOnlySpan<double> other);

    private static double Mean(ReadOnlySpan<double> points, ReadOnlySpan<double> others, int objectives, Measure measure) =>
        Nearest(points, others, objectives, measure).Average();

    /// <summary>For every point the least measure to another.</summary>
    private static double[] Nearest(ReadOnlySpan<double> points, ReadOnlySpan<double> others, int objectives, Measure measure)
    {
        var nearest = new double[PointArguments.Count(points, objectives)];
        if (nearest.Length == 0 || PointArguments.Count(others, objectives) == 0)
            throw new ArgumentException("no point is near an empty set");
        Array.Fill(nearest, double.PositiveInfinity);
        for (var i = 0; i < nearest.Length; i++)
            for (var k = 0; k < others.Length; k += objectives)
                nearest[i] = Math.Min(nearest[i], measure(points.Slice(i * objectives, objectives), others.Slice(k, objectives)));
        return nearest;
    }

    private static double Distance(ReadOnlySpan<double> point, ReadOnlySpan<double> other)
    {
        var squares = 0.0;
        for (var j = 0; j < point.Length; j++)
            squares += (point[j] - other[j]) * (point[j] - other[j]);
        return Math.Sqrt(squares);
    }

    private static double Excess(ReadOnlySpan<double> point, ReadOnlySpan<double> better)
    {
        var squares = 0.0;
        for (var j = 0; j < point.Length; j++)
        {
            var worse = Math.Max(point[j] - better[j], 0);
            squares += worse * worse;
        }
        return Math.Sqrt(squares);
    }

    private static double Largest(ReadOnlySpan<double> point, ReadOnlySpan<double> other, Func<double, double, double> compare)
    {
        var largest = double.NegativeInfinity;
        for (var j = 0; j < point.Length; j++)
            largest = Math.Max(largest, compare(point[j], other[j]));
        return largest;
    }
}
