namespace FrameOpt.Search;

/// <summary>Designs a search works with: their genes and what came of them.</summary>
internal sealed class Members
{
    private readonly int geneCount;

    public Members(Problem problem, int capacity)
    {
        geneCount = problem.Factors.Count;
        Genes = new double[capacity * geneCount];
        Objectives = new double[problem.Goals.Count][];
        for (var j = 0; j < Objectives.Length; j++)
            Objectives[j] = new double[capacity];
        Miss = new double[capacity];
    }

    /// <summary>How many designs.</summary>
    public int Count { get; set; }

    /// <summary>All genes, design by design.</summary>
    public double[] Genes { get; }

    /// <summary>Each objective's values, less is better.</summary>
    public double[][] Objectives { get; }

    /// <summary>0 for a usable design, infinity for one that failed, else the sum of shares by which it misses its limits.</summary>
    public double[] Miss { get; }

    /// <summary>The genes of one design.</summary>
    public Span<double> Of(int member) => Genes.AsSpan(member * geneCount, geneCount);

    /// <summary>Takes over the answers of a batch whose first design is a given member.</summary>
    public void Store(int first, EvaluatedBatch batch)
    {
        var count = batch.Designs.Count;
        for (var j = 0; j < Objectives.Length; j++)
            batch.Objectives[j].AsSpan(0, count).CopyTo(Objectives[j].AsSpan(first));
        for (var i = 0; i < count; i++)
            Miss[first + i] = batch.Usable[i] != 0 ? 0 : MissOf(batch, i);
    }

    /// <summary>Puts a copy of a member in another's place.</summary>
    public void Copy(int from, int to)
    {
        if (from == to)
            return;
        Of(from).CopyTo(Of(to));
        foreach (var column in Objectives)
            column[to] = column[from];
        Miss[to] = Miss[from];
    }

    private static double MissOf(EvaluatedBatch batch, int design)
    {
        if (batch.Failures[design] != 0)
            return double.PositiveInfinity;
        var miss = 0.0;
        for (var b = 0; b < batch.Bounded.Length; b++)
            miss += batch.Problem.Bounds[b].Miss(batch.Bounded[b][design]);
        return Math.Min(miss, double.MaxValue);
    }
}
