namespace FrameOpt.Plans;

/// <summary>The terms a plan is to estimate.</summary>
/// <param name="Terms">The constant first.</param>
public sealed record PlanModel(IReadOnlyList<ModelTerm> Terms)
{
    /// <summary>Constant and main effects.</summary>
    /// <param name="factors">How many factors.</param>
    public static PlanModel Linear(int factors) => new(ModelTerms.Linear(factors));

    /// <summary>Constant, main effects and every interaction of two.</summary>
    /// <param name="factors">How many factors.</param>
    public static PlanModel Interactions(int factors) => new(ModelTerms.WithInteractions(factors));

    /// <summary>Constant, main effects, every interaction of two and every square.</summary>
    /// <param name="factors">How many factors.</param>
    public static PlanModel Quadratic(int factors) => new(ModelTerms.Quadratic(factors));

    /// <summary>The value of every term at a point.</summary>
    public double[] At(IReadOnlyList<double> coded) => [.. Terms.Select(term => term.Value(coded))];

    /// <summary>The mean over the cube from -1 to +1 of the product of every two terms, exactly: the mean of x^n is 1/(n+1) for even n and 0 for odd.</summary>
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
