using FrameOpt.StudyFile;

namespace FrameOpt.Web.State;

/// <summary>Puts a study and the files beside it where the reader of the command line looks for them.</summary>
public static class StudyFiles
{
    /// <summary>Where a study and what it reads lie.</summary>
    public static string Folder { get; } = Path.Combine(Path.GetTempPath(), "study");

    /// <summary>Reads a study as the command line reads it.</summary>
    public static StudyReadResult Read(StoredStudy study) => Read(study.Name, study.Text, study.Beside, study.Variant);

    /// <summary>The same from its parts.</summary>
    /// <param name="name">Of the study file.</param>
    /// <param name="text">Of the study file.</param>
    /// <param name="beside">Files beside it, by name.</param>
    /// <param name="variant">Or nothing.</param>
    public static StudyReadResult Read(string name, string text, IReadOnlyDictionary<string, string> beside, string variant)
    {
        Directory.CreateDirectory(Folder);
        foreach (var (other, content) in beside)
            File.WriteAllText(Path.Combine(Folder, Path.GetFileName(other)), content);
        var path = Path.Combine(Folder, Path.GetFileName(name));
        File.WriteAllText(path, text);
        var read = StudyReader.Read(path, variant);
        // A variant that the text no longer has hides nothing else.
        return read.Study is null && variant.Length > 0 && StudyReader.Read(path) is { Study: not null } plain ? plain : read;
    }
}
