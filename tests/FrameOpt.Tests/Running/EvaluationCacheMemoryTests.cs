using FrameOpt.Running;

namespace FrameOpt.Tests.Running;

/// <summary>Runs while no other test does: the memory is that of the whole process.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class MemoryOfTheProcess
{
    public const string Name = "memory of the process";
}

[Collection(MemoryOfTheProcess.Name)]
public class EvaluationCacheMemoryTests
{
    private const int Phases = 5;

    [Fact]
    public void Many_lines_are_read_one_by_one()
    {
        const int Lines = 200_000;
        using var folder = new TemporaryFolder();
        EvaluationCache.Open(folder["evaluations.csv"], "this study", 4, Phases, out _)!.Dispose();
        File.AppendAllLines(folder["evaluations.csv"], Enumerable.Range(0, Lines).Select(i => EvaluationCacheTests.Line(
            ["study", $"0.{i:000000}", "0.1", "0.2", "0.3", "0", "12.345678901234567", "0.98765432109876543", "1.2345678901234567"])));
        var before = GC.GetTotalMemory(forceFullCollection: true);
        using var cache = EvaluationCache.Open(folder["evaluations.csv"], "this study", 4, Phases, out _)!;
        Assert.Equal(Lines, cache.CachedCount);
        // A key of 80 characters, an array of 4 numbers and a slot of the dictionary are about 300 bytes.
        Assert.InRange(GC.GetTotalMemory(forceFullCollection: true) - before, 0, 600L * Lines);
    }
}
