namespace FrameOpt.Reports.Files;

/// <summary>Fills a folder under a temporary name and moves it into place when it is complete: all files or none.</summary>
public static class AtomicFolder
{
    /// <summary>Why a folder may not be written there, in words, or null when it may.</summary>
    /// <param name="path">Where it should go.</param>
    /// <param name="replace">True when an older one there may be lost.</param>
    /// <param name="markerFile">The file that every folder of this kind holds: no other folder is replaced.</param>
    public static string? WriteObstacle(string path, bool replace, string markerFile)
    {
        if (File.Exists(path))
            return $"{path} is a file, not a results folder";
        if (!Directory.Exists(path))
            return null;
        if (!replace)
            return $"{path} already exists; choose another folder or use --replace";
        var isEmpty = !Directory.EnumerateFileSystemEntries(path).Any();
        return isEmpty || File.Exists(Path.Combine(path, markerFile))
            ? null
            : $"{path} contains no {markerFile}, so it is not a results folder and is not replaced; choose another folder";
    }

    /// <summary>Fills a temporary sibling of the target, then gives it the target's name.</summary>
    /// <param name="target">Must not exist, unless it is to be replaced.</param>
    /// <param name="replace">True to replace an older folder, which is deleted once the new one is in place.</param>
    /// <param name="write">Writes into the folder it is given. When it throws, the target is unchanged and nothing is left beside
    /// it.</param>
    /// <exception cref="IOException">The target exists and is not to be replaced, or the disk refuses.</exception>
    public static void Write(string target, bool replace, Action<string> write)
    {
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(target));
        var parent = Path.GetDirectoryName(full) ?? throw new IOException($"{target} cannot be replaced");
        Directory.CreateDirectory(parent);
        var temporary = SiblingPath(full, "making");
        Directory.CreateDirectory(temporary);
        try
        {
            write(temporary);
            MoveIntoPlace(temporary, full, replace);
        }
        catch
        {
            if (Directory.Exists(temporary))
                Directory.Delete(temporary, recursive: true);
            throw;
        }
    }

    /// <summary>Writes one file of a folder.</summary>
    internal static void WriteFile(string folder, string name, Action<Stream> write)
    {
        using var stream = File.Create(Path.Combine(folder, name));
        write(stream);
    }

    private static void MoveIntoPlace(string temporary, string target, bool replace)
    {
        if (!replace || !Directory.Exists(target))
        {
            Directory.Move(temporary, target);
            return;
        }

        var old = SiblingPath(target, "old");
        Directory.Move(target, old);
        try
        {
            Directory.Move(temporary, target);
        }
        catch
        {
            Directory.Move(old, target);
            throw;
        }

        Directory.Delete(old, recursive: true);
    }

    private static string SiblingPath(string target, string kind) => $"{target}.{kind}-{Guid.NewGuid():N}";
}
