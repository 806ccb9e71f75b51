namespace FrameOpt.Studies.Reading;

/// <summary>A key a section knows.</summary>
/// <param name="Name">As written.</param>
/// <param name="Value">A value that would be right, for messages.</param>
/// <param name="IsRequired">True when it must be there.</param>
internal sealed record Key(string Name, string Value, bool IsRequired)
{
    public string Example => $"{Name}: {Value}";

    public static Key Must(string name, string value) => new(name, value, true);

    public static Key May(string name, string value) => new(name, value, false);
}
