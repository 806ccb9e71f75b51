using BenchmarkDotNet.Attributes;
using FrameOpt.ProductLine;
using FrameOpt.ProductLine.PMedian;
using FrameOpt.Tests.ProductLine;

namespace FrameOpt.Benchmarks;

/// <summary>Three variants of 2,000 candidates for 100,000 customers by way of representatives; the costs are worked out again each of the
/// three times.</summary>
[MemoryDiagnoser]
public class AggregationBenchmarks
{
    private readonly double[] shares = ProductLineSamples.Shares(100_000);

    [Params(200, 1000)]
    public int Representatives { get; set; }

    [Benchmark]
    public double RelativeGap()
    {
        var line = AggregatedSolution.Solve(shares, 2000, (customer, costs) => ProductLineSamples.FrameRow(customer, 1, costs),
            (costs, counts) => new ProductLineProblem(costs, counts, 3, new ProductLineObjective.Mean()), Representatives,
                new ProductLineSolverSettings());
        Console.WriteLine($"// value {line.Solution.Value:G6}, bound {line.Solution.Bound:G6}, error bound {line.ErrorBound:G4}");
        return line.Solution.Gap / line.Solution.Value;
    }
}
