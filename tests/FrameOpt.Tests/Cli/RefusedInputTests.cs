using System.Diagnostics;
using FrameOpt.Cli;

namespace FrameOpt.Tests.Cli;

/// <summary>What once ended as a fault of the program: each is a message, with the exit code of something to correct.</summary>
public sealed class RefusedInputTests : IDisposable
{
    private static readonly string study = Repository.Study("rationale");
    private static readonly string program = Path.Combine(AppContext.BaseDirectory, "FrameOpt.Cli");

    private readonly TemporaryFolder folder = new();

    public static TheoryData<string[], string> Commands => new()
    {
        { ["run", ""], "The name of the study file is empty." },
        { ["check", " "], "The name of the study file is empty." },
        { ["evaluate", ""], "The name of the study file is empty." },
        { ["plan", ""], "The name of the study file is empty." },
        { ["line", ""], "The name of the study file is empty." },
        { ["run", study, "--out", ""], "--out needs the name of a folder" },
        { ["run", study, "--remember", ""], "--remember needs the name of a file" },
        { ["plan", study, "--csv", ""], "--csv needs the name of a file" },
        { ["plan", study, "--csv", "/"], "/ is a folder; name a file in it." },
        { ["plan", study, "--csv", "/no/such/runs.csv"], "There is no folder /no/such" },
        { ["new", "custom-match", "--out", ""], "--out needs the name of a file" },
        { ["new", "custom-match", "--out", "/"], "/ is a folder; name a file in it." },
        { ["compare", "", ""], "The name of a folder is empty" },
    };

    public void Dispose() => folder.Dispose();

    [Theory]
    [MemberData(nameof(Commands))]
    public void An_empty_name_or_a_folder_in_the_place_of_a_file_is_refused(string[] command, string message)
    {
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, terminal.Run(command));
        Assert.Contains(message, terminal.Error);
        Assert.Empty(terminal.Output);
    }

    [Fact]
    public void What_is_typed_commands_no_terminal_and_is_quoted_briefly()
    {
        foreach (var command in (string[][])[["check", "no\u001B[31m\u202Efile"], ["new", "\u009B31m" + new string('z', 5_000)],
            ["check", study, "--variant", "\u001B]0;x\u0007" + new string('z', 5_000)], ["\u001B[2J" + new string('z', 5_000)]])
        {
            var terminal = new TestTerminal();
            Assert.Equal(ExitCode.InvalidInput, terminal.Run(command));
            Assert.DoesNotContain(terminal.Error, letter => letter is '\u001B' or '\u009B' or '\u0007' or '\u202E');
            Assert.DoesNotContain(new string('z', 81), terminal.Error);
        }
    }

    [Fact]
    public void A_title_commands_no_terminal_in_an_answer()
    {
        File.WriteAllText(folder["study.yaml"], File.ReadAllText(study).Replace("\ntitle: ", "\ntitle: \u202E\u200Bx "));
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run("check", folder["study.yaml"]));
        Assert.Contains(@"\u202E\u200Bx ", terminal.Output);
        Assert.DoesNotContain("\u202E", terminal.Output);
    }

    [Theory]
    [InlineData(">&-", "The standard output is closed")]
    [InlineData(">/dev/full", "The output could not be written")]
    [InlineData("2>&-", null)]
    public void A_closed_or_full_output_is_no_fault(string redirection, string? message)
    {
        if (!OperatingSystem.IsLinux())
            return;
        var (code, error) = Shell($"'{program}' check '{(message is null ? "/no/such/file" : study)}' {redirection}");
        Assert.Equal(ExitCode.InvalidInput, code);
        if (message is not null)
            Assert.Contains(message, error);
    }

    [Fact]
    public void With_its_output_closed_the_program_writes_into_no_other_file()
    {
        if (!OperatingSystem.IsLinux())
            return;
        Assert.Equal(ExitCode.InvalidInput, Shell($"'{program}' run '{study}' --out '{folder["out"]}' >&- 2>&- <&-").Code);
        Assert.False(Directory.Exists(folder["out"]));
    }

    private static (int Code, string Error) Shell(string script)
    {
        var start = new ProcessStartInfo("/bin/sh", ["-c", script]) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, error);
    }
}
