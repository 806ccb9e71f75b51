namespace FrameOpt.StudyFile.Syntax;

/// <summary>What takes long to read and is the same in every variant: files beside a study, long ranges. A study is read once for each
/// variant and each combination of choices.</summary>
internal sealed class FileCache
{
    private readonly Dictionary<string, object> kept = [];

    /// <summary>What was kept under a key, or else what is read now; kept only when reading it found no error.</summary>
    /// <param name="key">Everything that the result depends on.</param>
    /// <param name="diagnostics">Takes the errors.</param>
    /// <param name="read">Reads it.</param>
    public T Get<T>(string key, DiagnosticBag diagnostics, Func<T> read)
        where T : class?
    {
        if (kept.TryGetValue(key, out var found))
            return (T)found;
        var before = diagnostics.Count;
        var value = read();
        if (value is not null && diagnostics.Count == before)
            kept.Add(key, value);
        return value;
    }
}
