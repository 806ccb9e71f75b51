namespace FrameOpt.Studies.Reading;

/// <summary>The keys of one section of a study file.</summary>
/// <param name="Path">Where the section stands: machine.propeller; empty for the file itself; [] for each item of a list.</param>
/// <param name="Keys">All it knows.</param>
internal sealed record SectionKeys(string Path, params Key[] Keys)
{
    public Key? Find(string name) => Array.Find(Keys, key => key.Name == name);
}
