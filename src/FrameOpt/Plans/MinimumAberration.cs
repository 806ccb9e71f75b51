using System.Numerics;

namespace FrameOpt.Plans;

/// <summary>Finds the generators of the two-level fraction of least aberration: of all fractions of a size, the one with the fewest words
/// of length 3, among
/// those the fewest of length 4, and so on. Every fraction is compared, but for those that are already worse half made.</summary>
internal static class MinimumAberration
{
    /// <summary>Eleven lengths of words and at most 127 words fit the 64 bits of a pattern.</summary>
    public const int MaxFactors = 11;

    /// <summary>128 runs.</summary>
    public const int MaxBasic = 7;

    private const int BitsPerLength = 7;

    /// <summary>The generators of the added factors; the basic factors come first.</summary>
    public static IReadOnlyList<Generator> Generators(int factors, int basic)
    {
        var candidates = Enumerable.Range(1, (1 << basic) - 1).Select(bits => (uint)bits)
            .Where(bits => BitOperations.PopCount(bits) >= 2).ToArray();
        var best = new Best();
        Extend(candidates, 0, new uint[factors - basic], 0, basic, [0], 0, best);
        return [.. best.Products.Select((product, index) => new Generator(basic + index, new EffectWord(product)))];
    }

    private static void Extend(uint[] candidates, int from, uint[] chosen, int depth, int basic, uint[] group, ulong pattern, Best best)
    {
        if (depth == chosen.Length)
        {
            (best.Pattern, best.Products) = (pattern, [.. chosen]);
            return;
        }

        for (var c = from; c <= candidates.Length - (chosen.Length - depth); c++)
        {
            var word = candidates[c] | 1u << (basic + depth);
            var longer = pattern;
            foreach (var other in group)
                longer += 1UL << (BitsPerLength * (MaxFactors - BitOperations.PopCount(word ^ other)));
            if (longer >= best.Pattern)
                continue;
            chosen[depth] = candidates[c];
            Extend(candidates, c + 1, chosen, depth + 1, basic, [.. group, .. group.Select(other => other ^ word)], longer, best);
        }
    }

    /// <summary>The fewest words yet: counts of lengths side by side, the shortest length in the highest bits.</summary>
    private sealed class Best
    {
        public ulong Pattern { get; set; } = ulong.MaxValue;

        public uint[] Products { get; set; } = [];
    }
}
