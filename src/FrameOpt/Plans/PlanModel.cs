namespace FrameOpt.Plans;

/// <summary>The terms a plan is to estimate.</summary>
/// <param name="Terms">The constant first.</param>
public sealed record PlanModel(IReadOnlyList<ModelTerm> Terms)
{
    /// <summary>Constant and main effects.</summary>
    /// <param name="factors">How many factors.</param>
    public static PlanModel Linear(int factors) => new([new ModelTerm([]), .. Enumerable.Range(0, factors).Select(f => new ModelTerm([f]))]);

    /// <summary>Constant, main effects and every interaction of two.</summary>
    /// <param name="factors">How many factors.</param>
    public static PlanModel Interactions(int factors) => new(
    [
        .. Linear(factors).Terms,
        .. from first in Enumerable.Range(0, factors)
           from second in Enumerable.Range(first + 1, factors - first - 1)
           select new ModelTerm([first, second]),
    ]);

    /// <summary>Constant, main effects, every interaction of two and every square.</summary>
    /// <param name="factors">How many factors.</param>
    public static PlanModel Quadratic(int factors) =>
        new([.. Interactions(factors).Terms, .. Enumerable.Range(0, factors).Select(f => new ModelTerm([f, f]))]);

    /// <summary>The value of every term at a point.</summary>
    public double[] At(IReadOnlyList<double> coded) => [.. Terms.Select(term => term.At(coded))];

    /// <summary>The mean over the cube from -1 to +1 of the product of every two terms, exactly: the mean of x^n is 1/(n+1) for even n and 0 for odd.</summary>
    public double[,] CubeMoments()
    {
        var moments = new double[Terms.Count, Terms.Count];
        for (var i = 0; i < Terms.Count; i++)
        {
            for (var j = 0; j < Terms.Count; j++)
            {
                moments[i, j] = Terms[i].Factors.Concat(Terms[j].Factors).CountBy(f => f)
                    .Aggregate(1.0, (mean, power) => power.Value % 2 == 1 ? 0 : mean / (power.Value + 1));
            }
        }

        return moments;
    }
}
