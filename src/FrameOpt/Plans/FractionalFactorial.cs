using System.Numerics;

namespace FrameOpt.Plans;

/// <summary>Two-level plans of part of the runs of a full factorial.</summary>
public static class FractionalFactorial
{
    private const int MaxFactors = 15;

    /// <summary>The fraction of given generators. Factors are named by letter: A is the first, and I is skipped.</summary>
    /// <param name="factors">The names, 2 to 15.</param>
    /// <param name="generators">Such as "D=ABC"; the right side holds only factors that have no generator themselves.</param>
    /// <exception cref="ArgumentException">A generator that cannot be read, or that sets two factors alike.</exception>
    public static FractionalPlan Build(IReadOnlyList<string> factors, IReadOnlyList<string> generators)
    {
        PlanArguments.Factors(factors, "two-level fraction", 2, MaxFactors);
        return Build(factors, [.. generators.Select(text => Generator.Parse(text, factors.Count))]);
    }

    /// <summary>The fraction of minimum aberration in at most a given number of runs: the largest useful power of two, and of those
    /// fractions the one with the fewest short words.</summary>
    /// <param name="factors">The names, 2 to 11.</param>
    /// <param name="maxRuns">At most this many; counted up to 128 for a fraction.</param>
    /// <exception cref="ArgumentException">Too few runs for so many factors, or more than 11 factors.</exception>
    /// <remarks>Source: A. Fries and W. G. Hunter 1980, Minimum aberration 2^(k-p) designs, Technometrics 22:601-608 (from
    /// memory).</remarks>
    public static FractionalPlan WithMaxRuns(IReadOnlyList<string> factors, int maxRuns)
    {
        PlanArguments.Factors(factors, "fraction of least aberration", 2, MinimumAberration.MaxFactors);
        PlanArguments.AtLeast(factors.Count + 1, maxRuns, $"number of runs for {factors.Count} factors");
        var basic = Math.Min(factors.Count, BitOperations.Log2((uint)maxRuns));
        if (basic < factors.Count)
            basic = Math.Min(basic, MinimumAberration.MaxBasic);
        if (1 << basic <= factors.Count)
            throw new ArgumentException(
                $"{factors.Count} factors need {2 << basic} runs; a two-level fraction has 4, 8, 16, 32, 64 or 128");
        return Build(factors, MinimumAberration.Generators(factors.Count, basic));
    }

    private static FractionalPlan Build(IReadOnlyList<string> factors, IReadOnlyList<Generator> generators)
    {
        Refuse(generators, factors.Count);
        var added = generators.ToDictionary(generator => generator.Factor, generator => generator.Product);
        var basic = Enumerable.Range(0, factors.Count).Where(f => !added.ContainsKey(f)).ToArray();
        var kind = generators.Count == 0 ? "full factorial" : $"two-level fraction ({string.Join(", ", generators)})";
        var runs = CodedLevels.Corners(basic.Length).Select(corner => Filled(corner, basic, added, factors.Count));
        return new FractionalPlan(
            Plan.Numbered(kind, factors, Plan.Points(PointKind.Factorial, runs)), new Fraction(factors.Count, generators));
    }

    private static double[] Filled(double[] corner, int[] basic, Dictionary<int, EffectWord> added, int factors)
    {
        var point = new double[factors];
        for (var b = 0; b < basic.Length; b++)
            point[basic[b]] = corner[b];
        foreach (var (factor, product) in added)
            point[factor] = product.At(point);
        return point;
    }

    private static void Refuse(IReadOnlyList<Generator> generators, int factors)
    {
        for (var g = 0; g < generators.Count; g++)
        {
            foreach (var other in generators.Where((_, index) => index != g))
            {
                if (other.Factor == generators[g].Factor)
                    throw new ArgumentException(
                        $"{EffectWord.Letters[other.Factor]} has two generators, {generators[g]} and {other}; leave one out");
                if ((generators[g].Product.Factors >> other.Factor & 1) == 1)
                    throw new ArgumentException(
                        $"{generators[g]} uses {EffectWord.Letters[other.Factor]}, which has a generator itself; "
                        + "use only the other factors");
                if (other.Product.Factors == generators[g].Product.Factors)
                    throw new ArgumentException(
                        $"{generators[g]} and {other} would never let the two factors differ; give them different products");
            }
        }

        if (generators.Count >= factors - 1)
            throw new ArgumentException("at least two factors must have no generator");
    }
}

/// <summary>A two-level fraction: its runs, and what they confound.</summary>
/// <param name="Plan">The runs.</param>
/// <param name="Fraction">Defining relation, resolution, aliases.</param>
public sealed record FractionalPlan(Plan Plan, Fraction Fraction);

/// <summary>Finds the generators of the two-level fraction of minimum aberration: of all fractions of a size, the one with the fewest words
/// of length 3, among those the fewest of length 4, and so on. The search over all fractions stops early for those that are already worse
/// when incomplete.</summary>
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

    /// <summary>The best pattern so far: counts of lengths side by side, the shortest length in the highest bits.</summary>
    private sealed class Best
    {
        public ulong Pattern { get; set; } = ulong.MaxValue;

        public uint[] Products { get; set; } = [];
    }
}
