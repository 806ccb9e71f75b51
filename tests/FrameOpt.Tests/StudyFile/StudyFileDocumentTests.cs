using System.Text.RegularExpressions;
using FrameOpt.Model.Mission;
using FrameOpt.StudyFile.Sections;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.Tests.StudyFile;

/// <summary>docs/study-file.md and the reader know the same keys.</summary>
public class StudyFileDocumentTests
{
    private static readonly string document = File.ReadAllText(Path.Combine(Repository.Root, "docs", "study-file.md")).ReplaceLineEndings(
        "\n");

    private static readonly string[][] rows =
        [.. Regex.Matches(document, @"^\| `(?<key>[^`]+)` \|.*\|$", RegexOptions.Multiline)
            .Select(row => row.Value.Trim('|').Split('|').Select(cell => cell.Trim()).ToArray())];

    private static readonly Dictionary<string, Key> keys = StudyKeys.All
        .SelectMany(section => section.Keys.Select(key => (path: section.Path.Length > 0 ? $"{section.Path}.{key.Name}" : key.Name, key)))
        .ToDictionary(pair => pair.path, pair => pair.key);

    [Fact]
    public void Document_lists_exactly_the_keys_the_reader_knows() =>
        Assert.Equal(keys.Keys.Order(), rows.Select(row => row[0].Trim('`')).Order());

    [Fact]
    public void Document_and_reader_agree_on_what_must_be_there() =>
        Assert.All(rows, row => Assert.True(keys[row[0].Trim('`')].IsRequired == (row[2] == "-"), row[0]));

    [Fact]
    public void Document_names_every_response_and_every_unit()
    {
        foreach (var entry in ResponseCatalogue.All)
            Assert.Matches($@"\b{entry.Name}\b", document);
        foreach (var spelling in Dimension.All.Where(dimension => dimension != Dimension.Time).SelectMany(dimension => dimension.Spellings))
            Assert.Contains(spelling.Text, document);
    }

    [Fact]
    public void Smallest_file_of_the_document_is_right() =>
        Assert.Equal(61 * 16, WorkedStudyText.Right(Block(0)).GridSize);

    [Fact]
    public void Variants_of_the_document_are_right_after_a_template() =>
        Assert.Equal(
            ["full tank", "empty tank", "on wheels"],
            WorkedStudyText.Right(File.ReadAllText(Repository.Template("custom-match")) + Block(1)).Variants);

    /// <summary>The n-th piece of YAML in the document.</summary>
    private static string Block(int index) =>
        Regex.Matches(document, "```yaml\n(?<text>.*?)```", RegexOptions.Singleline)[index].Groups["text"].Value;

}
