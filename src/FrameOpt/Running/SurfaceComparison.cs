using FrameOpt.Analysis;
using FrameOpt.Model.Mission;
using FrameOpt.Numerics;
using FrameOpt.Plans;
using FrameOpt.Search;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>Compares fitted surfaces with the model, on a grid of a million designs or more over the plan's cube.</summary>
public static class SurfaceComparison
{
    private const double MinPoints = 1_000_000;

    /// <summary>One check for each response, null where there is no fit.</summary>
    public static IReadOnlyList<SurfaceCheck?> Of(
        Study study, MissionModel mission, StudyPlan plan, IReadOnlyList<Response> responses, IReadOnlyList<RegressionFit?> fits,
            int threads, CancellationToken stop = default)
    {
        var levels = Math.Max(2, (int)Math.Ceiling(Elementary.Pow(MinPoints, 1.0 / plan.Factors.Count) - 1e-9));
        var fine = study with
        {
            Factors = [.. study.Factors.Select(factor => Finer(factor, plan, levels))],
            Objectives = [.. responses.Select(response => new StudyObjective(response, false, false, 0))],
            Limits = study.LimitsOfOneCase,
        };
        var sums = fits.Select(_ => (Everywhere: new Sum(), Within: new Sum())).ToArray();
        foreach (var batch in new ExhaustiveSearch().Run(new StudyProblem(fine, mission).Problem, threads))
        {
            stop.ThrowIfCancellationRequested();
            Add(batch, plan, fits, sums, threads);
        }

        return [.. fits.Select((fit, r) => fit is null || sums[r].Everywhere.AsError() is not { } everywhere ? null
            : new SurfaceCheck(everywhere, fine.Limits.Count == 0 ? null : sums[r].Within.AsError(), sums[r].Everywhere.Worst))];
    }

    private static StudyFactor Finer(StudyFactor factor, StudyPlan plan, int levels)
    {
        var index = plan.Factors.ToList().IndexOf(factor);
        return index < 0
            ? factor
            : factor with
            {
                IsContinuous = false,
                LevelsSi = [.. Enumerable.Range(0, levels)
                .Select(i => plan.Scales[index].Natural(-1 + 2.0 * i / (levels - 1)))]
            };
    }

    private static void Add(EvaluatedBatch batch, StudyPlan plan, IReadOnlyList<RegressionFit?> fits, (Sum Everywhere, Sum Within)[] sums,
        int threads)
    {
        var flying = Enumerable.Range(0, batch.Designs.Count).Where(i => batch.Failures[i] == 0).ToArray();
        var coded = Array.ConvertAll([.. plan.Factors], _ => new double[flying.Length]);
        var names = batch.Problem.Factors.Select(factor => factor.Name).ToList();
        var places = plan.Factors.Select(factor => names.IndexOf(factor.Name)).ToArray();
        PlanScale[] scales = [.. plan.Scales];
        var values = new double[batch.Problem.Factors.Count];
        for (var k = 0; k < flying.Length; k++)
        {
            batch.Designs.CopyDesign(flying[k], batch.Problem, values);
            for (var f = 0; f < coded.Length; f++)
                coded[f][k] = scales[f].Coded(values[places[f]]);
        }

        Parallel.For(0, fits.Count, new ParallelOptions { MaxDegreeOfParallelism = threads }, r =>
        {
            if (fits[r] is not { } fit)
                return;
            var surface = new double[flying.Length];
            fit.PredictAll(coded, surface);
            var (model, feasible, (everywhere, within)) = (batch.Objectives[r], batch.Feasible, sums[r]);
            for (var k = 0; k < flying.Length; k++)
            {
                everywhere.Add(model[flying[k]], surface[k], coded, k);
                if (feasible[flying[k]] != 0)
                    within.Add(model[flying[k]], surface[k], coded, k);
            }
        });
    }

    private sealed class Sum
    {
        private long count;
        private double squares;
        private double largest = -1;
        private double lowest = double.PositiveInfinity;
        private double highest = double.NegativeInfinity;

        /// <summary>Mean of the model, and the sum of squares about it.</summary>
        private double mean, spread;

        public double[] Worst { get; private set; } = [];

        /// <remarks>Source: B. P. Welford 1962, Note on a method for calculating corrected sums of squares and products (from
        /// memory).</remarks>
        public void Add(double model, double surface, double[][] coded, int design)
        {
            var error = Math.Abs(surface - model);
            count++;
            squares += error * error;
            var off = model - mean;
            mean += off / count;
            spread += off * (model - mean);
            lowest = Math.Min(lowest, model);
            highest = Math.Max(highest, model);
            if (error > largest)
                (largest, Worst) = (error, Array.ConvertAll(coded, column => column[design]));
        }

        public SurfaceError? AsError() => count == 0 ? null : new SurfaceError(count, largest, Math.Sqrt(squares / count), highest - lowest,
            spread > 0 ? 1 - squares / spread : double.NaN);
    }
}
