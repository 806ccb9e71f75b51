using System.CommandLine;
using System.CommandLine.Help;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>The command line.</summary>
public static class App
{
    /// <summary>Parses, runs, and gives the exit code. Never throws: a fault of the program itself is one sentence and its own
    /// code.</summary>
    /// <param name="args">As the shell gave them.</param>
    /// <param name="terminal">Where to write.</param>
    public static int Run(string[] args, Terminal terminal)
    {
        try
        {
            return Invoke(args, terminal);
        }
        catch (IOException problem)
        {
            WriteError(terminal, $"The answer could not be written out: {problem.Message}");
            return ExitCode.InvalidInput;
        }
        catch (Exception fault)
        {
            WriteError(terminal,
                $"Something went wrong in FrameOpt itself: {fault.GetType().Name}, {fault.Message.TrimEnd('.')}. Please report it with the study file.");
            return ExitCode.InternalError;
        }
    }

    private static void WriteError(Terminal terminal, string sentence)
    {
        try
        {
            terminal.Error.WriteLine(sentence.ReplaceLineEndings(" "));
        }
        catch (IOException)
        {
            // Nobody is there to read it either; the exit code says the rest.
        }
    }

    private static int Invoke(string[] args, Terminal terminal)
    {
        var root = new RootCommand("Finds the hang-point geometry that leaves a paramotor pilot the least torque to hold.")
        {
            RunCommand.Build(terminal),
            EvaluateCommand.Build(terminal),
            CheckCommand.Build(terminal),
            PlanCommand.Build(terminal),
            CompareCommand.Build(terminal),
            LineCommand.Build(terminal),
            NewCommand.Build(terminal),
            CompletionCommand.Build(terminal),
        };
        var help = new HelpOption("--help", "-h");
        help.Action = new HelpWithExamples((HelpAction)help.Action!);
        root.Options.Remove(root.Options.OfType<HelpOption>().Single());
        root.Options.Add(help);
        var parsed = root.Parse(args);
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors)
                terminal.Error.WriteLine(error.Message);
            terminal.Error.WriteLine("Ask for --help to see what a command takes.");
            return ExitCode.InvalidInput;
        }

        return parsed.Invoke(new InvocationConfiguration
        {
            Output = terminal.Out.Profile.Out.Writer,
            Error = terminal.Error.Profile.Out.Writer,
            EnableDefaultExceptionHandler = false,
            ProcessTerminationTimeout = null,
        });
    }
}
