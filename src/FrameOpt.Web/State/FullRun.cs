using FrameOpt.Reports.Answer;
using Microsoft.JSInterop;

namespace FrameOpt.Web.State;

/// <summary>The whole run of the study that is open: it computes beside the page and can be stopped.</summary>
/// <param name="session">The study.</param>
/// <param name="device">Runs it.</param>
/// <param name="read">Reads the answer.</param>
public sealed class FullRun(Session session, Device device, Func<string, (RunAnswer Answer, IReadOnlyList<string> Pictures)> read)
{
    private int started;

    /// <summary>Something changed: draw again.</summary>
    public event Action? Changed;

    /// <summary>True while it computes.</summary>
    public bool IsRunning { get; private set; }

    /// <summary>What it does now, in words.</summary>
    public string Stage { get; private set; } = "";

    /// <summary>Share done of this stage, 0 to 1; null where that is not known.</summary>
    public double? Share { get; private set; }

    /// <summary>Of the last run.</summary>
    public RunAnswer? Answer { get; private set; }

    /// <summary>What each uncertain number does alone, drawn; none where nothing is uncertain.</summary>
    public IReadOnlyList<string> Pictures { get; private set; } = [];

    /// <summary>Why the last run failed; null when it did not.</summary>
    public string? Failure { get; private set; }

    /// <summary>The edition of the text that the answer belongs to.</summary>
    public int Edition { get; private set; }

    /// <summary>The names of its files, when they are written.</summary>
    public IReadOnlyList<string> FileNames { get; private set; } = [];

    /// <summary>True when its files are written.</summary>
    public bool HasFiles => FileNames.Count > 0;

    /// <summary>True when the last run was one of the product line.</summary>
    public bool IsLine { get; private set; }

    /// <summary>True when the last run was that of the study as it stands, or of its product line.</summary>
    public bool IsCurrent(bool isLine = false) => Answer is not null && IsLine == isLine && Edition == session.Edition;

    /// <summary>Runs the study.</summary>
    /// <param name="job">The study as JSON.</param>
    /// <param name="isLine">True to work out its product line.</param>
    /// <param name="stage">What to say first.</param>
    public async Task Run(string job, bool isLine, string stage)
    {
        if (IsRunning)
            return;
        started = session.Edition;
        (FileNames, Answer, IsLine) = ([], null, isLine);
        (IsRunning, Stage, Share, Failure) = (true, stage, null, null);
        Changed?.Invoke();
        using var self = DotNetObjectReference.Create(this);
        try
        {
            FileNames = await device.RunBeside(job, isLine, self) ?? [];
        }
        catch (JSException problem)
        {
            Failure = problem.Message;
        }

        IsRunning = false;
        Changed?.Invoke();
    }

    /// <summary>Stops it; nothing is kept of it.</summary>
    public void Stop() => device.StopRun();

    /// <summary>Called by the worker, which then writes the files.</summary>
    [JSInvokable]
    public void Answered(string answer)
    {
        ((Answer, Pictures), Edition) = (read(answer), started);
        Changed?.Invoke();
    }

    /// <summary>Called by the worker.</summary>
    [JSInvokable]
    public void Progress(string stage, double done, double total)
    {
        (Stage, Share) = (stage, total > 0 ? done / total : null);
        Changed?.Invoke();
    }
}
