using System.Text;
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

    [Theory]
    [InlineData("diameter: 1.25 m", "diameter: 2.5 m", "machine.propeller.diameter", "the diameter of the propeller is 2.5 m")]
    [InlineData("mass: 76 kg", "mass: 17 kg", "machine.masses.0.mass", "the mass of the pilot's body is 17 kg")]
    [InlineData("area: 24 m²", "area: 6 m²", "wing.area", "the wing loading (all-up mass / area) is")]
    [InlineData("diameter: 1.25 m", "diameter: 1.25 kg", "machine.propeller.diameter", "1.25 kg is a mass")]
    [InlineData("  span: 11 m", "  # span", "wing.span", "wing.span is missing.")]
    [InlineData("span: 11 m", "span:", "wing.span", "wing.span has no value.")]
    [InlineData("span: 11 m", "span: 11 m", "wing.span", "The template's figure, which is invented.")]
    public void What_is_said_of_a_value_is_said_at_its_place(string piece, string other, string path, string said)
    {
        var text = File.ReadAllText(Repository.Template("custom-match")).ReplaceLineEndings("\n");
        Assert.Contains(piece, text);
        text = text.Replace(piece, other);
        var read = StudyReader.Parse(Encoding.UTF8.GetBytes(text), "study.yaml");
        var places = StudyEdit.Of(text).Places(path);
        var warnings = read.Warnings.Concat(read.Invented).Where(one => places.Contains((one.Line, one.Column)));
        var errors = read.Diagnostics.Where(one => one.MissingPath == path || places.Contains((one.Line, one.Column)));
        Assert.Contains(warnings.Select(one => one.Message).Concat(errors.Select(one => one.Message)),
            message => message.Contains(said, StringComparison.Ordinal));
    }
}
