using System.Security.Cryptography;
using FrameOpt.Studies.Reading;

namespace FrameOpt.Studies;

/// <summary>Reads a study file (format 1). What a user wrote wrongly comes back as mistakes, all in one go, never as an exception.</summary>
public static class StudyReader
{
    /// <summary>Reads a file.</summary>
    /// <param name="path">Of the study file.</param>
    public static StudyReading Read(string path)
    {
        var findings = new Findings(StudyFile.NameOf(path));
        var bytes = StudyFile.Bytes(path, findings);
        return bytes is null ? new StudyReading(null, findings.Mistakes()) : Parse(bytes, findings);
    }

    /// <summary>Reads the content of a file.</summary>
    /// <param name="bytes">UTF-8 text, with or without a byte order mark.</param>
    /// <param name="fileName">For the mistakes to name.</param>
    public static StudyReading Parse(byte[] bytes, string fileName) => Parse(bytes, new Findings(fileName));

    private static StudyReading Parse(byte[] bytes, Findings findings)
    {
        var root = StudyFile.Text(bytes, findings) is { } text ? YamlText.Read(text, findings) : null;
        if (root is null)
            return new StudyReading(null, findings.Mistakes());
        var study = WholeStudyReader.Read(root, Convert.ToHexStringLower(SHA256.HashData(bytes)), findings);
        return new StudyReading(findings.HasMistakes ? null : study, findings.Mistakes());
    }
}
