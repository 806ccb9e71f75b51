using FrameOpt.Running;
using FrameOpt.Studies;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>The choice of a product line as a command runs it: with progress, and with Ctrl-C for the best so far.</summary>
/// <param name="Run">Done.</param>
/// <param name="Result">Null when there is no answer.</param>
/// <param name="IsStopped">True when the user asked to stop.</param>
internal sealed record LineWork(ProductLineRun Run, ProductLineResult? Result, bool IsStopped)
{
    private static readonly TimeSpan pollInterval = TimeSpan.FromMilliseconds(50);

    /// <summary>Chooses the line of a study, or says why there is nothing to choose from.</summary>
    /// <param name="study">With its line.</param>
    /// <param name="threads">Worker threads.</param>
    /// <param name="terminal">Shows progress.</param>
    /// <param name="geometriesOnly">True where only the geometries are wanted.</param>
    public static LineWork Of(Study study, int threads, Terminal terminal, bool geometriesOnly = false)
    {
        using var stop = new CancellationTokenSource();
        var run = new ProductLineRun(study, threads, stop.Token) { GeometriesOnly = geometriesOnly };
        using (new Timer(_ => StopIfRequested(), null, pollInterval, pollInterval))
            ProgressDisplay.Run(run.Steps(), terminal, _ =>
            {
                // The run itself stops, and ends with a choice once it has all costs.
                StopIfRequested();
                return false;
            });
        var result = run.Result();
        if (result is null)
            terminal.Error.WriteLine(run.NoCandidatesReason ?? "Stopped before there was anything to choose from; nothing was written.");
        return new LineWork(run, result, stop.IsCancellationRequested);

        void StopIfRequested()
        {
            if (!stop.IsCancellationRequested && terminal.StopRequested())
                stop.Cancel();
        }
    }

    /// <summary>The study with its line, or null after saying what is wrong.</summary>
    public static Study? Open(string path, IReadOnlyList<string>? variants, Terminal terminal)
    {
        // Asked once, it begins to catch signals: from here on one asks to stop instead of ending the process.
        _ = terminal.StopRequested();
        if (StudyArgument.Open(path, variants, terminal) is not { } study)
            return null;
        if (study.Line is not null)
            return study;
        terminal.Error.WriteLine(
            $"{path} has no product line. Add a group `line:` with variants and customers; docs/line.md describes it.");
        return null;
    }

    /// <summary>The exit code where there is no result.</summary>
    public int CodeWithoutResult => Run.NoCandidatesReason is null ? ExitCode.Interrupted : ExitCode.NothingFeasible;
}
