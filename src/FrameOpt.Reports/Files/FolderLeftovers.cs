using System.Text.RegularExpressions;

namespace FrameOpt.Reports.Files;

/// <summary>Temporary folders of results: their names, the mark that a run is still filling one, and what a killed run left.</summary>
internal static partial class FolderLeftovers
{
    private const string Making = ".making-";
    private const string Mark = ".in-use";
    private const string Old = ".old";

    /// <summary>A new name beside a folder.</summary>
    public static string TemporaryPath(string target) => $"{target}{Making}{Guid.NewGuid():N}";

    /// <summary>Where a folder waits that is being replaced, on a system that cannot exchange two folders at once.</summary>
    public static string OldPath(string temporary) => temporary + Old;

    /// <summary>Marks a temporary folder as in use; the mark goes with the process.</summary>
    public static FileStream MarkInUse(string temporary) => new(temporary + Mark, FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None);

    /// <summary>Takes the mark away.</summary>
    public static void Release(FileStream mark)
    {
        File.Delete(mark.Name);
        mark.Dispose();
    }

    /// <summary>Deletes the temporary folders of runs that were killed, and puts back results one of them was replacing.</summary>
    /// <param name="parent">Exists.</param>
    /// <returns>What was done, a sentence each.</returns>
    public static IReadOnlyList<string> Clean(string parent)
    {
        var done = new List<string>();
        foreach (var mark in Directory.EnumerateFiles(parent, $"*{Making}*{Mark}").Order(StringComparer.Ordinal))
        {
            if (!OurMark().IsMatch(mark) || TryTake(mark) is not { } taken)
                continue;
            using (taken)
            {
                var temporary = mark[..^Mark.Length];
                var target = temporary[..temporary.LastIndexOf(Making, StringComparison.Ordinal)];
                if (Directory.Exists(OldPath(temporary)) && !Directory.Exists(target))
                {
                    Directory.Move(OldPath(temporary), target);
                    done.Add($"The results in {target} were put back: a run was killed while it replaced them.");
                }
                else if (Directory.Exists(OldPath(temporary)))
                {
                    Directory.Delete(OldPath(temporary), recursive: true);
                }

                if (Directory.Exists(temporary))
                {
                    Directory.Delete(temporary, recursive: true);
                    done.Add($"{temporary}, left by a run that was killed, was deleted.");
                }

                File.Delete(mark);
            }
        }

        return done;
    }

    [GeneratedRegex(@"\.making-[0-9a-f]{32}\.in-use$")]
    private static partial Regex OurMark();

    /// <summary>The mark of a run that no longer exists, or null while the run does.</summary>
    private static FileStream? TryTake(string mark)
    {
        try
        {
            return new FileStream(mark, FileMode.Open, FileAccess.ReadWrite, FileShare.None);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
