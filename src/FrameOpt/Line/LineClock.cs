using System.Diagnostics;

namespace FrameOpt.Line;

/// <summary>Says when to stop, and remembers why.</summary>
internal sealed class LineClock(LineSettings settings)
{
    private readonly long start = Stopwatch.GetTimestamp();

    /// <summary>Null while the search may go on.</summary>
    public LineStop? Stop { get; private set; }

    public bool Stopped
    {
        get
        {
            if (Stop is null && settings.Cancel.IsCancellationRequested)
                Stop = LineStop.Cancelled;
            else if (Stop is null && SecondsLeft <= 0)
                Stop = LineStop.TimeLimit;
            return Stop is not null;
        }
    }

    public double SecondsLeft => settings.TimeLimit is { } limit ? (limit - Stopwatch.GetElapsedTime(start)).TotalSeconds : double.PositiveInfinity;

    public CancellationToken Cancel => settings.Cancel;
}
