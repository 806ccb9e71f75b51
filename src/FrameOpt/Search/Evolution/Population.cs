namespace FrameOpt.Search.Evolution;

/// <summary>Designs a search works with: their genes and what came of them.</summary>
internal sealed class Population(Problem problem, int capacity)
{
    private readonly int genes = problem.Factors.Count;

    /// <summary>How many designs.</summary>
    public int Count { get; set; }

    /// <summary>For how many there is room.</summary>
    public int Capacity => Violation.Length;

    /// <summary>How many objectives.</summary>
    public int Objectives { get; } = problem.Objectives.Count;

    /// <summary>All genes, design by design.</summary>
    public double[] Genes { get; } = new double[capacity * problem.Factors.Count];

    /// <summary>The objectives, design by design, less is better.</summary>
    public double[] Values { get; } = new double[capacity * problem.Objectives.Count];

    /// <summary>0 for a usable design, infinity for one that failed, else the sum of shares by which it misses its limits.</summary>
    public double[] Violation { get; } = new double[capacity];

    /// <summary>The genes of one design.</summary>
    public Span<double> Of(int member) => Genes.AsSpan(member * genes, genes);

    /// <summary>The objectives of one design.</summary>
    public Span<double> ValuesOf(int member) => Values.AsSpan(member * Objectives, Objectives);

    /// <summary>Takes over the answers of a batch whose first design is a given member.</summary>
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

    /// <summary>Puts a copy of a member in another's place.</summary>
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
