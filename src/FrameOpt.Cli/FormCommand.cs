using System.CommandLine;
using FrameOpt.Forms;
using FrameOpt.Reports.Files;
using FrameOpt.Reports.Forms;
using FrameOpt.Studies;
using FrameOpt.StudyFile;
using FrameOpt.StudyFile.Syntax;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>form: a form of measurements to fill in, and how to give it back.</summary>
internal static class FormCommand
{
    private const string Csv = ".csv";

    public static Command Build(Terminal terminal)
    {
        var study = StudyArgument.Build();
        var file = new Option<string>("--out")
        {
            Description = "File to write: a workbook (.xlsx), or text with the same cells (.csv); it must not exist yet.",
            HelpName = "file",
            DefaultValueFactory = _ => "measurements.xlsx",
        };
        OutputOptions.RefuseEmpty(file, "--out needs the name of a file, for example --out measurements.xlsx.");
        var set = StudyArgument.Settings("the frame that is built");
        var seed = new Option<int>("--seed")
        {
            Description = "Another seed gives another order of the runs.",
            HelpName = "number",
            DefaultValueFactory = _ => 1,
        };
        seed.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && int.TryParse(result.Tokens[0].Value, out var number) && number < 0)
                result.AddError("--seed must be a whole number, 0 or more.");
        });
        var command = new CommandWithExamples(
            "form",
            "Write a form of measurements on bench, hook and in flight, with cautions and stop rules, to fill in and give to fit.",
            "frameopt form study.yaml --out measurements.xlsx",
            "frameopt form study.yaml --set lateral_offset='-20 mm' --seed 2 --out measurements.csv",
            "frameopt fit study.yaml --measured measurements.xlsx --out corrected.yaml")
        {
            study, file, set, seed,
        };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(study), parsed.GetRequiredValue(file), parsed.GetValue(set) ?? [],
            parsed.GetValue(seed), terminal));
        return command;
    }

    private static int Run(string studyPath, string path, IReadOnlyList<string> settings, int seed, Terminal terminal)
    {
        if (StudyArgument.Open(studyPath, [], terminal) is not { } study)
            return ExitCode.InvalidInput;
        var built = DesignReader.Read(study, settings, "--set");
        if (built.Geometry is not { } frame)
        {
            ConsoleWriter.WriteDiagnostics(terminal, studyPath, built.Diagnostics);
            return ExitCode.InvalidInput;
        }

        var isCsv = Path.GetExtension(path).Equals(Csv, StringComparison.OrdinalIgnoreCase);
        var obstacle = !isCsv && !Path.GetExtension(path).Equals(".xlsx", StringComparison.OrdinalIgnoreCase)
            ? "Its name must end in .xlsx or .csv." : NewFile.Obstacle(path);
        if (obstacle is not null)
        {
            terminal.Error.WriteLine($"The form was not written: {obstacle}");
            return ExitCode.InvalidInput;
        }

        var form = MeasurementForm.Of(study, frame, (uint)seed);
        var info = new RunInfo(Path.GetFileName(studyPath), BuildInfo.Version, (uint)seed);
        if (!NewFile.TryWrite(path, stream =>
        {
            if (isCsv)
                FormCsv.Write(FormCsv.Of(Path.GetFileName(path), form, study, frame), stream);
            else
                FormWorkbook.Write(form, study, frame, info, stream);
        }, "The form", terminal))
        {
            return ExitCode.InvalidInput;
        }

        terminal.Out.WriteLine($"Written: {VisibleText.Path(path)}, "
            + string.Join(", ", form.Sheets.Select(sheet => $"{sheet.Rows.Count} runs on the sheet {sheet.Name}")) + ".");
        foreach (var left in form.LeftOut)
            terminal.Out.WriteLine($"Left out of the flights: {left}.");
        terminal.Out.WriteLine("Read its cautions and stop rules first. Fill in what you can, then: "
            + $"frameopt fit {VisibleText.Path(studyPath)} --measured {VisibleText.Path(path)}");
        return ExitCode.Success;
    }
}
