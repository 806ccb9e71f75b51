namespace FrameOpt.Search.Evolution;

/// <summary>Evaluates members in batches of at most 32, numbered in order, the same batches for any number of threads.</summary>
internal sealed class GeneEvaluation(Problem problem, GeneSpace space, int threads)
{
    private const int MostPerBatch = 32;
    private readonly EvaluatedBatch?[] room = new EvaluatedBatch?[threads == 1 ? 1 : 4 * threads];
    private long number;

    /// <summary>Evaluates <paramref name="count"/> members from <paramref name="first"/> on and stores the answers with them.</summary>
    public IEnumerable<EvaluatedBatch> Run(Members members, int first, int count)
    {
        var batches = (count + MostPerBatch - 1) / MostPerBatch;
        for (var b = 0; b < batches; b += room.Length)
        {
            var wave = Math.Min(room.Length, batches - b);
            if (wave == 1)
                EvaluateOne(members, first, count, batches, b, 0);
            else
                EvaluateWave(members, first, count, batches, b, wave);
            for (var i = 0; i < wave; i++)
                yield return room[i]!;
        }

        number += count;
    }

    private void EvaluateWave(Members members, int first, int count, int batches, int firstBatch, int wave) =>
        Parallel.For(0, wave, new ParallelOptions { MaxDegreeOfParallelism = threads }, i => EvaluateOne(members, first, count, batches, firstBatch + i, i));

    private void EvaluateOne(Members members, int first, int count, int batches, int batch, int place)
    {
        // Batches of nearly equal size, so that threads have equal work.
        var from = (int)((long)count * batch / batches);
        var size = (int)((long)count * (batch + 1) / batches) - from;
        var factors = problem.Factors.Count;
        var into = room[place] ??= new EvaluatedBatch(problem, DesignBatch.Single(0, MostPerBatch, new double[MostPerBatch * factors]));
        into.Designs = into.Designs with { FirstNumber = number + from, RowCount = size };
        for (var i = 0; i < size; i++)
            space.ToDesign(members.Of(first + from + i), into.Designs.Rows.AsSpan(i * factors, factors));
        problem.Evaluate(into);
        into.Judge();
        members.Store(first + from, into);
    }
}
