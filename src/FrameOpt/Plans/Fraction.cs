using System.Numerics;

namespace FrameOpt.Plans;

/// <summary>What a two-level fraction can and cannot tell apart.</summary>
public sealed record Fraction
{
    private readonly EffectWord[] group;

    internal Fraction(int factors, IReadOnlyList<Generator> generators)
    {
        (Factors, Generators) = (factors, generators);
        group = generators.Aggregate<Generator, EffectWord[]>(
            [new EffectWord(0)], (words, generator) => [.. words, .. words.Select(word => word * generator.Word)]);
        DefiningRelation = [.. InOrder(group.Where(word => word.Length > 0))];
    }

    /// <summary>Number of factors.</summary>
    public int Factors { get; }

    /// <summary>How the added factors are set.</summary>
    public IReadOnlyList<Generator> Generators { get; }

    /// <summary>The words equal to I, shortest first; none for a full factorial.</summary>
    public IReadOnlyList<EffectWord> DefiningRelation { get; }

    /// <summary>The length of the shortest word: III, IV, V as 3, 4, 5; null for a full factorial, which has none.</summary>
    public int? Resolution => DefiningRelation.Count == 0 ? null : DefiningRelation[0].Length;

    /// <summary>How many words of each length there are: the first entry is length 1, the last the number of factors.</summary>
    public IReadOnlyList<int> WordLengthPattern =>
        [.. Enumerable.Range(1, Factors).Select(length => DefiningRelation.Count(word => word.Length == length))];

    /// <summary>Every effect in its group, the group of the mean (the defining relation) left out, shortest effects first.</summary>
    public IReadOnlyList<AliasGroup> Aliases()
    {
        var seen = new bool[1 << Factors];
        foreach (var word in group)
            seen[word.Factors] = true;
        var groups = new List<AliasGroup>();
        foreach (var effect in InOrder(Enumerable.Range(0, 1 << Factors).Select(bits => new EffectWord((uint)bits))))
        {
            if (seen[effect.Factors])
                continue;
            EffectWord[] alike = [.. InOrder(group.Select(word => effect * word))];
            foreach (var other in alike)
                seen[other.Factors] = true;
            groups.Add(new AliasGroup(alike));
        }

        return groups;
    }

    /// <summary>Shortest first, then by the alphabet.</summary>
    private static IEnumerable<EffectWord> InOrder(IEnumerable<EffectWord> words) =>
        words.OrderBy(word => word.Length).ThenBy(word => (word with { Negative = false }).ToString(), StringComparer.Ordinal);
}

/// <summary>Effects that a plan confounds: their sum is estimated, with the signs shown.</summary>
/// <param name="Effects">The shortest first, without a minus; then the others, a minus meaning that the column is the opposite.</param>
public sealed record AliasGroup(IReadOnlyList<EffectWord> Effects)
{
    /// <summary>Such as "A = BCD".</summary>
    public override string ToString() => string.Join(" = ", Effects);
}

/// <summary>A generator: an added factor is the product of others, such as D = ABC or D = -ABC.</summary>
/// <param name="Factor">Index of the added factor, from 0.</param>
/// <param name="Product">The product it follows, with its sign.</param>
public sealed record Generator(int Factor, EffectWord Product)
{
    /// <summary>Its word in the defining relation: D = ABC gives ABCD.</summary>
    public EffectWord Word => Product * new EffectWord(1u << Factor);

    /// <summary>Such as "D=ABC".</summary>
    public override string ToString() => $"{EffectWord.Letters[Factor]}={Product}";

    /// <summary>Reads "D=ABC".</summary>
    /// <param name="text">One letter, an equals sign, and a product of two or more other letters with an optional minus.</param>
    /// <param name="factors">Number of factors.</param>
    /// <exception cref="ArgumentException">Not of that form.</exception>
    public static Generator Parse(string text, int factors)
    {
        var sides = text.Split('=');
        if (sides.Length != 2)
            throw new ArgumentException($"\"{text}\" is no generator; write one factor, =, and a product of others, such as D=ABC");
        var (left, product) = (EffectWord.Parse(sides[0], factors), EffectWord.Parse(sides[1], factors));
        if (left.Length != 1 || left.Negative)
            throw new ArgumentException($"the left side of \"{text}\" must be one factor without a sign");
        if (product.Length < 2 || (product.Factors & left.Factors) != 0)
            throw new ArgumentException($"the right side of \"{text}\" must be a product of two or more factors other than {left}");
        return new Generator(System.Numerics.BitOperations.TrailingZeroCount(left.Factors), product);
    }
}

/// <summary>A product of factors such as ABD or -ABD: an effect, or a word of a defining relation. Letters stand for the factors in order;
/// I is left out, because it stands for no factor at all.</summary>
/// <param name="Factors">One bit per factor: bit 0 is the first.</param>
/// <param name="Negative">True for a negative sign.</param>
public readonly record struct EffectWord(uint Factors, bool Negative = false)
{
    /// <summary>The letters of the factors in order.</summary>
    public const string Letters = "ABCDEFGHJKLMNOPQRSTUVWXYZ";

    /// <summary>Number of factors: 1 for a main effect, 2 for a two-factor interaction.</summary>
    public int Length => BitOperations.PopCount(Factors);

    /// <summary>The product of two words; a factor in both cancels, as its square is 1.</summary>
    public static EffectWord operator *(EffectWord left, EffectWord right) =>
        new(left.Factors ^ right.Factors, left.Negative ^ right.Negative);

    /// <summary>The value of the product at a point: its sign times the coded values of its factors.</summary>
    public double At(IReadOnlyList<double> coded)
    {
        var value = Negative ? -1.0 : 1.0;
        for (var f = 0; f < coded.Count; f++)
        {
            if ((Factors >> f & 1) == 1)
                value *= coded[f];
        }

        return value;
    }

    /// <summary>Such as "ABD", "-ABD" or "I".</summary>
    public override string ToString()
    {
        var factors = Factors;
        var letters = string.Concat(Letters.Where((_, f) => (factors >> f & 1) == 1));
        return (Negative ? "-" : "") + (letters.Length == 0 ? "I" : letters);
    }

    /// <summary>Reads letters such as "ABD" or "-ABD".</summary>
    /// <param name="text">Letters in any order and case, with an optional sign.</param>
    /// <param name="factors">Number of factors; later letters are refused.</param>
    /// <exception cref="ArgumentException">A letter that is no factor, or one twice.</exception>
    public static EffectWord Parse(string text, int factors)
    {
        var trimmed = text.Trim();
        var negative = trimmed.StartsWith('-');
        var word = new EffectWord(0, negative);
        foreach (var letter in trimmed.TrimStart('-', '+').Trim().ToUpperInvariant())
        {
            var f = Letters.IndexOf(letter);
            if (f < 0 || f >= factors)
                throw new ArgumentException($"\"{letter}\" in \"{text}\" is none of the factors {Letters[..factors]}");
            if ((word.Factors >> f & 1) == 1)
                throw new ArgumentException($"\"{letter}\" stands twice in \"{text}\"");
            word *= new EffectWord(1u << f);
        }

        return word;
    }
}
