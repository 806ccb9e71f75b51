using BenchmarkDotNet.Attributes;
using FrameOpt.Search;
using FrameOpt.Search.Fronts;

namespace FrameOpt.Benchmarks;

/// <summary>The exact front of a million designs that arrive in batches of 100,000.</summary>
[MemoryDiagnoser]
public class FrontBenchmarks
{
    private const int Batch = 100_000;

    private readonly byte[] feasible = new byte[Batch];
    private double[][][] batches = [];

    /// <summary>Which points; the fronts have some 3,300 - 12,000 - 63,000 designs on the grid, 2,700 - 36,000 - 134,000 on the
    /// shell.</summary>
    [Params("grid 3", "grid 3 wide", "grid 4", "shell 2", "shell 3", "shell 4")]
    public string Points { get; set; } = "";

    [Params(1, 2)]
    public int Threads { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        Array.Fill(feasible, (byte)1);
        var columns = Points switch
        {
            "grid 3" => FrontSamples.Grid(3, spread: 0.6),
            "grid 3 wide" => FrontSamples.Grid(3, spread: 1),
            "grid 4" => FrontSamples.Grid(4, spread: 0.9),
            "shell 2" => FrontSamples.Shell(2, 1_000_000),
            "shell 3" => FrontSamples.Shell(3, 1_000_000),
            _ => FrontSamples.Shell(4, 1_000_000),
        };
        var count = columns[0].Length;
        batches = [.. Enumerable.Range(0, (count + Batch - 1) / Batch)
            .Select(b => Array.ConvertAll(columns, column => column[(b * Batch)..Math.Min(count, (b + 1) * Batch)]))];
    }

    [Benchmark]
    public FrontPoints Stream()
    {
        var builder = new FrontBuilder(batches[0].Length, Threads);
        for (var b = 0; b < batches.Length; b++)
            builder.Add(batches[b], feasible, batches[b][0].Length, (long)b * Batch);
        return builder.Result();
    }
}
