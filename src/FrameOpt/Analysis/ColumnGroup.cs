namespace FrameOpt.Analysis;

/// <summary>The columns of one source of an analysis of variance: one for a model term, several for a factor of levels.</summary>
/// <param name="Source">Its name.</param>
/// <param name="Columns">One value for each run in each.</param>
/// <param name="IsContainedIn">Whether another source, by its place in the list, contains this one.</param>
internal sealed record ColumnGroup(string Source, IReadOnlyList<double[]> Columns, Func<int, bool> IsContainedIn)
{
    /// <summary>Sequential and adjusted sums of squares of each source.</summary>
    /// <param name="groups">The constant, where there is one, goes first.</param>
    /// <param name="basis">Of all their columns.</param>
    /// <param name="along">The response along it.</param>
    /// <remarks>Source: adjusted sums respect marginality, each source after all others that do not contain it ("type II", Yates 1934;
    /// Nelder 1977;
    /// from memory). They are worked in the basis, where a column is as long as there are columns, not runs.</remarks>
    public static IReadOnlyList<SumsOfSquares> SumsOf(IReadOnlyList<ColumnGroup> groups, OrthogonalColumns basis, double[] along)
    {
        var owner = groups.SelectMany((group, g) => group.Columns.Select(_ => g)).ToArray();
        var columns = basis.RColumns.ToLookup(column => owner[column.Index], column => column.Values);
        var sequential = Enumerable.Range(0, along.Length).ToLookup(j => owner[basis.Kept[j]], j => along[j] * along[j]);
        return [.. groups.Select((group, g) =>
        {
            double[][] others = [.. Enumerable.Range(0, groups.Count).Where(other => other != g && !group.IsContainedIn(other))
                .SelectMany(other => columns[other])];
            var adjusted = new OrthogonalColumns([.. others, .. columns[g]]);
            var parts = adjusted.Project(along).Along.Where((_, j) => adjusted.Kept[j] >= others.Length);
            return new SumsOfSquares(group.Source, sequential[g].Count(), sequential[g].Sum(), parts.Sum(part => part * part));
        })];
    }
}
