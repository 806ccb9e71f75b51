using System.Diagnostics;

namespace FrameOpt.ProductLine.PMedian;

/// <summary>Says when to stop, and remembers why.</summary>
internal sealed class SolverClock(ProductLineSolverSettings settings)
{
    private readonly long start = Stopwatch.GetTimestamp();

    /// <summary>Null while the search may go on.</summary>
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

/// <summary>How long a search for a line may take. What it finds without being stopped never depends on the clock.</summary>
/// <param name="TimeLimit">Null: until the best is proven.</param>
/// <param name="Cancel">Asked every few milliseconds.</param>
public sealed record ProductLineSolverSettings(TimeSpan? TimeLimit = null, CancellationToken Cancel = default);

/// <summary>Why a search for a line ended.</summary>
public enum ProductLineStopReason
{
    /// <summary>No choice is better by more than one part in a thousand million.</summary>
    Proven,

    /// <summary>Proven best for the representatives of very many customers; the gap is what they leave open.</summary>
    Representatives,

    /// <summary>The time was up: the best so far, with the bound so far.</summary>
    TimeLimit,

    /// <summary>It was told to stop: the best so far, with the bound so far.</summary>
    Cancelled,
}
