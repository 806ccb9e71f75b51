using System.Security.Cryptography;

namespace FrameOpt.StudyFile.Syntax;

/// <summary>Reads a file that a study names, from the study's own folder on.</summary>
internal static class ReferencedFile
{
    /// <summary>The bytes of the file, or null after a mistake.</summary>
    /// <param name="at">Where the study names it.</param>
    /// <param name="name">As written, relative to the study's folder.</param>
    /// <param name="largestBytes">A larger file is refused before it is read.</param>
    /// <param name="diagnostics">Takes mistakes, and the file's hash.</param>
    public static byte[]? Bytes(Node at, string name, long largestBytes, DiagnosticBag diagnostics)
    {
        if (diagnostics.Folder is not { } folder)
        {
            diagnostics.Add(at, $"The file `{name}` cannot be looked for: this study was not read from a folder.",
                "Save the study as a file and name it.");
            return null;
        }

        try
        {
            var file = new FileInfo(Path.Combine(folder, name));
            if (!file.Exists)
            {
                diagnostics.Add(at, $"There is no file `{name}` beside the study.", $"It is looked for as {file.FullName}.");
                return null;
            }

            if (file.Length > largestBytes)
            {
                diagnostics.Add(at, FormattableString.Invariant($"The file `{name}` is larger than {largestBytes / 1_000_000} MB."),
                    "Check that it is the right one, or split it.");
                return null;
            }

            var bytes = File.ReadAllBytes(file.FullName);
            diagnostics.AddFile(name, Convert.ToHexStringLower(SHA256.HashData(bytes)));
            return bytes;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException)
        {
            diagnostics.Add(at, $"The file `{name}` cannot be read.", "Check the name, and that you may read it.");
            return null;
        }
    }
}
