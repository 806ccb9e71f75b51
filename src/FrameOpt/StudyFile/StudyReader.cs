using System.Security.Cryptography;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.StudyFile;

/// <summary>Reads a study file (format 1). What a user wrote wrongly comes back as mistakes, all in one go, never as an exception.</summary>
public static class StudyReader
{
    /// <summary>Reads a file.</summary>
    /// <param name="path">Of the study file.</param>
    /// <param name="variant">The variant wanted, or nothing for the file as it stands. The others are checked all the same.</param>
    public static StudyReading Read(string path, string variant = "")
    {
        var findings = new Findings(StudyText.NameOf(path), Path.GetDirectoryName(Path.GetFullPath(path)));
        var bytes = StudyText.Bytes(path, findings);
        return bytes is null ? new StudyReading(null, findings.Mistakes()) : Parse(bytes, variant, findings);
    }

    /// <summary>Reads the content of a file.</summary>
    /// <param name="bytes">UTF-8 text, with or without a byte order mark.</param>
    /// <param name="fileName">For the mistakes to name.</param>
    /// <param name="variant">As for <see cref="Read"/>.</param>
    public static StudyReading Parse(byte[] bytes, string fileName, string variant = "") => Parse(bytes, variant, new Findings(fileName));

    private static StudyReading Parse(byte[] bytes, string variant, Findings findings)
    {
        var root = StudyText.Text(bytes, findings) is { } text ? YamlText.Read(text, findings) : null;
        if (root is null)
            return new StudyReading(null, findings.Mistakes());
        var variants = VariantReader.Of(root, findings);
        string[] names = [.. variants.Select(entry => entry.Key.Text)];
        if (variant.Length > 0 && !names.Contains(variant))
            findings.MistakeOfFile($"This study has no variant `{variant}`.", NearestName.Of(variant, names) is { } near
                ? $"Did you mean `{near}`?"
                : names.Length > 0 ? $"Its variants are {string.Join(", ", names)}." : "It has none: leave --variant out.");
        var hash = Convert.ToHexStringLower(SHA256.HashData(bytes));
        var study = WholeStudyReader.Read(root, hash, findings);
        foreach (var entry in variants)
        {
            var changed = new Findings(findings.File, findings.Folder);
            var other = WholeStudyReader.Read(VariantReader.Apply((Node.Map)root, entry, changed), hash, changed);
            if (entry.Key.Text == variant && other is not null)
                study = other with { Variant = variant };
            findings.TakeNew(changed, $"In variant `{entry.Key.Found}`: ");
        }

        return new StudyReading(findings.HasMistakes ? null : study! with { Variants = names }, findings.Mistakes());
    }
}

/// <summary>What came of reading a study file.</summary>
/// <param name="Study">The study, or null when there are mistakes.</param>
/// <param name="Mistakes">Every mistake found, in the order of the file's lines; empty when the study can be run.</param>
public sealed record StudyReading(Study? Study, IReadOnlyList<Mistake> Mistakes);
