using FrameOpt.Reports.Files;

namespace FrameOpt.Tests.Reports.Files;

/// <summary>What runs that were killed leave, and what happens to a folder while its results are made.</summary>
public sealed class ResultsFolderTests : IDisposable
{
    // Any 32 hexadecimal digits.
    private const string Leftover = ".making-00112233445566778899aabbccddeeff";

    private readonly TemporaryFolder root = new();

    public void Dispose() => root.Dispose();

    [Fact]
    public void What_a_killed_run_left_is_named_and_deleted()
    {
        Directory.CreateDirectory(root["one" + Leftover]);
        File.WriteAllText(Path.Combine(root["one" + Leftover], "run.json"), "half a");
        File.WriteAllText(root["one" + Leftover + ".in-use"], "");
        using (var folder = ResultsFolder.Begin(root["two"], replace: false))
            Assert.Contains("left by a run that was killed, was deleted", Assert.Single(folder.Leftovers));
        Assert.Empty(Names());
    }

    [Fact]
    public void What_a_living_run_makes_is_left_alone()
    {
        using (var living = ResultsFolder.Begin(root["one"], replace: false))
        {
            living.Write("run.json", stream => stream.WriteByte(1));
            using (var other = ResultsFolder.Begin(root["two"], replace: false))
                Assert.Empty(other.Leftovers);
            Assert.Equal(root["one"], living.Complete());
        }

        Assert.Equal(["one"], Names());
    }

    [Fact]
    public void What_only_looks_like_a_leftover_is_left_alone()
    {
        File.WriteAllText(root["cake.making-of"], "flour");
        File.WriteAllText(root["cake.making-of.in-use"], "sugar");
        Directory.CreateDirectory(root["one" + Leftover]);
        using (var folder = ResultsFolder.Begin(root["two"], replace: false))
            Assert.Empty(folder.Leftovers);
        Assert.Equal(["cake.making-of", "cake.making-of.in-use", "one" + Leftover], Names());
    }

    [Fact]
    public void Results_come_back_when_a_run_was_killed_between_moving_the_old_away_and_the_new_in()
    {
        Make("one", "old");
        Directory.Move(root["one"], root["one" + Leftover + ".old"]);
        Make("new", "new");
        Directory.Move(root["new"], root["one" + Leftover]);
        File.WriteAllText(root["one" + Leftover + ".in-use"], "");
        using (var folder = ResultsFolder.Begin(root["two"], replace: false))
            Assert.Contains(folder.Leftovers, sentence => sentence.Contains($"{root["one"]} were put back", StringComparison.Ordinal));
        Assert.Equal(["one"], Names());
        Assert.Equal("old", File.ReadAllText(Path.Combine(root["one"], "run.json")));
    }

    [Fact]
    public void Old_results_go_when_a_run_was_killed_after_the_new_were_in_place()
    {
        Make("one", "new");
        Make("old", "old");
        Directory.Move(root["old"], root["one" + Leftover + ".old"]);
        File.WriteAllText(root["one" + Leftover + ".in-use"], "");
        ResultsFolder.Begin(root["two"], replace: false).Dispose();
        Assert.Equal(["one"], Names());
        Assert.Equal("new", File.ReadAllText(Path.Combine(root["one"], "run.json")));
    }

    [Theory]
    [InlineData("letter.txt", "dear")]
    [InlineData("run.json", "changed by hand")]
    public void A_file_saved_into_the_folder_meanwhile_keeps_it_and_the_results_go_beside_it(string name, string text)
    {
        Make("one", "old");
        using (var folder = ResultsFolder.Begin(root["one"], replace: true))
        {
            folder.Write("run.json", stream => stream.Write("new"u8));
            File.WriteAllText(Path.Combine(root["one"], name), text);
            Assert.Equal(root["one-2"], folder.Complete());
        }

        Assert.Equal(["one", "one-2"], Names());
        Assert.Equal(text, File.ReadAllText(Path.Combine(root["one"], name)));
        Assert.Equal("new", File.ReadAllText(Path.Combine(root["one-2"], "run.json")));
    }

    [Fact]
    public void A_link_to_results_is_replaced_and_what_it_leads_to_stays()
    {
        Make("monday", "old");
        Directory.CreateSymbolicLink(root["latest"], root["monday"]);
        using (var folder = ResultsFolder.Begin(root["latest"], replace: true))
        {
            folder.Write("run.json", stream => stream.Write("new"u8));
            folder.Complete();
        }

        Assert.Equal(["latest", "monday"], Names());
        Assert.Equal("old", File.ReadAllText(Path.Combine(root["monday"], "run.json")));
        Assert.Equal("new", File.ReadAllText(Path.Combine(root["latest"], "run.json")));
    }

    private void Make(string name, string text)
    {
        using var folder = ResultsFolder.Begin(root[name], replace: false);
        folder.Write("run.json", stream => stream.Write(System.Text.Encoding.UTF8.GetBytes(text)));
        folder.Complete();
    }

    private IEnumerable<string> Names() =>
        Directory.EnumerateFileSystemEntries(root[""]).Select(entry => Path.GetFileName(entry)!).Order(StringComparer.Ordinal);
}
