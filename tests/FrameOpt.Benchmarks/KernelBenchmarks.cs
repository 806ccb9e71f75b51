using BenchmarkDotNet.Attributes;
using FrameOpt.Running;
using FrameOpt.Search;
using FrameOpt.Tests.Running;

namespace FrameOpt.Benchmarks;

/// <summary>The model over a grid of 1,102,941 designs and five phases, three objectives, nothing kept.</summary>
[MemoryDiagnoser]
public class KernelBenchmarks
{
    private readonly Problem problem = new StudyProblem(WorkedStudy.Million(), StudyProblem.Model(WorkedStudy.Million())).Problem;

    [Params(1, 2)]
    public int Threads { get; set; }

    [Benchmark]
    public long Grid()
    {
        long feasible = 0;
        foreach (var batch in new ExhaustiveSearch().Run(problem, Threads))
            feasible += batch.Counts.Feasible;
        return feasible;
    }
}
