using System.CommandLine;
using System.Globalization;
using System.Text;
using FrameOpt.Fit;
using FrameOpt.Forms;
using FrameOpt.Model;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Forms;
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
    private const string Impossible = "These readings would move a number of the study out of what is possible, so nothing was corrected: ";

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
        IReadOnlyList<StudyFactor> frame = [.. built.Values.Select(value => value.Factor)];
        var told = loads is not { } read ? Measured(request, study, frame, geometry, terminal)
            : Scales(request, study, frame, geometry, new ScaleReading(read.LeftNewtons, read.RightNewtons), terminal);
        if (told is not var (sections, correction))
            return ExitCode.InvalidInput;
        terminal.Out.Write(new Text(study.FullTitle, new Style(decoration: Decoration.Bold)));
        terminal.Out.WriteLine();
        ConsoleWriter.WriteSections(terminal.Out,
            [.. sections, Changes(correction), new AnswerSection("Cautions", Cautions.FirstPage)]);
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

    private static (IEnumerable<AnswerSection> Sections, CorrectedStudy Correction)? Scales(
        Request request, Study study, IReadOnlyList<StudyFactor> frame, FrameGeometry hung, ScaleReading reading, Terminal terminal)
    {
        var fit = HangCheckFit.Of(study, hung, reading);
        var correction = CorrectedStudy.Of(File.ReadAllText(request.StudyPath), study, LearntNumber.Of(fit), fit.Correlations,
            hung.SpacingMetres, string.Create(CultureInfo.InvariantCulture, $"hang check read on {DateTime.Now:yyyy-MM-dd}, left ")
                + $"{NumberFormat.Load(reading.LeftNewtons)}, right {NumberFormat.Load(reading.RightNewtons)}");
        var corrected = StudyReader.Parse(Encoding.UTF8.GetBytes(correction.Text), "the corrected study");
        if (corrected.Study is { } measured)
            return ([
                HangCheckFitSections.Readings(fit, study.Machine),
                HangCheckFitSections.Causes(fit),
                HangCheckFitSections.Hole(frame, StudyProblem.Model(study).Evaluate(hung), StudyProblem.Model(measured).Evaluate(hung),
                    HoleForFrame.Of(measured, frame, Environment.ProcessorCount)),
            ], correction);
        ConsoleWriter.WriteDiagnostics(terminal, request.StudyPath, corrected.Diagnostics);
        terminal.Error.WriteLine(
            $"{Impossible}check that the scales read what is typed, and that frame, pilot and fuel are those of the study.");
        return null;
    }

    private static (IEnumerable<AnswerSection> Sections, CorrectedStudy Correction)? Measured(
        Request request, Study study, IReadOnlyList<StudyFactor> frame, FrameGeometry built, Terminal terminal)
    {
        if (study.Noise.Sources.Count == 0)
        {
            terminal.Error.WriteLine(
                "noise: none takes every number of the study as exact, so there is nothing to correct: remove that line.");
            return null;
        }

        if (FilledFormFile.Read(request.Measured!, out var problem) is not { } form)
        {
            terminal.Error.WriteLine($"{VisibleText.Path(request.Measured!)}: {problem}");
            return null;
        }

        var reading = FormReader.Read(form, study, built);
        if (reading.Diagnostics.Count > 0)
        {
            ConsoleWriter.WriteDiagnostics(terminal, request.Measured!, reading.Diagnostics);
            return null;
        }

        var fit = MeasuredFit.Of(study, reading.Runs);
        if (SignSuspicion.Of(fit) is { } wrong)
        {
            terminal.Error.WriteLine(MeasuredSections.Suspicion(wrong));
            return null;
        }

        var origin = string.Create(CultureInfo.InvariantCulture,
            $"filled form {form.File} read on {DateTime.Now:yyyy-MM-dd}, {reading.Runs.Count} runs");
        if (MeasuredAnswer.Of(File.ReadAllText(request.StudyPath), fit, frame, built, origin, Environment.ProcessorCount, out var errors)
            is { } answer)
            return ([
                .. MeasuredSections.Of(answer, reading.NotMeasured, built.OffsetMetres),
                HangCheckFitSections.Hole(frame, answer.Before, answer.After, answer.Hole, "built"),
            ], answer.Correction);
        ConsoleWriter.WriteDiagnostics(terminal, request.StudyPath, errors);
        terminal.Error.WriteLine($"{Impossible}check the form, and that machine, pilot and wing are those of the study.");
        return null;
    }

    private static AnswerSection Changes(CorrectedStudy correction) => correction.Changes.Count == 0
        ? new AnswerSection("The corrected study", ["No number of the study changes."])
        : new AnswerSection("The corrected study",
            ["Only these numbers change; --out writes the file, with your comments. Run it: the choice over all factors may change too."],
            new AnswerTable(["number", "was", "is now"], [.. correction.Changes.Where(change => !change.IsList).Select(change =>
                (IReadOnlyList<string>)[change.Name, change.Before.Length == 0 ? "not given" : change.Before, change.After])]));

    private sealed record Request(
        string StudyPath, string? Scales, string? Measured, IReadOnlyList<string> Settings, string? Corrected);
}
