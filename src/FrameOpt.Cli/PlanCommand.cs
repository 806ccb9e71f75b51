using System.CommandLine;
using System.Text;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>plan: the runs of a study's plan, what they can tell, and the surfaces fitted to them.</summary>
internal static class PlanCommand
{
    public static Command Build(Terminal terminal)
    {
        var study = StudyArgument.Build();
        var variant = StudyArgument.Variant();
        var csv = new Option<string?>("--csv")
        {
            Description = "Also write the runs to this file in a random order, with empty cells for what is measured, for analyse; it "
                + "must not exist yet.",
            HelpName = "file"
        };
        OutputOptions.RefuseEmpty(csv, "--csv needs the name of a file, for example --csv runs.csv.");
        var command = new CommandWithExamples(
            "plan",
            "Show a study's plan of runs, its alias structure and quality, and which factors matter.",
            "frameopt plan study.yaml",
            "frameopt plan study.yaml --csv runs.csv")
        {
            study, variant, csv,
        };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(study), parsed.GetValue(variant), parsed.GetValue(csv), terminal));
        return command;
    }

    private static int Run(string path, IReadOnlyList<string>? variant, string? csv, Terminal terminal)
    {
        // Asked once, it begins to catch signals: from here on one asks to stop instead of ending the process.
        _ = terminal.StopRequested();
        if (StudyArgument.Open(path, variant, terminal) is not { } study)
            return ExitCode.InvalidInput;
        if (study.Plan is null)
        {
            terminal.Error.WriteLine(
                $"{VisibleText.Path(path)} has no plan. Add for example `plan: {{ kind: central composite }}`; docs/plans.md "
                    + "describes what each kind can estimate.");
            return ExitCode.InvalidInput;
        }

        ConsoleWriter.WriteWarnings(terminal, study.Warnings);
        if (csv is not null && NewFile.Obstacle(csv) is { } obstacle)
        {
            terminal.Error.WriteLine($"Nothing was computed, because the runs could not be written: {obstacle}");
            return ExitCode.InvalidInput;
        }

        return Show(study, csv, terminal);
    }

    private static int Show(Study study, string? csv, Terminal terminal)
    {
        using var stop = new CancellationTokenSource();
        // On a thread of its own: those of the pool are needed to hear of a signal.
        var work = Task.Factory.StartNew(() =>
        {
            var answer = PlanRunner.Run(study, StudyProblem.Model(study), Environment.ProcessorCount, stop.Token);
            return (Answer: answer, Sections: PlanSections.Of(answer));
        }, stop.Token, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        if (ProgressDisplay.Wait(work, "the runs of the plan and their surfaces", terminal))
        {
            stop.Cancel();
            terminal.Error.WriteLine("Stopped before the plan was computed; nothing was written.");
            return ExitCode.Interrupted;
        }

        var (answer, sections) = work.GetAwaiter().GetResult();
        if (csv is not null
            && !NewFile.TryWrite(csv, stream => WriteRuns(answer, stream), "The runs", terminal))
        {
            return ExitCode.InvalidInput;
        }

        if (terminal.StopRequested())
        {
            terminal.Error.WriteLine($"Stopped; {(csv is null ? "nothing was written" : $"the runs are in {VisibleText.Path(csv)}")}.");
            return ExitCode.Interrupted;
        }

        terminal.Out.Write(new Text(study.FullTitle, new Style(decoration: Decoration.Bold)));
        terminal.Out.WriteLine();
        terminal.Out.WriteLine($"{DatumText.MovingArms(study.Machine)}{DatumText.Sentence(study.Machine)}");
        ConsoleWriter.WriteSections(terminal.Out, sections);
        return ExitCode.Success;
    }

    /// <summary>With the mark by which a spreadsheet program sees that the units are UTF-8.</summary>
    private static void WriteRuns(PlanResult answer, Stream stream)
    {
        stream.Write(Encoding.UTF8.Preamble);
        CsvTable.Write(PlanTable.ToMeasure(answer, PlanTable.Seed), stream);
    }
}
