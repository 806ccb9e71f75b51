using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace FrameOpt.Cli;

/// <summary>A command whose --help ends with examples.</summary>
internal sealed class CommandWithExamples(string name, string description, params string[] examples) : Command(name, description)
{
    /// <summary>Whole command lines.</summary>
    public IReadOnlyList<string> Examples => examples;
}

/// <summary>The usual help, then examples.</summary>
internal sealed class HelpWithExamples(HelpAction defaultHelp) : SynchronousCommandLineAction
{
    private static readonly string[] gettingStarted = ["frameopt new custom-match", "frameopt check study.yaml", "frameopt run study.yaml"];

    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        var code = defaultHelp.Invoke(parseResult);
        var output = parseResult.InvocationConfiguration.Output;
        output.WriteLine("Examples:");
        foreach (var example in parseResult.CommandResult.Command is CommandWithExamples command ? command.Examples : gettingStarted)
            output.WriteLine($"  {example}");
        output.WriteLine();
        return code;
    }
}
