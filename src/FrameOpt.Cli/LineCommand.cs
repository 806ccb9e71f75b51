using System.CommandLine;
using FrameOpt.Reports.Files;
using FrameOpt.Reports.ProductLine;
using FrameOpt.Studies;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>line: which few fixed geometries to make for many customers.</summary>
internal static class LineCommand
{
    public static Command Build(Terminal terminal)
    {
        var study = StudyArgument.Build();
        var variant = StudyArgument.Variant();
        var (folder, replace, threads) = (OutputOptions.Folder(), OutputOptions.Replace(), OutputOptions.Threads());
        var count = new Option<int?>("--variants")
        {
            Description = "Number of geometries to make, instead of the number in the study.",
            HelpName = "number"
        };
        count.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && int.TryParse(result.Tokens[0].Value, out var number)
                && number is < 1 or > ProductLineSetting.MaxGeometries)
                result.AddError($"--variants must be a number from 1 to {ProductLineSetting.MaxGeometries}, not {number}.");
        });
        var command = new CommandWithExamples(
            "line",
            "Choose the few fixed geometries to make for many customers: who gets which, who is served worst, what one more would gain.",
            "frameopt line study.yaml",
            "frameopt line study.yaml --variants 2 --out results/two --replace")
        {
            study, variant, folder, replace, threads, count,
        };
        command.SetAction(parsed => Run(
            new Request(parsed.GetRequiredValue(study), parsed.GetValue(variant), parsed.GetValue(folder), parsed.GetValue(replace),
                parsed.GetValue(threads), parsed.GetValue(count)), terminal));
        return command;
    }

    private static int Run(Request request, Terminal terminal)
    {
        if (LineWork.Open(request.StudyPath, request.Variants, terminal) is not { Line: { } line } study)
            return ExitCode.InvalidInput;
        if (request.Count < line.Fixed.Count)
        {
            terminal.Error.WriteLine($"--variants {request.Count} is fewer than the {line.Fixed.Count} geometries that the study "
                + "fixes. Give at least that number, or remove some of `line.geometries`.");
            return ExitCode.InvalidInput;
        }

        if (request.Count is { } count)
            study = study with { Line = line with { Count = count, UpTo = Math.Max(count, line.UpTo) } };
        ConsoleWriter.WriteWarnings(terminal, study.Warnings);
        var started = DateTime.UtcNow;
        var path = request.Folder ?? RunFolder.FirstFreePath(RunFolder.DefaultPath(request.StudyPath, study.Hash, started, study.Variant));
        using var folder = OutputFolder.Begin(path, request.Replace, terminal);
        return folder is null ? ExitCode.InvalidInput : Choose(study, request, folder, started, terminal);
    }

    private static int Choose(Study study, Request request, ResultsFolder folder, DateTime started, Terminal terminal)
    {
        var work = LineWork.Of(study, request.Threads, terminal);
        if (work.Result is not { } result)
            return work.CodeWithoutResult;
        var report = new ProductLineReport(result, new RunInfo(Path.GetFileName(request.StudyPath), BuildInfo.Version, 0));
        var timings = new ProductLineTimings(started, request.Threads, work.Run.Timings, BuildInfo.Platform);
        var place = OutputFolder.Fill(folder, into => ProductLineFolder.Write(report, timings, into), terminal);
        ConsoleWriter.WriteAnswer(terminal.Out, ProductLineAnswer.Of(result));
        if (place is null)
            return ExitCode.InvalidInput;
        terminal.Out.WriteLine();
        terminal.Out.WriteLine($"Written to {place}: line.xlsx, line.html, fitting-chart.svg, customers.csv, line.json, timings.json");
        return work.IsStopped ? ExitCode.Interrupted : result.Solution.Feasible ? ExitCode.Success : ExitCode.NothingFeasible;
    }

    private sealed record Request(string StudyPath, IReadOnlyList<string>? Variants, string? Folder, bool Replace, int Threads, int? Count);
}
