using System.Text.Json;

namespace FrameOpt.Tests.Reliability;

/// <summary>The packages that a restore resolved, and the lists they are held against (tests/reliability).</summary>
internal static class Packages
{
    /// <summary>Every package of every project, those that others bring included.</summary>
    public static IReadOnlyList<(string Name, Version Version)> Resolved { get; } = [.. Assets().SelectMany(Of).Distinct().Order()];

    /// <summary>The lines of a list, without its header, as cells.</summary>
    public static IEnumerable<string[]> List(string name) =>
        File.ReadLines(Path.Combine(Repository.Root, "tests", "reliability", name)).Skip(1).Select(line => line.Split(','));

    /// <summary>The packages that stand on the list of those that are denied, each with its advisory.</summary>
    public static IEnumerable<string> Denied(IEnumerable<(string Name, Version Version)> packages) =>
        from package in packages
        from row in List("denied-packages.csv")
        where string.Equals(row[0], package.Name, StringComparison.OrdinalIgnoreCase)
            && package.Version >= Version.Parse(row[1]) && package.Version < Version.Parse(row[2])
        select $"{package.Name} {package.Version}: {row[3]}";

    private static IEnumerable<string> Assets() => new[] { "src", "tests" }
        .SelectMany(folder => Directory.GetDirectories(Path.Combine(Repository.Root, folder)))
        .Select(project => Path.Combine(project, "obj", "project.assets.json")).Where(File.Exists);

    private static IEnumerable<(string, Version)> Of(string assets)
    {
        using var json = JsonDocument.Parse(File.ReadAllText(assets));
        return
        [
            .. json.RootElement.GetProperty("libraries").EnumerateObject()
                .Where(library => library.Value.GetProperty("type").GetString() == "package")
                .Select(library => library.Name.Split('/')).Select(parts => (parts[0], Version.Parse(parts[1].Split('-')[0]))),
        ];
    }
}
