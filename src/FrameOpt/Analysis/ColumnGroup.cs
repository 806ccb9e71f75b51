namespace FrameOpt.Analysis;

/// <summary>The columns of one source of an analysis of variance: one for a model term, several for a factor of levels.</summary>
/// <param name="Source">Its name.</param>
/// <param name="Columns">One value for each run in each.</param>
/// <param name="IsWithin">Whether another source, by its place in the list, contains this one.</param>
internal sealed record ColumnGroup(string Source, IReadOnlyList<double[]> Columns, Func<int, bool> IsWithin)
{
    /// <summary>Sequential and adjusted sums of squares of each source; the constant, where there is one, goes first.</summary>
    /// <remarks>Source: adjusted sums respect marginality, each source after all others that do not contain it ("type II", Yates 1934; Nelder 1977;
    /// from memory).</remarks>
    public static IReadOnlyList<LineSums> SumsOf(IReadOnlyList<ColumnGroup> groups, IReadOnlyList<double> response)
    {
        var sequential = Parts(groups, response);
        return [.. groups.Select((group, g) =>
        {
            var others = groups.Where((_, other) => other != g && !group.IsWithin(other));
            var last = Parts([.. others, group], response)[^1];
            return new LineSums(group.Source, sequential[g].Degrees, sequential[g].Sum, last.Sum);
        })];
    }

    private static (int Degrees, double Sum)[] Parts(IReadOnlyList<ColumnGroup> groups, IReadOnlyList<double> response)
    {
        var columns = new OrthogonalColumns(groups.SelectMany(group => group.Columns));
        var along = columns.Project(response).Along;
        var owner = groups.SelectMany((group, g) => group.Columns.Select(_ => g)).ToArray();
        var parts = new (int Degrees, double Sum)[groups.Count];
        for (var j = 0; j < along.Length; j++)
        {
            ref var part = ref parts[owner[columns.Kept[j]]];
            part = (part.Degrees + 1, part.Sum + (along[j] * along[j]));
        }

        return parts;
    }
}
