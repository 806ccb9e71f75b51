using System.Collections.Concurrent;
using System.Diagnostics;
using CsCheck;
using Xunit.Abstractions;

namespace FrameOpt.Tests.Reliability;

/// <summary>Reads many damaged copies of good files and keeps what went wrong, once for each kind of fault.</summary>
/// <remarks>
/// The damage comes from CsCheck and not from a fuzzer that instruments the code (docs/decisions/0009-supply.md): it needs no tool beside
/// the test project, so every change runs it. A case that breaks a promise is made smaller edit by edit and written to a file.
/// </remarks>
internal sealed class Campaign(string name, IReadOnlyList<byte[]> seeds, Func<byte[], string, uint, bool> isAccepted)
{
    /// <summary>No case may take more of a processor: other work of the machine does not count.</summary>
    private static readonly TimeSpan longest = TimeSpan.FromSeconds(2);

    /// <summary>What never comes back is ended, and names its input.</summary>
    private static readonly TimeSpan hung = TimeSpan.FromMinutes(2);

    /// <summary>No case may allocate more, live or not: a bound of what the memory grows by.</summary>
    private const long MostBytes = 500_000_000;

    private static readonly string kept = Path.Combine(Path.GetTempPath(), "frameopt-faults");

    private readonly ConcurrentDictionary<string, string> faults = new();
    private readonly ConcurrentDictionary<int, (byte[] Input, long Since)> running = new();
    private readonly ThreadLocal<TemporaryFolder> folders = new(() => new TemporaryFolder(), trackAllValues: true);
    private readonly ConcurrentQueue<string> details = new();
    private readonly Lock figures = new();
    private int accepted, refused;
    private TimeSpan slowest;
    private long mostBytes;

    /// <summary>Tries so many cases; fails with the faults found, each with a file that shows it.</summary>
    public void Run(int cases, ITestOutputHelper output)
    {
        foreach (var (i, seed) in seeds.Index())
        {
            var (isTaken, fault) = Try(seed, 0);
            Assert.True(isTaken && fault is null, $"good file {i} of {name}: {fault ?? Message(seed, 0)}");
        }

        slowest = TimeSpan.Zero;
        var watch = Stopwatch.StartNew();
        using (new Timer(_ => EndHung(), null, hung, hung / 10))
            Damage.Of(seeds.Count).Sample(One, iter: cases);
        foreach (var folder in folders.Values)
            folder.Dispose();
        output.WriteLine(FormattableString.Invariant(
            $"{name}: {accepted + refused} cases in {watch.Elapsed.TotalSeconds:0} s, {refused} refused, {accepted} accepted, ")
            + FormattableString.Invariant($"slowest {slowest.TotalSeconds:0.00} s, most memory {mostBytes / 1e6:0} MB, ")
            + $"{faults.Count} faults");
        Assert.True(faults.IsEmpty, $"{faults.Count} faults:\n{string.Join('\n', details)}");
    }

    private void One(Damage damage)
    {
        var input = damage.Apply(seeds[damage.Seed]);
        var (taken, fault) = Try(input, damage.Lot);
        lock (figures)
        {
            if (taken)
                accepted++;
            else
                refused++;
        }

        if (fault is not null && !faults.ContainsKey(fault))
            Keep(damage, fault);
    }

    /// <summary>Reads one input; what it was and which promise it broke.</summary>
    private (bool Accepted, string? Fault) Try(byte[] input, uint lot)
    {
        var thread = Environment.CurrentManagedThreadId;
        running[thread] = (input, Stopwatch.GetTimestamp());
        var (before, since) = (GC.GetAllocatedBytesForCurrentThread(), ThreadTime.Now);
        var (taken, fault) = (false, (string?)null);
        try
        {
            taken = isAccepted(input, folders.Value![""], lot);
        }
        catch (Exception problem)
        {
            fault = Words(problem);
        }

        var (took, bytes) = (ThreadTime.Now - since, GC.GetAllocatedBytesForCurrentThread() - before);
        running.TryRemove(thread, out _);
        lock (figures)
        {
            slowest = took > slowest ? took : slowest;
            mostBytes = Math.Max(mostBytes, bytes);
        }

        return (taken, fault ?? (took > longest ? "takes too long" : bytes > MostBytes ? "takes too much memory" : null));
    }

    /// <summary>The exception and where in this repository it came from: two of the same place are one fault.</summary>
    private static string Words(Exception problem)
    {
        var from = problem.StackTrace?.Split('\n').FirstOrDefault(line => line.Contains("FrameOpt."))?.Trim().Split(" in ")[0];
        return problem is BrokenPromise promise ? promise.Kind : $"{problem.GetType().Name} {from}";
    }

    /// <summary>Takes away every edit the fault does not need, and writes the input down. A slow case must be
    /// slow again to count.</summary>
    private void Keep(Damage damage, string fault)
    {
        string? Again(Damage other) => Try(other.Apply(seeds[other.Seed]), other.Lot).Fault;
        var again = Again(damage);
        if (again is null && fault == "takes too long")
            return;
        for (var smaller = damage; smaller is not null; smaller = damage.Smaller().FirstOrDefault(less => Again(less) == fault))
            damage = smaller;
        Directory.CreateDirectory(kept);
        var path = Path.Combine(kept, FormattableString.Invariant($"{name.Replace(' ', '-')}-{Environment.ProcessId}-{faults.Count}.txt"));
        var input = damage.Apply(seeds[damage.Seed]);
        File.WriteAllBytes(path, input);
        if (faults.TryAdd(fault, path))
            details.Enqueue($"{fault}, {path}: {Message(input, damage.Lot)}");
    }

    private string Message(byte[] input, uint lot)
    {
        try
        {
            return isAccepted(input, folders.Value![""], lot) ? "accepted" : "refused";
        }
        catch (Exception problem)
        {
            return problem.Message;
        }
    }

    private void EndHung()
    {
        foreach (var (input, _) in running.Values.Where(one => Stopwatch.GetElapsedTime(one.Since) > hung))
        {
            Directory.CreateDirectory(kept);
            var path = Path.Combine(kept, $"{name.Replace(' ', '-')}-hung.txt");
            File.WriteAllBytes(path, input);
            Environment.FailFast($"{name}: a case did not end within {hung.TotalSeconds} s; its input is {path}");
        }
    }
}

/// <summary>A promise of <see cref="DamagedFilesTests"/> that an input broke.</summary>
/// <param name="kind">Which: the same for all inputs that break it in the same way.</param>
/// <param name="detail">By what.</param>
internal sealed class BrokenPromise(string kind, string detail) : Exception($"{kind}: {detail}")
{
    public string Kind { get; } = kind;

    public static void Unless(bool isKept, string kind, string detail)
    {
        if (!isKept)
            throw new BrokenPromise(kind, detail);
    }
}
