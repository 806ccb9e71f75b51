namespace FrameOpt.Search;

/// <summary>Counts of designs by what became of them, and the nearest miss.</summary>
/// <param name="bounds">How many limits the problem has.</param>
public sealed class EvaluationCounts(int bounds)
{
    private readonly SortedDictionary<ushort, long> failures = [];

    /// <summary>All designs.</summary>
    public long Evaluated { get; set; }

    /// <summary>Designs that failed.</summary>
    public long Failed { get; private set; }

    /// <summary>Designs that succeeded but break a limit.</summary>
    public long Infeasible { get; private set; }

    /// <summary>Designs that succeeded and keep every limit.</summary>
    public long Feasible => Evaluated - Failed - Infeasible;

    /// <summary>How many designs that succeeded break each limit.</summary>
    public long[] ViolatedBy { get; } = new long[bounds];

    /// <summary>How many designs failed for each reason code.</summary>
    public IReadOnlyDictionary<ushort, long> Failures => failures;

    /// <summary>Number of the design outside its limits that misses them least (the first of equals), or -1.</summary>
    public long NearestMiss { get; private set; } = -1;

    /// <summary>Its sum of shares missed.</summary>
    public double NearestMissViolation { get; private set; } = double.PositiveInfinity;

    /// <summary>Counts one failed design.</summary>
    public void AddFailure(ushort code)
    {
        Failed++;
        failures[code] = failures.GetValueOrDefault(code) + 1;
    }

    /// <summary>Counts one design outside its limits.</summary>
    public void AddInfeasible(long number, double miss)
    {
        Infeasible++;
        KeepNearest(number, miss);
    }

    /// <summary>Adds the counts of a later batch.</summary>
    public void Add(EvaluationCounts other)
    {
        Evaluated += other.Evaluated;
        Failed += other.Failed;
        Infeasible += other.Infeasible;
        foreach (var (code, count) in other.failures)
            failures[code] = failures.GetValueOrDefault(code) + count;
        for (var b = 0; b < ViolatedBy.Length; b++)
            ViolatedBy[b] += other.ViolatedBy[b];
        if (other.NearestMiss >= 0)
            KeepNearest(other.NearestMiss, other.NearestMissViolation);
    }

    private void KeepNearest(long number, double miss)
    {
        if (miss < NearestMissViolation)
            (NearestMiss, NearestMissViolation) = (number, miss);
    }
}
