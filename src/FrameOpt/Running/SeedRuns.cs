using System.Globalization;
using FrameOpt.Model.Mission;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>The evolutionary search of a study once more from other seeds, to see whether it finds the same design.</summary>
public sealed class SeedRuns
{
    private readonly (ulong Seed, SearchRun Run)[] runs = [];

    /// <summary>None for an exhaustive search, for a long one, and for a study in which nothing is uncertain.</summary>
    /// <param name="study">As understood.</param>
    /// <param name="mission">Its model.</param>
    /// <param name="threads">Worker threads, 1 or more.</param>
    /// <param name="cache">To keep evaluations in and answer from, or null.</param>
    public SeedRuns(Study study, MissionModel mission, int threads, EvaluationCache? cache)
    {
        if (study.Search is SearchSetting.Evolutionary { Stop.Evaluations: <= RunLimits.MaxEvaluationsForSeeds } given
            && study.Noise.Sources.Count > 0 && study.ResponsesOverCases.Count == 0)
        {
            runs = [.. Enumerable.Range(1, RunLimits.OtherSeeds).Select(i => given with { Seed = given.Seed + (ulong)i }).Select(setting =>
                (setting.Seed, new SearchRun(study with { Search = setting }, mission, threads, cache, $"seed {setting.Seed}")))];
        }
    }

    /// <summary>The searches, batch by batch.</summary>
    public IEnumerable<RunProgress> Steps()
    {
        foreach (var (number, (_, run)) in runs.Index())
        {
            foreach (var _ in run.Batches())
            {
                yield return new RunProgress(
                    string.Create(CultureInfo.InvariantCulture, $"the same from another seed, {number + 1} of {runs.Length}"),
                    run.Counts.Evaluated, run.Planned, null);
            }
        }
    }

    /// <summary>The best design from each seed whose search came to its end.</summary>
    public IReadOnlyList<SeedBest> Best() => [.. runs.Where(other => other.Run.IsComplete)
        .Select(other => new SeedBest(other.Seed, other.Run.RankedFront().FirstOrDefault()))];
}
