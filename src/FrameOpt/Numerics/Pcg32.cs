namespace FrameOpt.Numerics;

/// <summary>A small random number generator that gives the same numbers everywhere: PCG-XSH-RR with 64 bits of state.</summary>
/// <remarks>Source: M. E. O'Neill, PCG: A Family of Simple Fast Space-Efficient Statistically Good Algorithms for Random Number
/// Generation, HMC-CS-2014-0905 (2014), from memory.</remarks>
public sealed class Pcg32
{
    private const ulong Multiplier = 6364136223846793005;
    private readonly ulong increment;
    private ulong state;

    /// <summary>A generator at the start of its sequence.</summary>
    /// <param name="seed">Where in the sequence to start.</param>
    /// <param name="sequence">Which sequence; generators of different sequences are unlike even with one seed.</param>
    public Pcg32(ulong seed, ulong sequence = 54)
    {
        increment = (sequence << 1) | 1;
        NextUInt32();
        state += seed;
        NextUInt32();
    }

    /// <summary>The next 32 random bits.</summary>
    public uint NextUInt32()
    {
        var old = state;
        state = unchecked((old * Multiplier) + increment);
        var mixed = (uint)(((old >> 18) ^ old) >> 27);
        return uint.RotateRight(mixed, (int)(old >> 59));
    }

    /// <summary>A whole number from 0 to <paramref name="bound"/> - 1, each as likely as the others.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The bound is below 1.</exception>
    public int Next(int bound)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(bound, 1);
        var limit = (uint)bound;
        var threshold = unchecked(0u - limit) % limit;
        uint drawn;
        do
        {
            drawn = NextUInt32();
        }
        while (drawn < threshold);
        return (int)(drawn % limit);
    }

    /// <summary>A number from 0 up to but not including 1, with 53 random bits.</summary>
    public double NextDouble()
    {
        var high = (ulong)(NextUInt32() >> 5);
        var low = (ulong)(NextUInt32() >> 6);
        return ((high << 26) | low) * (1.0 / (1UL << 53));
    }

    /// <summary>The items in random order.</summary>
    public T[] Shuffled<T>(T[] items)
    {
        T[] shuffled = [.. items];
        for (var last = shuffled.Length - 1; last > 0; last--)
        {
            var other = Next(last + 1);
            (shuffled[last], shuffled[other]) = (shuffled[other], shuffled[last]);
        }

        return shuffled;
    }
}
