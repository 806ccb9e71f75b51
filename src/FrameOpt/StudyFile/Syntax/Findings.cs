using FrameOpt.Studies;

namespace FrameOpt.StudyFile.Syntax;

/// <summary>Collects all that reading a study brings up: mistakes, defaults taken, oddities.</summary>
internal sealed class Findings(string file, string? folder = null)
{
    private const int MostShown = 200;

    private readonly List<Mistake> mistakes = [];
    private readonly List<Assumption> assumptions = [];
    private readonly List<string> warnings = [];
    private readonly List<StudyFileUsed> files = [];

    /// <summary>Name of the file.</summary>
    public string File => file;

    /// <summary>Where the file stands, to find others beside it; null when it was not read from a disk.</summary>
    public string? Folder => folder;

    /// <summary>Other files that were read.</summary>
    public IReadOnlyList<StudyFileUsed> Files => files;

    public bool HasMistakes => mistakes.Count > 0;

    /// <summary>How many mistakes so far.</summary>
    public int Count => mistakes.Count;

    public IReadOnlyList<Assumption> Assumptions => assumptions;

    public IReadOnlyList<string> Warnings => warnings;

    /// <summary>The mistakes in the order of the file; of a file that is wrong throughout, the first ones.</summary>
    public IReadOnlyList<Mistake> Mistakes()
    {
        Mistake[] sorted = [.. mistakes.OrderBy(m => m.Line).ThenBy(m => m.Column)];
        return sorted.Length <= MostShown
            ? sorted
            : [.. sorted.Take(MostShown), new Mistake(file, 0, 0, "", $"There are {sorted.Length - MostShown} mistakes more.", "Mend these first.")];
    }

    public void Mistake(Node at, string what, string mend) => Mistake(at.Line, at.Column, at.Found, what, mend);

    public void Mistake(int line, int column, string found, string what, string mend) =>
        mistakes.Add(new Mistake(file, line, column, found, what, mend));

    /// <summary>Takes over the mistakes found elsewhere that are not known yet, saying where they come from.</summary>
    public void TakeNew(Findings other, string prefix)
    {
        var known = mistakes.ToHashSet();
        mistakes.AddRange(other.mistakes.Where(mistake => !known.Contains(mistake)).Select(mistake => mistake with { What = prefix + mistake.What }));
    }

    /// <summary>Takes over the defaults taken elsewhere that are not known yet, saying where.</summary>
    public void AssumeNew(Findings other, string where)
    {
        foreach (var assumption in other.assumptions.Where(assumption => !assumptions.Exists(known => known.Value == assumption.Value && known.What.StartsWith(assumption.What, StringComparison.Ordinal))).ToList())
            assumptions.Add(assumption with { What = $"{assumption.What} (with {where})" });
    }

    /// <summary>A mistake of the file as a whole.</summary>
    public void MistakeOfFile(string what, string mend) => Mistake(0, 0, "", what, mend);

    public void Assume(string what, string value, string source) => assumptions.Add(new Assumption(what, value, source));

    public void Use(string name, string hash)
    {
        if (files.All(used => used.Name != name))
            files.Add(new StudyFileUsed(name, hash));
    }

    public void Warn(Node at, string text) => warnings.Add(FormattableString.Invariant($"{file} line {at.Line}: {text}"));
}

/// <summary>Something a user has to mend in a file: where, what, and how.</summary>
/// <param name="File">Name of the file, without its folder.</param>
/// <param name="Line">From 1; 0 when the whole file is meant.</param>
/// <param name="Column">From 1; 0 when the whole file is meant.</param>
/// <param name="Found">What stands there, shortened; may be empty.</param>
/// <param name="What">What is wrong with it: a sentence.</param>
/// <param name="Mend">What to write or do: a sentence.</param>
public sealed record Mistake(string File, int Line, int Column, string Found, string What, string Mend)
{
    /// <summary>All of it in one paragraph.</summary>
    public string Text
    {
        get
        {
            var place = Line > 0 ? FormattableString.Invariant($"{File} line {Line}, column {Column}: ") : $"{File}: ";
            var found = Found.Length > 0 ? $"`{Found}`: " : "";
            return $"{place}{found}{What} {Mend}".TrimEnd();
        }
    }
}
