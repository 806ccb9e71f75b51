using System.Globalization;

namespace FrameOpt.Reports.Compare;

/// <summary>Reads what is to be compared.</summary>
public static class ComparisonReader
{
    /// <summary>The most designs that can be shown side by side.</summary>
    public const int MaxDesigns = 6;

    /// <summary>Reads every design, or gives every reason why not.</summary>
    /// <param name="arguments">Folders of runs, each followed by ":" and a place in the ranking where a design other than the first is
    /// meant.</param>
    /// <param name="version">Of this program.</param>
    /// <param name="errors">Sentences; empty when all could be read.</param>
    /// <returns>The comparison, or null.</returns>
    public static Comparison? Read(IReadOnlyList<string> arguments, string version, out IReadOnlyList<string> errors)
    {
        errors = [];
        if (arguments.Count is < 2 or > MaxDesigns)
        {
            errors = [$"compare takes two to {MaxDesigns} designs, for example: compare results/monday results/tuesday. For two designs "
                + $"of one run: compare results/monday results/monday:2. "
                + $"{arguments.Count} {(arguments.Count == 1 ? "was" : "were")} given."];
            return null;
        }

        var columns = new List<ComparedColumn>();
        var collected = new List<string>();
        var runs = new Dictionary<string, RunJsonReader>();
        try
        {
            foreach (var (i, argument) in arguments.Select(ComparedArgument.Of).Index())
            {
                if (!runs.TryGetValue(argument.Folder, out var run)
                    && (run = RunJsonReader.Open(argument.Folder, version, out var error)) is null)
                {
                    collected.Add(error);
                    continue;
                }

                runs[argument.Folder] = run;
                if (run.Column(argument.Position, $"{(char)('A' + i)}", out var missing) is { } column)
                    columns.Add(column);
                else
                    collected.Add(missing);
            }
        }
        finally
        {
            foreach (var run in runs.Values)
                run.Dispose();
        }

        errors = [.. collected.Distinct()];
        return errors.Count == 0 ? new Comparison(columns) : null;
    }

    /// <summary>True when a folder is one of those that are compared.</summary>
    /// <param name="arguments">As <see cref="Read"/> takes them.</param>
    /// <param name="folder">Of any path.</param>
    public static bool Reads(IReadOnlyList<string> arguments, string folder) =>
        arguments.Any(argument => Place(ComparedArgument.Of(argument).Folder) == Place(folder));

    private static string Place(string folder) => Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
}

/// <summary>A folder of a run, and which of its designs: "results/monday" or "results/monday:3".</summary>
/// <param name="Folder">As the user wrote it.</param>
/// <param name="Position">In the order of the ranking, from 1.</param>
internal sealed record ComparedArgument(string Folder, int Position)
{
    /// <summary>Parses an argument; a folder whose own name ends like that is taken as it is.</summary>
    public static ComparedArgument Of(string text)
    {
        var colon = text.LastIndexOf(':');
        return colon > 0 && !Directory.Exists(text)
            && int.TryParse(text[(colon + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out var position)
            ? new ComparedArgument(text[..colon], position)
            : new ComparedArgument(text, 1);
    }
}
