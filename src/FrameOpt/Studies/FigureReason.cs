namespace FrameOpt.Studies;

/// <summary>Why a figure of the study is as it is, or where it is from, in the user's words.</summary>
/// <param name="Path">Of the figure or group: mission.climb.weight, limits[2], machine.masses[pilot].mass.</param>
/// <param name="Value">As written; empty for a group.</param>
/// <param name="Reason">May be empty.</param>
/// <param name="Source">May be empty.</param>
public sealed record FigureReason(string Path, string Value, string Reason, string Source)
{
    /// <summary>"reason: ...; source: ...".</summary>
    public string Text => string.Join("; ", new[] { ("reason", Reason), ("source", Source) }
        .Where(part => part.Item2.Length > 0).Select(part => $"{part.Item1}: {part.Item2}"));

    /// <summary>True for what stands at a path or under it.</summary>
    /// <param name="path">Of a group or figure.</param>
    public bool IsOf(string path) => Path.StartsWith(path, StringComparison.Ordinal)
        && (Path.Length == path.Length || Path[path.Length] is '.' or '[');
}
