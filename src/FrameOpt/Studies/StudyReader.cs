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

    /// <summary>Reads one value for a geometry input by the rules of a study file, for example lateral_offset and 25 mm.</summary>
    /// <param name="name">One of <see cref="FactorNames"/>.</param>
    /// <param name="value">A number with its unit.</param>
    /// <param name="source">Where it was given, for the mistake to name: --set.</param>
    public static FactorReading ReadFactor(string name, string value, string source)
    {
        var findings = new Findings(source);
        var factor = FactorReader.ReadFixed(name, value, findings);
        return new FactorReading(factor, findings.Mistakes().FirstOrDefault());
    }

    private static StudyReading Parse(byte[] bytes, Findings findings)
    {
        var root = StudyFile.Text(bytes, findings) is { } text ? YamlText.Read(text, findings) : null;
        if (root is null)
            return new StudyReading(null, findings.Mistakes());
        var study = WholeStudyReader.Read(root, Convert.ToHexStringLower(SHA256.HashData(bytes)), findings);
        return new StudyReading(findings.HasMistakes ? null : study, findings.Mistakes());
    }
}
