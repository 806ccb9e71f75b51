using System.Numerics;

namespace FrameOpt.Numerics;

/// <summary>Points that fill the unit cube evenly: the first 2^n of them put equally many in every half, quarter and so on of each
/// factor.</summary>
/// <remarks>Source: S. Joe and F. Y. Kuo, Constructing Sobol sequences with better two-dimensional projections, SIAM J. Sci. Comput. 30
/// (2008) 2635-2654, direction numbers new-joe-kuo-6.21201; order of I. A. Antonov and V. M. Saleev (1979).</remarks>
public static class SobolSequence
{
    /// <summary>How many dimensions there are direction numbers for.</summary>
    public const int MaxDimensions = 32;

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
        Directions(14, [1, 3, 5, 5, 31]),
        Directions(1, [1, 3, 3, 9, 7, 49]),
        Directions(13, [1, 1, 1, 15, 21, 21]),
        Directions(16, [1, 3, 1, 13, 27, 49]),
        Directions(19, [1, 1, 1, 15, 7, 5]),
        Directions(22, [1, 3, 1, 15, 13, 25]),
        Directions(25, [1, 1, 5, 5, 19, 61]),
        Directions(1, [1, 3, 7, 11, 23, 15, 103]),
        Directions(4, [1, 3, 7, 13, 13, 15, 69]),
        Directions(7, [1, 1, 3, 13, 7, 35, 63]),
        Directions(8, [1, 3, 5, 9, 1, 25, 53]),
        Directions(14, [1, 3, 1, 13, 9, 35, 107]),
        Directions(19, [1, 3, 1, 5, 27, 61, 31]),
        Directions(21, [1, 1, 5, 11, 19, 41, 61]),
        Directions(28, [1, 3, 5, 3, 3, 13, 69]),
        Directions(31, [1, 1, 7, 13, 1, 19, 1]),
        Directions(32, [1, 3, 7, 5, 13, 19, 59]),
        Directions(37, [1, 1, 3, 9, 25, 29, 41]),
        Directions(41, [1, 3, 5, 13, 23, 1, 55]),
        Directions(42, [1, 3, 7, 3, 13, 59, 17]),
    ];

    /// <summary>The first points, the origin first.</summary>
    /// <param name="dimensions">1 to 32.</param>
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

    /// <summary>The first points, scrambled: as even as before, each uniform by itself, and none at 0.</summary>
    /// <param name="dimensions">1 to 32.</param>
    /// <param name="count">How many; a power of two keeps the balance.</param>
    /// <param name="seed">Another seed gives another scrambling, independent of the first.</param>
    /// <returns>For each point one value a dimension, above 0 and below 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">More dimensions, or a negative count.</exception>
    /// <remarks>Source: nested uniform scrambling, A. B. Owen 1995; by hashing, B. Burley, Practical hash-based Owen scrambling, Journal
    /// of Computer Graphics Techniques 9(4) (2020) 1-20.</remarks>
    public static IEnumerable<double[]> ScrambledPoints(int dimensions, int count, uint seed)
    {
        var seeds = new Pcg32(seed);
        var keys = new uint[dimensions];
        for (var d = 0; d < dimensions; d++)
            keys[d] = seeds.NextUInt32();
        return Points(dimensions, count).Select(point =>
            point.Select((value, d) => (Scrambled((uint)(value * (1UL << Bits)), keys[d]) + 0.5) / (1UL << Bits)).ToArray());
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

    /// <summary>Each bit is flipped or not, by a hash of the bits above it.</summary>
    private static uint Scrambled(uint bits, uint key)
    {
        unchecked
        {
            var x = Reversed(bits) + key;
            x ^= x * 0x6c50b47cu;
            x ^= x * 0xb82f1e52u;
            x ^= x * 0xc7afe638u;
            x ^= x * 0x8d22f6e6u;
            return Reversed(x);
        }
    }

    private static uint Reversed(uint bits)
    {
        var reversed = 0u;
        for (var i = 0; i < Bits; i++)
            reversed |= (bits >> i & 1) << (Bits - 1 - i);
        return reversed;
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
