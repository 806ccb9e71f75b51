using FrameOpt.Running;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>Steps through work, showing progress on a terminal.</summary>
internal static class ProgressDisplay
{
    /// <summary>Takes every step until there are no more or one asks to stop; true when one did.</summary>
    /// <param name="steps">The work, step by step.</param>
    /// <param name="terminal">Where progress is shown when it is interactive.</param>
    /// <param name="consume">Takes a step; true to stop.</param>
    public static bool Run(IEnumerable<RunProgress> steps, Terminal terminal, Func<RunProgress, bool> consume)
    {
        if (!terminal.Error.Profile.Capabilities.Interactive)
            return steps.Any(consume);
        return terminal.Error.Progress()
            .AutoClear(true)
            .Columns(new TaskDescriptionColumn(), new ProgressBarColumn(), new PercentageColumn(), new RemainingTimeColumn())
            .Start(context =>
            {
                ProgressTask? task = null;
                return steps.Any(step =>
                {
                    if (task?.Description != step.Stage)
                        task = context.AddTask(step.Stage, maxValue: step.Total);
                    task.Value = step.Done;
                    return consume(step);
                });
            });
    }
}
