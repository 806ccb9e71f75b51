namespace FrameOpt.Reports.Files;

/// <summary>One file that must not exist yet: whole at its place or not there at all.</summary>
public static class NewFile
{
    /// <summary>Writes the file under a temporary name beside its place, through to the disk, and moves it there.</summary>
    /// <param name="path">Of the file.</param>
    /// <param name="write">Writes it.</param>
    /// <exception cref="IOException">The file exists, or the disk refuses.</exception>
    /// <exception cref="UnauthorizedAccessException">The disk refuses.</exception>
    public static void Write(string path, Action<Stream> write)
    {
        var full = Path.GetFullPath(path);
        if (Path.Exists(full))
            throw new IOException($"{path} already exists");
        var (temporary, inUse) = FolderLeftovers.MarkInUse(full);
        try
        {
            FolderLeftovers.Clean(Path.GetDirectoryName(full)!, inUse);
            using (var stream = File.Create(temporary))
            {
                write(stream);
                stream.Flush(flushToDisk: true);
            }

            File.Move(temporary, full, overwrite: false);
            DurableDirectory.Flush(Path.GetDirectoryName(full)!);
        }
        finally
        {
            FolderLeftovers.Try(() => File.Delete(temporary));
            FolderLeftovers.Release(inUse);
        }
    }
}
