namespace FrameOpt.Numerics;

/// <summary>Points that fill the unit cube evenly for any count: each dimension writes the number of the point backwards in its own
/// prime base. Beyond about six dimensions the last ones are correlated until there are very many points.</summary>
/// <remarks>Source: J. H. Halton, On the efficiency of certain quasi-random sequences of points in evaluating multi-dimensional
/// integrals, Numer. Math. 2 (1960) 84-90, from memory.</remarks>
public static class HaltonSequence
{
    private static readonly int[] primes = [2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37];

    /// <summary>The first points, the origin first.</summary>
    /// <param name="dimensions">1 to 12.</param>
    /// <param name="count">How many.</param>
    /// <returns>For each point one value a dimension, from 0 up to but not including 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">More dimensions, or a negative count.</exception>
    public static IEnumerable<double[]> Points(int dimensions, int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(dimensions, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(dimensions, primes.Length);
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        return Enumerable.Range(0, count)
            .Select(number => primes.Take(dimensions).Select(prime => RadicalInverse(number, prime)).ToArray());
    }

    private static double RadicalInverse(int number, int numberBase)
    {
        var (value, place) = (0.0, 1.0);
        for (; number > 0; number /= numberBase)
        {
            place /= numberBase;
            value += number % numberBase * place;
        }

        return value;
    }
}
