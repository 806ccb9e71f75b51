using System.CommandLine;
using System.Globalization;
using System.Text;
using FrameOpt.Fit;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.Studies;
using FrameOpt.StudyFile;
using FrameOpt.StudyFile.Syntax;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>fit: what measurements say of a study's machine, and which hole fits then.</summary>
internal static class FitCommand
{
    public static Command Build(Terminal terminal)
    {
        var study = StudyArgument.Build();
        var scales = new Option<string>("--scales")
        {
            Description = "What the two scales of a hang check read, engine off, for example 'left 46.1 kgf, right 65.2 kgf'.",
            HelpName = "'left load, right load'",
            Required = true,
        };
        var set = StudyArgument.Settings("the frame that hung");
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
            "frameopt fit study.yaml --scales 'left 46.1 kgf, right 65.2 kgf' --set lateral_offset='-20 mm' --out corrected.yaml")
        {
            study, scales, set, corrected,
        };
        command.SetAction(parsed => Run(new Request(parsed.GetRequiredValue(study), parsed.GetRequiredValue(scales),
            parsed.GetValue(set) ?? [], parsed.GetValue(corrected)), terminal));
        return command;
    }

    private static int Run(Request request, Terminal terminal)
    {
        if (StudyArgument.Open(request.StudyPath, [], terminal) is not { } study)
            return ExitCode.InvalidInput;
        var loads = ScaleReadingText.Read(request.Scales, "--scales", out var errors);
        var hung = DesignReader.Read(study, request.Settings, "--set");
        if (loads is null || hung.Geometry is not { } geometry)
        {
            ConsoleWriter.WriteDiagnostics(terminal, request.StudyPath, [.. errors, .. hung.Diagnostics]);
            return ExitCode.InvalidInput;
        }

        if (request.Corrected is { } path && NewFile.Obstacle(path) is { } obstacle)
        {
            terminal.Error.WriteLine($"Nothing was computed, because the corrected study could not be written: {obstacle}");
            return ExitCode.InvalidInput;
        }

        ConsoleWriter.WriteWarnings(terminal, [.. study.Warnings, .. hung.Warnings]);
        var fit = HangCheckFit.Of(study, geometry, new ScaleReading(loads.Value.LeftNewtons, loads.Value.RightNewtons));
        var text = File.ReadAllText(request.StudyPath);
        var correction = CorrectedStudy.Of(text, study, fit, Origin(fit.Reading));
        var corrected = StudyReader.Parse(Encoding.UTF8.GetBytes(correction.Text), "the corrected study");
        if (corrected.Study is not { } measured)
        {
            ConsoleWriter.WriteDiagnostics(terminal, request.StudyPath, corrected.Diagnostics);
            terminal.Error.WriteLine("These readings would move a number of the study out of what is possible, so nothing was corrected: "
                + "check that the scales read what is typed, and that frame, pilot and fuel are those of the study.");
            return ExitCode.InvalidInput;
        }

        IReadOnlyList<StudyFactor> frame = [.. hung.Values.Select(value => value.Factor)];
        terminal.Out.Write(new Text(study.FullTitle, new Style(decoration: Decoration.Bold)));
        terminal.Out.WriteLine();
        ConsoleWriter.WriteSections(terminal.Out,
        [
            HangCheckFitSections.Readings(fit, study.Machine),
            HangCheckFitSections.Causes(fit),
            HangCheckFitSections.Hole(frame, StudyProblem.Model(study).Evaluate(geometry), StudyProblem.Model(measured).Evaluate(geometry),
                HoleForFrame.Of(measured, frame, Environment.ProcessorCount)),
            Changes(correction),
            new AnswerSection("Cautions", Cautions.FirstPage),
        ]);
        if (request.Corrected is null)
            return ExitCode.Success;
        if (!NewFile.TryWrite(request.Corrected, stream => stream.Write(Encoding.UTF8.GetBytes(correction.Text)), "The corrected study",
            terminal))
        {
            return ExitCode.InvalidInput;
        }

        terminal.Out.WriteLine($"Written to {VisibleText.Path(request.Corrected)}.");
        return ExitCode.Success;
    }

    private static AnswerSection Changes(CorrectedStudy correction) => correction.Changes.Count == 0
        ? new AnswerSection("The corrected study", ["No number of the study changes."])
        : new AnswerSection("The corrected study",
            ["Only these numbers change; --out writes the file, with your comments. Run it: the choice over all factors may change too."],
            new AnswerTable(["number", "was", "is now"], [.. correction.Changes.Where(change => !change.IsList).Select(change =>
                (IReadOnlyList<string>)[change.Name, change.Before.Length == 0 ? "not given" : change.Before, change.After])]));

    private static string Origin(ScaleReading reading) => string.Create(CultureInfo.InvariantCulture,
        $"hang check read on {DateTime.Now:yyyy-MM-dd}, left {NumberFormat.Load(reading.LeftNewtons)}, ")
        + $"right {NumberFormat.Load(reading.RightNewtons)}";

    private sealed record Request(string StudyPath, string Scales, IReadOnlyList<string> Settings, string? Corrected);
}
