using FrameOpt.Search;
using FrameOpt.Search.Fronts;

namespace FrameOpt.Tests.Search;

/// <summary>What a search evaluated, up to a number of designs.</summary>
internal sealed record EvaluatedRun(Problem Problem, List<double[]> Designs, List<double[]> Objectives, List<byte> Feasible,
    FrontPoints Front)
{
    public static EvaluatedRun Of(ISearch search, Problem problem, int most, int threads = 1)
    {
        var front = new FrontBuilder(problem.Objectives.Count, threads: 1);
        var run = new EvaluatedRun(problem, [], [], [], new FrontPoints([], []));
        foreach (var batch in search.Run(problem, threads).TakeWhile(_ => run.Designs.Count < most))
        {
            front.Add(batch.Objectives, batch.Feasible, batch.Designs.Count, batch.Designs.FirstNumber);
            for (var i = 0; i < batch.Designs.Count; i++)
            {
                var design = new double[problem.Factors.Count];
                batch.Designs.CopyDesign(i, problem, design);
                run.Designs.Add(design);
                run.Objectives.Add([.. batch.Objectives.Select(column => column[i])]);
                run.Feasible.Add(batch.Feasible[i]);
            }
        }

        return run with { Front = front.Result() };
    }

    /// <summary>The points of the front, one after the other.</summary>
    public IEnumerable<double[]> FrontValues() => Front.Ids.Select((_, i) => Front.Columns.Select(column => column[i]).ToArray());

    /// <summary>The designs of the front.</summary>
    public IEnumerable<double[]> FrontDesigns() => Front.Ids.Select(id => Designs[(int)id]);

    public double Volume(params double[] reference) => Hypervolume.Of([.. FrontValues().SelectMany(point => point)], reference);
}
