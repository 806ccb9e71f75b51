using FrameOpt.ProductLine.PMedian;

namespace FrameOpt.ProductLine;

/// <summary>What each further variant gains.</summary>
public static class ProductLineCurve
{
    /// <summary>The best line of 1, 2, ... variants.</summary>
    /// <param name="problem">Its count is not used.</param>
    /// <param name="most">Up to how many variants.</param>
    /// <param name="settings">The time limit is for each count.</param>
    public static IReadOnlyList<ProductLineCurvePoint> Of(ProductLineProblem problem, int most, ProductLineSolverSettings settings)
    {
        var points = new List<ProductLineCurvePoint>();
        for (var count = 1; count <= Math.Min(most, problem.Candidates) && !(count > 1 && settings.Cancel.IsCancellationRequested); count++)
        {
            var solution = ProductLineSolver.Solve(problem with { Count = count }, settings);
            double? gain = points.Count > 0 && points[^1].Solution.Feasible ? points[^1].Solution.Value - solution.Value : null;
            points.Add(new ProductLineCurvePoint(count, solution, gain));
        }

        return points;
    }
}

/// <summary>The best line of a given number of variants.</summary>
/// <param name="Count">How many may be chosen.</param>
/// <param name="Solution">The best found.</param>
/// <param name="Gain">How much smaller the value is than with one variant fewer: null for the first, and where the line before leaves
/// customers out.</param>
public sealed record ProductLineCurvePoint(int Count, ProductLineSolution Solution, double? Gain);
