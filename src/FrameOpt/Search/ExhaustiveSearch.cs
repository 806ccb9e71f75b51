namespace FrameOpt.Search;

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

        // Batches are evaluated a wave at a time, a few for each thread, and handed on in order.
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
