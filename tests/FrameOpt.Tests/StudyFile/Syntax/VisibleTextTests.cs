using FrameOpt.StudyFile;
using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.Tests.StudyFile.Syntax;

/// <summary>What a message quotes commands no terminal, hides nothing and is short.</summary>
public class VisibleTextTests
{
    [Theory]
    [InlineData("plain text, µ and 日本 and 😀", "plain text, µ and 日本 and 😀")]
    [InlineData("\u001B[31m", @"\u001B[31m")]
    [InlineData("\u009B31m\u0085\u007F", @"\u009B31m\u0085\u007F")]
    [InlineData("a\u202Eb\u2066c\u200Bd\uFEFFe", @"a\u202Eb\u2066c\u200Bd\uFEFFe")]
    [InlineData("नमस्\u200Dते", "नमस्\u200Dते")]
    public void Control_and_invisible_characters_are_shown_as_their_numbers(string text, string shown) =>
        Assert.Equal(shown, VisibleText.Of(text));

    [Fact]
    public void Half_of_a_surrogate_pair_is_shown_as_its_number() => Assert.Equal(@"\uD800x", VisibleText.Of("\uD800x"));

    [Theory]
    [InlineData("title: One", "title: [@]")]
    [InlineData("minimise: residual_rms", "minimise: @")]
    [InlineData("mass: 78 kg", "mass: 78 @")]
    [InlineData("mass: 78 kg", "mass: @")]
    [InlineData("counter-clockwise", "@")]
    [InlineData("power: level", "power: @")]
    [InlineData("method: exhaustive", "method: @")]
    [InlineData("method: distance to ideal", "method: @")]
    [InlineData("format: 1", "format: @")]
    [InlineData("body: true", "body: @")]
    public void No_message_quotes_more_than_eighty_characters_of_a_value(string piece, string other)
    {
        // Long enough for any cut to show, in letters no message has in a row.
        foreach (var unit in new[] { "q", "q ", "7" })
        {
            var text = string.Concat(Enumerable.Repeat(unit, 20_000));
            var reading = WorkedStudyText.Read(WorkedStudyText.With(piece, other.Replace("@", text.Trim())));
            Assert.NotEmpty(reading.Diagnostics);
            Assert.All(reading.Diagnostics, diagnostic =>
            {
                Assert.DoesNotContain(text[..(VisibleText.MaxQuoted + 1)], diagnostic.Message);
                Assert.DoesNotContain(text[..(VisibleText.MaxQuoted + 1)], diagnostic.Excerpt);
                Assert.DoesNotContain(text[..(VisibleText.MaxQuoted + 1)], diagnostic.Fix);
            });
        }
    }

    [Fact]
    public void Cells_of_a_table_command_no_terminal()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["start.csv"], "lateral_offset [mm\u001B[2J],x\u202E\n\u001B]0;owned\u0007,\u009B31m\n");
        File.WriteAllText(folder["study.yaml"], WorkedStudyText.Text.Replace("method: exhaustive", "method: NSGA-II, start: start.csv"));
        var texts = StudyReader.Read(folder["study.yaml"]).Diagnostics.Select(diagnostic => diagnostic.Text).ToList();
        Assert.NotEmpty(texts);
        Assert.All(texts, text => Assert.DoesNotContain(text, letter => char.IsControl(letter) || letter == '\u202E'));
    }
}
