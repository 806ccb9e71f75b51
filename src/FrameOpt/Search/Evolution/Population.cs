namespace FrameOpt.Search.Evolution;

/// <summary>The designs of a search with their genes, objectives and violations.</summary>
internal sealed class Population(Problem problem, int capacity)
{
    private readonly int genes = problem.Factors.Count;

    /// <summary>Number of designs.</summary>
    public int Count { get; set; }

    /// <summary>Capacity in designs.</summary>
    public int Capacity => Violation.Length;

    /// <summary>Number of objectives.</summary>
    public int Objectives { get; } = problem.Objectives.Count;

    /// <summary>All genes, design by design.</summary>
    public double[] Genes { get; } = new double[capacity * problem.Factors.Count];

    /// <summary>The objectives, design by design, smaller is better.</summary>
    public double[] Values { get; } = new double[capacity * problem.Objectives.Count];

    /// <summary>0 for a feasible design, infinity for one that failed, otherwise its constraint violation, without unit.</summary>
    public double[] Violation { get; } = new double[capacity];

    /// <summary>The genes of one design.</summary>
    public Span<double> Of(int member) => Genes.AsSpan(member * genes, genes);

    /// <summary>The objectives of one design.</summary>
    public Span<double> ValuesOf(int member) => Values.AsSpan(member * Objectives, Objectives);

    /// <summary>Copies the results of a batch, starting at the given index.</summary>
    public void Store(int first, EvaluatedBatch batch)
    {
        var count = batch.Designs.Count;
        for (var j = 0; j < Objectives; j++)
        {
            var column = batch.Objectives[j];
            for (var i = 0; i < count; i++)
                Values[(first + i) * Objectives + j] = column[i];
        }

        for (var i = 0; i < count; i++)
            Violation[first + i] = batch.Feasible[i] != 0 ? 0 : ViolationOf(batch, i);
    }

    /// <summary>Overwrites one member with a copy of another.</summary>
    public void Copy(int from, int to)
    {
        if (from == to)
            return;
        Of(from).CopyTo(Of(to));
        ValuesOf(from).CopyTo(ValuesOf(to));
        Violation[to] = Violation[from];
    }

    private static double ViolationOf(EvaluatedBatch batch, int design)
    {
        if (batch.Failures[design] != 0)
            return double.PositiveInfinity;
        var miss = 0.0;
        for (var b = 0; b < batch.ConstraintValues.Length; b++)
            miss += batch.Problem.Constraints[b].Violation(batch.ConstraintValues[b][design]);
        return Math.Min(miss, double.MaxValue);
    }
}

/// <summary>Evaluates members in batches of at most 32, numbered in order, the same batches for any number of threads.</summary>
internal sealed class PopulationEvaluation(Problem problem, GeneSpace space, int threads)
{
    private const int MaxPerBatch = 32;
    private readonly EvaluatedBatch?[] workspace = new EvaluatedBatch?[threads == 1 ? 1 : 4 * threads];
    private long number;

    /// <summary>Evaluates <paramref name="count"/> members from <paramref name="first"/> on and stores their results.</summary>
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
