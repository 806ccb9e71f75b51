using FrameOpt.Numerics;

namespace FrameOpt.Search.Evolution;

/// <summary>Every design a search has chosen, so that none is evaluated twice.</summary>
internal sealed class VisitedDesigns(GeneSpace space)
{
    private const int RandomTries = 20;
    private readonly HashSet<ulong> seen = [];
    private ulong? next;

    /// <summary>True for a design that was not there before.</summary>
    public bool TryAdd(ReadOnlySpan<double> genes) => seen.Add(space.Key(genes));

    /// <summary>Finds a design not seen before, at random as long as that is easy, and remembers it; false when none is left.</summary>
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

    /// <summary>Goes through all designs once, from a random one on, however often it is asked: what it has passed was seen.</summary>
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
