using System.Text;
using FrameOpt.Cli;
using FrameOpt.Cli.Screen;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Cli;

public class AppTests
{
    private static readonly string custom = Repository.Study("custom-match");

    [Fact]
    public void A_fault_of_the_program_is_one_sentence_and_its_own_code()
    {
        using var folder = new TemporaryFolder();
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.InternalError, terminal.Run(() => throw new InvalidOperationException("made up"), "run", custom, "--out",
            folder["a"]));
        Assert.Equal(
            "Internal error in FrameOpt: InvalidOperationException, made up. Please report it with the study file.",
                terminal.Error.Trim());
        Assert.Empty(Directory.GetFileSystemEntries(folder[""]));
    }

    [Fact]
    public void Output_that_cannot_be_written_is_a_sentence()
    {
        var error = new StringWriter();
        var terminal = new Terminal(Terminal.Console(new FullDisk(), isPipe: true), Terminal.Console(error, isPipe: true), Stream.Null,
            () => false);
        Assert.Equal(ExitCode.InvalidInput, App.Run(["check", custom], terminal));
        Assert.Equal("The output could not be written: the disk is full", error.ToString().Trim());
    }

    [Fact]
    public void Output_that_nobody_can_read_ends_quietly()
    {
        var terminal = new Terminal(Terminal.Console(new FullDisk(), isPipe: true), Terminal.Console(new FullDisk(), isPipe: true),
            Stream.Null, () => false);
        Assert.Equal(ExitCode.InvalidInput, App.Run(["check", custom], terminal));
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    public void A_folder_without_a_name_is_refused(string folder)
    {
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, terminal.Run("run", custom, "--out", folder));
        Assert.Contains("--out needs the name of a folder", terminal.Error);
    }

    private sealed class FullDisk : TextWriter
    {
        public override Encoding Encoding => Encoding.UTF8;

        public override void Write(char value) => throw new IOException("the disk is full");

        public override void Write(string? value) => throw new IOException("the disk is full");
    }
}
