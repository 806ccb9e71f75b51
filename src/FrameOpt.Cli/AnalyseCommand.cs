using System.CommandLine;
using FrameOpt.Forms;
using FrameOpt.Reports.Forms;
using FrameOpt.Reports.Runs;
using FrameOpt.StudyFile.Syntax;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>analyse: which factors matter in measured runs.</summary>
internal static class AnalyseCommand
{
    public static Command Build(Terminal terminal)
    {
        var file = new Argument<string>("file") { Description = "Measured runs: a table with a row of headers (.csv or .xlsx)." };
        var response = Several("--response", "name", "A column that was measured, once for each; by default those beside which the file "
            + "has the model's value, or else the last one.");
        var factor = Several("--factor", "name", "A column that was set, once for each; by default every other column of numbers.");
        var range = Several("--range", "'factor low..high'", "What coded -1 and +1 stand for, for example 'time 80..90'.");
        var goal = Several("--goal", "'response way numbers'", "What is wanted of a response, to look for the setting that meets all goals "
            + "best, for example 'yield more 60..80', 'drag less 20..30' or 'stretch near 400..500..600'.");
        var models = RunAnalysisRequest.Models;
        var words = string.Join(", ", models.Select(one => one.Word));
        var model = new Option<string?>("--model")
        {
            Description = $"Terms to fit: {words}; by default the most that the runs can "
                + "estimate with something left for the error.",
            HelpName = "terms",
        };
        model.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && !models.Any(one => one.Word == result.Tokens[0].Value))
                result.AddError($"--model must be one of {words}.");
        });
        var select = new Option<bool>("--select")
        {
            Description = "Keep only the terms that earn their place (stepwise, corrected Akaike criterion).",
        };
        var study = new Option<string?>("--study")
        {
            Description = "With --goal: the study whose steps, values or holes say what can be built; the best setting is rounded to them.",
            HelpName = "study",
        };
        OutputOptions.RefuseEmpty(study, "--study needs a study file, for example --study study.yaml.");
        var page = new Option<string?>("--out")
        {
            Description = "Also write a page with the pictures (residuals, half-normal plot) to this file (.html); it must not exist yet.",
            HelpName = "file",
        };
        OutputOptions.RefuseEmpty(page, "--out needs the name of a file, for example --out runs.html.");
        var command = new CommandWithExamples(
            "analyse",
            "Analyse measured runs: effects, variances, fit, outliers, and the model's values beside them.",
            "frameopt plan study.yaml --csv runs.csv",
            "frameopt analyse runs.csv",
            "frameopt analyse runs.csv --response lean --model linear --range 'time 80..90' --goal 'lean less 10..60'")
        {
            file, response, factor, range, model, select, goal, study, page,
        };
        command.SetAction(parsed => Run(
            parsed.GetRequiredValue(file),
            new RunAnalysisRequest(
                new RunTableRequest(parsed.GetValue(response) ?? [], parsed.GetValue(factor) ?? [], parsed.GetValue(range) ?? []),
                parsed.GetValue(model) is { } word ? models.First(one => one.Word == word).Model : null,
                parsed.GetValue(select), parsed.GetValue(goal) ?? []),
            parsed.GetValue(study), parsed.GetValue(page), terminal));
        return command;
    }

    private static Option<string[]> Several(string name, string helpName, string description) => new(name)
    {
        Description = description,
        HelpName = helpName,
        Arity = ArgumentArity.ZeroOrMore,
    };

    private static int Run(string path, RunAnalysisRequest request, string? studyPath, string? page, Terminal terminal)
    {
        if (page is not null && NewFile.Obstacle(page) is { } obstacle)
        {
            terminal.Error.WriteLine($"Nothing was computed, because the page could not be written: {obstacle}");
            return ExitCode.InvalidInput;
        }

        if (FilledFormFile.ReadTable(path, out var problem) is not { } cells)
        {
            terminal.Error.WriteLine($"{VisibleText.Path(path)}: {problem}");
            return ExitCode.InvalidInput;
        }

        var study = studyPath is null ? null : StudyArgument.Open(studyPath, null, terminal);
        if (studyPath is not null && study is null)
            return ExitCode.InvalidInput;
        if (RunTableAnswer.Of(cells, request, study, out var errors) is not { } answer)
        {
            ConsoleWriter.WriteDiagnostics(terminal, path, errors);
            return ExitCode.InvalidInput;
        }

        ConsoleWriter.WriteSections(terminal.Out, answer.Sections);
        if (page is null)
            return ExitCode.Success;
        if (!NewFile.TryWrite(page, stream => RunAnalysisPage.Write(answer, stream), "The page", terminal))
            return ExitCode.InvalidInput;
        terminal.Out.WriteLine($"Written to {VisibleText.Path(page)}.");
        return ExitCode.Success;
    }
}
