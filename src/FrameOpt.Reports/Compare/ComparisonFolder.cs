using FrameOpt.Reports.Files;

namespace FrameOpt.Reports.Compare;

/// <summary>The folder a comparison writes: all of its files or none.</summary>
public static class ComparisonFolder
{
    private const string PageFile = "comparison.html";

    /// <summary>Why a comparison may not be written there, in words, or null when it may.</summary>
    public static string? WriteObstacle(string path, bool replace) => AtomicFolder.WriteObstacle(path, replace, PageFile);

    /// <summary>Writes comparison.html and comparison.csv.</summary>
    /// <param name="comparison">What is compared.</param>
    /// <param name="path">The folder; made with its parents.</param>
    /// <param name="replace">True to put it in the place of an older comparison.</param>
    /// <exception cref="IOException"><see cref="WriteObstacle"/> has a reason, or the disk refuses.</exception>
    public static void Write(Comparison comparison, string path, bool replace)
    {
        if (WriteObstacle(path, replace) is { } reason)
            throw new IOException(reason);
        AtomicFolder.Write(path, replace, folder =>
        {
            File.WriteAllText(Path.Combine(folder, PageFile), ComparisonPage.Of(comparison));
            using var table = File.Create(Path.Combine(folder, "comparison.csv"));
            ComparisonTable.Write(comparison, table);
        });
    }
}
