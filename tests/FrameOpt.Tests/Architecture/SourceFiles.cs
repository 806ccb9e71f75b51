namespace FrameOpt.Tests.Architecture;

/// <summary>The files of the checkout that people write, paths relative to its root with forward slashes.</summary>
internal static class SourceFiles
{
    private static readonly string[] made = ["bin", "obj", "results", "node_modules", "TestResults", "BenchmarkDotNet.Artifacts"];

    /// <param name="ends">How the names of the files end.</param>
    /// <param name="folders">Folders below the root, each with all below it.</param>
    public static IEnumerable<string> Under(string[] ends, params string[] folders) => folders
        .SelectMany(folder => Files(new DirectoryInfo(Path.Combine(Repository.Root, folder))))
        .Where(file => ends.Any(file.Name.EndsWith))
        .Select(file => Path.GetRelativePath(Repository.Root, file.FullName).Replace('\\', '/')).Order(StringComparer.Ordinal);

    public static string[] Lines(string path) => File.ReadAllLines(Path.Combine(Repository.Root, path));

    private static IEnumerable<FileInfo> Files(DirectoryInfo folder) =>
        folder.GetDirectories().Where(inner => !made.Contains(inner.Name)).SelectMany(Files).Concat(folder.GetFiles());
}
