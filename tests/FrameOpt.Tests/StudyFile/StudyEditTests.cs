using CsCheck;
using FrameOpt.StudyFile;
using FrameOpt.StudyFile.Editing;

namespace FrameOpt.Tests.StudyFile;

/// <summary>Single values of a study's text are read and replaced; everything else stays as it was typed.</summary>
public class StudyEditTests
{
    private static readonly string template = File.ReadAllText(Repository.Template("custom-match"));

    [Theory]
    [InlineData("machine.propeller.diameter", "1.25 m")]
    [InlineData("machine.masses.0.mass", "76 kg")]
    [InlineData("machine.masses.3.volume", "7 l")]
    [InlineData("ranking.weights.weight_shift_authority[cruise]", "1")]
    [InlineData("wing.polar.rows.1.2", "5.2")]
    [InlineData("machine.propeller.colour", null)]
    public void A_value_is_found_by_its_path(string path, string? value) => Assert.Equal(value, StudyEdit.Of(template).Value(path));

    [Fact]
    public void Only_the_value_changes_and_its_comment_stays()
    {
        var changed = StudyEdit.Of(template).With("machine.propeller.turns", "clockwise");
        Assert.Equal(template.Replace("turns: counter-clockwise ", "turns: clockwise "), changed);
    }

    [Theory]
    [InlineData("machine.propeller.zero_thrust", "0.9", "{ rpm: 2550 rpm", "    zero_thrust: 0.9\n  engine:")]
    [InlineData("machine.hang_line.right", "2 mm", "hang_line", "hang_line: { forward: -55 mm, right: 2 mm }")]
    [InlineData("strength.overhang", "40 mm", "baseline", "strength: { overhang: 40 mm }")]
    public void A_value_that_is_not_there_joins_its_group(string path, string value, string kept, string expected)
    {
        var changed = StudyEdit.Of(template).With(path, value);
        Assert.Contains(expected, changed);
        Assert.Contains(kept, changed);
        Assert.Equal(value, StudyEdit.Of(changed).Value(path));
    }

    [Theory]
    [InlineData("a, b")]
    [InlineData("with # no comment")]
    [InlineData("\"quoted\"")]
    [InlineData("name: value")]
    [InlineData("- x")]
    [InlineData("back\\slash, and more")]
    public void Any_title_comes_back_as_it_was_given(string title)
    {
        var changed = StudyEdit.Of(template).With("title", title);
        Assert.Equal(title, StudyEdit.Of(changed).Value("title"));
        Assert.NotNull(StudyReader.Parse(System.Text.Encoding.UTF8.GetBytes(changed), "study.yaml").Study);
    }

    [Fact]
    public void Whatever_the_text_and_the_edit_nothing_throws()
    {
        string[] paths =
            ["title", "machine", "machine.masses.0.mass", "machine.masses.9.mass", "a.b.c", "", "wing.area", "limits.0.at_least", "."];
        var edits = Gen.Select(Gen.Int[0, template.Length - 1], Gen.Int[0, 40], Gen.Int[0, paths.Length - 1], Gen.String);
        edits.Sample((at, length, path, value) =>
        {
            var damaged = template.Remove(at, Math.Min(length, template.Length - at));
            var changed = StudyEdit.Of(damaged).With(paths[path], value);
            StudyReader.Parse(System.Text.Encoding.UTF8.GetBytes(changed), "study.yaml");
        }, iter: 500);
    }
}
