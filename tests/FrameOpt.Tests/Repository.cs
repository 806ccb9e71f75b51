using FrameOpt.Studies;

namespace FrameOpt.Tests;

/// <summary>The checkout the tests run from.</summary>
public static class Repository
{
    public static string Root { get; } = Find();

    public static string Study(string name) => Path.Combine(Root, "studies", name, "study.yaml");

    public static string Template(string name) => Path.Combine(Root, "src", "FrameOpt", "StudyFile", "Templates", $"{name}.yaml");

    public static IEnumerable<string> Studies => Directory.GetDirectories(Path.Combine(Root, "studies")).Select(Path.GetFileName).Order()!;

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "FrameOpt.sln")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("the tests run inside a checkout");
    }
}
