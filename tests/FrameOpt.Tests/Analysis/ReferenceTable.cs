using System.Globalization;

namespace FrameOpt.Tests.Analysis;

/// <summary>A table of published runs from References/.</summary>
internal sealed class ReferenceTable
{
    private readonly string[] names;

    private ReferenceTable(string[] names, double[][] rows) => (this.names, Rows) = (names, rows);

    public IReadOnlyList<double[]> Rows { get; }

    public static ReferenceTable Read(string file)
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "References", file));
        return new ReferenceTable(lines[0].Split(','),
            [.. lines[1..].Select(line => line.Split(',').Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)).ToArray())]);
    }

    public ReferenceTable Where(string name, double value) => new(names, [.. Rows.Where(row => row[Array.IndexOf(names, name)] == value)]);

    public double[] Column(string name) => [.. Rows.Select(row => row[Array.IndexOf(names, name)])];

    /// <summary>The named columns of each row.</summary>
    public double[][] Columns(params string[] of) => [.. Rows.Select(row => of.Select(name => row[Array.IndexOf(names, name)]).ToArray())];
}
