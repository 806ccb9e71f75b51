using FrameOpt.Numerics;

namespace FrameOpt.Search.Evolution;

/// <summary>Crossover and mutation, gene by gene.</summary>
/// <remarks>Sources (from memory): simulated binary crossover, K. Deb and R. B. Agrawal 1995, Simulated binary crossover for continuous
/// search space, Complex Systems 9:115-148, with children moved to the range they leave; polynomial mutation, K. Deb and M. Goyal 1996, A
/// combined genetic adaptive search (GeneAS) for engineering design, Computer Science and Informatics 26(4):30-45, in its form for bounded
/// variables. Indices of levels are treated as numbers and rounded.</remarks>
internal sealed class Variation
{
    private readonly GeneSpace space;
    private readonly Pcg32 random;
    private readonly double spreadPower;
    private readonly double mutationIndex;
    private readonly double crossoverRate;
    private readonly uint mutationLimit;

    public Variation(GeneSpace space, EvolutionSettings settings, Pcg32 random)
    {
        this.space = space;
        this.random = random;
        crossoverRate = settings.CrossoverRate;
        spreadPower = 1 / (settings.CrossoverIndex + 1);
        mutationIndex = settings.MutationIndex;
        mutationLimit = (uint)Math.Min(uint.MaxValue, (settings.MutationRate ?? 1.0 / space.Genes) * uint.MaxValue);
    }

    /// <summary>Two children of two parents.</summary>
    public void Crossover(ReadOnlySpan<double> parent1, ReadOnlySpan<double> parent2, Span<double> child1, Span<double> child2)
    {
        parent1.CopyTo(child1);
        parent2.CopyTo(child2);
        if (random.NextDouble() >= crossoverRate)
            return;
        uint randomBits = 1;
        for (var g = 0; g < child1.Length; g++)
        {
            if (randomBits <= 3) // the leading one is left when the coins are spent
                randomBits = random.NextUInt32() | 0x80000000;
            var mix = (randomBits & 1) != 0;
            var exchange = (randomBits & 2) != 0;
            randomBits >>= 2;
            if (mix && parent1[g] != parent2[g])
                SimulatedBinaryCrossover(g, parent1[g], parent2[g], ref child1[g], ref child2[g]);
            if (exchange && mix)
                (child1[g], child2[g]) = (child2[g], child1[g]);
        }
    }

    /// <summary>Mutates each gene with the mutation probability.</summary>
    public void Mutate(Span<double> genes)
    {
        for (var g = 0; g < genes.Length; g++)
        {
            if (random.NextUInt32() <= mutationLimit)
                MutateGene(genes, g);
        }
    }

    /// <summary>Mutates one gene chosen at random.</summary>
    public void MutateOne(Span<double> genes) => MutateGene(genes, random.Next(genes.Length));

    private void SimulatedBinaryCrossover(int g, double one, double other, ref double near, ref double far)
    {
        var u = random.NextDouble();
        var beta = Elementary.Pow(u < 0.5 ? 2 * u : 0.5 / (1 - u), spreadPower);
        var middle = 0.5 * (one + other);
        var half = 0.5 * beta * (one - other);
        near = Allowed(g, middle + half);
        far = Allowed(g, middle - half);
    }

    private void MutateGene(Span<double> genes, int g)
    {
        var (low, high) = (space.Low[g], space.High[g]);
        if (high <= low)
            return;
        var before = genes[g];
        genes[g] = Allowed(g, before + Step(random.NextDouble(), (before - low) / (high - low), (high - before) / (high - low)) * (
            high - low));
        if (genes[g] == before && space.IsDiscrete(g))
            genes[g] += before == low || (before < high && random.Next(2) == 0) ? 1 : -1;
    }

    /// <summary>A step as a share of the range, for a value at the given relative distances from its ends.</summary>
    private double Step(double u, double below, double above) => u < 0.5
        ? Elementary.Pow(2 * u + (1 - 2 * u) * Elementary.Pow(1 - below, mutationIndex + 1), 1 / (mutationIndex + 1)) - 1
        : 1 - Elementary.Pow(2 * (1 - u) + (2 * u - 1) * Elementary.Pow(1 - above, mutationIndex + 1), 1 / (mutationIndex + 1));

    private double Allowed(int g, double gene) =>
        Math.Clamp(space.IsDiscrete(g) ? Math.Round(gene) : gene, space.Low[g], space.High[g]);
}
