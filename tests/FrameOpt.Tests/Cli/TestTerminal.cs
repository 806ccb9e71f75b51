using FrameOpt.Cli;
using FrameOpt.Cli.Screen;

namespace FrameOpt.Tests.Cli;

/// <summary>Runs the command line as a shell would with its output in a pipe.</summary>
public sealed class TestTerminal
{
    private readonly StringWriter output = new();
    private readonly StringWriter error = new();
    private readonly MemoryStream bytes = new();

    public string Output => output.ToString() + System.Text.Encoding.UTF8.GetString(bytes.ToArray());

    public string Error => error.ToString();

    public int Run(Func<bool> stopAsked, params string[] args) => App.Run(args, new Terminal(
        Terminal.Console(output, isPipe: true), Terminal.Console(error, isPipe: true), bytes, stopAsked));

    public int Run(params string[] args) => Run(() => false, args);
}
