using MathNet.Numerics.LinearAlgebra;

namespace FrameOpt.Plans;

/// <summary>The usual sets of terms, and the terms a set lacks to be hierarchical.</summary>
public static class ModelTerms
{
    /// <summary>The constant and each factor.</summary>
    public static IReadOnlyList<ModelTerm> Linear(int factors) =>
        [new(new int[factors]), .. Enumerable.Range(0, factors).Select(f => Product(factors, f))];

    /// <summary>The linear terms and every product of two factors.</summary>
    public static IReadOnlyList<ModelTerm> WithInteractions(int factors) =>
        [.. Linear(factors), .. from a in Enumerable.Range(0, factors) from b in Enumerable.Range(a + 1, factors - a - 1) select Product(
            factors, a, b)];

    /// <summary>The linear terms, every product of two factors and every square.</summary>
    public static IReadOnlyList<ModelTerm> Quadratic(int factors) =>
        [.. WithInteractions(factors), .. Enumerable.Range(0, factors).Select(f => Product(factors, f, f))];

    /// <summary>The terms of a kind of surface.</summary>
    public static IReadOnlyList<ModelTerm> Of(SurfaceModel model, int factors) => model switch
    {
        SurfaceModel.Linear => Linear(factors),
        SurfaceModel.Interactions => WithInteractions(factors),
        SurfaceModel.LinearAndSquares => [.. Quadratic(factors).Where(term => term.Powers.Max() == term.Order)],
        _ => Quadratic(factors),
    };

    /// <summary>The terms of names such as "1", "x1", "x1x2", "x1^2".</summary>
    /// <exception cref="FormatException">One of the names is not that of a term.</exception>
    public static IReadOnlyList<ModelTerm> Parse(int factors, params string[] names) =>
        [.. names.Select(name => ModelTerm.Parse(name, factors))];

    /// <summary>The terms a set lacks to be hierarchical: every term comes with those it contains, down to the constant.</summary>
    /// <returns>Lower terms first; empty for a hierarchical set.</returns>
    /// <remarks>Source: J. A. Nelder 1977, A reformulation of linear models (marginality), from memory. A hierarchical model says the same
    /// whatever the units and zero points of its factors.</remarks>
    public static IReadOnlyList<ModelTerm> Missing(IEnumerable<ModelTerm> terms)
    {
        var present = terms.ToHashSet();
        var missing = new HashSet<ModelTerm>();
        var open = new Queue<ModelTerm>(present);
        while (open.TryDequeue(out var term))
        {
            foreach (var parent in Parents(term).Where(parent => !present.Contains(parent) && missing.Add(parent)))
                open.Enqueue(parent);
        }

        return [.. missing.OrderBy(term => term.Order).ThenBy(term => term.Name, StringComparer.Ordinal)];
    }

    /// <summary>The terms one power lower in one factor.</summary>
    internal static IEnumerable<ModelTerm> Parents(ModelTerm term) =>
        Enumerable.Range(0, term.Powers.Count).Where(f => term.Powers[f] > 0)
            .Select(f => new ModelTerm([.. term.Powers.Select((power, g) => g == f ? power - 1 : power)]));

    private static ModelTerm Product(int factors, params int[] of)
    {
        var powers = new int[factors];
        foreach (var factor in of)
            powers[factor]++;
        return new ModelTerm(powers);
    }
}

/// <summary>The terms a plan is to estimate.</summary>
/// <param name="Terms">The constant first.</param>
public sealed record PlanModel(IReadOnlyList<ModelTerm> Terms)
{
    /// <summary>Constant and main effects.</summary>
    /// <param name="factors">Number of factors.</param>
    public static PlanModel Linear(int factors) => new(ModelTerms.Linear(factors));

    /// <summary>Constant, main effects and every two-factor interaction.</summary>
    /// <param name="factors">Number of factors.</param>
    public static PlanModel Interactions(int factors) => new(ModelTerms.WithInteractions(factors));

    /// <summary>Constant, main effects, every two-factor interaction and every square.</summary>
    /// <param name="factors">Number of factors.</param>
    public static PlanModel Quadratic(int factors) => new(ModelTerms.Quadratic(factors));

    /// <summary>The value of every term at a point.</summary>
    public double[] At(IReadOnlyList<double> coded) => [.. Terms.Select(term => term.Value(coded))];

    /// <summary>The mean over the cube from -1 to +1 of the product of every two terms, exactly: the mean of x^n is 1/(n+1) for even n and
    /// 0 for odd.</summary>
    public double[,] CubeMoments()
    {
        var moments = new double[Terms.Count, Terms.Count];
        for (var i = 0; i < Terms.Count; i++)
        {
            for (var j = 0; j < Terms.Count; j++)
            {
                moments[i, j] = Terms[i].Powers.Zip(Terms[j].Powers, (a, b) => a + b)
                    .Aggregate(1.0, (mean, power) => power % 2 == 1 ? 0 : mean / (power + 1));
            }
        }

        return moments;
    }
}

/// <summary>The terms of a fitted surface.</summary>
public enum SurfaceModel
{
    /// <summary>The constant and each factor.</summary>
    Linear,

    /// <summary>The linear terms and every product of two factors.</summary>
    Interactions,

    /// <summary>The linear terms and every square.</summary>
    LinearAndSquares,

    /// <summary>The linear terms, every product of two factors and every square.</summary>
    Quadratic,
}

/// <summary>The model matrix of a plan, blocks included. Blocks are sum-coded (effect coding), so that the constant is the mean of the
/// blocks.</summary>
internal static class ModelMatrix
{
    /// <summary>One row a run: the terms of the model, then a column for each block after the first.</summary>
    public static Matrix<double> Of(Plan plan, PlanModel model)
    {
        var blocks = plan.Runs.Select(run => run.Block).Distinct().Order().ToArray();
        return Matrix<double>.Build.DenseOfRowArrays(plan.Runs.Select(run => Row(model, run.Coded, run.Block, blocks)));
    }

    /// <summary>The row of one run, given the numbers of all blocks in order.</summary>
    public static double[] Row(PlanModel model, double[] coded, int block, int[] blocks)
    {
        var row = new double[model.Terms.Count + blocks.Length - 1];
        for (var t = 0; t < model.Terms.Count; t++)
            row[t] = model.Terms[t].Value(coded);
        for (var b = 1; b < blocks.Length; b++)
            row[model.Terms.Count + b - 1] = block == blocks[b] ? 1 : block == blocks[0] ? -1 : 0;
        return row;
    }

    /// <summary>The names of the columns.</summary>
    public static string[] Names(Plan plan, PlanModel model) =>
        [.. model.Terms.Select(term => term.NamedWith(plan.Factors)),
            .. plan.Runs.Select(run => run.Block).Distinct().Order().Skip(1).Select(block => $"block {block}")];

    /// <summary>The moments of the model over the cube, with zeros for the blocks: a prediction is for the mean of the blocks.</summary>
    public static Matrix<double> Moments(PlanModel model, int columns)
    {
        var moments = Matrix<double>.Build.Dense(columns, columns);
        moments.SetSubMatrix(0, 0, Matrix<double>.Build.DenseOfArray(model.CubeMoments()));
        return moments;
    }
}
