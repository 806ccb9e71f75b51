using FrameOpt.Numerics;

namespace FrameOpt.Search.Evolution;

/// <summary>Encodes designs as genes, one per factor: the value of a continuous factor, or the index of the level of a discrete
/// one.</summary>
internal sealed class GeneSpace
{
    private const ulong MaxCounted = 1UL << 62;
    private readonly double[]?[] values;

    public GeneSpace(IReadOnlyList<Factor> factors)
    {
        values = [.. factors.Select(factor => factor.Values?.ToArray())];
        Low = [.. factors.Select(factor => factor is Factor.Continuous range ? range.From : 0)];
        High = [.. factors.Select((factor, f) => factor is Factor.Continuous range ? range.To : values[f]!.Length - 1)];
        Designs = CountDesigns();
    }

    public int Genes => values.Length;

    /// <summary>Smallest value of each gene.</summary>
    public double[] Low { get; }

    /// <summary>Largest value of each gene.</summary>
    public double[] High { get; }

    /// <summary>Number of designs; null when there are infinitely many or too many to number.</summary>
    public ulong? Designs { get; }

    /// <summary>True for the index of a level, false for the value of a continuous factor.</summary>
    public bool IsDiscrete(int gene) => values[gene] is not null;

    /// <summary>Identifies a design: its number where designs can be numbered, otherwise a hash of its genes.</summary>
    public ulong Key(ReadOnlySpan<double> genes)
    {
        ulong key = 0;
        if (Designs is not null)
        {
            for (var g = 0; g < genes.Length; g++)
                key = key * (ulong)values[g]!.Length + (ulong)genes[g];
            return key;
        }

        foreach (var gene in genes)
        {
            key = (key ^ BitConverter.DoubleToUInt64Bits(gene + 0.0)) * 0x9E3779B97F4A7C15; // + 0.0 makes one zero of the two
            key ^= key >> 29;
        }

        return key;
    }

    /// <summary>The genes of the design with a given number, where designs can be numbered.</summary>
    public void Decode(ulong number, Span<double> genes)
    {
        for (var g = genes.Length - 1; g >= 0; g--)
            (number, genes[g]) = (number / (ulong)values[g]!.Length, number % (ulong)values[g]!.Length);
    }

    /// <summary>The factors' values.</summary>
    public void ToDesign(ReadOnlySpan<double> genes, Span<double> design)
    {
        for (var g = 0; g < genes.Length; g++)
            design[g] = values[g] is { } list ? list[(int)genes[g]] : genes[g];
    }

    /// <summary>The genes of the design nearest to given values.</summary>
    public void FromDesign(ReadOnlySpan<double> design, Span<double> genes)
    {
        if (design.Length != Genes)
            throw new ArgumentException($"a design of {design.Length} values was given to a problem of {Genes} factors", nameof(design));
        for (var g = 0; g < design.Length; g++)
            genes[g] = values[g] is { } list ? Nearest(list, design[g]) : Math.Clamp(design[g], Low[g], High[g]);
    }

    /// <summary>The gene at a share of its range, 0 up to but not including 1; all levels have equal parts of the range.</summary>
    public double At(int gene, double share) => values[gene] is { } list
        ? Math.Min(Math.Floor(share * list.Length), list.Length - 1)
        : Math.Min(Low[gene] + share * (High[gene] - Low[gene]), High[gene]);

    private static int Nearest(double[] list, double value)
    {
        var best = 0;
        for (var i = 1; i < list.Length; i++)
        {
            if (Math.Abs(list[i] - value) < Math.Abs(list[best] - value))
                best = i;
        }

        return best;
    }

    private ulong? CountDesigns()
    {
        ulong count = 1;
        foreach (var list in values)
        {
            if (list is null || count > MaxCounted / (ulong)list.Length)
                return null;
            count *= (ulong)list.Length;
        }

        return count;
    }
}

/// <summary>Every design a search has chosen, so that none is evaluated twice.</summary>
internal sealed class VisitedDesigns(GeneSpace space)
{
    private const int RandomTries = 20;
    private readonly HashSet<ulong> seen = [];
    private ulong? next;

    /// <summary>True when the design is new.</summary>
    public bool TryAdd(ReadOnlySpan<double> genes) => seen.Add(space.Key(genes));

    /// <summary>Finds and records an unvisited design, at random while that succeeds quickly; false when none is left.</summary>
    public bool TryFindUnvisited(Span<double> genes, Pcg32 random)
    {
        for (var i = 0; i < RandomTries; i++)
        {
            for (var g = 0; g < genes.Length; g++)
                genes[g] = space.At(g, random.NextDouble());
            if (TryAdd(genes))
                return true;
        }

        return space.Designs is { } designs && (ulong)seen.Count < designs && NextUnseen(designs, genes, random);
    }

    /// <summary>Enumerates all designs once from a random start and continues there at the next call, since all before were
    /// visited.</summary>
    private bool NextUnseen(ulong designs, Span<double> genes, Pcg32 random)
    {
        next ??= (ulong)(random.NextDouble() * designs) % designs;
        do
        {
            space.Decode(next.Value, genes);
            next = (next + 1) % designs;
        }
        while (!TryAdd(genes));
        return true;
    }
}
