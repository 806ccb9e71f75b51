namespace FrameOpt.StudyFile;

/// <summary>A commented study with invented figures, to start from.</summary>
/// <param name="Name">As the command line and the key `template` name it.</param>
/// <param name="Purpose">In a few words.</param>
public sealed record StudyTemplate(string Name, string Purpose)
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<StudyTemplate> All { get; } =
    [
        new("custom-match", "one frame for one engine, one propeller, one pilot and one wing"),
        new("product-line", "frames for several pilots: the average customer, the others as variants, and a line of two for all"),
        new("rationale", "why the holes are where they are: an existing frame against what could be built"),
    ];

    /// <summary>The text of the study.</summary>
    public Stream Open() => typeof(StudyTemplate).Assembly.GetManifestResourceStream($"{Name}.yaml")!;
}
