using FrameOpt.Search;

namespace FrameOpt.Tests.Search;

/// <summary>Problems written as a function of one design.</summary>
internal static class TestProblem
{
    /// <summary>Fills the objectives and the limits' values of one design.</summary>
    public delegate void Answer(ReadOnlySpan<double> x, Span<double> f, Span<double> g);

    /// <summary>A problem all of whose objectives are to be minimised.</summary>
    public static Problem Of(Factor[] factors, int objectives, Constraint[] bounds, Answer answer,
        Func<double[], ushort>? failure = null) => new(
        factors,
        0,
        [.. Enumerable.Range(0, objectives).Select(j => new Objective($"f{j + 1}", Maximise: false))],
        bounds,
        batch => Fill(batch, answer, failure));

    /// <summary>Continuous factors of one range.</summary>
    public static Factor[] Continuous(int count, double from, double to) =>
        [.. Enumerable.Range(1, count).Select(i => new Factor.Continuous($"x{i}", from, to))];

    /// <summary>The objectives of one design.</summary>
    public static double[] Objectives(Problem problem, params double[] design)
    {
        var batch = new EvaluatedBatch(problem, DesignBatch.Single(0, 1, design));
        problem.Evaluate(batch);
        return [.. batch.Objectives.Select(column => column[0])];
    }

    private static void Fill(EvaluatedBatch batch, Answer answer, Func<double[], ushort>? failure)
    {
        var x = new double[batch.Problem.Factors.Count];
        var f = new double[batch.Objectives.Length];
        var g = new double[batch.ConstraintValues.Length];
        for (var i = 0; i < batch.Designs.Count; i++)
        {
            batch.Designs.CopyDesign(i, batch.Problem, x);
            answer(x, f, g);
            for (var j = 0; j < f.Length; j++)
                batch.Objectives[j][i] = f[j];
            for (var b = 0; b < g.Length; b++)
                batch.ConstraintValues[b][i] = g[b];
            batch.Failures[i] = failure?.Invoke(x) ?? 0;
        }
    }
}
