using FrameOpt.Analysis;
using FrameOpt.Model.Mission;
using FrameOpt.Search;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>Finds which factors matter in the model itself: every design of the study's grid, or of a coarser one, counts once.</summary>
public static class ModelSharesRun
{
    /// <summary>Designs times sets of factors: a few tenths of a second.</summary>
    private const long MostWork = 1L << 22;

    /// <summary>The shares of the swept factors.</summary>
    /// <param name="study">Its levels and limits count; limits over cases do not.</param>
    /// <param name="mission">The model.</param>
    /// <param name="responses">Of one case each.</param>
    /// <param name="threads">Worker threads, 1 or more.</param>
    /// <param name="stop">Ends the work; there is no result then.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ModelShares Of(
        Study study, MissionModel mission, IReadOnlyList<Response> responses, int threads, CancellationToken stop = default)
    {
        var grid = SubGrid.Of(study, MostWork >> study.Factors.Count(factor => factor.IsSwept)) with
        {
            Objectives = [.. responses.Select(response => new StudyObjective(response, false, false, 0))],
            Limits = study.LimitsOfOneCase,
        };
        var factors = grid.Factors.Where(factor => factor.IsSwept).ToList();
        var problem = new StudyProblem(grid, mission).Problem;
        var places = factors.Select(factor => problem.Factors.ToList().FindIndex(other => other.Name == factor.Name)).ToArray();
        var everywhere = new Sample(factors, responses.Count);
        var within = new Sample(factors, responses.Count);
        var values = new double[problem.Factors.Count];
        foreach (var batch in new ExhaustiveSearch().Run(problem, threads))
        {
            stop.ThrowIfCancellationRequested();
            for (var i = 0; i < batch.Designs.Count; i++)
            {
                if (batch.Failures[i] != 0)
                    continue;
                batch.Designs.CopyDesign(i, problem, values);
                everywhere.Add(batch, i, values, places);
                if (batch.Feasible[i] != 0)
                    within.Add(batch, i, values, places);
            }
        }

        var (all, kept) = (everywhere.Shares(), grid.Limits.Count == 0 ? null : within.Shares());
        return new ModelShares(
            [.. study.Factors.Where(factor => factor.IsSwept)], everywhere.Count, within.Count,
            [.. responses.Select((response, r) => new ResponseShares(response, all[r], kept is null ? [] : kept[r]))])
        {
            IsThinned = grid.GridSize != study.GridSize,
        };
    }

    /// <summary>Some designs: the level of each factor, and the value of each response.</summary>
    private sealed class Sample(IReadOnlyList<StudyFactor> factors, int responses)
    {
        private readonly double[][] levels = [.. factors.Select(factor => factor.LevelsSi.ToArray())];
        private readonly List<int>[] at = [.. factors.Select(_ => new List<int>())];
        private readonly List<double>[] values = [.. Enumerable.Range(0, responses).Select(_ => new List<double>())];

        public long Count => values[0].Count;

        public void Add(EvaluatedBatch batch, int design, double[] factorValues, int[] places)
        {
            for (var r = 0; r < values.Length; r++)
            {
                if (!double.IsFinite(batch.Objectives[r][design]))
                    return;
            }

            for (var f = 0; f < at.Length; f++)
                at[f].Add(Array.BinarySearch(levels[f], factorValues[places[f]]));
            for (var r = 0; r < values.Length; r++)
                values[r].Add(batch.Objectives[r][design]);
        }

        public IReadOnlyList<IReadOnlyList<FactorShare>> Shares() =>
            VarianceShares.Of([.. at.Select(list => list.ToArray())], [.. values.Select(list => list.ToArray())]);
    }
}
