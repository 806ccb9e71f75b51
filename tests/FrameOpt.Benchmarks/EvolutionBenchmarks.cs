using BenchmarkDotNet.Attributes;
using FrameOpt.Search;
using FrameOpt.Tests.Search;

namespace FrameOpt.Benchmarks;

/// <summary>Whole searches of problems that cost next to nothing to evaluate, with the front of everything evaluated: what is timed is the search.</summary>
[MemoryDiagnoser]
public class EvolutionBenchmarks
{
    private readonly Problem zdt1 = KnownProblems.Zdt1();
    private readonly Problem sphere = KnownProblems.Dtlz2(3, 12);

    [Benchmark]
    public FrontPoints Zdt1Of100() => Front(new Nsga2Search(new EvolutionSettings(100, 1)), zdt1, 25_000);

    [Benchmark]
    public FrontPoints Zdt1Of1000() => Front(new Nsga2Search(new EvolutionSettings(1000, 1)), zdt1, 100_000);

    [Benchmark]
    public FrontPoints SphereByCrowding() => Front(new Nsga2Search(new EvolutionSettings(100, 1)), sphere, 25_000);

    [Benchmark]
    public FrontPoints SphereByDirections() => Front(new Nsga3Search(new EvolutionSettings(100, 1)), sphere, 25_000);

    private static FrontPoints Front(ISearch search, Problem problem, int evaluations)
    {
        var front = new FrontBuilder(problem.Goals.Count, threads: 1);
        foreach (var batch in search.Run(problem, threads: 1))
        {
            front.Add(batch.Objectives, batch.Usable, batch.Designs.Count, batch.Designs.FirstNumber);
            if (batch.Designs.FirstNumber + batch.Designs.Count >= evaluations)
                break;
        }

        return front.Result();
    }
}
