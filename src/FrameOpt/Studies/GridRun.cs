using FrameOpt.Analysis;
using FrameOpt.Model;
using FrameOpt.Search;

namespace FrameOpt.Studies;

/// <summary>One pass of a search over a study with one model: keeps the front and the counts, not the evaluations.</summary>
public sealed class GridRun
{
    private readonly Study study;
    private readonly int threads;
    private readonly StudyProblem problem;
    private readonly FrontBuilder front;

    /// <summary>A pass not yet begun.</summary>
    /// <param name="study">As understood.</param>
    /// <param name="mission">The model to use.</param>
    /// <param name="threads">Worker threads, 1 or more.</param>
    public GridRun(Study study, MissionModel mission, int threads)
    {
        this.study = study;
        this.threads = threads;
        Mission = mission;
        problem = new StudyProblem(study, mission);
        Grid = new Grid(problem.Problem);
        front = new FrontBuilder(study.Objectives.Count, threads);
        Tally = new Tally(study.Limits.Count);
    }

    /// <summary>The model.</summary>
    public MissionModel Mission { get; }

    /// <summary>The designs.</summary>
    public Grid Grid { get; }

    /// <summary>Counts so far.</summary>
    public Tally Tally { get; }

    /// <summary>True once every design was seen.</summary>
    public bool IsComplete => Tally.Evaluated == Grid.Count;

    /// <summary>Searches, batch by batch; stop asking to stop the search.</summary>
    public IEnumerable<EvaluatedBatch> Batches()
    {
        foreach (var batch in new ExhaustiveSearch().Run(problem.Problem, threads))
        {
            front.Add(batch.Objectives, batch.Usable, batch.Designs.Count, batch.Designs.FirstNumber);
            Tally.Add(batch.Tally);
            yield return batch;
        }
    }

    /// <summary>The geometry of a design.</summary>
    public FrameGeometry Geometry(long number) => problem.Geometry(Grid.Design(number));

    /// <summary>The front of all designs seen so far, in rank order.</summary>
    public IReadOnlyList<FrontDesign> RankedFront()
    {
        var found = front.Result();
        var designs = new double[found.Ids.Length][];
        for (var i = 0; i < designs.Length; i++)
            designs[i] = [.. found.Columns.Select(column => column[i])];
        var ranked = study.Ranking.Method switch
        {
            RankingMethod.DistanceToIdeal => Ranking.ByDistanceToIdeal(designs, study.Ranking.Weights),
            RankingMethod.Topsis => Ranking.ByTopsis(designs, study.Ranking.Weights),
            _ => throw new InvalidOperationException(),
        };
        var knee = Knee.Of(designs);
        return [.. ranked.Select(place => new FrontDesign(
            place.Rank,
            found.Ids[place.Index],
            Geometry(found.Ids[place.Index]),
            [.. designs[place.Index].Select((value, o) => problem.Problem.Goals[o].Oriented(value))],
            place.Score,
            place.Index == knee))];
    }
}
