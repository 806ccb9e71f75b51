using System.Security.Cryptography;
using System.Text;

namespace FrameOpt.StudyFile.Syntax;

/// <summary>Reads a path to text and refuses what cannot be a study file before parsing.</summary>
internal static class StudySource
{
    /// <summary>Largest study file, in bytes.</summary>
    public const int MaxBytes = 1_000_000;

    public static string NameOf(string path) => VisibleText.Quoted(
        Path.GetFileName(path) is { Length: > 0 } name ? name : string.IsNullOrWhiteSpace(path) ? "study" : path);

    /// <summary>The bytes of a file, or null after an error.</summary>
    public static byte[]? Bytes(string path, DiagnosticBag diagnostics)
    {
        if (string.IsNullOrWhiteSpace(path))
        {
            diagnostics.AddForFile("The name of the study file is empty.", "Name it, for example study.yaml.");
            return null;
        }

        if (Directory.Exists(path))
        {
            diagnostics.AddForFile("This is a folder, not a study file.",
                $"Name the file in it, for example {Path.Combine(path, "study.yaml")}.");
            return null;
        }

        if (!File.Exists(path))
        {
            diagnostics.AddForFile("There is no such file.", "Check the name and the folder.");
            return null;
        }

        try
        {
            using var stream = InputFile.Open(path);
            var buffer = new byte[MaxBytes + 1];
            var length = stream.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false);
            return buffer[..length];
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            diagnostics.AddForFile($"The file cannot be read: {problem.Message.TrimEnd('.')}.",
                "Check that it is a file, that you may read it and that no other program holds it.");
            return null;
        }
    }

    /// <summary>The text of a file without its byte order mark, or null after an error.</summary>
    public static string? Text(byte[] bytes, DiagnosticBag diagnostics)
    {
        if (bytes.Length > MaxBytes)
        {
            diagnostics.AddForFile("The file is larger than 1 MB; a study takes a few kB.", "Check that this is the study file.");
            return null;
        }

        if (bytes.AsSpan().IndexOf((byte)0) >= 0)
        {
            diagnostics.AddForFile("This is not a text file in UTF-8.", "Save the study as plain text, encoding UTF-8.");
            return null;
        }

        if (TextBytes.NotUtf8(bytes) is { } line)
        {
            diagnostics.Add(line, 1, "", "A character here is not in UTF-8.", "Save the study as plain text, encoding UTF-8.");
            return null;
        }

        var text = Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF');
        if (!string.IsNullOrWhiteSpace(text))
            return text;
        diagnostics.AddForFile("The file is empty.", "Begin with the line `format: 1`.");
        return null;
    }
}

/// <summary>Reads a file that a study names, from the study's own folder on.</summary>
internal static class ReferencedFile
{
    /// <summary>The bytes of the file, or null after an error.</summary>
    /// <param name="at">Where the study names it.</param>
    /// <param name="name">As written, relative to the study's folder.</param>
    /// <param name="largestBytes">A larger file is refused before it is read.</param>
    /// <param name="diagnostics">Takes the errors, and the file's hash.</param>
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

            if (InputFile.ReadAll(file.FullName, largestBytes) is not { } bytes)
            {
                diagnostics.Add(at, FormattableString.Invariant($"The file `{name}` is larger than {largestBytes / 1_000_000} MB."),
                    "Check that it is the right one, or split it.");
                return null;
            }

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
