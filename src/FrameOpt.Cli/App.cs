using System.CommandLine;
using System.CommandLine.Help;
using System.Globalization;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>The command line.</summary>
public static class App
{
    /// <summary>Parses, runs, and gives the exit code. Never throws: a fault of the program itself becomes one sentence and its own
    /// code.</summary>
    /// <param name="args">As the shell gave them.</param>
    /// <param name="terminal">Where to write.</param>
    public static int Run(string[] args, Terminal terminal)
    {
        // Numbers are written and read alike everywhere, whatever the language of the system; libraries go by the culture of the process.
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
        CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.InvariantCulture;
        try
        {
            return Invoke(args, terminal);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // The second is what a closed output gives.
            WriteError(terminal, $"The output could not be written: {problem.Message}");
            return ExitCode.InvalidInput;
        }
        catch (ImpossiblePlanException problem)
        {
            WriteError(terminal, problem.Message);
            return ExitCode.InvalidInput;
        }
        catch (Exception fault)
        {
            WriteError(terminal,
                $"Internal error in FrameOpt: {fault.GetType().Name}, {fault.Message.TrimEnd('.')}. "
                    + "Please report it with the study file.");
            return ExitCode.InternalError;
        }
    }

    private static void WriteError(Terminal terminal, string sentence)
    {
        try
        {
            terminal.Error.WriteLine(sentence.ReplaceLineEndings(" "));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // Nobody can read it; the exit code is all that is left.
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
            AnalyseCommand.Build(terminal),
            CompareCommand.Build(terminal),
            LineCommand.Build(terminal),
            CardCommand.Build(terminal),
            FormCommand.Build(terminal),
            FitCommand.Build(terminal),
            NewCommand.Build(terminal),
            OpenCommand.Build(terminal),
            CompletionCommand.Build(terminal),
        };
        var help = new HelpOption("--help", "-h");
        help.Action = new HelpWithExamples((HelpAction)help.Action!);
        root.Options.Remove(root.Options.OfType<HelpOption>().Single());
        root.Options.Add(help);
        var parsed = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors)
                terminal.Error.WriteLine(VisibleText.Sentence(error.Message.Replace('\t', ' ')));
            terminal.Error.WriteLine("Use --help to see the arguments and options of a command.");
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

/// <summary>Exit codes of the program.</summary>
public static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Success = 0;

    /// <summary>Something the user has to correct: the command, the study file or the place for results.</summary>
    public const int InvalidInput = 2;

    /// <summary>No design keeps every limit, none can fly, or the design asked for cannot fly.</summary>
    public const int NothingFeasible = 3;

    /// <summary>A fault of the program itself.</summary>
    public const int InternalError = 70;

    /// <summary>Stopped by Ctrl-C or a signal to end; what was found by then is written.</summary>
    public const int Interrupted = 130;
}
