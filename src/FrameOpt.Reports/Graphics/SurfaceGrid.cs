using FrameOpt.Analysis;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Graphics;

/// <summary>A fitted surface over the two factors of largest share, all others at their middle.</summary>
/// <param name="RowFactor">Which factor changes from row to row.</param>
/// <param name="ColumnFactor">Which factor changes from column to column.</param>
/// <param name="Rows">The fitted response, at <see cref="Levels"/> of both.</param>
internal sealed record SurfaceGrid(int RowFactor, int ColumnFactor, IReadOnlyList<IReadOnlyList<double>> Rows)
{
    /// <summary>The coded values of both factors: 21 from -1 to +1.</summary>
    public static IReadOnlyList<double> Levels { get; } = [.. Enumerable.Range(-10, 21).Select(i => i / 10.0)];

    /// <summary>The grid of a fit over two factors or more.</summary>
    public static SurfaceGrid Of(StudyPlan plan, RegressionFit fit)
    {
        var terms = PlanLabels.Terms(fit);
        double Share(int factor) => terms.Where(row => row.Term.Powers[factor] > 0).Sum(row => row.Share ?? 0);
        int[] byShare = [.. Enumerable.Range(0, plan.Factors.Count).OrderByDescending(Share)];
        var coded = new double[plan.Factors.Count];
        double At(double down, double across)
        {
            (coded[byShare[0]], coded[byShare[1]]) = (down, across);
            return fit.Predict(coded);
        }

        return new SurfaceGrid(byShare[0], byShare[1], [.. Levels.Select(
            down => (IReadOnlyList<double>)[.. Levels.Select(across => At(down, across))])]);
    }
}
