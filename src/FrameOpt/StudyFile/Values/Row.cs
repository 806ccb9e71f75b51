using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.StudyFile.Values;

/// <summary>Reads tables: lists of rows of a fixed number of values.</summary>
internal static class Row
{
    private const int MaxRows = 1_000;

    /// <summary>What one column of a table holds.</summary>
    internal sealed record Column(string Name, Dimension Dimension, AllowedRange AllowedRange);

    /// <summary>The rows of a table in base units, or null after an error; at least two rows, the first columns strictly
    /// increasing.</summary>
    /// <param name="section">Section that has the table.</param>
    /// <param name="key">Key of the table.</param>
    /// <param name="columns">From left to right.</param>
    /// <param name="rising">Number of columns, from the left, that must increase from row to row.</param>
    public static double[][]? Table(Section section, string key, Column[] columns, int rising)
    {
        var before = section.List(key);
        if (section.Value(key) is not Node.List list)
            return null;
        if (before.Count < 2)
        {
            section.DiagnosticBag.Add(list, $"{section.PathOf(key)} needs two rows or more.", "Add a row.");
            return null;
        }

        if (before.Count > MaxRows)
        {
            section.DiagnosticBag.Add(section.KeyAt(key), $"{section.PathOf(key)} has {before.Count} rows; {MaxRows} is the most.",
                "Keep the rows between which the curve bends.");
            return null;
        }

        double[]?[] rows = [.. before.Select(row => Values(section, key, row, columns))];
        var ordered = true;
        for (var i = 1; i < rows.Length; i++)
            ordered &= rows[i] is null || rows[i - 1] is null || Rises(section, key, before[i], rows[i - 1]!, rows[i]!, columns, rising);
        double[][] whole = [.. rows.OfType<double[]>()];
        return ordered && whole.Length == rows.Length ? whole : null;
    }

    private static double[]? Values(Section section, string key, Node row, Column[] columns)
    {
        if (row is not Node.List list || list.Items.Count != columns.Length)
        {
            section.DiagnosticBag.Add(
                row, $"A row of {section.PathOf(key)} has {columns.Length} values: {string.Join(", ", columns.Select(c => c.Name))}.",
                $"Write in brackets, with commas between: {string.Join("; ", columns.Select(c => $"{c.Name}, {c.Dimension.Wanted}"))}.");
            return null;
        }

        double[] values = [.. list.Items.Zip(columns, (item, column) =>
            Quantity.Read(item, $"{section.PathOf(key)}, {column.Name}", column.Dimension, column.AllowedRange,
                section.DiagnosticBag)?.Base ?? double.NaN)];
        return values.Any(double.IsNaN) ? null : values;
    }

    private static bool Rises(Section section, string key, Node at, double[] before, double[] row, Column[] columns, int rising)
    {
        for (var c = 0; c < rising; c++)
        {
            if (row[c] > before[c])
                continue;
            section.DiagnosticBag.Add(
                ((Node.List)at).Items[c], $"The {columns[c].Name} of {section.PathOf(key)} must increase from row to row.",
                "Put the rows in order, each value once.");
            return false;
        }

        return true;
    }
}
