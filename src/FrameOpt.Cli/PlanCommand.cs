using System.CommandLine;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Files;
using FrameOpt.Reports.Tables;
using FrameOpt.Running;
using FrameOpt.Studies;
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
            Description = "Also write the runs to this file, for measurements; it must not exist yet.",
            HelpName = "file"
        };
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

    private static int Run(string path, string? variant, string? csv, Terminal terminal)
    {
        if (StudyArgument.Open(path, variant, terminal) is not { } study)
            return ExitCode.InvalidInput;
        if (study.Plan is null)
        {
            terminal.Error.WriteLine(
                $"{path} has no plan. Add for example `plan: {{ kind: central composite }}`; docs/plans.md describes what each kind can "
                    + $"estimate.");
            return ExitCode.InvalidInput;
        }

        if (csv is not null && Path.Exists(csv))
        {
            terminal.Error.WriteLine($"{csv} already exists; choose another name.");
            return ExitCode.InvalidInput;
        }

        var answer = PlanRunner.Run(study, StudyProblem.Model(study), Environment.ProcessorCount);
        if (csv is not null && !TryWrite(answer, csv, terminal))
            return ExitCode.InvalidInput;
        terminal.Out.Write(new Text(study.FullTitle, new Style(decoration: Decoration.Bold)));
        terminal.Out.WriteLine();
        ConsoleWriter.WriteSections(terminal.Out, PlanSections.Of(answer));
        return ExitCode.Success;
    }

    private static bool TryWrite(PlanResult answer, string file, Terminal terminal)
    {
        try
        {
            NewFile.Write(file, stream => CsvTable.Write(PlanTable.Of(answer), stream));
            return true;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            terminal.Error.WriteLine(File.Exists(file)
                ? $"{file} already exists; choose another name."
                : $"The runs could not be written to {file}: {problem.Message}");
            return false;
        }
    }
}
