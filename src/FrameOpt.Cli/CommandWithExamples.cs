using System.CommandLine;

namespace FrameOpt.Cli;

/// <summary>A command whose --help ends with lines to copy.</summary>
internal sealed class CommandWithExamples(string name, string description, params string[] examples) : Command(name, description)
{
    /// <summary>Each a whole line of the shell.</summary>
    public IReadOnlyList<string> Examples => examples;
}
