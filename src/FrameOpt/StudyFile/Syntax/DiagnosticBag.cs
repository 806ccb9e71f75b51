using FrameOpt.Studies;

namespace FrameOpt.StudyFile.Syntax;

/// <summary>Collects the errors, assumed defaults and warnings of reading a study.</summary>
internal sealed class DiagnosticBag(string file, string? folder = null, FileCache? cache = null)
{
    private const int MaxShown = 200;

    private readonly List<Diagnostic> diagnostics = [];
    private readonly List<Assumption> assumptions = [];
    private readonly List<Warning> warnings = [];
    private readonly List<StudyInputFile> files = [];

    /// <summary>Name of the file.</summary>
    public string File => file;

    /// <summary>Where the file stands, to find others beside it; null when it was not read from a disk.</summary>
    public string? Folder => folder;

    /// <summary>What was read from other files, shared by all readings of this study.</summary>
    public FileCache Cache { get; } = cache ?? new FileCache();

    /// <summary>Other files that were read.</summary>
    public IReadOnlyList<StudyInputFile> Files => files;

    public bool HasErrors => diagnostics.Count > 0;

    /// <summary>How many errors so far.</summary>
    public int Count => diagnostics.Count;

    public IReadOnlyList<Assumption> Assumptions => assumptions;

    public IReadOnlyList<Warning> Warnings => warnings;

    /// <summary>The errors in the order of the file; only the first ones when there are very many.</summary>
    public IReadOnlyList<Diagnostic> Diagnostics()
    {
        Diagnostic[] sorted = [.. diagnostics.OrderBy(m => m.Line).ThenBy(m => m.Column)];
        return sorted.Length <= MaxShown
            ? sorted
            : [.. sorted.Take(MaxShown), new Diagnostic(file, 0, 0, "", $"{sorted.Length - MaxShown} more errors are not shown.",
                "Correct these first.")];
    }

    public void Add(Node at, string what, string fix) => Add(at.Line, at.Column, at.Excerpt, what, fix);

    /// <summary>Adds that a key is missing under another.</summary>
    public void AddMissing(Node owner, string path, string fix)
    {
        Add(owner, $"{path} is missing.", fix);
        diagnostics[^1] = diagnostics[^1] with { MissingPath = path };
    }

    public void Add(int line, int column, string excerpt, string what, string fix) =>
        diagnostics.Add(new Diagnostic(file, line, column, VisibleText.Quoted(excerpt), VisibleText.Sentence(what),
            VisibleText.Sentence(fix)));

    /// <summary>Adds the errors of another bag that are not present yet, prefixed with their origin.</summary>
    public void AddNew(DiagnosticBag other, string prefix)
    {
        var known = diagnostics.ToHashSet();
        diagnostics.AddRange(other.diagnostics.Where(diagnostic => !known.Contains(diagnostic))
            .Select(diagnostic => diagnostic with { Message = prefix + diagnostic.Message }));
    }

    /// <summary>Adds the assumptions of another bag that are not present yet, with their origin.</summary>
    public void AddNewAssumptions(DiagnosticBag other, string where)
    {
        foreach (var assumption in other.assumptions
            .Where(assumption => !assumptions.Exists(known => known.Value == assumption.Value
            && known.What.StartsWith(assumption.What, StringComparison.Ordinal))).ToList())
            assumptions.Add(assumption with { What = $"{assumption.What} (with {where})" });
    }

    /// <summary>A error of the file as a whole.</summary>
    public void AddForFile(string what, string fix) => Add(0, 0, "", what, fix);

    public void AddAssumption(string what, string value, string source) => assumptions.Add(
        new Assumption(VisibleText.Sentence(what), VisibleText.Sentence(value), VisibleText.Sentence(source)));

    public void AddFile(string name, string hash)
    {
        if (files.All(used => used.Name != name))
            files.Add(new StudyInputFile(name, hash));
    }

    public void AddWarning(Node at, string text) => warnings.Add(new Warning(file, at.Line, at.Column, VisibleText.Sentence(text)));

    /// <summary>The warnings of another bag that are not present here, with their origin.</summary>
    public IEnumerable<Warning> NewWarnings(DiagnosticBag other, string where) => other.warnings
        .Where(warning => !warnings.Exists(known => known.Text == warning.Text))
        .Select(warning => warning with { Message = $"{warning.Message} ({where})" });

    /// <summary>Adds the warnings of another bag that are not present yet, with their origin.</summary>
    public void AddNewWarnings(DiagnosticBag other, string where) => warnings.AddRange(NewWarnings(other, where).ToList());
}

/// <summary>An error in a file: position, message and how to fix it.</summary>
/// <param name="File">Name of the file, without its folder.</param>
/// <param name="Line">From 1; 0 when the whole file is meant.</param>
/// <param name="Column">From 1; 0 when the whole file is meant.</param>
/// <param name="Excerpt">What stands there, shortened; may be empty.</param>
/// <param name="Message">The message: a sentence.</param>
/// <param name="Fix">How to fix it: a sentence.</param>
public sealed record Diagnostic(string File, int Line, int Column, string Excerpt, string Message, string Fix)
{
    /// <summary>The key that is missing, with those above it (machine.propeller.turns), where that is the error; else empty.</summary>
    public string MissingPath { get; init; } = "";

    /// <summary>The whole diagnostic in one paragraph.</summary>
    public string Text
    {
        get
        {
            var place = Line > 0 ? FormattableString.Invariant($"{File} line {Line}, column {Column}: ") : $"{File}: ";
            var found = Excerpt.Length > 0 ? $"`{Excerpt}`: " : "";
            return $"{place}{found}{Message} {Fix}".TrimEnd();
        }
    }
}

/// <summary>What looks odd in a file and is allowed.</summary>
/// <param name="File">Name of the file, without its folder.</param>
/// <param name="Line">From 1; 0 when the whole file is meant.</param>
/// <param name="Column">From 1; 0 when the whole file is meant.</param>
/// <param name="Message">What looks odd and what to do: sentences.</param>
public sealed record Warning(string File, int Line, int Column, string Message)
{
    /// <summary>The whole warning in one paragraph.</summary>
    public string Text => Line > 0 ? FormattableString.Invariant($"{File} line {Line}: {Message}") : $"{File}: {Message}";
}
