using FrameOpt.Numerics;
using FrameOpt.Reports.Text;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Tests.StudyFile;

/// <summary>docs/noise.md and the program know the same sources of noise.</summary>
public class NoiseDocumentTests
{
    private static readonly string document = File.ReadAllText(Path.Combine(Repository.Root, "docs", "noise.md")).ReplaceLineEndings("\n");

    private static readonly string keys = File.ReadAllText(Path.Combine(Repository.Root, "docs", "study-file.md")).ReplaceLineEndings("\n");

    [Fact]
    public void Document_has_a_row_for_every_source_in_order()
    {
        var table = string.Concat(NoiseSource.All.Select(source => $"| `{source.Name}` | {source.Title} | {Unit(source)} | "
            + $"{NoiseText.Words(source, source.Usual)} | {source.Meaning} | {source.Source} |\n"));
        Assert.Contains(table, document);
        Assert.All(MeasurableSource.All, source => Assert.Contains($"| `{source.Name}` | {source.Title} | {Unit(source)} | "
            + $"{NoiseText.Words(source, source.Usual)} | {source.Meaning} | {source.Source} |\n", document));
    }

    [Fact]
    public void Usual_spread_of_every_source_stands_at_its_key() => Assert.All(NoiseSource.All, source => Assert.Matches(
        $@"\| `noise\.{source.Name}` \| `none`, or a group: a spread of [^|]+ \| {NoiseText.Words(source, source.Usual)} \| "
            + System.Text.RegularExpressions.Regex.Escape(source.Source), keys));

    [Fact]
    public void Example_of_the_document_is_right()
    {
        var example = document.Split("```yaml\n")[1].Split("```")[0];
        var noise = WorkedStudyText.Right(WorkedStudyText.Text + example).Noise;
        Assert.Equal(NoiseSource.All.Count - 1, noise.Sources.Count);
        Assert.Equal(0.4, Assert.Single(noise.Correlations).Rank);
    }

    [Fact]
    public void There_are_direction_numbers_for_every_source() => Assert.True(NoiseSource.All.Count <= SobolSequence.MaxDimensions);

    [Fact]
    public void Every_title_and_every_way_is_words() => Assert.All(NoiseSource.All, source =>
    {
        Assert.DoesNotContain("_", source.Title);
        Assert.NotEqual(source.More, source.Less);
    });

    private static string Unit(NoiseSource source) => source.Unit switch
    {
        NoiseUnit.Length => "mm",
        NoiseUnit.Angle => "deg",
        NoiseUnit.Share => "%",
        NoiseUnit.Temperature => "K",
        _ => "-1 to 1",
    };
}
