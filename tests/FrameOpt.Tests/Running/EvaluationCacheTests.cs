using System.Security.Cryptography;
using System.Text;
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

    [Theory]
    [InlineData("a digit")]
    [InlineData("not a number")]
    [InlineData("no failure's code")]
    [InlineData("another phase's code")]
    [InlineData("nothing")]
    public void A_file_with_a_line_that_FrameOpt_did_not_write_is_refused_and_left_alone(string change)
    {
        using var folder = new TemporaryFolder();
        Run(folder["evaluations.csv"], int.MaxValue, out _);
        var lines = File.ReadAllLines(folder["evaluations.csv"]);
        var fields = lines[20].Split(',')[..^1];
        // Fields: the pass, four factors, the failure code, the rest. The codes of a phase are 32 numbers; 31 is none of them.
        lines[20] = change switch
        {
            "a digit" => lines[20][..^1] + (lines[20][^1] == '0' ? '1' : '0'),
            "not a number" => Line([.. fields[..6], "NaN", .. fields[7..]]),
            "no failure's code" => Line([.. fields[..5], "31", .. fields[6..]]),
            "another phase's code" => Line([.. fields[..5], $"{1 + 32 * study.Mission.Count}", .. fields[6..]]),
            _ => "",
        };
        File.WriteAllText(folder["evaluations.csv"], string.Join('\n', lines) + "\n");
        var before = File.ReadAllBytes(folder["evaluations.csv"]);
        Assert.Null(EvaluationCache.Open(folder["evaluations.csv"], "this study", 4, study.Mission.Count, out var refusal));
        Assert.Contains("line 21: it was changed after FrameOpt wrote it, so no line of the file is trusted", refusal);
        Assert.Equal(before, File.ReadAllBytes(folder["evaluations.csv"]));
    }

    [Fact]
    public void Another_build_has_no_use_for_the_evaluations()
    {
        using var folder = new TemporaryFolder();
        Run(folder["evaluations.csv"], 1, out _);
        Assert.Null(EvaluationCache.Open(folder["evaluations.csv"], "this study, build 2", 4, study.Mission.Count, out var refusal));
        Assert.Contains("another study, variant, version or build", refusal);
    }

    [Fact]
    public void A_last_line_without_its_end_is_written_again()
    {
        using var folder = new TemporaryFolder();
        Run(folder["evaluations.csv"], int.MaxValue, out _);
        var whole = File.ReadAllBytes(folder["evaluations.csv"]);
        foreach (var lost in new[] { 1, 2, 9, 30 })
        {
            File.WriteAllBytes(folder["evaluations.csv"], whole[..^lost]);
            Run(folder["evaluations.csv"], int.MaxValue, out _);
            Assert.Equal(whole, File.ReadAllBytes(folder["evaluations.csv"]));
        }
    }

    [Fact]
    public void Only_one_run_may_hold_the_file()
    {
        using var folder = new TemporaryFolder();
        using var first = EvaluationCache.Open(folder["evaluations.csv"], "this study", 4, study.Mission.Count, out _);
        Assert.NotNull(first);
        Assert.Throws<IOException>(() => EvaluationCache.Open(folder["evaluations.csv"], "this study", 4, study.Mission.Count, out _));
    }

    internal static string Line(string[] fields)
    {
        var text = string.Join(',', fields);
        return $"{text},{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..8]}";
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
