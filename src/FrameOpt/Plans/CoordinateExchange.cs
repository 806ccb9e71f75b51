using FrameOpt.Numerics;
using MathNet.Numerics.LinearAlgebra;

namespace FrameOpt.Plans;

/// <summary>Coordinate exchange: improves a random plan by changing one factor of one run at a time until no change improves the
/// criterion.</summary>
internal sealed class CoordinateExchange
{
    private const int MaxDraws = 10_000;
    private const double MinGain = 1e-8;

    private readonly OptimalRequest request;
    private readonly int[] blocks;
    private readonly double[][] givenRows;
    private readonly Matrix<double> moments;

    public CoordinateExchange(OptimalRequest request)
    {
        this.request = request;
        Block = request.Given.Count == 0 ? 1 : request.InNewBlock ? request.Given.Max(run => run.Block) + 1 : request.Given[0].Block;
        blocks = [.. request.Given.Select(run => run.Block).Append(Block).Distinct().Order()];
        givenRows = [.. request.Given.Select(run => ModelMatrix.Row(request.Model, run.Coded, run.Block, blocks))];
        moments = ModelMatrix.Moments(request.Model, request.Model.Terms.Count + blocks.Length - 1);
    }

    /// <summary>The block of the chosen runs.</summary>
    public int Block { get; }

    /// <summary>The result of one random start.</summary>
    public Outcome From(Pcg32 random)
    {
        var points = Enumerable.Range(0, request.Runs).Select(_ => RandomPoint(random)).ToArray();
        var rows = points.Select(Row).ToArray();
        var rate = Rate(rows);
        for (var helped = true; helped;)
        {
            helped = false;
            for (var r = 0; r < points.Length; r++)
            {
                for (var f = 0; f < request.Factors.Count; f++)
                {
                    if (!Change(points, rows, r, f, rate))
                        continue;
                    helped = true;
                    rate = Rate(rows);
                }
            }
        }

        return new Outcome(points, rate.CriterionValue);
    }

    /// <summary>Sets one factor of one run to the level with the largest gain; false when none gains.</summary>
    private bool Change(double[][] points, double[][] rows, int run, int factor, RowExchange rate)
    {
        rate.SetRemovedRow(rows[run]);
        var (bestGain, bestLevel) = (MinGain, double.NaN);
        double[] trial = [.. points[run]];
        foreach (var level in request.Levels[factor])
        {
            trial[factor] = level;
            if (level == points[run][factor] || !IsAllowed(trial))
                continue;
            var gain = rate.Gain(Row(trial));
            if (gain > bestGain)
                (bestGain, bestLevel) = (gain, level);
        }

        if (double.IsNaN(bestLevel))
            return false;
        points[run][factor] = bestLevel;
        rows[run] = Row(points[run]);
        return true;
    }

    private RowExchange Rate(double[][] rows) =>
        new(Matrix<double>.Build.DenseOfRowArrays([.. givenRows, .. rows]), moments, request.Criterion);

    private double[] Row(double[] point) => ModelMatrix.Row(request.Model, point, Block, blocks);

    private double[] RandomPoint(Pcg32 random)
    {
        for (var draw = 0; draw < MaxDraws; draw++)
        {
            double[] point = [.. request.Levels.Select(levels => levels[random.Next(levels.Count)])];
            if (IsAllowed(point))
                return point;
        }

        throw new ArgumentException($"none of {MaxDraws} designs drawn at random keeps the limits; loosen them or give more levels");
    }

    private bool IsAllowed(double[] point) =>
        request.Constraints.All(limit => limit.IsSatisfiedBy(point)) && request.Allowed?.Invoke(point) != false;

    /// <summary>The chosen runs and their criterion value.</summary>
    internal sealed record Outcome(double[][] Points, double CriterionValue);
}
