using System.Diagnostics;
using FrameOpt.Cli;

namespace FrameOpt.Tests.Cli;

/// <summary>plan, stopped or short of disk: it says what was written, and leaves no half of a file.</summary>
public sealed class PlanStopTests : IDisposable
{
    private static readonly string study = Repository.Study("rationale");

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
                "kind: D-optimal\n  runs: 24\n  levels: as made\n  within: limits", "kind: full factorial\n  levels: 4"));
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
