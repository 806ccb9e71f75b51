using FrameOpt.Cli;

namespace FrameOpt.Tests.Cli;

/// <summary>Where the results of a run go, and that nothing of the user's is lost for them.</summary>
public sealed class OutputTests : IDisposable
{
    private static readonly string custom = Repository.Study("custom-match");

    private readonly TemporaryFolder folder = new();
    private readonly TestTerminal terminal = new();
    private int steps;

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Replace_leaves_a_folder_with_a_file_of_the_users_alone()
    {
        Run("--out", folder["a"]);
        File.WriteAllText(Path.Combine(folder["a"], "notes.txt"), "drilled on Monday");
        RefusedBeforeTheSearch("notes.txt was not written by FrameOpt", "--out", folder["a"], "--replace");
        Assert.Equal("drilled on Monday", File.ReadAllText(Path.Combine(folder["a"], "notes.txt")));
    }

    [Fact]
    public void Replace_leaves_a_folder_with_a_changed_file_alone()
    {
        Run("--out", folder["a"]);
        File.AppendAllText(Path.Combine(folder["a"], "designs.csv"), "# mine");
        RefusedBeforeTheSearch("designs.csv was changed after FrameOpt wrote it", "--out", folder["a"], "--replace");
        Assert.EndsWith("# mine", File.ReadAllText(Path.Combine(folder["a"], "designs.csv")));
    }

    [Fact]
    public void Replace_leaves_the_folder_of_the_study_alone()
    {
        Directory.CreateDirectory(folder["mine"]);
        var study = Path.Combine(folder["mine"], "study.yaml");
        File.Copy(custom, study);
        Assert.Equal(ExitCode.InvalidInput, terminal.Run(Step, "run", study, "--out", folder["mine"], "--replace"));
        Assert.Contains("it contains no manifest.json, so it is not a results folder", terminal.Error);
        Assert.True(steps <= 1, "asked once before the work begins, and then at every step");
        Assert.Equal(File.ReadAllText(custom), File.ReadAllText(study));
    }

    [Fact]
    public void A_file_saved_into_the_folder_during_the_run_is_kept_and_so_are_the_results()
    {
        Run("--out", folder["a"]);
        var notes = Path.Combine(folder["a"], "notes.txt");
        Assert.Equal(ExitCode.Success, terminal.Run(() =>
        {
            // The first time it is asked the work has not begun.
            if (steps++ > 0)
                File.WriteAllText(notes, "drilled on Monday");
            return false;
        }, "run", custom, "--out", folder["a"], "--replace"));
        Assert.Contains($"{folder["a"]} was taken in the meantime: the results are in {folder["a"]}-2.", terminal.Error);
        Assert.Contains($"Written to {folder["a"]}-2", terminal.Output);
        Assert.Equal("drilled on Monday", File.ReadAllText(notes));
        Assert.Equal(Bytes(folder["a"], "run.json"), Bytes(folder["a-2"], "run.json"));
    }

    [Fact]
    public void A_folder_removed_during_the_run_does_not_lose_the_results()
    {
        Assert.Equal(ExitCode.Success, terminal.Run(() =>
        {
            if (Directory.Exists(folder["away"]))
                Directory.Delete(folder["away"], recursive: true);
            return false;
        }, "run", custom, "--all", "--out", Path.Combine(folder["away"], "frameopt-test")));
        var saved = terminal.Error.Split("They are saved in ")[1].Split(". Move")[0];
        try
        {
            Assert.Contains($"Written to {saved}", terminal.Output);
            Run("--out", folder["a"]);
            Assert.Equal(Bytes(folder["a"], "run.json"), Bytes(saved, "run.json"));
            Assert.Contains("evaluations.csv is missing from the results", terminal.Error);
            Assert.False(File.Exists(Path.Combine(saved, "evaluations.csv")));
        }
        finally
        {
            Directory.Delete(saved, recursive: true);
        }
    }

    [Fact]
    public async Task Three_runs_begun_at_once_have_a_folder_each()
    {
        File.Copy(custom, folder["study.yaml"]);
        var codes = await Task.WhenAll(Enumerable.Range(0, 3).Select(_ => Task.Run(() =>
            new TestTerminal().Run("run", folder["study.yaml"]))));
        Assert.All(codes, code => Assert.Equal(ExitCode.Success, code));
        var made = Directory.GetDirectories(folder["results"]);
        Assert.Equal(3, made.Length);
        Assert.Empty(Directory.GetFiles(folder["results"]));
        Assert.All(made, one => Assert.Equal(Bytes(made[0], "run.json"), Bytes(one, "run.json")));
    }

    [Theory]
    [InlineData("a/evaluations.csv")]
    [InlineData("a")]
    public void Evaluations_inside_the_results_are_refused_before_the_search(string file) =>
        RefusedBeforeTheSearch("name a file outside it", "--out", folder["a"], "--remember", folder[file]);

    [Fact]
    public void A_place_that_cannot_be_written_to_is_noticed_before_the_search()
    {
        File.WriteAllText(folder["file"], "");
        RefusedBeforeTheSearch("Nothing was computed, because no results could be written to", "--out", folder["file/inside"]);
    }

    private void RefusedBeforeTheSearch(string words, params string[] options)
    {
        Assert.Equal(ExitCode.InvalidInput, terminal.Run(Step, ["run", custom, .. options]));
        Assert.Contains(words, terminal.Error);
        Assert.True(steps <= 1, "asked once before the work begins, and then at every step");
    }

    private bool Step()
    {
        steps++;
        return false;
    }

    private static void Run(params string[] options) =>
        Assert.Equal(ExitCode.Success, new TestTerminal().Run(["run", custom, .. options]));

    private static byte[] Bytes(string folder, string name) => File.ReadAllBytes(Path.Combine(folder, name));
}
