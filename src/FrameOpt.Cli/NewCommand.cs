using System.CommandLine;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>new: writes a commented study to start from.</summary>
internal static class NewCommand
{
    private const string Schema = "study.schema.json";

    private static readonly (string Name, string Purpose)[] templates =
    [
        ("custom-match", "one frame for one engine, one propeller, one pilot and one wing"),
        ("product-line", "one frame for several pilots: the average customer, and the others as variants"),
        ("rationale", "why the holes are where they are: an existing frame against what could be built"),
    ];

    /// <summary>Names of the templates.</summary>
    public static IEnumerable<string> Templates => templates.Select(template => template.Name);

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
        var command = new CommandWithExamples(
            "new",
            "Write a commented study to start from. It runs as it is; nothing is ever overwritten.",
            "frameopt new",
            "frameopt new custom-match",
            "frameopt new rationale --out my-frame/study.yaml")
        {
            template, file,
        };
        command.SetAction(parsed => Run(parsed.GetValue(template), parsed.GetRequiredValue(file), terminal));
        return command;
    }

    private static int Run(string? template, string path, Terminal terminal)
    {
        if (template is null)
        {
            ConsoleWriter.WriteList(terminal.Out, "Templates", templates.Select(item => (IReadOnlyList<string>)[item.Name, item.Purpose]));
            terminal.Out.WriteLine();
            terminal.Out.WriteLine("Write one with, for example: frameopt new custom-match --out study.yaml");
            return ExitCode.Success;
        }

        if (!Templates.Contains(template))
        {
            terminal.Error.WriteLine($"There is no template {template}. The templates are {string.Join(", ", Templates)}.");
            return ExitCode.InvalidInput;
        }

        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
            if (!Write($"{template}.yaml", path))
            {
                terminal.Error.WriteLine($"{path} already exists and is not overwritten; choose another name with --out.");
                return ExitCode.InvalidInput;
            }

            var schema = Path.Combine(Path.GetDirectoryName(Path.GetFullPath(path))!, Schema);
            var isNew = Write(Schema, schema);
            terminal.Out.WriteLine($"Written: {path}, an invented scenario. Replace its values with your own.");
            if (isNew)
                terminal.Out.WriteLine(
                    $"Also written: {Schema}, with which an editor that supports YAML completes keys and marks errors as you type.");
            terminal.Out.WriteLine($"Next: frameopt check {path}");
            return ExitCode.Success;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            terminal.Error.WriteLine($"{path} could not be written: {problem.Message}");
            return ExitCode.InvalidInput;
        }
    }

    /// <summary>Writes a resource to a file; false when something of that name exists already.</summary>
    private static bool Write(string resource, string path)
    {
        if (Path.Exists(path))
            return false;
        using var source = typeof(NewCommand).Assembly.GetManifestResourceStream(resource)!;
        using var target = new FileStream(path, FileMode.CreateNew);
        source.CopyTo(target);
        return true;
    }
}
