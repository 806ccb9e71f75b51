namespace FrameOpt.Reports.Compare;

/// <summary>Reads what is to be compared.</summary>
public static class ComparisonReader
{
    /// <summary>So many designs are told apart side by side.</summary>
    public const int MaxDesigns = 6;

    /// <summary>Reads every design, or says all that stands against it.</summary>
    /// <param name="arguments">Folders of runs, each with ":" and a place in the ranking behind it when another than the first is
    /// meant.</param>
    /// <param name="version">Of this program.</param>
    /// <param name="errors">In words; empty when all could be read.</param>
    /// <returns>The comparison, or null.</returns>
    public static Comparison? Read(IReadOnlyList<string> arguments, string version, out IReadOnlyList<string> errors)
    {
        errors = [];
        if (arguments.Count is < 2 or > MaxDesigns)
        {
            errors = [$"compare takes two to {MaxDesigns} designs, as in: compare results/monday results/tuesday. Two designs of one run are results/monday results/monday:2. {arguments.Count} {(arguments.Count == 1 ? "was" : "were")} given."];
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
}
