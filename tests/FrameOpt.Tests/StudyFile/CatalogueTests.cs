using System.Text.Json;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Sections;

namespace FrameOpt.Tests.StudyFile;

/// <summary>Reader, document and schema know every row of the catalogues of factors and responses.</summary>
public class CatalogueTests
{
    private static readonly string document = Text("study-file.md");
    private static readonly string schema = Text("study.schema.json");

    public static TheoryData<string> Factors => [.. FactorCatalogue.All.Select(input => input.Name)];

    public static TheoryData<string> Responses => [.. ResponseCatalogue.All.Select(entry => entry.Name)];

    [Theory]
    [MemberData(nameof(Factors))]
    public void Factor_is_a_key_of_factors_and_baseline_in_reader_document_and_schema(string name)
    {
        foreach (var section in new[] { StudyKeys.Factors, StudyKeys.Baseline })
        {
            Assert.NotNull(section.Find(name));
            Assert.Contains($"| `{section.Path}.{name}` |", document);
            using var read = JsonDocument.Parse(schema);
            var keys = read.RootElement.GetProperty("properties").GetProperty(section.Path).GetProperty("properties");
            Assert.True(keys.TryGetProperty(name, out _));
        }
    }

    [Theory]
    [MemberData(nameof(Factors))]
    public void Factor_is_read_from_its_own_example(string name)
    {
        var input = FactorCatalogue.Find(name)!;
        var read = Factor($"{name}={input.Example}");
        Assert.Equal((input, 1), (read.Input, read.LevelsSi.Count));
        Assert.InRange(read.LevelsSi[0], -input.Kind.LargestSi, input.Kind.LargestSi);
        Assert.NotEqual(0, read.LevelsSi[0]);
    }

    [Theory]
    [MemberData(nameof(Responses))]
    public void Response_is_named_in_document_and_schema(string name)
    {
        Assert.Matches($@"\b{name}\b", document);
        Assert.Matches($@"[""(|]{name}[""|)]", schema);
    }

    [Fact]
    public void Document_lists_what_goes_to_either_side()
    {
        var sentence = document[document.IndexOf("A quantity that can act to either side (", StringComparison.Ordinal)..];
        string[] listed = [.. sentence[(sentence.IndexOf('(') + 1)..sentence.IndexOf(" of a", StringComparison.Ordinal)]
            .Replace('\n', ' ').Split(',', StringSplitOptions.TrimEntries)];
        Assert.Equal(ResponseCatalogue.OfPhases.Where(entry => entry.Sign == ResponseSign.Side).Select(entry => entry.Name), listed);
    }

    private static StudyFactor Factor(string setting)
    {
        var study = WorkedStudyText.Right(WorkedStudyText.Text);
        var read = FrameOpt.StudyFile.DesignReader.Read(study, [setting], "--set");
        Assert.Empty(read.Diagnostics);
        return read.Values.Single(value => value.Origin.StartsWith("as set", StringComparison.Ordinal)).Factor;
    }

    private static string Text(string file) =>
        File.ReadAllText(Path.Combine(Repository.Root, "docs", file)).ReplaceLineEndings("\n");
}
