using System.Numerics;

namespace FrameOpt.Numerics;

/// <summary>Points that fill the unit cube evenly: the first 2^n of them put equally many in every half, quarter and so on of each
/// factor.</summary>
/// <remarks>Source: S. Joe and F. Y. Kuo, Constructing Sobol sequences with better two-dimensional projections, SIAM J. Sci. Comput. 30
/// (2008) 2635-2654, direction numbers new-joe-kuo-6.21201; order of I. A. Antonov and V. M. Saleev (1979).</remarks>
public static class SobolSequence
{
    /// <summary>How many dimensions there are direction numbers for.</summary>
    public const int MaxDimensions = 12;

    private const int Bits = 32;

    private static readonly uint[][] directions =
    [
        [.. Enumerable.Range(1, Bits).Select(i => 1u << (Bits - i))],
        Directions(0, [1]),
        Directions(1, [1, 3]),
        Directions(1, [1, 3, 1]),
        Directions(2, [1, 1, 1]),
        Directions(1, [1, 1, 3, 3]),
        Directions(4, [1, 3, 5, 13]),
        Directions(2, [1, 1, 5, 5, 17]),
        Directions(4, [1, 1, 5, 5, 5]),
        Directions(7, [1, 1, 7, 11, 19]),
        Directions(11, [1, 1, 5, 1, 1]),
        Directions(13, [1, 1, 1, 3, 11]),
    ];

    /// <summary>The first points, the origin first.</summary>
    /// <param name="dimensions">1 to 12.</param>
    /// <param name="count">How many; a power of two keeps the balance.</param>
    /// <returns>For each point one value a dimension, from 0 up to but not including 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">More dimensions, or a negative count.</exception>
    public static IEnumerable<double[]> Points(int dimensions, int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(dimensions, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(dimensions, MaxDimensions);
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        return Walk(dimensions, count);
    }

    private static IEnumerable<double[]> Walk(int dimensions, int count)
    {
        var current = new uint[dimensions];
        for (var number = 0u; number < count; number++)
        {
            yield return [.. current.Select(bits => bits / (double)(1UL << Bits))];
            var changed = BitOperations.TrailingZeroCount(~number);
            for (var d = 0; d < dimensions; d++)
                current[d] ^= directions[d][changed];
        }
    }

    /// <summary>The direction numbers of a primitive polynomial: as many start numbers as its degree, its inner coefficients as
    /// bits.</summary>
    private static uint[] Directions(int polynomial, uint[] start)
    {
        var (degree, numbers) = (start.Length, new uint[Bits]);
        for (var i = 0; i < Bits; i++)
        {
            if (i < degree)
            {
                numbers[i] = start[i] << (Bits - 1 - i);
                continue;
            }

            numbers[i] = numbers[i - degree] ^ (numbers[i - degree] >> degree);
            for (var k = 1; k < degree; k++)
            {
                if ((polynomial >> (degree - 1 - k) & 1) == 1)
                    numbers[i] ^= numbers[i - k];
            }
        }

        return numbers;
    }
}
