using System.CommandLine;
using System.Reflection;
using System.Runtime.InteropServices;
using FrameOpt.Reports;
using FrameOpt.Studies;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>run: the main job, from a study file to a ranked front in Excel.</summary>
internal static class RunCommand
{
    public static Command Build(Terminal terminal)
    {
        var study = StudyArgument.Build();
        var folder = new Option<string?>("--out") { Description = "Folder for the results; results/<time>-<study> beside the study when not given.", HelpName = "folder" };
        var replace = new Option<bool>("--replace") { Description = "Put the results in the place of older ones in that folder." };
        var threads = new Option<int>("--threads")
        {
            Description = "Worker threads; the results do not depend on it.",
            HelpName = "number",
            DefaultValueFactory = _ => Environment.ProcessorCount,
        };
        threads.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && int.TryParse(result.Tokens[0].Value, out var number) && number is < 1 or > 1024)
                result.AddError($"--threads wants a number from 1 to 1024, not {number}.");
        });
        var command = new Command("run", "Run a study: search, rank, write the workbook and the other files, print the answer.") { study, folder, replace, threads };
        command.SetAction(parsed => Run(
            parsed.GetRequiredValue(study), parsed.GetValue(folder), parsed.GetValue(replace), parsed.GetValue(threads), terminal));
        return command;
    }

    private static int Run(string path, string? folder, bool replace, int threads, Terminal terminal)
    {
        if (StudyArgument.Open(path, terminal) is not { } study)
            return ExitCode.Mistake;
        foreach (var warning in study.Warnings)
            terminal.Error.WriteLine($"Look again: {warning}");
        var started = DateTime.UtcNow;
        folder ??= RunFolder.DefaultPath(path, study.Hash, started);
        if (RunFolder.Refusal(folder, replace) is { } refusal)
        {
            terminal.Error.WriteLine(refusal);
            return ExitCode.Mistake;
        }

        var runner = new StudyRunner(study, threads);
        var stopped = Follow(runner, terminal);
        var result = runner.Result();
        var info = new RunInfo(Path.GetFileName(path), Version, 0);
        var timings = new RunTimings(started, threads, runner.SearchSeconds, runner.ScenarioSeconds, MachineWords);
        try
        {
            RunFolder.Write(RunReport.Of(result, info), timings, folder, replace);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            terminal.Error.WriteLine($"The results could not be written to {folder}: {problem.Message}");
            return ExitCode.Mistake;
        }

        Screen.Answer(terminal.Out, Answer.Of(result));
        terminal.Out.WriteLine();
        terminal.Out.WriteLine($"Written to {folder}: results.xlsx, designs.csv, run.json, timings.json");
        return stopped ? ExitCode.Stopped : result.Chosen is null ? ExitCode.NothingFeasible : ExitCode.Done;
    }

    private static string Version =>
        typeof(Study).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0];

    private static string MachineWords =>
        $"{RuntimeInformation.OSDescription}, {RuntimeInformation.ProcessArchitecture}, {Environment.ProcessorCount} processors";

    /// <summary>Steps through the run, showing progress on a terminal; true when the user stopped it.</summary>
    private static bool Follow(StudyRunner runner, Terminal terminal)
    {
        if (!terminal.Error.Profile.Capabilities.Interactive)
            return runner.Steps().Any(_ => terminal.StopAsked());
        return terminal.Error.Progress()
            .AutoClear(true)
            .Columns(new TaskDescriptionColumn(), new ProgressBarColumn(), new PercentageColumn(), new RemainingTimeColumn())
            .Start(context =>
            {
                ProgressTask? task = null;
                foreach (var step in runner.Steps())
                {
                    if (task?.Description != step.Stage)
                        task = context.AddTask(step.Stage, maxValue: step.Total);
                    task.Value = step.Done;
                    if (terminal.StopAsked())
                        return true;
                }

                return false;
            });
    }
}
