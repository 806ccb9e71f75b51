namespace FrameOpt.StudyFile.Values;

/// <summary>The keys of one section of a study file.</summary>
/// <param name="Path">Where the section stands: machine.propeller; empty for the file itself; [] for each item of a list.</param>
/// <param name="Keys">All keys of the section.</param>
internal sealed record SectionKeys(string Path, params Key[] Keys)
{
    /// <summary>Keys of earlier versions, with what to do about each.</summary>
    public IReadOnlyList<(string Name, string Fix)> Replaced { get; init; } = [];

    public Key? Find(string name) => Array.Find(Keys, key => key.Name == name);
}

/// <summary>A key a section knows.</summary>
/// <param name="Name">As written.</param>
/// <param name="Value">A value that would be right, for messages.</param>
/// <param name="IsRequired">True when it must be there.</param>
internal sealed record Key(string Name, string Value, bool IsRequired)
{
    public string Example => $"{Name}: {Value}";

    public static Key Required(string name, string value) => new(name, value, true);

    public static Key Optional(string name, string value) => new(name, value, false);
}
