using FrameOpt.Analysis;
using FrameOpt.Model.Mission;
using FrameOpt.Search;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>Runs a study's plan and fits its surfaces.</summary>
public static class PlanRunner
{
    /// <summary>The results of the plan. The runs are computed, so there are no significance tests: contributions and errors are given
    /// instead.</summary>
    /// <param name="study">With a plan setting.</param>
    /// <param name="mission">The model.</param>
    /// <param name="threads">Worker threads for the comparison of surface and model, at least 1.</param>
    /// <param name="stop">Ends the work; there is no result then.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static PlanResult Run(Study study, MissionModel mission, int threads, CancellationToken stop = default)
    {
        var plan = StudyPlan.Of(study);
        var evaluations = plan.Designs.Select(design =>
        {
            stop.ThrowIfCancellationRequested();
            return mission.Evaluate(design);
        }).ToList();
        var responses = study.Plan!.Responses;
        var values = responses
            .Select(response => evaluations.Select(e => e.Failure is null ? e[response] : double.NaN).ToArray()).ToList();
        var fits = values.Select(y => Fit(plan, y)).ToList();
        var checks = SurfaceComparison.Of(study, mission, plan, responses, fits, threads, stop);
        return new PlanResult(
            plan,
            [.. evaluations.Select(evaluation => evaluation.Failure)],
            [.. responses.Select((response, r) => new FittedSurface(response, values[r], fits[r], Shape(fits[r]), checks[r]))]);
    }

    private static RegressionFit? Fit(StudyPlan plan, double[] y)
    {
        var flying = Enumerable.Range(0, y.Length).Where(i => double.IsFinite(y[i])).ToList();
        return flying.Count < plan.Terms.Count ? null : Regression.Fit(
            plan.Terms, [.. flying.Select(i => plan.Plan.Runs[i].Coded)], [.. flying.Select(i => y[i])], ErrorKind.Deterministic);
    }

    private static ResponseSurface? Shape(RegressionFit? fit) =>
        fit is not null && fit.Aliased.Count == 0 && fit.Terms.Any(term => term.Powers.Contains(2)) ? ResponseSurface.Of(fit) : null;
}

/// <summary>Compares fitted surfaces with the model, on a grid of a million designs or more over the plan's cube.</summary>
public static class SurfaceComparison
{
    private const double MinPoints = 1_000_000;

    /// <summary>One check for each response, null where there is no fit.</summary>
    public static IReadOnlyList<SurfaceCheck?> Of(
        Study study, MissionModel mission, StudyPlan plan, IReadOnlyList<Response> responses, IReadOnlyList<RegressionFit?> fits,
            int threads, CancellationToken stop = default)
    {
        var levels = Math.Max(2, (int)Math.Ceiling(Math.Pow(MinPoints, 1.0 / plan.Factors.Count) - 1e-9));
        var fine = study with
        {
            Factors = [.. study.Factors.Select(factor => Finer(factor, plan, levels))],
            Objectives = [.. responses.Select(response => new StudyObjective(response, false, false, 0))],
            Limits = [],
        };
        var problem = new StudyProblem(fine, mission);
        var sums = fits.Select(_ => new Sum()).ToArray();
        foreach (var batch in new ExhaustiveSearch().Run(problem.Problem, threads))
        {
            stop.ThrowIfCancellationRequested();
            Add(batch, problem, plan, fits, sums);
        }

        return [.. fits.Select((fit, r) => fit is null || sums[r].Count == 0 ? null : sums[r].AsCheck())];
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

    private static void Add(EvaluatedBatch batch, StudyProblem problem, StudyPlan plan, IReadOnlyList<RegressionFit?> fits, Sum[] sums)
    {
        var values = new double[batch.Problem.Factors.Count];
        var coded = new double[plan.Factors.Count];
        for (var i = 0; i < batch.Designs.Count; i++)
        {
            if (batch.Failures[i] != 0)
                continue;
            batch.Designs.CopyDesign(i, batch.Problem, values);
            var geometry = problem.Geometry(values);
            for (var f = 0; f < coded.Length; f++)
                coded[f] = plan.Scales[f].Coded(geometry[plan.Factors[f].Input]);
            for (var r = 0; r < fits.Count; r++)
            {
                if (fits[r] is { } fit)
                    sums[r].Add(batch.Objectives[r][i], fit.Predict(coded), coded);
            }
        }
    }

    private sealed class Sum
    {
        private double squares;
        private double largest = -1;
        private double lowest = double.PositiveInfinity;
        private double highest = double.NegativeInfinity;
        private double[] worst = [];

        public long Count { get; private set; }

        public void Add(double model, double surface, double[] coded)
        {
            var error = Math.Abs(surface - model);
            Count++;
            squares += error * error;
            lowest = Math.Min(lowest, model);
            highest = Math.Max(highest, model);
            if (error > largest)
                (largest, worst) = (error, [.. coded]);
        }

        public SurfaceCheck AsCheck() => new(Count, largest, Math.Sqrt(squares / Count), highest - lowest, worst);
    }
}
