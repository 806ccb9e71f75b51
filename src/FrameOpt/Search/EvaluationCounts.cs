namespace FrameOpt.Search;

/// <summary>Counts of feasible, infeasible and failed designs, and the nearest miss.</summary>
/// <param name="bounds">Number of constraints of the problem.</param>
public sealed class EvaluationCounts(int bounds)
{
    private readonly SortedDictionary<ushort, long> failures = [];

    /// <summary>All designs.</summary>
    public long Evaluated { get; set; }

    /// <summary>Designs that failed.</summary>
    public long Failed { get; private set; }

    /// <summary>Designs that succeeded but violate a constraint.</summary>
    public long Infeasible { get; private set; }

    /// <summary>Designs that succeeded and keep every limit.</summary>
    public long Feasible => Evaluated - Failed - Infeasible;

    /// <summary>Number of designs that succeeded and violate each constraint.</summary>
    public long[] ViolatedBy { get; } = new long[bounds];

    /// <summary>Number of failed designs for each reason code.</summary>
    public IReadOnlyDictionary<ushort, long> Failures => failures;

    /// <summary>Number of the design that violates its constraints least (the first in case of a tie), or -1.</summary>
    public long NearestMiss { get; private set; } = -1;

    /// <summary>Constraint violation of the nearest miss, without unit.</summary>
    public double NearestMissViolation { get; private set; } = double.PositiveInfinity;

    /// <summary>Counts one failed design.</summary>
    public void AddFailure(ushort code)
    {
        Failed++;
        failures[code] = failures.GetValueOrDefault(code) + 1;
    }

    /// <summary>Counts one infeasible design.</summary>
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
