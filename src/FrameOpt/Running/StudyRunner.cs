using System.Diagnostics;
using System.Globalization;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Search;
using FrameOpt.Search.Stopping;
using FrameOpt.Studies;
using FrameOpt.Uncertainty;

namespace FrameOpt.Running;

/// <summary>Runs a study: step through <see cref="Steps"/>, stop at any step, then take the <see cref="Result"/>.</summary>
public sealed class StudyRunner
{
    private readonly Study study;
    private readonly int threads;
    private readonly SearchRun main;
    private readonly (WingCase Case, SearchRun Run)[] scenarios;
    private readonly CertificateRun? certificate;
    private readonly SeedRuns seeds;
    private readonly Stopwatch searchClock = new();
    private readonly Stopwatch scenarioClock = new();
    private readonly Stopwatch certificateClock = new();

    /// <summary>Prepares a run without starting it.</summary>
    /// <param name="study">As understood.</param>
    /// <param name="threads">Worker threads, 1 or more.</param>
    /// <param name="cache">To keep the evaluations of an evolutionary search in and answer from, or null.</param>
    public StudyRunner(Study study, int threads, EvaluationCache? cache = null)
    {
        this.study = study;
        this.threads = threads;
        var mission = StudyProblem.Model(study);
        main = new SearchRun(study, mission, threads, cache);
        scenarios = [.. WingCases.All.Where(wingCase => wingCase != WingCase.AsGiven).Select(wingCase => (
            wingCase, new SearchRun(study, mission.With(wingCase.Of(study.Wing)), threads, cache, wingCase.ToString())))];
        certificate = study.Search is SearchSetting.Evolutionary ? new CertificateRun(study, mission, threads) : null;
        seeds = new SeedRuns(study, mission, threads, cache);
    }

    /// <summary>Seconds spent on model, limits and front.</summary>
    public double SearchSeconds => searchClock.Elapsed.TotalSeconds;

    /// <summary>Seconds spent on the other cases of the wing.</summary>
    public double ScenarioSeconds => scenarioClock.Elapsed.TotalSeconds;

    /// <summary>Seconds spent on the grid that the search is compared with, and on comparing.</summary>
    public double CertificateSeconds => certificateClock.Elapsed.TotalSeconds;

    /// <summary>The designs of the run by number; valid before, during and after it.</summary>
    public FrameGeometry Geometry(long number) => main.Geometry(number);

    /// <summary>The steps of the run, one for each batch. To stop the run, stop enumerating.</summary>
    public IEnumerable<RunProgress> Steps()
    {
        searchClock.Start();
        foreach (var batch in main.Batches())
        {
            searchClock.Stop();
            yield return new RunProgress("designs", main.Counts.Evaluated, main.Planned, batch);
            searchClock.Start();
        }

        searchClock.Stop();
        if (main.Counts.Feasible == 0 || study.IsOneFrame)
            yield break;
        foreach (var step in CertificateSteps())
            yield return step;
        foreach (var step in seeds.Steps())
            yield return step;
        if (main.Planned > RunLimits.MaxDesignsForScenarioSearch || study.ResponsesOverCases.Count > 0)
            yield break;
        foreach (var (number, (_, run)) in scenarios.Index())
        {
            scenarioClock.Start();
            foreach (var _ in run.Batches())
            {
                scenarioClock.Stop();
                yield return new RunProgress(
                    string.Create(
                        CultureInfo.InvariantCulture, $"the same if the wing is different, case {number + 1} of {scenarios.Length}"),
                    run.Counts.Evaluated, run.Planned, null);
                scenarioClock.Start();
            }

            scenarioClock.Stop();
        }
    }

    /// <summary>The answer from all designs seen so far.</summary>
    public StudyResult Result()
    {
        searchClock.Start();
        var front = study.IsOneFrame ? OneFrame() : main.RankedFront();
        searchClock.Stop();
        certificateClock.Start();
        var compared = certificate?.Of(main.Front());
        certificateClock.Stop();
        var chosen = front.Count > 0 ? main.Mission.Evaluate(front[0].Geometry) : null;
        return new StudyResult(
            study,
            main.Mission,
            front,
            Dropped(front),
            Counts(),
            main.StopReason ?? new StopReason.StoppedEarly(main.Counts.Evaluated, main.Planned),
            chosen,
            study.Baseline is { } baseline ? main.Mission.Evaluate(baseline) : null,
            chosen is null ? [] : Scenarios(front, chosen),
            chosen is null ? [] : new BalancedBands(main.Mission, study.Band.PhaseIndex).Find(
                chosen.Geometry, study.Band.WithinNewtonMetres),
            front.Count > 0 || main.Counts.NearestMiss < 0 ? null : Nearest())
        {
            Uncertainty = chosen is null ? null : UncertaintyRun.Of(study, main.Mission, front, chosen.Geometry, seeds.Best(), threads),
            Margins = chosen is null ? [] : BuildMargins.Of(main.Mission, study, chosen),
            Plan = study.Plan is null ? null : PlanRunner.Run(study, main.Mission, threads),
            Certificate = compared,
        };
    }

    private IEnumerable<RunProgress> CertificateSteps()
    {
        if (certificate is null)
            yield break;
        certificateClock.Start();
        foreach (var _ in certificate.Batches())
        {
            certificateClock.Stop();
            yield return new RunProgress("a grid to compare the front with", certificate.Done, certificate.Designs, null);
            certificateClock.Start();
        }

        certificateClock.Stop();
    }

    private IReadOnlyList<string> Dropped(IReadOnlyList<FrontDesign> front) => front.Count == 0 || study.IsOneFrame ? [] :
        [.. study.Objectives.Select(o => o.Response.Name).Where((_, o) => front.All(d => d.Objectives[o] == front[0].Objectives[o]))];

    private IReadOnlyList<WingScenario> Scenarios(IReadOnlyList<FrontDesign> front, DesignEvaluation chosen)
    {
        scenarioClock.Start();
        WingScenario Other(WingCase wingCase, SearchRun run)
        {
            // A search that did not run to its end does not show which design is best.
            var best = run.IsComplete && run.RankedFront() is { Count: > 0 } ranked ? ranked[0] : null;
            return new WingScenario(wingCase, run.Mission.Evaluate(chosen.Geometry), best,
                best is null ? null : run.Mission.Evaluate(best.Geometry));
        }

        IReadOnlyList<WingScenario> all =
        [
            .. scenarios.Select(scenario => Other(scenario.Case, scenario.Run))
                .Append(new WingScenario(WingCase.AsGiven, chosen, front[0], chosen))
                .OrderBy(scenario => scenario.Case),
        ];
        scenarioClock.Stop();
        return all;
    }

    /// <summary>The one frame of a study whose factors are all fixed, whether it meets the limits or not; none when it cannot
    /// fly.</summary>
    private IReadOnlyList<FrontDesign> OneFrame()
    {
        var only = main.Mission.Evaluate(main.Geometry(0));
        return only.Failure is not null ? [] :
        [
            new FrontDesign(1, 0, only.Geometry, [.. study.Objectives.Select(objective =>
                objective.ValueOf(only))], 0, false),
        ];
    }

    private RunCounts Counts() => new(
        main.Counts.Evaluated,
        main.Counts.Failed,
        main.Counts.Infeasible,
        main.Counts.Feasible,
        [.. main.Counts.Failures.OrderByDescending(pair => pair.Value).ThenBy(pair => pair.Key)
            .Select(pair => new FailureCount(FlightFailure.FromCode(pair.Key), pair.Value))],
        [.. main.Counts.ViolatedBy]);

    private NearestMiss Nearest()
    {
        var evaluation = main.Mission.Evaluate(main.Geometry(main.Counts.NearestMiss));
        var broken = study.Limits
            .Where(limit => !limit.IsMetBy(evaluation))
            .OrderByDescending(limit => limit.AsConstraint.Violation(limit.ValueOf(evaluation)));
        return new NearestMiss(main.Counts.NearestMiss, evaluation, [.. broken]);
    }
}

/// <summary>How far a run is.</summary>
/// <param name="Stage">In words.</param>
/// <param name="Done">Designs evaluated in this stage.</param>
/// <param name="Total">Designs to evaluate in this stage.</param>
/// <param name="Batch">The evaluations just made, in the first stage; valid until the next step.</param>
public sealed record RunProgress(string Stage, long Done, long Total, EvaluatedBatch? Batch);
