using System.Runtime.InteropServices;
using Spectre.Console;

namespace FrameOpt.Cli.Screen;

/// <summary>Where the program writes: answers to one stream, progress and mistakes to the other.</summary>
/// <param name="Out">Answers.</param>
/// <param name="Error">Progress and mistakes.</param>
/// <param name="OutStream">The bytes behind <paramref name="Out"/>, for JSON.</param>
/// <param name="StopRequested">True once the user asked to stop.</param>
public sealed record Terminal(IAnsiConsole Out, IAnsiConsole Error, Stream OutStream, Func<bool> StopRequested)
{
    private const int PipeWidth = 400;

    /// <summary>The process's own: colours only on a terminal and never with NO_COLOR; Ctrl-C and SIGTERM ask to stop.</summary>
    public static Terminal OfProcess()
    {
        // A command that cannot stop half-way never asks, and is ended by the signal.
        var stop = new Lazy<StopSignal>();
        var error = StandardStreams.HasError ? System.Console.Error : TextWriter.Null;
        return new Terminal(
            Console(System.Console.Out, System.Console.IsOutputRedirected),
            Console(error, !StandardStreams.HasError || System.Console.IsErrorRedirected),
            System.Console.OpenStandardOutput(),
            () => stop.Value.IsRequested);
    }

    /// <summary>A console over a writer. In a pipe there is no colour and no wrapping.</summary>
    /// <param name="writer">Where the text goes.</param>
    /// <param name="isPipe">True when the output is redirected.</param>
    /// <param name="width">Columns; when not given, those of the terminal, or a wide line in a pipe.</param>
    public static IAnsiConsole Console(TextWriter writer, bool isPipe, int? width = null)
    {
        var plain = isPipe || !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"));
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Out = new AnsiConsoleOutput(writer),
            Ansi = isPipe ? AnsiSupport.No : AnsiSupport.Detect,
            ColorSystem = plain ? ColorSystemSupport.NoColors : ColorSystemSupport.Detect,
            Interactive = isPipe ? InteractionSupport.No : InteractionSupport.Detect,
        });
        if (isPipe || width is not null)
            console.Profile.Width = width ?? PipeWidth;
        console.Profile.Capabilities.Unicode = true;
        console.Pipeline.Attach(new VisibleOutput());
        return console;
    }

    /// <summary>True for output that is redirected: its lines may be of any length.</summary>
    public static bool IsPipe(IAnsiConsole console) => console.Profile.Width >= PipeWidth;
}

/// <summary>Catches Ctrl-C and SIGTERM, so that a run can write what it has. A second signal ends the process at once.</summary>
internal sealed class StopSignal
{
    private readonly List<PosixSignalRegistration> registrations = [];
    private volatile bool requested;

    public StopSignal()
    {
        foreach (var signal in new[] { PosixSignal.SIGINT, PosixSignal.SIGTERM })
            registrations.Add(PosixSignalRegistration.Create(signal, OnSignal));
    }

    public bool IsRequested => requested;

    private void OnSignal(PosixSignalContext context)
    {
        context.Cancel = !requested;
        requested = true;
    }
}
