using FrameOpt.Numerics;
using FrameOpt.Plans;

namespace FrameOpt.Search.Evolution;

/// <summary>The course of an evolutionary search: a first generation spread over the space, then children of the survivors for as long as there are new designs.</summary>
internal sealed class EvolutionLoop
{
    private const int MutationTries = 10;
    private readonly EvolutionSettings settings;
    private readonly ISelection selection;
    private readonly Pcg32 random;
    private readonly GeneSpace space;
    private readonly Variation variation;
    private readonly DesignMemory memory;
    private readonly Members members;
    private readonly GeneEvaluation evaluation;

    public EvolutionLoop(Problem problem, int threads, EvolutionSettings settings, Func<Pcg32, ISelection> selection)
    {
        this.settings = settings;
        random = new Pcg32(settings.Seed);
        this.selection = selection(random);
        space = new GeneSpace(problem.Factors);
        variation = new Variation(space, settings, random);
        memory = new DesignMemory(space);
        members = new Members(problem, Math.Max(settings.Start.Count, settings.Population) + settings.Population + 1); // one for a child too many
        evaluation = new GeneEvaluation(problem, space, threads);
    }

    public IEnumerable<EvaluatedBatch> Run()
    {
        Found();
        var parents = 0;
        while (members.Count > parents)
        {
            foreach (var batch in evaluation.Run(members, parents, members.Count - parents))
                yield return batch;
            selection.Survive(members, settings.Population);
            parents = members.Count;
            Breed(parents);
        }
    }

    /// <summary>The designs to begin with, and others spread evenly along every factor.</summary>
    private void Found()
    {
        foreach (var design in settings.Start)
        {
            space.FromDesign(design, members.Of(members.Count));
            if (memory.Remember(members.Of(members.Count)))
                members.Count++;
        }

        foreach (var run in LatinHypercube.Random(space.Genes, settings.Population, random))
        {
            if (members.Count >= settings.Population)
                return;
            var genes = members.Of(members.Count);
            for (var g = 0; g < genes.Length; g++)
                genes[g] = space.At(g, (run[g] + random.NextDouble()) / settings.Population);
            Admit(genes);
        }
    }

    private void Breed(int parents)
    {
        for (var child = 0; child < settings.Population; child += 2)
        {
            var daughter = members.Of(parents + child);
            var son = members.Of(parents + child + 1);
            variation.Cross(members.Of(selection.Parent(members)), members.Of(selection.Parent(members)), daughter, son);
            variation.Mutate(daughter);
            variation.Mutate(son);
            Admit(daughter);
            if (child + 1 < settings.Population)
                Admit(son);
        }
    }

    /// <summary>Makes a design the next member, changed until it is a new one; leaves it out when all designs were seen.</summary>
    private void Admit(Span<double> genes)
    {
        var isNew = memory.Remember(genes);
        for (var i = 0; i < MutationTries && !isNew; i++)
        {
            variation.MutateOne(genes);
            isNew = memory.Remember(genes);
        }

        if (isNew || memory.TryUnseen(genes, random))
        {
            genes.CopyTo(members.Of(members.Count));
            members.Count++;
        }
    }
}
