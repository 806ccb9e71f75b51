using BenchmarkDotNet.Attributes;
using FrameOpt.Search.Fronts;

namespace FrameOpt.Benchmarks;

/// <summary>All ranks of points uniform in a cube.</summary>
[MemoryDiagnoser]
public class SortBenchmarks
{
    private readonly NonDominatedSort sort = new();
    private double[] values = [];
    private int[] ranks = [];

    /// <summary>200 is what a genetic search with a population of 100 sorts in every generation.</summary>
    [Params(200, 10_000, 100_000)]
    public int Points { get; set; }

    [Params(2, 3, 4)]
    public int Objectives { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        values = FrontSamples.Uniform(Objectives, Points);
        ranks = new int[Points];
    }

    [Benchmark]
    public int Sort() => sort.Rank(values, Objectives, ranks);
}
