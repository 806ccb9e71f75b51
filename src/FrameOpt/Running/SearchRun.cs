using System.Diagnostics;
using FrameOpt.Analysis;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Search;
using FrameOpt.Search.Fronts;
using FrameOpt.Search.Local;
using FrameOpt.Search.Stopping;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>One pass of a search over a study with one model: keeps the front, the counts and where the designs are, not the
/// evaluations.</summary>
public sealed class SearchRun
{
    /// <summary>Steps to either side in every factor that are allowed for in each design of the local search.</summary>
    private const int LocalSearchSteps = 10;

    private readonly Study study;
    private readonly int threads;
    private readonly StudyProblem problem;
    private readonly FrontBuilder front;
    private readonly Grid? grid;
    private readonly EvaluationCache? cache;
    private readonly string pass;
    private readonly List<double[]> designs = [];

    /// <summary>A pass not yet begun.</summary>
    /// <param name="study">As understood.</param>
    /// <param name="mission">The model to use.</param>
    /// <param name="threads">Worker threads, 1 or more.</param>
    /// <param name="cache">To keep evaluations in and answer from, or null to compute everything.</param>
    /// <param name="pass">Names this pass, so that the cache keeps its evaluations apart from those of other passes.</param>
    public SearchRun(Study study, MissionModel mission, int threads, EvaluationCache? cache = null, string pass = "study")
    {
        this.study = study;
        this.threads = threads;
        Mission = mission;
        problem = new StudyProblem(study, mission);
        this.cache = cache;
        this.pass = pass;
        Problem = cache?.Wrap(problem.Problem, pass) ?? problem.Problem;
        grid = study.Search is SearchSetting.Exhaustive ? new Grid(Problem) : null;
        front = new FrontBuilder(study.Objectives.Count, threads);
        Counts = new EvaluationCounts(study.Limits.Count);
    }

    /// <summary>The model.</summary>
    public MissionModel Mission { get; }

    /// <summary>What is searched.</summary>
    public Problem Problem { get; }

    /// <summary>Counts so far.</summary>
    public EvaluationCounts Counts { get; }

    /// <summary>Designs of the whole pass, or the most of them where the search may end sooner.</summary>
    public long Planned => grid?.Count ?? ((SearchSetting.Evolutionary)study.Search).Stop.Evaluations;

    /// <summary>Why the search came to its end; null while it has not.</summary>
    public StopReason? StopReason { get; private set; }

    /// <summary>True once the search came to its end.</summary>
    public bool IsComplete => StopReason is not null;

    /// <summary>Searches, batch by batch; stop asking to stop the search.</summary>
    public IEnumerable<EvaluatedBatch> Batches() => study.Search is SearchSetting.Evolutionary setting ? Evolve(setting) : Enumerate();

    /// <summary>The geometry of a design.</summary>
    public FrameGeometry Geometry(long number) => problem.Geometry(grid?.Design(number) ?? designs[(int)number]);

    /// <summary>The front of all designs seen so far, objectives turned so that less is better.</summary>
    public FrontPoints Front() => front.Result();

    /// <summary>The front of all designs seen so far, in rank order.</summary>
    public IReadOnlyList<FrontDesign> RankedFront()
    {
        var found = front.Result();
        var objectives = new double[found.Ids.Length][];
        for (var i = 0; i < objectives.Length; i++)
            objectives[i] = [.. found.Columns.Select(column => column[i])];
        var ranked = study.Ranking.Rank(objectives);
        var knee = Knee.Of(objectives);
        return [.. ranked.Select(place => new FrontDesign(
            place.Rank,
            found.Ids[place.Index],
            Geometry(found.Ids[place.Index]),
            [.. objectives[place.Index].Select((value, o) => Problem.Objectives[o].Oriented(value))],
            place.Score,
            place.Index == knee))];
    }

    private IEnumerable<EvaluatedBatch> Enumerate()
    {
        foreach (var batch in new ExhaustiveSearch().Run(Problem, threads))
        {
            Record(batch);
            if (Counts.Evaluated == grid!.Count)
                StopReason = new StopReason.GridComplete();
            yield return batch;
        }
    }

    private IEnumerable<EvaluatedBatch> Evolve(SearchSetting.Evolutionary setting)
    {
        var clock = Stopwatch.StartNew();
        var improved = setting.LocalSearch ? setting.Stop.Evaluations / 10 : 0;
        var rules = new StopRuleEvaluator(setting.Stop with { Evaluations = setting.Stop.Evaluations - improved }, front.Result);
        StopReason? reason = null;
        foreach (var batch in StudySearch.Of(study, setting, Problem).Run(Problem, threads))
        {
            RecordDesigns(batch);
            reason = rules.ReasonAfter(batch, clock.Elapsed);
            yield return batch;
            if (reason is not null)
                break;
        }

        reason ??= new StopReason.GridComplete();
        if (setting.LocalSearch && reason is not StopReason.TargetReached && Counts.Feasible > 0)
        {
            var searched = Counts.Evaluated;
            StopReason end = new StopReason.NoImprovingStep();
            var localSearch = new StopRuleEvaluator(setting.Stop with { Stall = null }, front.Result, Counts.Evaluated);
            foreach (var batch in new LocalSearch(ToLocalSearch(improved)).Run(Problem, threads))
            {
                // The local search counts its designs from 0.
                batch.Designs = batch.Designs with { FirstNumber = Counts.Evaluated };
                batch.CheckConstraints();
                RecordDesigns(batch);
                yield return batch;
                if (localSearch.ReasonAfter(batch, clock.Elapsed) is { } stop)
                {
                    end = stop;
                    break;
                }
            }

            reason = new StopReason.LocalSearchEnded(searched, reason, Counts.Evaluated - searched, end);
        }

        StopReason = reason;
    }

    private void Record(EvaluatedBatch batch)
    {
        front.Add(batch.Objectives, batch.Feasible, batch.Designs.Count, batch.Designs.FirstNumber);
        Counts.Add(batch.Counts);
    }

    /// <summary>Records a batch whose designs cannot be found again from their numbers in a grid.</summary>
    private void RecordDesigns(EvaluatedBatch batch)
    {
        Record(batch);
        cache?.Store(batch, pass);
        for (var i = 0; i < batch.Designs.Count; i++)
        {
            var values = new double[Problem.Factors.Count];
            batch.Designs.CopyDesign(i, Problem, values);
            designs.Add(values);
        }
    }

    /// <summary>The best ranked designs, as many as the evaluations kept for the local search allow.</summary>
    private LocalSearchSettings ToLocalSearch(long evaluations)
    {
        var most = (int)Math.Max(1, evaluations / (LocalSearchSteps * 2 * Problem.Factors.Count));
        var best = RankedFront().Take(most).ToList();
        return new LocalSearchSettings([.. best.Select(design => designs[(int)design.Number])])
        {
            Objectives = [.. best.Select(design => design.Objectives.Select((value, o) => Problem.Objectives[o].Oriented(value))
                .ToArray())],
            Seen = designs,
        };
    }
}
