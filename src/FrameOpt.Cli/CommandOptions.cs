using System.CommandLine;
using FrameOpt.Studies;
using FrameOpt.StudyFile;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>The study file that every command on a study takes, and the variant of it.</summary>
internal static class StudyArgument
{
    public static Argument<string> Build() => new("study") { Description = "The study file (YAML)." };

    public static Option<string[]> Variant() => new("--variant")
    {
        Description = "Variant of the study to use, or a choice of an option of its line, such as engine='big single'; the base study when "
            + "not given. May be given more than once: combined in order. check lists the variants.",
        HelpName = "name",
        Arity = ArgumentArity.ZeroOrMore,
    };

    /// <summary>Factors of one frame.</summary>
    /// <param name="of">Which frame: "the frame that hung".</param>
    public static Option<string[]> Settings(string of) => new("--set")
    {
        Description = $"A factor of {of} and its value, for example lateral_offset='25 mm'; once for each factor that differs from the "
            + "study's baseline.",
        HelpName = "factor='value unit'",
        Arity = ArgumentArity.ZeroOrMore,
    };

    /// <summary>Reads the study, or prints every mistake and gives null.</summary>
    public static Study? Open(string path, IReadOnlyList<string>? variants, Terminal terminal)
    {
        var reading = StudyReader.Read(path, variants ?? []);
        if (reading.Study is null)
            ConsoleWriter.WriteDiagnostics(terminal, path, reading.Diagnostics);
        return reading.Study;
    }
}

/// <summary>The options of every command that writes a folder of results, and the writing.</summary>
internal static class OutputOptions
{
    public static Option<string?> Folder() => Folder(
        "Folder for the results; the default is results/<time>-<study> next to the study.",
        "--out needs the name of a folder, for example --out results/monday; omit it for a new folder next to the study.");

    /// <summary>The option for a folder to write to.</summary>
    /// <param name="description">What is written there, and what happens without it.</param>
    /// <param name="refusal">Answer to an empty name.</param>
    public static Option<string?> Folder(string description, string refusal)
    {
        var folder = new Option<string?>("--out") { Description = description, HelpName = "folder" };
        RefuseEmpty(folder, refusal);
        return folder;
    }

    /// <summary>Refuses an empty name.</summary>
    /// <param name="option">Of a file or a folder.</param>
    /// <param name="refusal">The message.</param>
    public static void RefuseEmpty(Option option, string refusal) => option.Validators.Add(result =>
    {
        if (result.Tokens.Count == 1 && string.IsNullOrWhiteSpace(result.Tokens[0].Value))
            result.AddError(refusal);
    });

    public static Option<bool> Replace() => new("--replace") { Description = "Replace existing results in that folder." };

    public static Option<int> Threads()
    {
        var threads = new Option<int>("--threads")
        {
            Description = "Number of worker threads; the results do not depend on it.",
            HelpName = "number",
            DefaultValueFactory = _ => Environment.ProcessorCount,
        };
        threads.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && int.TryParse(result.Tokens[0].Value, out var number) && number is < 1 or > 1024)
                result.AddError($"--threads must be a number from 1 to 1024, not {number}.");
        });
        return threads;
    }

    /// <summary>Writes files, or reports why that failed and gives false.</summary>
    /// <param name="terminal">Where the failure is reported.</param>
    /// <param name="failure">The sentence before the reason, such as "The results could not be written to results/monday".</param>
    /// <param name="write">Writes the files.</param>
    public static bool TryWrite(Terminal terminal, string failure, Action write)
    {
        try
        {
            write();
            return true;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            terminal.Error.WriteLine($"{failure}: {problem.Message}");
            return false;
        }
    }
}
