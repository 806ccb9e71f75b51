using System.Text;
using FrameOpt.Studies;
using FrameOpt.StudyFile;
using FrameOpt.Tests.Reports;

namespace FrameOpt.Tests.StudyFile.Syntax;

/// <summary>What is refused before, or while, the file is taken apart.</summary>
public class FileTests
{
    private static readonly byte[] right = Encoding.UTF8.GetBytes(WorkedStudyText.Text);

    [Fact]
    public void File_on_disk_is_read_and_its_bytes_are_hashed()
    {
        var reading = StudyReader.Read(WorkedStudyText.Path);
        Assert.Empty(reading.Diagnostics);
        Assert.Matches("^[0-9a-f]{64}$", reading.Study!.Hash);
    }

    [Fact]
    public void Hash_is_the_sha256_of_the_bytes()
    {
        // FIPS 180-2 gives this digest for "abc"; the study's own digest is taken by the same function.
        Assert.Equal("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
            Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData("abc"u8)));
        Assert.Equal(Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(right)),
            StudyReader.Parse(right, "study.yaml").Study!.Hash);
    }

    [Fact]
    public void Byte_order_mark_and_windows_line_ends_change_nothing()
    {
        var plain = WorkedStudyText.Right(WorkedStudyText.Text);
        var windows = WorkedStudyText.Right("\uFEFF" + WorkedStudyText.Text.Replace("\n", "\r\n"));
        Assert.Equal(plain.Mission, windows.Mission);
        Assert.Equal(plain.Title, windows.Title);
        Assert.Equal(plain.Factors.SelectMany(factor => factor.LevelsSi), windows.Factors.SelectMany(factor => factor.LevelsSi));
        Assert.Equal(15, WorkedStudyText.OneDiagnostic("\uFEFF" + WorkedStudyText.With("turns: counter", "truns: counter").Replace(
            "\n", "\r\n")).Line);
    }

    [Fact]
    public void Missing_file_and_folder_are_each_told_apart()
    {
        Assert.Equal("There is no such file.", Assert.Single(StudyReader.Read("/no/such/study.yaml").Diagnostics).Message);
        Assert.Equal("This is a folder, not a study file.", Assert.Single(StudyReader.Read(AppContext.BaseDirectory).Diagnostics).Message);
        Assert.Equal("study.yaml: There is no such file. Check the name and the folder.",
            StudyReader.Read("/no/such/study.yaml").Diagnostics[0].Text);
    }

    [Fact]
    public void File_that_may_not_be_read_is_told()
    {
        var path = Path.Combine(Path.GetTempPath(), $"frameopt-{Guid.NewGuid():N}.yaml");
        File.WriteAllBytes(path, right);
        try
        {
            using var held = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.None);
            Assert.StartsWith("The file cannot be read: ", Assert.Single(StudyReader.Read(path).Diagnostics).Message);
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData(" \n\n  ")]
    [InlineData("# only a comment\n")]
    public void Empty_file_is_told(string text) => Assert.Equal("The file is empty.", WorkedStudyText.OneDiagnostic(text).Message);

    [Fact]
    public void File_over_one_megabyte_is_refused_before_parsing()
    {
        var diagnostic = Assert.Single(StudyReader.Parse(new byte[1_000_001], "study.yaml").Diagnostics);
        Assert.Contains("larger than 1 MB", diagnostic.Message);
    }

    [Fact]
    public void Study_filled_up_to_one_megabyte_is_read()
    {
        var filled = WorkedStudyText.Text + "#" + new string('x', 1_000_000 - right.Length - 1);
        Assert.NotNull(WorkedStudyText.Read(filled).Study);
    }

    [Fact]
    public void What_is_not_utf8_text_is_refused()
    {
        Assert.Contains("UTF-8", Assert.Single(StudyReader.Parse([0x50, 0x4B, 0x03, 0x04, 0x00, 0x00], "study.yaml").Diagnostics).Message);
        Assert.Contains("UTF-8", Assert.Single(StudyReader.Parse(Encoding.Unicode.GetBytes(WorkedStudyText.Text),
            "study.yaml").Diagnostics).Message);
        var latin = Assert.Single(StudyReader.Parse(Encoding.Latin1.GetBytes("format: 1\ntitle: a\narea: 25 m²\n"),
            "study.yaml").Diagnostics);
        Assert.Equal(3, latin.Line);
    }

    [Theory]
    [InlineData("title: &a One frame", 1, "`&name`")]
    [InlineData("format: 1\ntitle: *a", 2, "`*name`")]
    [InlineData("format: 1\ntitle: !!python/object One", 2, "tag")]
    [InlineData("format: 1\ntitle: !x One", 2, "tag")]
    [InlineData("format: 1\n---\nformat: 1\n", 2, "second document")]
    [InlineData("format: 1\ntitle: \"a\\x1bb\"\n", 2, "control character")]
    [InlineData("- a\n- b\n", 1, "group of keys")]
    [InlineData("just words", 1, "group of keys")]
    public void What_a_study_never_needs_is_refused(string text, int line, string word)
    {
        var diagnostic = WorkedStudyText.Read(text).Diagnostics.First(each => each.Message.Contains(word));
        Assert.Equal(line, diagnostic.Line);
    }

    [Fact]
    public void Nesting_over_32_deep_is_refused_and_32_is_not()
    {
        static string Nested(int depth) => "format: " + new string('[', depth - 1) + new string(']', depth - 1);
        Assert.Contains("nested more than 32 deep", WorkedStudyText.OneDiagnostic(Nested(33)).Message);
        Assert.DoesNotContain(WorkedStudyText.Read(Nested(32)).Diagnostics, diagnostic => diagnostic.Message.Contains("nested"));
    }

    [Fact]
    public void File_that_is_wrong_throughout_is_told_in_its_first_two_hundred_mistakes()
    {
        var reading = WorkedStudyText.Read(string.Concat(Enumerable.Range(0, 1000).Select(i => $"k{i}: 1\n")));
        Assert.Equal(201, reading.Diagnostics.Count);
        Assert.StartsWith("80", reading.Diagnostics[^1].Message);
    }

    [Fact]
    public void Colon_without_a_key_is_told()
    {
        var reading = WorkedStudyText.Read(WorkedStudyText.With("\nobjectives:", "\n:\nobjectives:"));
        Assert.Contains(reading.Diagnostics, diagnostic => diagnostic.Message.Contains("colon without its key"));
    }

    [Theory]
    [InlineData("    diameter: 1.30 m", "\tdiameter: 1.30 m", 14, "indented with a tab")]
    [InlineData("  area: 25 m²", "\tarea: 25 m²", 35, "indented with a tab")]
    [InlineData("  area: 25 m²", "  \tarea: 25 m²", 35, "indented with a tab")]
    [InlineData("    diameter: 1.30 m", "    diameter:1.30 m", 14, "A space is missing after `diameter:`.")]
    [InlineData("  mass: 6 kg", "  mass 6 kg", 35, "second `key:`")]
    [InlineData("  area: 25 m²", "   area: 25 m²", 35, "second `key:`")]
    [InlineData("  area: 25 m²", " area: 25 m²", 35, "does not fit the lines above")]
    [InlineData("title: One frame", "title: One frame: yes", 3, "second `key:`")]
    [InlineData("title: One frame", "title: \"One frame", 3, "quotation mark")]
    [InlineData("title: One frame", "title: @One frame", 3, "cannot begin a value")]
    [InlineData("name: pilot,    mass", "name: pilot     mass", 8, "comma is missing")]
    [InlineData("hang_line: { forward: -60 mm }", "hang_line: { forward: -60 mm", 12, "is not closed")]
    [InlineData("[0.6, 0.0324, 0.03220]", "[0.6, 0.0324, 0.03220", 26, "is not closed")]
    [InlineData("hang_line: { forward: -60 mm }", "hang_line: { forward: -60 mm }}", 12, "does not fit the lines above")]
    public void Slip_of_layout_is_told_in_plain_words(string piece, string slip, int line, string word)
    {
        var diagnostic = WorkedStudyText.OneDiagnostic(WorkedStudyText.With(piece, slip));
        Assert.Contains(word, diagnostic.Message);
        Assert.Equal(line, diagnostic.Line);
    }
}
