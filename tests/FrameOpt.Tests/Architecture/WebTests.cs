using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace FrameOpt.Tests.Architecture;

/// <summary>The browser's project stands on the library and the reports, nothing stands on it, and its folders depend one way. It is not
/// built where these tests run, so they read its text: a file is named after what it declares.</summary>
public class WebTests
{
    private const string Web = "src/FrameOpt.Web";

    /// <summary>What each folder may use besides itself.</summary>
    private static readonly Dictionary<string, string[]> mayUse = new()
    {
        ["Packing"] = [],
        ["Language"] = [],
        ["State"] = [],
        ["Pictures"] = ["Language", "State"],
        ["Parts"] = ["Language", "State", "Pictures"],
        ["Screens"] = ["Language", "State", "Pictures", "Parts", "Work"],
        ["Work"] = ["Language", "State"],
    };

    public static TheoryData<string> Folders => [.. mayUse.Keys];

    [Theory]
    [MemberData(nameof(Folders))]
    public void A_folder_uses_only_the_folders_below_it(string folder)
    {
        var above = mayUse.Keys.Where(other => other != folder && !mayUse[folder].Contains(other)).ToList();
        var names = above.SelectMany(Files).Select(file => Path.GetFileNameWithoutExtension(file)).Append("Words")
            .Where(name => name != "Words" || above.Contains("Language"));
        var any = string.Join('|', names);
        var use = new Regex($@"FrameOpt\.Web\.({string.Join('|', above)})\b|<({any})\b|\b({any})\.\w");
        var wrong = from file in Files(folder)
                    from line in SourceFiles.Lines(file)
                    where !line.TrimStart().StartsWith("//") && use.IsMatch(line)
                    select $"{file}: {line.Trim()}";
        Assert.Empty(wrong);
    }

    [Fact]
    public void Every_folder_has_its_row() => Assert.Equal(mayUse.Keys.Order(), SourceFiles.Under([".cs", ".razor"], Web)
        .Select(file => file.Split('/')).Where(parts => parts.Length == 4).Select(parts => parts[2]).Distinct().Order());

    [Fact]
    public void It_stands_on_the_reports_and_nothing_stands_on_it()
    {
        Assert.Equal(["FrameOpt.Reports"], References($"{Web}/FrameOpt.Web.csproj"));
        Assert.DoesNotContain("FrameOpt.Web", SourceFiles.Under([".csproj"], "src", "tests").SelectMany(References));
    }

    private static IEnumerable<string> References(string project) =>
        XDocument.Load(Path.Combine(Repository.Root, project)).Descendants("ProjectReference")
            .Select(reference => Path.GetFileNameWithoutExtension(((string)reference.Attribute("Include")!).Replace('\\', '/')));

    private static IEnumerable<string> Files(string folder) => SourceFiles.Under([".cs", ".razor"], $"{Web}/{folder}");
}
