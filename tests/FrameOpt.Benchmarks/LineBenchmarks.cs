using BenchmarkDotNet.Attributes;
using FrameOpt.ProductLine;
using FrameOpt.ProductLine.PMedian;
using FrameOpt.Tests.ProductLine;

namespace FrameOpt.Benchmarks;

/// <summary>Three variants of 2,000 candidates for 500 customers, proven best.</summary>
[MemoryDiagnoser]
public class LineBenchmarks
{
    private readonly double[][] frame = LineSamples.Frame(500, 2000, 1);
    private readonly double[][] plane = LineSamples.Plane(500, 2000, 1);
    private readonly double[] shares = LineSamples.Shares(500);

    [Params("mean", "worst", "90 %", "blend")]
    public string Objective { get; set; } = "";

    [Benchmark]
    public LineSolution Frame() => Solve(frame);

    [Benchmark]
    public LineSolution Plane() => Solve(plane);

    private LineSolution Solve(double[][] costs)
    {
        LineObjective objective = Objective switch
        {
            "mean" => new LineObjective.Mean(),
            "worst" => new LineObjective.Worst(),
            "blend" => new LineObjective.Blend(0.3),
            _ => new LineObjective.Percentile(0.9),
        };
        var solution = LineSearch.Solve(new LineProblem(costs, shares, 3, objective), new LineSettings());
        return solution.Proven ? solution : throw new InvalidOperationException("not proven");
    }
}
