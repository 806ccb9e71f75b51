namespace FrameOpt.Reports.Files;

/// <summary>A folder of results while it is being filled: under a temporary name beside its place, and moved there when it is complete. All
/// files or none, and at no moment neither the old results nor the new ones.</summary>
public sealed class ResultsFolder : IDisposable
{
    private readonly bool replace;
    private readonly FileStream inUse;
    private readonly FolderManifest manifest = new();
    private bool isComplete;

    private ResultsFolder(string target, bool replace, string path, FileStream inUse, IReadOnlyList<string> leftovers)
    {
        (Target, this.replace, Path, this.inUse, Leftovers) = (target, replace, path, inUse, leftovers);
    }

    /// <summary>Where the results go in the end, as the user wrote it.</summary>
    public string Target { get; }

    /// <summary>Where the files are written until the folder is complete.</summary>
    public string Path { get; }

    /// <summary>What was found of runs that were killed, and what was done about it, a sentence each.</summary>
    public IReadOnlyList<string> Leftovers { get; }

    /// <summary>Why results may not be written to a folder, in words, or null when they may. Ask before the work, not after it.</summary>
    /// <param name="path">Where they should go.</param>
    /// <param name="replace">True when older results there may be replaced.</param>
    public static string? WriteObstacle(string path, bool replace)
    {
        if (File.Exists(path))
            return $"{path} is a file, not a results folder";
        if (!Directory.Exists(path))
            return null;
        if (!replace)
            return $"{path} already exists; choose another folder or use --replace";
        return FolderManifest.Foreign(path) is not { Count: > 0 } foreign ? null
            : $"{path} is not replaced: {string.Join("; ", foreign)}. Move that away or choose another folder";
    }

    /// <summary>Makes the temporary folder, which shows at once whether the place can be written to.</summary>
    /// <param name="target">Where the results go in the end; its parents are made.</param>
    /// <param name="replace">True to replace results that are there.</param>
    /// <exception cref="IOException"><see cref="WriteObstacle"/> has a reason, or the disk refuses.</exception>
    /// <exception cref="UnauthorizedAccessException">The disk refuses.</exception>
    public static ResultsFolder Begin(string target, bool replace)
    {
        if (WriteObstacle(target, replace) is { } reason)
            throw new IOException(reason);
        var full = System.IO.Path.TrimEndingDirectorySeparator(System.IO.Path.GetFullPath(target));
        var parent = System.IO.Path.GetDirectoryName(full) ?? throw new IOException($"{target} cannot be replaced");
        Directory.CreateDirectory(parent);
        var (path, inUse) = FolderLeftovers.MarkInUse(full);
        try
        {
            var leftovers = FolderLeftovers.Clean(parent, inUse);
            Directory.CreateDirectory(path);
            return new ResultsFolder(target, replace, path, inUse, leftovers);
        }
        catch
        {
            FolderLeftovers.Release(inUse);
            throw;
        }
    }

    /// <summary>Writes one file, through to the disk. May be called for several files at once.</summary>
    /// <param name="name">Of the file, without a folder.</param>
    /// <param name="write">Writes it; the stream is closed afterwards.</param>
    public void Write(string name, Action<Stream> write)
    {
        using (var stream = File.Create(System.IO.Path.Combine(Path, name)))
        {
            write(stream);
            stream.Flush(flushToDisk: true);
        }

        manifest.Add(System.IO.Path.Combine(Path, name));
    }

    /// <summary>Takes a file into the results that was written into <see cref="Path"/> bit by bit and is closed.</summary>
    public void Include(string name) => manifest.Add(System.IO.Path.Combine(Path, name));

    /// <summary>Puts the folder in its place. When the place was taken since <see cref="Begin"/>, by a folder that may not be replaced, the
    /// results go beside it.</summary>
    /// <returns>Where they are.</returns>
    /// <exception cref="IOException">The disk refuses.</exception>
    public string Complete()
    {
        manifest.Write(Path);
        DurableDirectory.Flush(Path);
        var place = Target;
        while (true)
        {
            place = WriteObstacle(place, replace) is null ? place : RunFolder.FirstFreePath(place);
            try
            {
                if (!Directory.Exists(place))
                {
                    Directory.Move(Path, place);
                    break;
                }

                DurableDirectory.Exchange(Path, place);
                if (FolderManifest.Foreign(Path).Count == 0)
                    break;

                // Somebody saved a file there in this moment: the folder goes back, and the results go beside it.
                DurableDirectory.Exchange(Path, place);
            }
            catch (IOException) when (Directory.Exists(place) && !replace)
            {
                // Another run took the name in this moment: the next free one is tried.
            }
        }

        DurableDirectory.Flush(System.IO.Path.GetDirectoryName(Path)!);
        isComplete = true;
        Remove();
        return place;
    }

    /// <summary>Removes what is not complete.</summary>
    public void Dispose()
    {
        if (!isComplete)
            Remove();
    }

    /// <summary>Removes the temporary folder: incomplete results, or the ones that were replaced.</summary>
    private void Remove()
    {
        FolderLeftovers.Try(() =>
        {
            if (Directory.Exists(Path))
                Directory.Delete(Path, recursive: true);
        });
        FolderLeftovers.Release(inUse);
    }
}
