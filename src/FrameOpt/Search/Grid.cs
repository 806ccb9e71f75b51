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

    /// <summary>Number of rows.</summary>
    public long Rows { get; }

    /// <summary>Number of designs in a row.</summary>
    public int RowLength => rowValues.Length;

    /// <summary>Number of designs.</summary>
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

/// <summary>Evaluates every design of the grid. Accepts any problem whose factors have levels.</summary>
public sealed class ExhaustiveSearch : ISearch
{
    private const int DesignsPerBatch = 1 << 13;

    /// <inheritdoc/>
    public IEnumerable<EvaluatedBatch> Run(Problem problem, int threads)
    {
        var grid = new Grid(problem);
        var rowsPerBatch = (int)Math.Clamp(DesignsPerBatch / grid.RowLength, 1, grid.Rows);
        var batches = (grid.Rows + rowsPerBatch - 1) / rowsPerBatch;

        // Batches are evaluated in waves of a few per thread and returned in order.
        var wave = (int)Math.Min(batches, 4L * threads);
        var workspace = new EvaluatedBatch?[wave];
        for (long first = 0; first < batches; first += wave)
        {
            var count = (int)Math.Min(wave, batches - first);
            void EvaluateOne(int i)
            {
                var firstRow = (first + i) * rowsPerBatch;
                var designs = grid.Batch(firstRow, (int)Math.Min(rowsPerBatch, grid.Rows - firstRow));
                workspace[i] ??= new EvaluatedBatch(problem, designs);
                workspace[i]!.Designs = designs;
                problem.Evaluate(workspace[i]!);
                workspace[i]!.CheckConstraints();
            }

            if (threads == 1)
            {
                for (var i = 0; i < count; i++)
                    EvaluateOne(i);
            }
            else
            {
                Parallel.For(0, count, new ParallelOptions { MaxDegreeOfParallelism = threads }, EvaluateOne);
            }

            for (var i = 0; i < count; i++)
                yield return workspace[i]!;
        }
    }
}
