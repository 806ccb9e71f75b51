using System.CommandLine;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Files;
using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.Studies;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>run: the main job, from a study file to a ranked front in Excel.</summary>
internal static class RunCommand
{
    public static Command Build(Terminal terminal)
    {
        var study = StudyArgument.Build();
        var variant = StudyArgument.Variant();
        var (folder, replace, threads) = (OutputOptions.Folder(), OutputOptions.Replace(), OutputOptions.Threads());
        var all = new Option<bool>("--all") { Description = "Also write every evaluated design, to evaluations.csv." };
        var remember = new Option<string?>("--remember")
        {
            Description =
                "Cache every evaluation of an evolutionary search in this file and reuse those it contains: after an interruption the "
                    + "same command resumes.",
            HelpName = "file",
        };
        OutputOptions.RefuseEmpty(remember, "--remember needs the name of a file, for example --remember evaluations.csv.");
        var command = new CommandWithExamples(
            "run",
            "Run a study: search, rank, write the workbook and the other files, print the answer.",
            "frameopt run study.yaml",
            "frameopt run study.yaml --variant 'full tank'",
            "frameopt run study.yaml --out results/monday --replace")
        {
            study, variant, folder, replace, threads, all, remember,
        };
        command.SetAction(parsed => Run(
            new Request(
                parsed.GetRequiredValue(study),
                parsed.GetValue(variant),
                parsed.GetValue(folder),
                parsed.GetValue(replace),
                parsed.GetValue(threads),
                parsed.GetValue(all),
                parsed.GetValue(remember)),
            terminal));
        return command;
    }

    private static int Run(Request request, Terminal terminal)
    {
        // Asked once, it begins to catch signals: from here on one asks to stop instead of ending the process.
        _ = terminal.StopRequested();
        if (StudyArgument.Open(request.StudyPath, request.Variants, terminal) is not { } study)
            return ExitCode.InvalidInput;
        ConsoleWriter.WriteWarnings(terminal, study.Warnings);
        var started = DateTime.UtcNow;
        var path = request.Folder ?? RunFolder.FirstFreePath(RunFolder.DefaultPath(request.StudyPath, study.Hash, started, study.Variant));
        if (request.Remember is { } cache && IsInside(cache, path))
        {
            terminal.Error.WriteLine($"{cache} lies in {path}, which is written as a whole at the end; name a file outside it.");
            return ExitCode.InvalidInput;
        }

        using var folder = OutputFolder.Begin(path, request.Replace, terminal);
        if (folder is null)
            return ExitCode.InvalidInput;
        using var memory = OpenCache(study, request, terminal, out var isRefused);
        return isRefused ? ExitCode.InvalidInput : Run(study, request, folder, started, memory, terminal);
    }

    private static int Run(
        Study study, Request request, ResultsFolder folder, DateTime started, EvaluationCache? memory, Terminal terminal)
    {
        var runner = new StudyRunner(study, request.Threads, memory);
        using var all = request.All ? new AllEvaluations(study, folder) : null;
        var isStopped = RunSteps(runner, all, terminal);
        var result = runner.Result();
        var info = new RunInfo(Path.GetFileName(request.StudyPath), BuildInfo.Version,
            (study.Search as SearchSetting.Evolutionary)?.Seed ?? 0);
        var timings = new RunTimings(started, request.Threads, runner.SearchSeconds, runner.ScenarioSeconds, runner.CertificateSeconds,
            BuildInfo.Platform);
        var report = RunReport.Of(result, info);
        var place = OutputFolder.Fill(folder, into =>
        {
            all?.Include(into);
            RunFolder.Write(report, timings, into);
        }, terminal);
        if (all?.Failure is { } missing)
            terminal.Error.WriteLine($"{AllEvaluations.FileName} is missing from the results: {missing}");
        if (memory?.WriteFailure is { } full)
            terminal.Error.WriteLine($"{request.Remember} does not hold every evaluation of this run: {full}");
        ConsoleWriter.WriteAnswer(terminal.Out, RunAnswer.Of(result));
        if (place is null)
            return ExitCode.InvalidInput;
        terminal.Out.WriteLine();
        terminal.Out.WriteLine(
            $"Written to {place}: {RunFolder.Names(report)}"
                + $"{(all is { Failure: null } ? $", {AllEvaluations.FileName}" : "")}");
        return isStopped ? ExitCode.Interrupted : result.Counts.Feasible == 0 ? ExitCode.NothingFeasible : ExitCode.Success;
    }

    /// <summary>True for the folder itself as well.</summary>
    private static bool IsInside(string file, string folder) => $"{Path.GetFullPath(file)}{Path.DirectorySeparatorChar}".StartsWith(
        $"{Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder))}{Path.DirectorySeparatorChar}", StringComparison.Ordinal);

    /// <summary>The cache asked for, or null; a file that cannot be used is refused with a message.</summary>
    private static EvaluationCache? OpenCache(Study study, Request request, Terminal terminal, out bool isRefused)
    {
        isRefused = false;
        if (request.Remember is not { } path)
            return null;
        var refusal = "--remember is for evolutionary searches: the search of this study is exhaustive and is simply recomputed";
        if (study.Search is SearchSetting.Evolutionary)
        {
            try
            {
                var identity = $"study {study.Hash}, variant '{study.Variant}', FrameOpt {BuildInfo.Build}";
                if (EvaluationCache.Open(path, identity, study.Factors.Count, study.Mission.Count, out refusal) is { } memory)
                {
                    if (memory.CachedCount > 0)
                        terminal.Error.WriteLine($"{NumberFormat.Count(memory.CachedCount)} evaluations were loaded from {path}.");
                    return memory;
                }
            }
            catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
            {
                refusal = $"{path} cannot be used: {problem.Message}";
            }
        }

        terminal.Error.WriteLine(refusal);
        isRefused = true;
        return null;
    }

    /// <summary>Steps through the run, showing progress on a terminal; true when the user stopped it.</summary>
    private static bool RunSteps(StudyRunner runner, AllEvaluations? all, Terminal terminal) =>
        ProgressDisplay.Run(runner.Steps(), terminal, step =>
        {
            if (step.Batch is { } batch)
                all?.Append(batch);
            return terminal.StopRequested();
        });

    private sealed record Request(
        string StudyPath, IReadOnlyList<string>? Variants, string? Folder, bool Replace, int Threads, bool All, string? Remember);
}
