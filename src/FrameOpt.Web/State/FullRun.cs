using FrameOpt.Reports.Answer;
using Microsoft.JSInterop;

namespace FrameOpt.Web.State;

/// <summary>The whole run of the study that is open: it computes beside the page and can be stopped.</summary>
/// <param name="session">The study.</param>
/// <param name="device">Runs it.</param>
/// <param name="read">Reads the answer.</param>
public sealed class FullRun(Session session, Device device, Func<string, RunOutcome> read)
{
    private (int Edition, string? Form, double[]? Built) started, answered;

    /// <summary>Something changed: draw again.</summary>
    public event Action? Changed;

    /// <summary>True while it computes.</summary>
    public bool IsRunning { get; private set; }

    /// <summary>What it does now, in words.</summary>
    public string Stage { get; private set; } = "";

    /// <summary>Share done of this stage, 0 to 1; null where that is not known.</summary>
    public double? Share { get; private set; }

    /// <summary>Of the last run; null while there is none.</summary>
    public RunOutcome? Outcome { get; private set; }

    /// <summary>Its words.</summary>
    public RunAnswer? Answer => Outcome?.Answer;

    /// <summary>Why the last run failed; null when it did not.</summary>
    public string? Failure { get; private set; }

    /// <summary>The names of its files, when they are written.</summary>
    public IReadOnlyList<string> FileNames { get; private set; } = [];

    /// <summary>True when its files are written.</summary>
    public bool HasFiles => FileNames.Count > 0;

    /// <summary>What the last run did.</summary>
    public RunTask Kind { get; private set; }

    /// <summary>True when the last run did this and nothing changed since that it stands on, or only that its corrected study was taken
    /// over.</summary>
    public bool IsCurrent(RunTask kind = RunTask.Run)
    {
        var now = Version(kind);
        return Answer is not null && Kind == kind && (answered == now || answered with { Edition = now.Edition } == now
            && Outcome!.Correction is { HasChanges: true } correction && correction.Text == session.Stored.Text);
    }

    /// <summary>Runs the study.</summary>
    /// <param name="job">The study as JSON.</param>
    /// <param name="kind">What to do with it.</param>
    /// <param name="stage">What to say first.</param>
    public async Task Run(string job, RunTask kind, string stage)
    {
        if (IsRunning)
            return;
        started = Version(kind);
        (FileNames, Outcome, Kind) = ([], null, kind);
        (IsRunning, Stage, Share, Failure) = (true, stage, null, null);
        Changed?.Invoke();
        using var self = DotNetObjectReference.Create(this);
        try
        {
            FileNames = await device.RunBeside(job, kind, self) ?? [];
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
        (Outcome, answered) = (read(answer), started);
        Changed?.Invoke();
    }

    /// <summary>Called by the worker.</summary>
    [JSInvokable]
    public void Progress(string stage, double done, double total)
    {
        (Stage, Share) = (stage, total > 0 ? done / total : null);
        Changed?.Invoke();
    }

    private (int Edition, string? Form, double[]? Built) Version(RunTask kind) => kind switch
    {
        RunTask.Fit => (session.Edition, session.Stored.Beside.GetValueOrDefault(StoredMeasured.FormName), session.Stored.Measured?.Built),
        RunTask.Analyse => (0, $"{session.Stored.Runs}{session.Stored.Beside.GetValueOrDefault(StoredRuns.FileName)}", null),
        _ => (session.Edition, null, null),
    };
}
