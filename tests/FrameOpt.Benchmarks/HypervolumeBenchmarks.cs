using BenchmarkDotNet.Attributes;
using FrameOpt.Search.Fronts;

namespace FrameOpt.Benchmarks;

/// <summary>Hypervolume of 1,000 points on a sphere, and what each of 100 contributes, up to 1.1 in every objective.</summary>
[MemoryDiagnoser]
public class HypervolumeBenchmarks
{
    private double[] thousand = [];
    private double[] hundred = [];
    private double[] reference = [];

    [Params(3, 4, 5)]
    public int Objectives { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        thousand = FrontSamples.Sphere(Objectives, 1000);
        hundred = FrontSamples.Sphere(Objectives, 100);
        reference = FrontSamples.Reference(Objectives);
    }

    [Benchmark]
    public double Volume() => Hypervolume.Of(thousand, reference);

    [Benchmark]
    public int LeastContributor() => Hypervolume.LeastContributor(hundred, reference);
}
