using System.Diagnostics;

namespace FrameOpt.ProductLine.PMedian;

/// <summary>Time limit and cancellation of a solver, with the reason it stopped.</summary>
internal sealed class SolverClock(ProductLineSolverSettings settings)
{
    private readonly long start = Stopwatch.GetTimestamp();

    /// <summary>The reason to stop, or null while the solver may continue.</summary>
    public ProductLineStopReason? Stop { get; private set; }

    public bool Stopped
    {
        get
        {
            if (Stop is null && settings.Cancel.IsCancellationRequested)
                Stop = ProductLineStopReason.Cancelled;
            else if (Stop is null && SecondsLeft <= 0)
                Stop = ProductLineStopReason.TimeLimit;
            return Stop is not null;
        }
    }

    public double SecondsLeft => settings.TimeLimit is { } limit ? (limit - Stopwatch.GetElapsedTime(start)).TotalSeconds
        : double.PositiveInfinity;

    public CancellationToken Cancel => settings.Cancel;
}

/// <summary>Limits of a solver. A result found without being stopped does not depend on the clock.</summary>
/// <param name="TimeLimit">Time limit; null to continue until optimality is proven.</param>
/// <param name="Cancel">Checked every few milliseconds.</param>
public sealed record ProductLineSolverSettings(TimeSpan? TimeLimit = null, CancellationToken Cancel = default);

/// <summary>Why a solver ended.</summary>
public enum ProductLineStopReason
{
    /// <summary>Optimal within a relative gap of 1e-9.</summary>
    Proven,

    /// <summary>Proven best for the representatives of very many customers; the gap is the aggregation error.</summary>
    Representatives,

    /// <summary>Time limit reached: the best solution and bound so far.</summary>
    TimeLimit,

    /// <summary>Cancelled: the best solution and bound so far.</summary>
    Cancelled,

    /// <summary>Nothing was to be chosen: every variant is fixed.</summary>
    Fixed,
}
