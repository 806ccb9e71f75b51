using MathNet.Numerics.LinearAlgebra;

namespace FrameOpt.Plans;

/// <summary>Seeks the worst variance of prediction within the cube.</summary>
internal static class MaxPredictionVariance
{
    private const int Starts = 20;

    private static readonly double[] levels = CodedLevels.EvenlySpaced(21);

    /// <summary>The worst variance found going from the worst runs, one factor at a time, as long as it grows; v is the inverse of the
    /// information matrix,
    /// blocks last.</summary>
    public static double Of(Plan plan, PlanModel model, Matrix<double> v)
    {
        var terms = v.SubMatrix(0, model.Terms.Count, 0, model.Terms.Count);
        double Variance(double[] point)
        {
            var row = Vector<double>.Build.Dense(model.At(point));
            return row * terms * row;
        }

        return plan.Runs.Select(run => run.Coded.Select(value => Math.Clamp(value, -1, 1)).ToArray())
            .OrderByDescending(Variance).Take(Starts).Max(start => Climb(start, Variance));
    }

    private static double Climb(double[] point, Func<double[], double> variance)
    {
        var worst = variance(point);
        for (var grew = true; grew;)
        {
            grew = false;
            for (var f = 0; f < point.Length; f++)
            {
                var kept = point[f];
                foreach (var level in levels)
                {
                    point[f] = level;
                    var found = variance(point);
                    if (found > worst + 1e-12)
                        (worst, kept, grew) = (found, level, true);
                }

                point[f] = kept;
            }
        }

        return worst;
    }
}
