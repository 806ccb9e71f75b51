namespace FrameOpt.Search;

/// <summary>Every combination of the factors' levels, numbered from 0 with the row factor fastest and the first factor slowest.</summary>
public sealed class Grid
{
    private readonly Problem problem;
    private readonly IReadOnlyList<double>[] values;
    private readonly double[] rowValues;

    /// <summary>The grid of a problem.</summary>
    /// <exception cref="ArgumentException">A factor is continuous.</exception>
    /// <exception cref="OverflowException">More than 2⁶³ designs.</exception>
    public Grid(Problem problem)
    {
        this.problem = problem;
        values = [.. problem.Factors.Select(factor => factor.Values
            ?? throw new ArgumentException($"{factor.Name} is continuous: a grid needs levels", nameof(problem)))];
        rowValues = [.. values[problem.RowFactor]];
        Rows = 1;
        for (var f = 0; f < problem.Factors.Count; f++)
        {
            if (f != problem.RowFactor)
                Rows = checked(Rows * values[f].Count);
        }

        Count = checked(Rows * rowValues.Length);
    }

    /// <summary>How many rows.</summary>
    public long Rows { get; }

    /// <summary>How many designs in a row.</summary>
    public int RowLength => rowValues.Length;

    /// <summary>How many designs.</summary>
    public long Count { get; }

    /// <summary>The values of every factor of one design.</summary>
    /// <param name="number">From 0 to <see cref="Count"/> - 1.</param>
    public double[] Design(long number)
    {
        var design = new double[problem.Factors.Count];
        FillRow(number / RowLength, design);
        design[problem.RowFactor] = rowValues[number % RowLength];
        return design;
    }

    /// <summary>Some rows of the grid as a batch.</summary>
    /// <param name="firstRow">From 0.</param>
    /// <param name="rowCount">At least 1.</param>
    public DesignBatch Batch(long firstRow, int rowCount)
    {
        var factors = problem.Factors.Count;
        var rows = new double[rowCount * factors];
        for (var r = 0; r < rowCount; r++)
            FillRow(firstRow + r, rows.AsSpan(r * factors, factors));
        return new DesignBatch(firstRow * RowLength, rowCount, rows, rowValues);
    }

    private void FillRow(long row, Span<double> design)
    {
        for (var f = problem.Factors.Count - 1; f >= 0; f--)
        {
            if (f == problem.RowFactor)
                continue;
            var levels = values[f];
            design[f] = levels[(int)(row % levels.Count)];
            row /= levels.Count;
        }
    }
}
