using FrameOpt.Running;
using FrameOpt.Search.Stopping;
using FrameOpt.Studies;
using FrameOpt.Tests.Search;

namespace FrameOpt.Tests.Running;

public class EvaluationCacheTests
{
    private static readonly Study study = WorkedStudy.Over([400, 480], [0, 60], [100, 400], [-3, 3]) with
    {
        Search = new SearchSetting.Evolutionary(SearchMethod.NsgaII, 20, 3, new StopRules(400)),
    };

    private static readonly Study continuous =
        study with { Factors = [.. study.Factors.Select(factor => factor with { IsContinuous = true })] };

    [Fact]
    public void A_run_made_again_is_answered_from_memory_and_comes_out_alike()
    {
        using var folder = new TemporaryFolder();
        var first = Run(folder["evaluations.csv"], int.MaxValue, out _);
        var again = Run(folder["evaluations.csv"], int.MaxValue, out var answered);
        Assert.Equal(400, answered);
        Assert.Equal(Words(first), Words(again));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(17)]
    public void A_run_cut_short_goes_on_where_it_was(int batches)
    {
        using var folder = new TemporaryFolder();
        var whole = Run(folder["whole.csv"], int.MaxValue, out _);
        Run(folder["evaluations.csv"], batches, out _);
        var resumed = Run(folder["evaluations.csv"], int.MaxValue, out var answered);
        Assert.True(answered > 0);
        Assert.Equal(Words(whole), Words(resumed));
        Assert.Equal(File.ReadAllText(folder["whole.csv"]), File.ReadAllText(folder["evaluations.csv"]));
    }

    [Fact]
    public void A_file_cut_anywhere_is_used_as_far_as_it_is_whole()
    {
        using var folder = new TemporaryFolder();
        var whole = Run(folder["whole.csv"], int.MaxValue, out _);
        var bytes = File.ReadAllBytes(folder["whole.csv"]);
        for (var length = 0; length < bytes.Length; length += Math.Max(1, bytes.Length / 23))
        {
            File.WriteAllBytes(folder["cut.csv"], bytes[..length]);
            Assert.Equal(Words(whole), Words(Run(folder["cut.csv"], int.MaxValue, out _)));
            Assert.Equal(bytes, File.ReadAllBytes(folder["cut.csv"]));
        }
    }

    [Theory]
    [InlineData("# FrameOpt evaluations, format 2\n# another study\n", "of another study")]
    [InlineData("# FrameOpt evaluations, format 1\n# this study\n", "of another study")]
    [InlineData("my diary\n", "is not a file of evaluations")]
    public void A_file_of_something_else_is_refused_and_left_alone(string content, string words)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["evaluations.csv"], content);
        Assert.Null(EvaluationCache.Open(folder["evaluations.csv"], "this study", 4, study.Mission.Count, out var refusal));
        Assert.Contains(words, refusal);
        Assert.Equal(content, File.ReadAllText(folder["evaluations.csv"]));
    }

    private static SearchRun Run(string file, int batches, out long answered)
    {
        using var cache = EvaluationCache.Open(file, "this study", 4, study.Mission.Count, out _)!;
        var run = new SearchRun(continuous, StudyProblem.Model(continuous), 1, cache);
        foreach (var _ in run.Batches().Take(batches))
        {
        }

        answered = cache.CacheHits;
        return run;
    }

    private static string Words(SearchRun run) =>
        string.Join("\n", run.RankedFront().Select(design => $"{design.Number} {design.Geometry} {string.Join(' ', design.Objectives)}"))
        + $"{run.StopReason} {run.Counts.Evaluated} {run.Counts.Feasible}";
}
