namespace FrameOpt.StudyFile.Values;

/// <summary>The keys of one section of a study file.</summary>
/// <param name="Path">Where the section stands: machine.propeller; empty for the file itself; [] for each item of a list.</param>
/// <param name="Keys">All keys of the section.</param>
internal sealed record SectionKeys(string Path, params Key[] Keys)
{
    /// <summary>Keys of earlier versions, with what to do about each.</summary>
    public IReadOnlyList<(string Name, string Fix)> Replaced { get; init; } = [];

    /// <summary>What a section must have, or else what it may have, in words.</summary>
    public string Names => Key.List([.. (Keys.Any(key => key.IsRequired) ? Keys.Where(key => key.IsRequired) : Keys)
        .Select(key => key.Name)]);

    public Key? Find(string name) => Array.Find(Keys, key => key.Name == name);
}

/// <summary>A key a section knows.</summary>
/// <param name="Name">As written.</param>
/// <param name="Value">A value that would be accepted.</param>
/// <param name="IsRequired">True when it must be there.</param>
internal sealed record Key(string Name, string Value, bool IsRequired)
{
    public string Example => $"{Name}: {Value}";

    /// <summary>Another key of the section that may stand in place of a required one.</summary>
    public string? StandIn { get; init; }

    /// <summary>What to write, in words. A message never offers a measure that somebody could copy instead of taking it.</summary>
    public string Wanted { get => field ?? InWords(Value); init; } = null!;

    /// <summary>True when the value is right in every study, so that a message may offer it.</summary>
    public bool IsReady { get; init; }

    /// <summary>How to correct a value that is empty or not of the right kind.</summary>
    public string Fix => IsReady ? $"Write for example `{Example}`." : $"Write {Wanted}.";

    public static Key Required(string name, string value) => new(name, value, true);

    public static Key Required(string name, string value, string wanted) => new(name, value, true) { Wanted = wanted };

    public static Key Optional(string name, string value) => new(name, value, false);

    public static Key Optional(string name, string value, string wanted) => new(name, value, false) { Wanted = wanted };

    /// <summary>A key that must be there, with a value that is right in every study.</summary>
    public static Key Ready(string name, string value) => new(name, value, true) { IsReady = true };

    /// <summary>"a, b and c".</summary>
    public static string List(IReadOnlyList<string> names) =>
        names.Count < 2 ? string.Concat(names) : $"{string.Join(", ", names.SkipLast(1))} and {names[^1]}";

    /// <summary>How to add it.</summary>
    /// <param name="under">The place in words: "under machine".</param>
    public string FixWhenMissing(string under) => IsReady ? $"Add {under}: `{Example}`." : $"Add `{Name}:` {under}, with {Wanted}.";

    /// <summary>Of {a: 1, b: 2} its keys; of a number its dimension.</summary>
    private static string InWords(string value)
    {
        if (value.StartsWith('['))
            return "a list: its items in brackets, with commas between, or each after a `- ` on a line of its own";
        if (!value.StartsWith('{'))
            return NumberText.Parse(value) is { Message: null, Unit: var unit } ? Dimension.OfUnit(unit).Wanted : "one value";
        var depth = 0;
        var outer = string.Concat(value.Where(letter =>
        {
            depth += letter is '{' or '[' ? 1 : letter is '}' or ']' ? -1 : 0;
            return depth == 1;
        }));
        return $"{List([.. outer.TrimStart('{').Split(',').Select(entry => entry.Split(':')[0].Trim())])} under it, each with its value";
    }
}
