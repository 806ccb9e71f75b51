using BenchmarkDotNet.Attributes;
using FrameOpt.ProductLine;
using FrameOpt.ProductLine.PMedian;
using FrameOpt.Tests.ProductLine;

namespace FrameOpt.Benchmarks;

/// <summary>Three variants of 2,000 candidates for 500 customers, proven best.</summary>
[MemoryDiagnoser]
public class ProductLineBenchmarks
{
    private readonly double[][] frame = ProductLineSamples.Frame(500, 2000, 1);
    private readonly double[][] plane = ProductLineSamples.Plane(500, 2000, 1);
    private readonly double[] shares = ProductLineSamples.Shares(500);

    [Params("mean", "worst", "90 %", "blend")]
    public string Objective { get; set; } = "";

    [Benchmark]
    public ProductLineSolution Frame() => Solve(frame);

    [Benchmark]
    public ProductLineSolution Plane() => Solve(plane);

    private ProductLineSolution Solve(double[][] costs)
    {
        ProductLineObjective objective = Objective switch
        {
            "mean" => new ProductLineObjective.Mean(),
            "worst" => new ProductLineObjective.Worst(),
            "blend" => new ProductLineObjective.Blend(0.3),
            _ => new ProductLineObjective.Percentile(0.9),
        };
        var solution = ProductLineSolver.Solve(new ProductLineProblem(costs, shares, 3, objective), new ProductLineSolverSettings());
        return solution.Proven ? solution : throw new InvalidOperationException("not proven");
    }
}
