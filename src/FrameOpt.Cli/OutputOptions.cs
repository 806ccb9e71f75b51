using System.CommandLine;

namespace FrameOpt.Cli;

/// <summary>The options of every command that writes a folder of results.</summary>
internal static class OutputOptions
{
    public static Option<string?> Folder()
    {
        var folder = new Option<string?>(
            "--out")
        {
            Description = "Folder for the results; results/<time>-<study> beside the study when not given.",
            HelpName = "folder"
        };
        folder.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && string.IsNullOrWhiteSpace(result.Tokens[0].Value))
                result.AddError(
                    "--out wants the name of a folder, as --out results/monday; leave it out for a new folder beside the study.");
        });
        return folder;
    }

    public static Option<bool> Replace() => new("--replace") { Description = "Put the results in the place of older ones in that folder." };

    public static Option<int> Threads()
    {
        var threads = new Option<int>("--threads")
        {
            Description = "Worker threads; the results do not depend on it.",
            HelpName = "number",
            DefaultValueFactory = _ => Environment.ProcessorCount,
        };
        threads.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && int.TryParse(result.Tokens[0].Value, out var number) && number is < 1 or > 1024)
                result.AddError($"--threads wants a number from 1 to 1024, not {number}.");
        });
        return threads;
    }
}
