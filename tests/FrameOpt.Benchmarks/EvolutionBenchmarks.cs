using BenchmarkDotNet.Attributes;
using FrameOpt.Search;
using FrameOpt.Search.Evolution;
using FrameOpt.Search.Fronts;
using FrameOpt.Tests.Search;

namespace FrameOpt.Benchmarks;

/// <summary>Whole searches of problems that cost next to nothing to evaluate, with the front of everything evaluated: what is timed is the
/// search.</summary>
[MemoryDiagnoser]
public class EvolutionBenchmarks
{
    private readonly Problem zdt1 = KnownProblems.Zdt1();
    private readonly Problem sphere = KnownProblems.Dtlz2(3, 12);

    [Benchmark]
    public FrontPoints Zdt1Of100() => Convergence.Front(new Nsga2Search(new EvolutionSettings(100, 1)), zdt1, 25_000);

    [Benchmark]
    public FrontPoints Zdt1Of1000() => Convergence.Front(new Nsga2Search(new EvolutionSettings(1000, 1)), zdt1, 100_000);

    [Benchmark]
    public FrontPoints SphereByCrowding() => Convergence.Front(new Nsga2Search(new EvolutionSettings(100, 1)), sphere, 25_000);

    [Benchmark]
    public FrontPoints SphereByDirections() => Convergence.Front(new Nsga3Search(new EvolutionSettings(100, 1)), sphere, 25_000);
}
