using System.Text.RegularExpressions;

namespace FrameOpt.Tests.Architecture;

/// <summary>Words that the glossary says not to write are not written.</summary>
public class BannedWordsTests
{
    private const string Glossary = "docs/glossary.md";
    private const string Heading = "## Words we do not use";

    [Fact]
    public void No_file_uses_a_word_that_the_glossary_rules_out()
    {
        var banned = Banned().ToArray();
        Assert.NotEmpty(banned);
        var any = new Regex($@"(?<!\w)(?:{string.Join('|', banned.Select(Regex.Escape))})(?!\w)", RegexOptions.IgnoreCase);
        string[] written = [".cs", ".md", ".yaml", ".json", ".css", ".js", ".mjs", ".sh", ".csproj", ".props"];
        var files = SourceFiles.Under(written, "src", "tests", "docs", "studies").Where(file => file != Glossary)
            .Concat(["README.md", "DEVELOPERS.md"]);
        var found = (from file in files
                     from line in SourceFiles.Lines(file).Index()
                     from Match match in any.Matches(line.Item)
                     select $"{file}:{line.Index + 1}: {match.Value}").ToArray();
        Assert.True(found.Length == 0, $"{found.Length} words to replace, see {Glossary}:\n{string.Join('\n', found)}");
    }

    /// <summary>The second column of the table "write | not"; several words in a cell stand apart by commas.</summary>
    private static IEnumerable<string> Banned() => SourceFiles.Lines(Glossary)
        .SkipWhile(line => line != Heading).Skip(1).TakeWhile(line => !line.StartsWith("## "))
        .Where(line => line.StartsWith('|')).Skip(2)
        .SelectMany(line => line.Split('|')[2].Split(',')).Select(word => word.Trim()).Where(word => word != "");
}
