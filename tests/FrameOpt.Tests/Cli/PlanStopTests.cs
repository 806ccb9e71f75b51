using System.Diagnostics;
using FrameOpt.Cli;

namespace FrameOpt.Tests.Cli;

/// <summary>plan, stopped or short of disk: it says what was written, and leaves no half of a file.</summary>
public sealed class PlanStopTests : IDisposable
{
    private static readonly string study = Repository.Study("rationale");
    private static readonly string program = Path.Combine(AppContext.BaseDirectory, "FrameOpt.Cli");

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_plan_that_is_stopped_writes_nothing_and_says_so()
    {
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Interrupted, terminal.Run(() => true, "plan", study, "--csv", folder["runs.csv"]));
        Assert.Contains("nothing was written", terminal.Error);
        Assert.Empty(Directory.GetFileSystemEntries(folder[""]));
    }

    [Theory]
    [InlineData("INT")]
    [InlineData("TERM")]
    public void One_signal_stops_a_long_plan(string signal)
    {
        if (!OperatingSystem.IsLinux())
            return;
        File.WriteAllText(folder["study.yaml"], File.ReadAllText(study).Replace(
            "kind: central composite", "kind: D-optimal\n  runs: 500").Replace("  axial: face-centred\n", ""));
        var start = new ProcessStartInfo(program, ["plan", folder["study.yaml"]])
        { RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Process.Start(start)!;
        // The handler of the signal is there once the study is read; a plan of 500 runs takes many seconds.
        Thread.Sleep(TimeSpan.FromSeconds(4));
        Process.Start("kill", [$"-{signal}", $"{process.Id}"]).WaitForExit();
        var clock = Stopwatch.StartNew();
        var error = process.StandardError.ReadToEnd();
        process.WaitForExit();
        Assert.Equal(ExitCode.Interrupted, process.ExitCode);
        Assert.Contains("nothing was written", error);
        // The whole plan takes some twenty seconds, and the other tests keep the machine busy.
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(6), $"took {clock.Elapsed.TotalSeconds:0.0} s to stop");
    }

    [Fact]
    public void A_full_disk_leaves_no_half_of_a_file()
    {
        if (!OperatingSystem.IsLinux() || !Mount(folder["disk"], out var place))
            return;
        try
        {
            // 48 kB of room: more than nothing, less than a study with its schema.
            File.WriteAllBytes(Path.Combine(place, "filler"), new byte[(64 - 8) * 1024]);
            var made = new TestTerminal();
            Assert.Equal(ExitCode.InvalidInput, made.Run("new", "custom-match", "--out", Path.Combine(place, "study.yaml")));
            Assert.Contains("could not be written", made.Error);
            File.WriteAllBytes(Path.Combine(place, "filler"), new byte[(64 - 4) * 1024]);
            var plan = new TestTerminal();
            File.WriteAllText(folder["study.yaml"], File.ReadAllText(study).Replace(
                "kind: central composite", "kind: full factorial\n  levels: 4").Replace("  axial: face-centred\n", ""));
            Assert.Equal(ExitCode.InvalidInput, plan.Run("plan", folder["study.yaml"], "--csv", Path.Combine(place, "runs.csv")));
            Assert.Contains("runs.csv", plan.Error);
            Assert.Equal([Path.Combine(place, "filler")], Directory.GetFileSystemEntries(place));
        }
        finally
        {
            Process.Start("umount", [place]).WaitForExit();
        }
    }

    [Fact]
    public void A_file_is_never_written_over_even_when_it_appears_in_the_meantime()
    {
        using (var file = NewFile.Write(folder["runs.csv"], stream => stream.Write("ours"u8)))
        {
            Assert.False(File.Exists(folder["runs.csv"]));
            File.WriteAllText(folder["runs.csv"], "theirs");
            Assert.Throws<IOException>(file.Place);
        }

        Assert.Equal("theirs", File.ReadAllText(Assert.Single(Directory.GetFiles(folder[""]))));
    }

    /// <summary>A disk of 64 kB; false where this user may not mount one.</summary>
    private static bool Mount(string at, out string place)
    {
        place = Directory.CreateDirectory(at).FullName;
        using var mount = Process.Start(new ProcessStartInfo("mount", ["-t", "tmpfs", "-o", "size=64k", "tmpfs", place])
        { RedirectStandardError = true })!;
        mount.WaitForExit();
        return mount.ExitCode == 0;
    }
}
