using System.CommandLine;
using FrameOpt.Studies;

namespace FrameOpt.Cli;

/// <summary>The study file that every command takes.</summary>
internal static class StudyArgument
{
    public static Argument<string> Build() => new("study") { Description = "The study file (YAML)." };

    /// <summary>Reads the study, or prints every mistake and gives null.</summary>
    public static Study? Open(string path, Terminal terminal)
    {
        var reading = StudyReader.Read(path);
        if (reading.Study is null)
            Screen.Mistakes(terminal, path, reading.Mistakes);
        return reading.Study;
    }
}
