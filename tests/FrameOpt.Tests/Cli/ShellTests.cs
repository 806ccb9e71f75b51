using System.Diagnostics;
using FrameOpt.Cli;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Cli;

/// <summary>The program in a real shell, where there is one.</summary>
public class ShellTests
{
    private static readonly string program = Path.Combine(AppContext.BaseDirectory, "FrameOpt.Cli");

    [Theory]
    [InlineData("frameopt ch", "check")]
    [InlineData("frameopt run --rep", "--replace")]
    [InlineData("frameopt evaluate study.yaml --va", "--variant")]
    [InlineData("frameopt new r", "rationale")]
    [InlineData("frameopt completion z", "zsh")]
    [InlineData("frameopt check beside", "beside-me.yaml")]
    [InlineData("frameopt compare beside", "beside-me.yaml")]
    public void Bash_completes_what_is_typed(string typed, string completed)
    {
        if (!File.Exists("/bin/bash"))
            return;
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["beside-me.yaml"], "");
        var words = typed.Split(' ');
        var script = $"""
            {CompletionCommand.Script("bash", program)}
            cd '{folder[""]}'
            complete -p frameopt > /dev/null || exit 9
            COMP_LINE='{typed}'; COMP_POINT={typed.Length}; COMP_WORDS=({string.Join(' ', words)}); COMP_CWORD={words.Length - 1}
            _frameopt
            echo "$COMPREPLY"
            """;
        Assert.Equal((0, completed), Run("/bin/bash", ["--norc", "-c", script]));
    }

    [Theory]
    [InlineData("bash", "complete -o")]
    [InlineData("zsh", "compdef _frameopt")]
    [InlineData("pwsh", "Register-ArgumentCompleter")]
    public void Script_of_every_shell_is_printed_and_calls_a_program_whose_path_has_quotes(string shell, string line)
    {
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run("completion", shell));
        Assert.Contains(line, terminal.Output);
        Assert.DoesNotContain("PROGRAM", terminal.Output);
        Assert.Contains(shell == "pwsh" ? "'/it''s here'" : @"'/it'\''s here'", CompletionCommand.Script(shell, "/it's here"));
    }

    [Fact]
    public void Other_shells_are_refused() => Assert.Equal(ExitCode.InvalidInput, new TestTerminal().Run("completion", "fish"));

    [Fact]
    public void No_command_writes_colour_codes_into_a_pipe()
    {
        using var folder = new TemporaryFolder();
        var study = Repository.Study("fixed-spacing");
        string[][] commands =
        [
            ["--help"], ["run", "--help"], ["run", study, "--out", folder["a"]], ["check", study], ["new"], ["check", "/nowhere"], ["rum"],
            ["evaluate", study, "--set", "lateral_offset=20 mm", "--set", "suspension_height=200 mm"],
        ];
        foreach (var command in commands)
        {
            var terminal = new TestTerminal();
            terminal.Run(command);
            Assert.NotEmpty(terminal.Output + terminal.Error);
            Assert.DoesNotContain('\u001b', terminal.Output + terminal.Error);
        }
    }

    [Theory]
    [InlineData("", true)]
    [InlineData("NO_COLOR=1", false)]
    public void A_terminal_shows_colours_unless_NO_COLOR_is_set(string setting, bool coloured)
    {
        if (!File.Exists("/usr/bin/script"))
            return;
        using var folder = new TemporaryFolder();
        var run = $"'{program}' run '{Repository.Study("fixed-spacing")}' --out '{folder["a"]}'";
        var (code, output) = Run("/usr/bin/script", ["-qec", $"env -u NO_COLOR TERM=xterm-256color {setting} {run}", "/dev/null"]);
        Assert.Equal(0, code);
        // Select graphic rendition with a colour parameter, ISO 6429 (ECMA-48, 8.3.117): 30 to 37, 38;..., 90 to 97 set the foreground.
        Assert.Equal(coloured, System.Text.RegularExpressions.Regex.IsMatch(output, @"\u001b\[([0-9]+;)*(3[0-8]|9[0-7])[;m]"));
    }

    private static (int Code, string Output) Run(string file, string[] arguments)
    {
        var start = new ProcessStartInfo(file, arguments)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true
        };
        start.Environment["DOTNET_ROOT"] = Path.GetFullPath(
            Path.Combine(System.Runtime.InteropServices.RuntimeEnvironment.GetRuntimeDirectory(), "../../.."));
        using var process = Process.Start(start)!;
        process.StandardInput.Close();
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd().TrimEnd();
        process.WaitForExit();
        Assert.NotNull(errors.Result);
        return (process.ExitCode, output);
    }
}
