using System.CommandLine;
using System.Text;
using FrameOpt.Fit;
using FrameOpt.Reports.Forms;
using FrameOpt.Running;
using FrameOpt.StudyFile;
using FrameOpt.StudyFile.Syntax;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>fit: what measurements say of a study's machine, and which hole fits then.</summary>
internal static class FitCommand
{
    private const string Taking = "--out writes the file, with your comments.";

    public static Command Build(Terminal terminal)
    {
        var study = StudyArgument.Build();
        var scales = new Option<string?>("--scales")
        {
            Description = "What the two scales of a hang check read, engine off, for example 'left 46.1 kgf, right 65.2 kgf'.",
            HelpName = "'left load, right load'",
        };
        var measured = new Option<string?>("--measured")
        {
            Description = "A filled form that the command form wrote (.xlsx or .csv).",
            HelpName = "file",
        };
        OutputOptions.RefuseEmpty(measured, "--measured needs the name of a file, for example --measured measurements.xlsx.");
        var set = StudyArgument.Settings("the frame that was measured");
        var corrected = new Option<string?>("--out")
        {
            Description = "Also write the study with the corrected numbers to this file; it must not exist yet, and yours stays as it is.",
            HelpName = "file",
        };
        OutputOptions.RefuseEmpty(corrected, "--out needs the name of a file, for example --out corrected.yaml.");
        var command = new CommandWithExamples(
            "fit",
            "Correct a study by what was measured, and find the hole that fits then.",
            "frameopt fit study.yaml --scales 'left 46.1 kgf, right 65.2 kgf'",
            "frameopt fit study.yaml --scales 'left 46.1 kgf, right 65.2 kgf' --set lateral_offset='-20 mm' --out corrected.yaml",
            "frameopt fit study.yaml --measured measurements.xlsx --out corrected.yaml")
        {
            study, scales, measured, set, corrected,
        };
        command.Validators.Add(result =>
        {
            if (result.GetValue(scales) is null == result.GetValue(measured) is null)
                result.AddError("fit needs either --scales, with what two scales read, or --measured, with a filled form.");
        });
        command.SetAction(parsed => Run(new Request(parsed.GetRequiredValue(study), parsed.GetValue(scales), parsed.GetValue(measured),
            parsed.GetValue(set) ?? [], parsed.GetValue(corrected)), terminal));
        return command;
    }

    private static int Run(Request request, Terminal terminal)
    {
        if (StudyArgument.Open(request.StudyPath, [], terminal) is not { } study)
            return ExitCode.InvalidInput;
        IReadOnlyList<Diagnostic> errors = [];
        var loads = request.Scales is { } typed ? ScaleReadingText.Read(typed, "--scales", out errors) : null;
        var built = DesignReader.Read(study, request.Settings, "--set");
        if (errors.Count > 0 || built.Geometry is not { } geometry)
        {
            ConsoleWriter.WriteDiagnostics(terminal, request.StudyPath, [.. errors, .. built.Diagnostics]);
            return ExitCode.InvalidInput;
        }

        if (request.Corrected is { } path && NewFile.Obstacle(path) is { } obstacle)
        {
            terminal.Error.WriteLine($"Nothing was computed, because the corrected study could not be written: {obstacle}");
            return ExitCode.InvalidInput;
        }

        ConsoleWriter.WriteWarnings(terminal, [.. study.Warnings, .. built.Warnings]);
        var frame = new MeasuredFrame(File.ReadAllText(request.StudyPath), Path.GetDirectoryName(Path.GetFullPath(request.StudyPath)),
            study, [.. built.Values.Select(value => value.Factor)], geometry, Environment.ProcessorCount);
        if (Answer(request, frame, loads, terminal) is not { } answer)
            return ExitCode.InvalidInput;
        terminal.Out.Write(new Text(study.FullTitle, new Style(decoration: Decoration.Bold)));
        terminal.Out.WriteLine();
        ConsoleWriter.WriteSections(terminal.Out, answer.Sections);
        if (request.Corrected is null)
            return ExitCode.Success;
        if (!NewFile.TryWrite(request.Corrected, stream => stream.Write(Encoding.UTF8.GetBytes(answer.Corrected.Correction.Text)),
            "The corrected study", terminal))
        {
            return ExitCode.InvalidInput;
        }

        terminal.Out.WriteLine($"Written to {VisibleText.Path(request.Corrected)}.");
        return ExitCode.Success;
    }

    private static FitAnswer? Answer(
        Request request, MeasuredFrame frame, (double LeftNewtons, double RightNewtons)? loads, Terminal terminal)
    {
        var today = DateOnly.FromDateTime(DateTime.Now);
        FitAnswer? answer;
        FitRefusal? refusal;
        if (loads is { } read)
        {
            answer = FitAnswer.OfScales(frame, new ScaleReading(read.LeftNewtons, read.RightNewtons), today, Taking, out refusal);
        }
        else if (FilledFormFile.Read(request.Measured!, out var problem) is { } form)
        {
            answer = FitAnswer.OfForm(frame, form, today, Taking, out refusal);
        }
        else
        {
            terminal.Error.WriteLine($"{VisibleText.Path(request.Measured!)}: {problem}");
            return null;
        }

        if (refusal?.Findings.Count > 0)
            ConsoleWriter.WriteDiagnostics(terminal, refusal.IsOfForm ? request.Measured! : request.StudyPath, refusal.Findings);
        if (refusal?.Sentence.Length > 0)
            terminal.Error.WriteLine(refusal.Sentence);
        return answer;
    }

    private sealed record Request(
        string StudyPath, string? Scales, string? Measured, IReadOnlyList<string> Settings, string? Corrected);
}
