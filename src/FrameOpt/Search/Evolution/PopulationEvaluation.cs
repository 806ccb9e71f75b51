namespace FrameOpt.Search.Evolution;

/// <summary>Evaluates members in batches of at most 32, numbered in order, the same batches for any number of threads.</summary>
internal sealed class PopulationEvaluation(Problem problem, GeneSpace space, int threads)
{
    private const int MaxPerBatch = 32;
    private readonly EvaluatedBatch?[] workspace = new EvaluatedBatch?[threads == 1 ? 1 : 4 * threads];
    private long number;

    /// <summary>Evaluates <paramref name="count"/> members from <paramref name="first"/> on and stores the answers with them.</summary>
    public IEnumerable<EvaluatedBatch> Run(Population population, int first, int count)
    {
        var batches = (count + MaxPerBatch - 1) / MaxPerBatch;
        for (var b = 0; b < batches; b += workspace.Length)
        {
            var wave = Math.Min(workspace.Length, batches - b);
            if (wave == 1)
                EvaluateOne(population, first, count, batches, b, 0);
            else
                EvaluateWave(population, first, count, batches, b, wave);
            for (var i = 0; i < wave; i++)
                yield return workspace[i]!;
        }

        number += count;
    }

    private void EvaluateWave(Population population, int first, int count, int batches, int firstBatch, int wave) =>
        Parallel.For(0, wave, new ParallelOptions { MaxDegreeOfParallelism = threads }, i =>
            EvaluateOne(population, first, count, batches, firstBatch + i, i));

    private void EvaluateOne(Population population, int first, int count, int batches, int batch, int place)
    {
        // Batches of nearly equal size, so that threads have equal work.
        var from = (int)((long)count * batch / batches);
        var size = (int)((long)count * (batch + 1) / batches) - from;
        var factors = problem.Factors.Count;
        var into = workspace[place] ??= new EvaluatedBatch(problem, DesignBatch.Single(0, MaxPerBatch, new double[MaxPerBatch * factors]));
        into.Designs = into.Designs with { FirstNumber = number + from, RowCount = size };
        for (var i = 0; i < size; i++)
            space.ToDesign(population.Of(first + from + i), into.Designs.Rows.AsSpan(i * factors, factors));
        problem.Evaluate(into);
        into.CheckConstraints();
        population.Store(first + from, into);
    }
}
