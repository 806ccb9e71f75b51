using FrameOpt.Plans;

namespace FrameOpt.Tests.Plans;

/// <summary>Correlations of the terms of a model in a plan.</summary>
internal static class PlanCorrelation
{
    /// <summary>The correlation of every two terms over the runs, in the order of the model: 0 where they are orthogonal, 1 or -1 where
    /// they are fully aliased, and NaN for a term that never changes, such as the constant.</summary>
    public static double[,] Of(Plan plan, PlanModel model)
    {
        var columns = model.Terms.Select(term => plan.Runs.Select(run => term.Value(run.Coded)).ToArray()).Select(Centred).ToArray();
        var correlation = new double[columns.Length, columns.Length];
        for (var i = 0; i < columns.Length; i++)
        {
            for (var j = 0; j < columns.Length; j++)
                correlation[i, j] = Dot(columns[i], columns[j]) / Math.Sqrt(Dot(columns[i], columns[i]) * Dot(columns[j], columns[j]));
        }

        return correlation;
    }

    private static double[] Centred(double[] column)
    {
        var mean = column.Average();
        return [.. column.Select(value => value - mean)];
    }

    private static double Dot(double[] left, double[] right) => left.Zip(right, (a, b) => a * b).Sum();
}
