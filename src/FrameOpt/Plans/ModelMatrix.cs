using MathNet.Numerics.LinearAlgebra;

namespace FrameOpt.Plans;

/// <summary>The columns a model and the blocks make of a plan. Blocks are coded to sum to nought, so that the constant is the mean of the
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

    /// <summary>The moments of the model over the cube, with nought for the blocks: a prediction is for the mean of the blocks.</summary>
    public static Matrix<double> Moments(PlanModel model, int columns)
    {
        var moments = Matrix<double>.Build.Dense(columns, columns);
        moments.SetSubMatrix(0, 0, Matrix<double>.Build.DenseOfArray(model.CubeMoments()));
        return moments;
    }
}
