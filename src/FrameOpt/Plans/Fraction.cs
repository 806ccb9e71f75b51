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

    /// <summary>How many factors.</summary>
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

/// <summary>Effects a plan cannot tell apart: what is estimated is their sum, with the signs shown.</summary>
/// <param name="Effects">The shortest first, without a minus; then the others, a minus meaning that the column is the opposite.</param>
public sealed record AliasGroup(IReadOnlyList<EffectWord> Effects)
{
    /// <summary>Such as "A = BCD".</summary>
    public override string ToString() => string.Join(" = ", Effects);
}
