using System.CommandLine;
using System.Text;
using FrameOpt.StudyFile;
using FrameOpt.StudyFile.Syntax;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>new: writes a commented study to start from.</summary>
internal static class NewCommand
{
    private const string Schema = "study.schema.json";

    /// <summary>Names of the templates.</summary>
    public static IEnumerable<string> Templates => StudyTemplate.All.Select(template => template.Name);

    public static Command Build(Terminal terminal)
    {
        var template = new Argument<string?>("template")
        {
            Description = "Template to start from; without it the templates are listed.",
            Arity = ArgumentArity.ZeroOrOne
        };
        template.CompletionSources.Add(_ => Templates.Select(name => new System.CommandLine.Completions.CompletionItem(name)));
        var file = new Option<string>("--out")
        {
            Description = "File to write.",
            HelpName = "file",
            DefaultValueFactory = _ =>
            "study.yaml"
        };
        var from = new Option<string?>("--from")
        {
            Description = $"With custom-match: the figures you know, for example '{LittleStart.Example}'; all else is filled in from "
                + "relations, and marked as a guess.",
            HelpName = "'name value, ...'",
        };
        OutputOptions.RefuseEmpty(file, "--out needs the name of a file, for example --out study.yaml.");
        var command = new CommandWithExamples(
            "new",
            "Write a commented study to start from. It runs as it is; nothing is ever overwritten.",
            "frameopt new",
            "frameopt new custom-match",
            "frameopt new rationale --out my-frame/study.yaml",
            $"frameopt new custom-match --from '{LittleStart.Example}'")
        {
            template, from, file,
        };
        command.SetAction(parsed => Run(parsed.GetValue(template), parsed.GetValue(from), parsed.GetRequiredValue(file), terminal));
        return command;
    }

    private static int Run(string? template, string? from, string path, Terminal terminal)
    {
        if (template is null)
        {
            ConsoleWriter.WriteList(terminal.Out, "Templates",
                StudyTemplate.All.Select(item => (IReadOnlyList<string>)[item.Name, item.Purpose]));
            terminal.Out.WriteLine();
            terminal.Out.WriteLine("Write one with, for example: frameopt new custom-match --out study.yaml");
            return ExitCode.Success;
        }

        if (StudyTemplate.All.FirstOrDefault(known => known.Name == template) is not { } chosen)
        {
            terminal.Error.WriteLine(
                $"There is no template {VisibleText.Quoted(template)}. The templates are {string.Join(", ", Templates)}.");
            return ExitCode.InvalidInput;
        }

        if (from is not null && chosen != LittleStart.Template)
        {
            terminal.Error.WriteLine($"--from goes with the template {LittleStart.Template.Name}.");
            return ExitCode.InvalidInput;
        }

        IReadOnlyList<Diagnostic> errors = [];
        var little = from is null ? null : LittleStart.Write(from, "--from", out errors);
        if (errors.Count > 0)
        {
            ConsoleWriter.WriteDiagnostics(terminal, "--from", errors);
            return ExitCode.InvalidInput;
        }

        try
        {
            var folder = Path.GetDirectoryName(Path.GetFullPath(path));
            var isFolder = folder is null || Path.EndsInDirectorySeparator(path);
            if (!isFolder)
                Directory.CreateDirectory(folder!);
            if (NewFile.Obstacle(path) is { } obstacle)
            {
                terminal.Error.WriteLine($"Nothing was written: {obstacle}");
                return ExitCode.InvalidInput;
            }

            var schema = Path.Combine(folder!, Schema);
            var isNew = !Path.Exists(schema);
            var customers = Path.Combine(folder!, StudyTemplate.CustomersFile);
            var table = Path.Exists(customers) ? null : chosen.WithCustomersFile();
            using (var study = NewFile.Write(path, (little ?? table?.Study) is { } text
                ? stream => stream.Write(Encoding.UTF8.GetBytes(text)) : chosen.Open().CopyTo))
            using (var described = isNew ? PrepareSchema(schema) : null)
            using (var rows = table is null ? null
                // Spreadsheets tell UTF-8 by its mark.
                : NewFile.Write(customers, stream => stream.Write([.. Encoding.UTF8.Preamble,
                    .. Encoding.UTF8.GetBytes(table.Value.Customers)])))
            {
                rows?.Place();
                study.Place();
                described?.Place();
            }

            terminal.Out.WriteLine(
                little is null ? $"Written: {path}, an invented scenario. Replace its values with your own; check lists those "
                    + "that are still the template's."
                : $"Written: {path}, from eight figures; everything else is a guess, marked so under origins and uncertain under noise. "
                    + "Replace what you know better, above all masses and positions.");
            if (table is not null)
                terminal.Out.WriteLine($"Also written: {StudyTemplate.CustomersFile}, its invented customers, a row for each kind: fill in "
                    + "your own in a spreadsheet and save as CSV.");
            else if (chosen.WithCustomersFile() is not null)
                terminal.Out.WriteLine($"{StudyTemplate.CustomersFile} is there already and was left alone: this study has its customers "
                    + $"in a list of its own. To use that file write in the section line: customers: {StudyTemplate.CustomersFile}");
            if (isNew)
                terminal.Out.WriteLine(
                    $"Also written: {Schema}, with which an editor that supports YAML completes keys and marks errors as you type.");
            terminal.Out.WriteLine($"Next: frameopt check {path}");
            return ExitCode.Success;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            terminal.Error.WriteLine($"{VisibleText.Path(path)} could not be written: {problem.Message}");
            return ExitCode.InvalidInput;
        }
    }

    private static NewFile PrepareSchema(string path)
    {
        using var source = typeof(NewCommand).Assembly.GetManifestResourceStream(Schema)!;
        return NewFile.Write(path, source.CopyTo);
    }
}
