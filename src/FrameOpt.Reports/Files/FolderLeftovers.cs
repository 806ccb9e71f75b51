using System.Text.RegularExpressions;

namespace FrameOpt.Reports.Files;

/// <summary>Temporary folders of results: their names, the mark that a run is still filling one, and what a killed run left.</summary>
internal static partial class FolderLeftovers
{
    private const string Making = ".making-";
    private const string Mark = ".in-use";
    private const string Old = ".old";
    private const int MaxAttempts = 5;

    private static string TemporaryPath(string target) => $"{target}{Making}{Guid.NewGuid():N}";

    /// <summary>Where a folder waits that is being replaced, on a system that cannot exchange two folders at once.</summary>
    public static string OldPath(string temporary) => temporary + Old;

    /// <summary>Finds a new name beside a folder or file and marks it as in use; the mark goes with the process.</summary>
    /// <returns>The name and its mark.</returns>
    public static (string Path, FileStream Mark) MarkInUse(string target)
    {
        for (var attempt = 1; ; attempt++)
        {
            var path = TemporaryPath(target);
            try
            {
                var mark = new FileStream(path + Mark, FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None);
                if (File.Exists(mark.Name))
                    return (path, mark);
                mark.Dispose();
            }
            catch (IOException) when (attempt < MaxAttempts && Directory.Exists(Path.GetDirectoryName(path)))
            {
                // Between its making and its locking another run took the mark for one of a killed run: the next name is tried.
            }
        }
    }

    /// <summary>Takes the mark away.</summary>
    public static void Release(FileStream mark)
    {
        using (mark)
            Try(() => File.Delete(mark.Name));
    }

    /// <summary>Does something to a file or folder, or gives the system's reason why not.</summary>
    public static string? Try(Action act)
    {
        try
        {
            act();
            return null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return problem.Message;
        }
    }

    /// <summary>Deletes the temporary folders of runs that were killed, and puts back results one of them was replacing.</summary>
    /// <param name="parent">Exists.</param>
    /// <param name="own">The mark of this run in that folder: where even that can be taken twice, the disk has no locks and nobody knows
    /// which run is alive, so that nothing is deleted.</param>
    /// <returns>What was done, a sentence each.</returns>
    public static IReadOnlyList<string> Clean(string parent, FileStream own)
    {
        var done = new List<string>();
        using (var twice = TryTake(own.Name))
        {
            if (twice is not null)
                return done;
        }

        foreach (var mark in Directory.EnumerateFiles(parent, $"*{Making}*{Mark}").Order(StringComparer.Ordinal))
        {
            if (!OurMark().IsMatch(mark) || TryTake(mark) is not { } taken)
                continue;
            using (taken)
            {
                var temporary = mark[..^Mark.Length];
                if (Try(() => done.AddRange(CleanOne(temporary))) is { } refused)
                    done.Add($"{temporary}, left by a run that was killed, could not be deleted: {refused}");
                else
                    Try(() => File.Delete(mark));
            }
        }

        return done;
    }

    private static IEnumerable<string> CleanOne(string temporary)
    {
        var target = temporary[..temporary.LastIndexOf(Making, StringComparison.Ordinal)];
        if (Directory.Exists(OldPath(temporary)) && !Directory.Exists(target))
        {
            Directory.Move(OldPath(temporary), target);
            yield return $"The results in {target} were put back: a run was killed while it replaced them.";
        }
        else if (Directory.Exists(OldPath(temporary)))
        {
            Directory.Delete(OldPath(temporary), recursive: true);
        }

        if (File.Exists(temporary))
            File.Delete(temporary);
        if (!Directory.Exists(temporary))
            yield break;
        Directory.Delete(temporary, recursive: true);
        yield return $"{temporary}, left by a run that was killed, was deleted.";
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
