using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text.Json;
using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.Reports.Files;

/// <summary>The list of what FrameOpt wrote into a folder, with a checksum of each file: nothing else is ever replaced.</summary>
internal sealed class FolderManifest
{
    private const string Name = "manifest.json";
    private const int MaxNamed = 3;
    private const long MaxBytes = 1_000_000;

    private readonly ConcurrentDictionary<string, string> checksums = new(StringComparer.Ordinal);

    /// <summary>Adds a file that is written and closed.</summary>
    public void Add(string path) => checksums[Path.GetFileName(path)] = Checksum(path);

    /// <summary>Writes the list into the folder.</summary>
    public void Write(string folder)
    {
        using var stream = File.Create(Path.Combine(folder, Name));
        using (var json = JsonWriterExtensions.Writer(stream))
        {
            json.WriteStartObject();
            json.WriteString("tool", "FrameOpt");
            json.WriteObjects("files", checksums.OrderBy(file => file.Key, StringComparer.Ordinal), file =>
            {
                json.WriteString("name", file.Key);
                json.WriteString("sha256", file.Value);
            });
            json.WriteEndObject();
        }

        stream.Flush(flushToDisk: true);
    }

    /// <summary>What in a folder would be lost that FrameOpt did not write there: in words, the first few; empty when there is
    /// nothing.</summary>
    public static IReadOnlyList<string> Foreign(string folder)
    {
        var entries = Directory.EnumerateFileSystemEntries(folder).Order(StringComparer.Ordinal).ToList();
        if (entries.Count == 0)
            return [];
        if (Read(Path.Combine(folder, Name)) is not { } written)
            return [$"it contains no {Name}, so it is not a results folder"];
        var foreign = entries.Where(entry => Path.GetFileName(entry) != Name).Select(entry => Reason(entry, written)).OfType<string>()
            .Take(MaxNamed + 1).ToList();
        return foreign.Count <= MaxNamed ? foreign : [.. foreign.Take(MaxNamed), "and more"];
    }

    private static string? Reason(string entry, Dictionary<string, string> written)
    {
        var name = Path.GetFileName(entry);
        if (!written.TryGetValue(name, out var checksum) || !File.Exists(entry))
            return $"{name} was not written by FrameOpt";
        return Checksum(entry) == checksum ? null : $"{name} was changed after FrameOpt wrote it";
    }

    private static Dictionary<string, string>? Read(string path)
    {
        try
        {
            if (!File.Exists(path) || InputFile.ReadAll(path, MaxBytes) is not { } bytes)
                return null;
            using var document = JsonDocument.Parse(bytes);
            return document.RootElement.GetProperty("files").EnumerateArray().ToDictionary(
                file => file.GetProperty("name").GetString()!, file => file.GetProperty("sha256").GetString()!, StringComparer.Ordinal);
        }
        catch (Exception problem) when (problem is JsonException or InvalidOperationException or KeyNotFoundException or ArgumentException)
        {
            return null;
        }
    }

    private static string Checksum(string path)
    {
        using var stream = InputFile.Open(path);
        return Convert.ToHexStringLower(SHA256.HashData(stream));
    }
}
