using System.CommandLine;
using FrameOpt.Studies;
using FrameOpt.StudyFile;

namespace FrameOpt.Cli;

/// <summary>The study file that every command on a study takes, and which of its variants is meant.</summary>
internal static class StudyArgument
{
    public static Argument<string> Build() => new("study") { Description = "The study file (YAML)." };

    public static Option<string?> Variant() => new("--variant")
    {
        Description = "Take this variant of the study; the file as it stands when not given. check lists them.",
        HelpName = "name",
    };

    /// <summary>Reads the study, or prints every mistake and gives null.</summary>
    public static Study? Open(string path, string? variant, Terminal terminal)
    {
        var reading = StudyReader.Read(path, variant ?? "");
        if (reading.Study is null)
            ConsoleWriter.WriteDiagnostics(terminal, path, reading.Diagnostics);
        return reading.Study;
    }
}
