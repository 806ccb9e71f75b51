using FrameOpt.Numerics;
using FrameOpt.Plans;

namespace FrameOpt.Search.Evolution;

/// <summary>The loop of an evolutionary search: an initial population spread over the space, then offspring of the survivors as long as
/// there are new designs.</summary>
internal sealed class EvolutionLoop
{
    private const int MutationTries = 10;
    private readonly EvolutionSettings settings;
    private readonly ISelection selection;
    private readonly Pcg32 random;
    private readonly GeneSpace space;
    private readonly Variation variation;
    private readonly VisitedDesigns memory;
    private readonly Population population;
    private readonly PopulationEvaluation evaluation;

    public EvolutionLoop(Problem problem, int threads, EvolutionSettings settings, Func<Pcg32, ISelection> selection)
    {
        this.settings = settings;
        random = new Pcg32(settings.Seed);
        this.selection = selection(random);
        space = new GeneSpace(problem.Factors);
        variation = new Variation(space, settings, random);
        memory = new VisitedDesigns(space);
        // one for a child too many
        population = new Population(problem, Math.Max(settings.Start.Count, settings.PopulationSize) + settings.PopulationSize + 1);
        evaluation = new PopulationEvaluation(problem, space, threads);
    }

    public IEnumerable<EvaluatedBatch> Run()
    {
        InitialisePopulation();
        var parents = 0;
        while (population.Count > parents)
        {
            foreach (var batch in evaluation.Run(population, parents, population.Count - parents))
                yield return batch;
            selection.SelectSurvivors(population, settings.PopulationSize);
            parents = population.Count;
            Breed(parents);
        }
    }

    /// <summary>The designs to start with, and others spread evenly along every factor.</summary>
    private void InitialisePopulation()
    {
        foreach (var design in settings.Start)
        {
            space.FromDesign(design, population.Of(population.Count));
            if (memory.TryAdd(population.Of(population.Count)))
                population.Count++;
        }

        foreach (var run in LatinHypercube.Random(space.Genes, settings.PopulationSize, random))
        {
            if (population.Count >= settings.PopulationSize)
                return;
            var genes = population.Of(population.Count);
            for (var g = 0; g < genes.Length; g++)
                genes[g] = space.At(g, (run[g] + random.NextDouble()) / settings.PopulationSize);
            AddUnique(genes);
        }
    }

    private void Breed(int parents)
    {
        for (var child = 0; child < settings.PopulationSize; child += 2)
        {
            var child1 = population.Of(parents + child);
            var child2 = population.Of(parents + child + 1);
            variation.Crossover(population.Of(selection.SelectParent(population)), population.Of(selection.SelectParent(population)),
                child1, child2);
            variation.Mutate(child1);
            variation.Mutate(child2);
            AddUnique(child1);
            if (child + 1 < settings.PopulationSize)
                AddUnique(child2);
        }
    }

    /// <summary>Adds a design to the population, mutated until it is new; leaves it out when all designs were visited.</summary>
    private void AddUnique(Span<double> genes)
    {
        var isNew = memory.TryAdd(genes);
        for (var i = 0; i < MutationTries && !isNew; i++)
        {
            variation.MutateOne(genes);
            isNew = memory.TryAdd(genes);
        }

        if (isNew || memory.TryFindUnvisited(genes, random))
        {
            genes.CopyTo(population.Of(population.Count));
            population.Count++;
        }
    }
}

/// <summary>Survival and parent selection, in which evolutionary searches differ.</summary>
internal interface ISelection
{
    /// <summary>Leaves at most <paramref name="keep"/> members, in their previous order.</summary>
    void SelectSurvivors(Population population, int keep);

    /// <summary>Draws a survivor to be a parent.</summary>
    int SelectParent(Population population);
}
