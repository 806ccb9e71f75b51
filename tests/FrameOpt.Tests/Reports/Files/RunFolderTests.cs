using FrameOpt.Reports.Files;

namespace FrameOpt.Tests.Reports.Files;

public sealed class RunFolderTests : IDisposable
{
    private static readonly string[] files =
        ["designs.csv", "drawing.pdf", "drawing.svg", "holes.dxf", "manifest.json", "report.html", "results.xlsx", "run.json",
            "template-a4.pdf", "template-letter.pdf", "timings.json"];

    private readonly string root = Directory.CreateTempSubdirectory("frameopt-test-").FullName;

    private string Target => Path.Combine(root, "results", "one");

    public void Dispose() => Directory.Delete(root, recursive: true);

    [Fact]
    public void A_run_writes_all_its_files_and_nothing_beside_them()
    {
        Write(replace: false);
        Assert.Equal(files, Names(Target));
        Assert.Equal(["one"], Names(Path.Combine(root, "results")));
    }

    [Fact]
    public void An_existing_folder_is_refused_unless_it_is_to_be_replaced()
    {
        Write(replace: false);
        var before = File.GetLastWriteTimeUtc(Path.Combine(Target, "run.json"));
        Assert.Contains("--replace", ResultsFolder.WriteObstacle(Target, replace: false));
        Assert.Throws<IOException>(() => Write(replace: false));
        Assert.Equal(before, File.GetLastWriteTimeUtc(Path.Combine(Target, "run.json")));

        Write(replace: true);
        Assert.NotEqual(before, File.GetLastWriteTimeUtc(Path.Combine(Target, "run.json")));
        Assert.Equal(files, Names(Target));
        Assert.Equal(["one"], Names(Path.Combine(root, "results")));
    }

    [Fact]
    public void A_second_run_in_the_same_second_gets_a_number()
    {
        Assert.Equal(Target, RunFolder.FirstFreePath(Target));
        Directory.CreateDirectory(Target);
        Assert.Equal(Target + "-2", RunFolder.FirstFreePath(Target));
        Directory.CreateDirectory(Target + "-2");
        Assert.Equal(Target + "-3", RunFolder.FirstFreePath(Target));
    }

    [Fact]
    public void A_folder_that_is_no_result_is_never_replaced()
    {
        Directory.CreateDirectory(Target);
        File.WriteAllText(Path.Combine(Target, "letter.txt"), "dear");
        Assert.Contains("not a results folder", ResultsFolder.WriteObstacle(Target, replace: true));
        Assert.Throws<IOException>(() => Write(replace: true));
        Assert.Equal(["letter.txt"], Names(Target));
    }

    [Fact]
    public void A_file_in_the_place_of_the_folder_is_refused()
    {
        var file = Path.Combine(root, "file");
        File.WriteAllText(file, "");
        Assert.Contains("is a file", ResultsFolder.WriteObstacle(file, replace: true));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_failure_while_writing_leaves_everything_as_it_was(bool hasOlder)
    {
        if (hasOlder)
            WriteOne("old");
        Assert.Throws<InvalidOperationException>(() =>
        {
            using var folder = ResultsFolder.Begin(Target, replace: true);
            folder.Write("new", _ => { });
            folder.Write("newer", _ => throw new InvalidOperationException());
        });
        Assert.Equal(hasOlder ? ["one"] : [], Names(Path.Combine(root, "results")));
        if (hasOlder)
            Assert.Equal(["manifest.json", "old"], Names(Target));
    }

    [Fact]
    public void The_default_folder_is_named_by_time_and_study_beside_the_study()
    {
        var path = RunFolder.DefaultPath(Path.Combine(root, "study.yaml"), "0123456789abcdef",
            new DateTime(2030, 1, 2, 3, 4, 5, DateTimeKind.Utc));
        Assert.Equal(Path.Combine(root, "results", "20300102T030405Z-01234567"), path);
    }

    private void Write(bool replace)
    {
        using var folder = ResultsFolder.Begin(Target, replace);
        RunFolder.Write(ReportFixture.Report(3), ReportFixture.Timings, folder);
        folder.Complete();
    }

    private void WriteOne(string name)
    {
        using var folder = ResultsFolder.Begin(Target, replace: false);
        folder.Write(name, _ => { });
        folder.Complete();
    }

    private static IEnumerable<string> Names(string folder) =>
        Directory.EnumerateFileSystemEntries(folder).Select(entry => Path.GetFileName(entry)!).Order(StringComparer.Ordinal);
}
