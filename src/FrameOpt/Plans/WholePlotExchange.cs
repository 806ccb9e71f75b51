using FrameOpt.Numerics;
using MathNet.Numerics.LinearAlgebra;

namespace FrameOpt.Plans;

/// <summary>Coordinate exchange for runs in whole plots: a factor that is hard to change changes in a whole plot at a time, any other in
/// one run. The information is that of runs whose setting errs as much as the run itself.</summary>
/// <remarks>Source: B. Jones and P. Goos 2007, A candidate-set-free algorithm for generating D-optimal split-plot designs, Applied
/// Statistics 56:347-364 (from memory).</remarks>
internal sealed class WholePlotExchange(OptimalRequest request)
{
    private const int MaxDraws = 10_000;
    private const int DrawsOfPlot = 100;
    private const double MinGain = 1e-8;

    /// <summary>Regularises the information of a plan that cannot estimate the model yet.</summary>
    private const double Ridge = 1e-7;

    private readonly Matrix<double> moments = ModelMatrix.Moments(request.Model, request.Model.Terms.Count);
    private readonly int[] easy = [.. Enumerable.Range(0, request.Factors.Count).Except(request.HardToChange)];

    /// <summary>The result of one random start.</summary>
    public Outcome From(Pcg32 random)
    {
        var plots = Enumerable.Range(0, request.WholePlots).Select(plot => RandomPlot(random,
            (request.Runs / request.WholePlots) + (plot < request.Runs % request.WholePlots ? 1 : 0))).ToArray();
        var parts = plots.Select(Information).ToArray();
        var criterion = Criterion(Sum(parts));
        for (var helped = true; helped;)
        {
            helped = false;
            for (var plot = 0; plot < plots.Length; plot++)
            {
                int[] all = [.. Enumerable.Range(0, plots[plot].Length)];
                var others = Sum(parts) - parts[plot];
                foreach (var factor in request.HardToChange)
                    helped |= Change(plots[plot], all, factor, others, ref criterion);
                foreach (var run in all)
                {
                    foreach (var factor in easy)
                        helped |= Change(plots[plot], [run], factor, others, ref criterion);
                }

                parts[plot] = Information(plots[plot]);
            }
        }

        return new Outcome(plots, criterion);
    }

    /// <summary>Sets one factor of some runs of a whole plot to the level with the largest gain; false when none gains.</summary>
    private bool Change(double[][] plot, int[] runs, int factor, Matrix<double> others, ref double criterion)
    {
        var own = plot[runs[0]][factor];
        var best = own;
        foreach (var level in request.Levels[factor].Where(level => level != own))
        {
            Set(level);
            if (Array.TrueForAll(runs, run => IsAllowed(plot[run])) && Criterion(others + Information(plot)) is var found
                && found > criterion + MinGain)
            {
                (criterion, best) = (found, level);
            }
        }

        Set(best);
        return best != own;

        void Set(double level)
        {
            foreach (var run in runs)
                plot[run][factor] = level;
        }
    }

    /// <summary>X'V^-1 X of one whole plot: of m rows, less the outer product of their sum over m + 1.</summary>
    private Matrix<double> Information(double[][] plot)
    {
        var x = Matrix<double>.Build.DenseOfRowArrays(plot.Select(request.Model.At));
        var sum = x.ColumnSums();
        return x.TransposeThisAndMultiply(x) - (sum.OuterProduct(sum) / (plot.Length + 1));
    }

    private Matrix<double> Sum(Matrix<double>[] parts) => parts.Aggregate(
        Matrix<double>.Build.DenseIdentity(parts[0].RowCount) * (Ridge * request.Runs), (sum, part) => sum + part);

    /// <summary>Larger is better: the logarithm of the determinant, or the mean variance of prediction with a minus.</summary>
    private double Criterion(Matrix<double> information) => request.Criterion == OptimalCriterion.D
        ? information.Cholesky().DeterminantLn : -information.Cholesky().Solve(moments).Trace();

    private double[][] RandomPlot(Pcg32 random, int runs)
    {
        for (var draw = 0; draw < MaxDraws / DrawsOfPlot; draw++)
        {
            var setting = RandomPoint(random);
            var plot = new List<double[]>();
            for (var of = 0; of < DrawsOfPlot && plot.Count < runs; of++)
            {
                var point = RandomPoint(random);
                foreach (var factor in request.HardToChange)
                    point[factor] = setting[factor];
                if (IsAllowed(point))
                    plot.Add(point);
            }

            if (plot.Count == runs)
                return [.. plot];
        }

        throw new ArgumentException($"{MaxDraws} designs drawn at random do not give {runs} that keep the limits with one setting of the "
            + "factors that are hard to change; loosen the limits or give more levels");
    }

    private double[] RandomPoint(Pcg32 random) => [.. request.Levels.Select(levels => levels[random.Next(levels.Count)])];

    private bool IsAllowed(double[] point) =>
        request.Constraints.All(limit => limit.IsSatisfiedBy(point)) && request.Allowed?.Invoke(point) != false;

    /// <summary>The chosen runs by whole plot, and their criterion value.</summary>
    internal sealed record Outcome(double[][][] Plots, double CriterionValue);
}
