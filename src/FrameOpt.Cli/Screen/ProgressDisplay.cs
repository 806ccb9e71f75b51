using FrameOpt.Running;
using Spectre.Console;

namespace FrameOpt.Cli.Screen;

/// <summary>Steps through work, showing progress on a terminal.</summary>
internal static class ProgressDisplay
{
    private static readonly TimeSpan pollInterval = TimeSpan.FromMilliseconds(50);

    /// <summary>Waits for work that has no steps; true when the user asked to stop before its end.</summary>
    /// <param name="work">Already begun.</param>
    /// <param name="what">What is being computed.</param>
    /// <param name="terminal">Where a sign of life is shown when it is interactive.</param>
    public static bool Wait(Task work, string what, Terminal terminal)
    {
        if (!terminal.Error.Profile.Capabilities.Interactive)
            return IsStopped();
        return terminal.Error.Status().Start($"Computing {Markup.Escape(what)}; Ctrl-C stops", _ => IsStopped());

        bool IsStopped()
        {
            while (!terminal.StopRequested())
            {
                if (((IAsyncResult)work).AsyncWaitHandle.WaitOne(pollInterval))
                    return false;
            }

            return true;
        }
    }

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
                    if (task?.Description != Markup.Escape(step.Stage))
                        task = context.AddTask(Markup.Escape(step.Stage), maxValue: step.Total);
                    task.Value = step.Done;
                    return consume(step);
                });
            });
    }
}
