using FrameOpt.StudyFile.Syntax;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>A file that a command writes for the user: whole or not at all, and never over another. It is written beside its place and
/// moved there.</summary>
internal sealed class NewFile : IDisposable
{
    private readonly string path;
    private readonly string temporary;
    private bool isPlaced;

    private NewFile(string path) => (this.path, temporary) = (path, $"{path}.making-{Guid.NewGuid():N}");

    /// <summary>Why no file can be written to a path, in words, or null when one can. Ask before the work, not after it.</summary>
    /// <param name="path">Of the file; its folder exists.</param>
    public static string? Obstacle(string path)
    {
        var shown = VisibleText.Path(path);
        if (Directory.Exists(path) || Path.EndsInDirectorySeparator(path))
            return $"{shown} is a folder; name a file in it.";
        if (Path.Exists(path))
            return $"{shown} already exists and is not overwritten; choose another name.";
        var folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        if (!Directory.Exists(folder))
            return $"There is no folder {VisibleText.Path(folder)} for {shown}.";
        try
        {
            using var probe = new NewFile(path);
            using (new FileStream(probe.temporary, FileMode.CreateNew))
            {
                return null;
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return $"{shown} cannot be written: {VisibleText.Sentence(problem.Message)}";
        }
    }

    /// <summary>Writes the content, through to the disk, beside the file's place.</summary>
    /// <param name="path">Of the file in the end.</param>
    /// <param name="write">Writes the content.</param>
    /// <exception cref="IOException">The disk refuses.</exception>
    /// <exception cref="UnauthorizedAccessException">The disk refuses.</exception>
    public static NewFile Write(string path, Action<Stream> write)
    {
        var file = new NewFile(path);
        try
        {
            using var stream = new FileStream(file.temporary, FileMode.CreateNew, FileAccess.Write);
            write(stream);
            stream.Flush(flushToDisk: true);
            return file;
        }
        catch
        {
            file.Dispose();
            throw;
        }
    }

    /// <summary>Writes a file to its place, or says why not.</summary>
    /// <param name="path">Of the file.</param>
    /// <param name="write">Writes the content.</param>
    /// <param name="what">As the beginning of a sentence: "The runs".</param>
    /// <param name="terminal">For the reason.</param>
    public static bool TryWrite(string path, Action<Stream> write, string what, Terminal terminal)
    {
        try
        {
            using var written = Write(path, write);
            written.Place();
            return true;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            terminal.Error.WriteLine(File.Exists(path) ? $"{VisibleText.Path(path)} already exists; choose another name."
                : $"{what} could not be written to {VisibleText.Path(path)}: {problem.Message}");
            return false;
        }
    }

    /// <summary>Moves the file to its place.</summary>
    /// <exception cref="IOException">Something is there by now, or the disk refuses.</exception>
    public void Place()
    {
        File.Move(temporary, path, overwrite: false);
        isPlaced = true;
    }

    /// <summary>Removes what is not in its place.</summary>
    public void Dispose()
    {
        if (!isPlaced)
            File.Delete(temporary);
    }
}
