using System.Security.Cryptography;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.StudyFile;

/// <summary>Reads a study file (format 1). User errors are returned all at once as diagnostics, never as an exception.</summary>
public static class StudyReader
{
    /// <summary>Reads a file.</summary>
    /// <param name="path">Of the study file.</param>
    /// <param name="variants">The variants wanted, combined in order, each a name or a choice of an option of the line ("engine=big");
    /// none for the file as it stands. The others are checked all the same.</param>
    public static StudyReadResult Read(string path, params IReadOnlyList<string> variants)
    {
        var folder = string.IsNullOrWhiteSpace(path) ? null : Path.GetDirectoryName(Path.GetFullPath(path));
        var diagnostics = new DiagnosticBag(StudySource.NameOf(path), folder);
        var bytes = StudySource.Bytes(path, diagnostics);
        return bytes is null ? new StudyReadResult(null, diagnostics.Diagnostics()) : Parse(bytes, variants, diagnostics);
    }

    /// <summary>Reads the content of a file.</summary>
    /// <param name="bytes">UTF-8 text, with or without a byte order mark.</param>
    /// <param name="fileName">For the errors to name.</param>
    /// <param name="variants">As for <see cref="Read"/>.</param>
    public static StudyReadResult Parse(byte[] bytes, string fileName, params IReadOnlyList<string> variants) =>
        Parse(bytes, variants, new DiagnosticBag(fileName));

    /// <summary>Reads the content of a file that is not written yet, as if it stood in a folder.</summary>
    /// <param name="bytes">UTF-8 text, with or without a byte order mark.</param>
    /// <param name="fileName">For the errors to name.</param>
    /// <param name="folder">Where the files lie that it names; null for none.</param>
    public static StudyReadResult ParseIn(byte[] bytes, string fileName, string? folder) =>
        Parse(bytes, [], new DiagnosticBag(fileName, folder));

    private static StudyReadResult Parse(byte[] bytes, IReadOnlyList<string> asked, DiagnosticBag diagnostics)
    {
        var root = StudySource.Text(bytes, diagnostics) is { } text ? YamlText.Read(text, diagnostics) : null;
        if (root is null)
            return new StudyReadResult(null, diagnostics.Diagnostics());
        var variants = VariantReader.Of(root, diagnostics);
        string[] names = [.. variants.Select(entry => entry.Key.Text)];
        var hash = Convert.ToHexStringLower(SHA256.HashData(bytes));
        var study = StudySectionsReader.Read(root, hash, diagnostics);
        var (chosen, warnings, ofVariants) = (root, diagnostics.Warnings, new List<Warning>());
        foreach (var entry in variants)
        {
            var changed = new DiagnosticBag(diagnostics.File, diagnostics.Folder, diagnostics.Cache);
            StudySectionsReader.Read(VariantReader.Apply((Node.Map)root, entry, changed), hash, changed);
            diagnostics.AddNew(changed, $"In variant `{entry.Key.Excerpt}`: ");
            ofVariants.AddRange(diagnostics.NewWarnings(changed, $"in variant `{entry.Key.Excerpt}`"));
        }

        if (asked.Any(name => name.Length > 0) && root is Node.Map map)
        {
            var combined = CombinedVariants.Of(map, variants, asked.Where(name => name.Length > 0), diagnostics);
            if (!diagnostics.HasErrors)
                (study, warnings, chosen) = combined.Read(map, hash, diagnostics);
        }

        if (diagnostics.HasErrors)
            return new StudyReadResult(null, diagnostics.Diagnostics());
        var invented = new DiagnosticBag(diagnostics.File);
        var left = TemplateFigures.Check((Node.Map)Reasons.Take(chosen, invented).Root, invented);
        warnings = [.. invented.Warnings, .. warnings];
        return new StudyReadResult(study! with
        {
            Warnings = [.. warnings.Select(warning => warning.Text)],
            Variants = names,
            VariantWarnings = [.. ofVariants.Select(warning => warning.Text)],
        }, [])
        {
            Warnings = [.. warnings, .. ofVariants],
            Invented = left,
        };
    }
}

/// <summary>Result of reading a study file: the study, or diagnostics.</summary>
/// <param name="Study">The study, or null when there are errors.</param>
/// <param name="Diagnostics">Every error found, in the order of the file's lines; empty when the study can be run.</param>
public sealed record StudyReadResult(Study? Study, IReadOnlyList<Diagnostic> Diagnostics)
{
    /// <summary>What looks odd, with its place: the warnings of the study, then those of its variants.</summary>
    public IReadOnlyList<Warning> Warnings { get; init; } = [];

    /// <summary>Each figure that is still that of the template which the file names.</summary>
    public IReadOnlyList<Warning> Invented { get; init; } = [];
}
