using FrameOpt.Model;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Files;
using FrameOpt.Running;
using FrameOpt.Search.Stopping;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;
using FrameOpt.StudyFile;
using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.Tests.Reliability;

/// <summary>What is asked of a study that was read from damaged files: messages with a place, or a study that runs.</summary>
internal static class StudyTrials
{
    private const int NoiseSources = 3;
    private const int NoiseCases = 16;
    private const int Levels = 3;
    private const int MostDesigns = 3000;
    private const int LongestMessage = 4000;

    /// <summary>Reads a study and tries what it gives; true when it was accepted.</summary>
    /// <param name="path">Of the study.</param>
    /// <param name="damaged">Name of the file that was damaged, which every message names.</param>
    /// <param name="lot">One in twenty accepted studies also runs, over a grid of few levels.</param>
    public static bool Read(string path, string damaged, uint lot)
    {
        var read = StudyReader.Read(path);
        if (read.Study is not { } study)
        {
            Assert.NotEmpty(read.Diagnostics);
            // YAML breaks lines at more signs than the line feed.
            var lines = File.ReadAllText(path).Count(sign => sign is '\n' or '\r' or '\u0085' or '\u2028' or '\u2029') + 2;
            foreach (var diagnostic in read.Diagnostics)
                CheckMessage(diagnostic, damaged, lines);
            return false;
        }

        Assert.Empty(read.Diagnostics);
        CheckDesign(study);
        if (lot % 20 == 0)
            CheckRun(study);
        return true;
    }

    private static void CheckMessage(Diagnostic diagnostic, string damaged, int lines)
    {
        var text = diagnostic.Text;
        BrokenPromise.Unless(text.Contains(damaged) || IsOfWholeFile(diagnostic), "a message without its file", text);
        BrokenPromise.Unless(diagnostic.Line <= lines, "a message with a line the file does not have", text);
        BrokenPromise.Unless(diagnostic.Line > 0 || IsOfWholeFile(diagnostic), "a message without a line", text);
        BrokenPromise.Unless(diagnostic.Message.Length > 0 && diagnostic.Fix.Length > 0, "a message that does not say what to do", text);
        BrokenPromise.Unless(text.Length <= LongestMessage, "a message of several pages", text[..Math.Min(200, text.Length)]);
    }

    private static bool IsOfWholeFile(Diagnostic diagnostic) =>
        new[] { "The file is empty", "not a text file", "larger than", "more errors are not shown" }.Any(diagnostic.Message.Contains);

    private static void CheckDesign(Study study)
    {
        var geometry = study.Factors.Aggregate(FrameGeometry.AsBuilt(study.Machine),
            (geometry, factor) => geometry.With(factor.Input, factor.LevelsSi[factor.LevelsSi.Count / 2]));
        var model = StudyProblem.Model(study);
        Sound.Check(model.Evaluate(geometry), model.References);
    }

    /// <summary>The study over the ends and the middle of each factor, to the answer and the file a run writes.</summary>
    private static void CheckRun(Study study)
    {
        var small = study with
        {
            Factors = [.. study.Factors.Select(factor => factor with { LevelsSi = Few(factor.LevelsSi) })],
            Plan = null,
            Search = study.Search is SearchSetting.Evolutionary evolutionary
                ? evolutionary with { Population = Math.Min(20, evolutionary.Population), Stop = new StopRules(60), LocalSearch = false }
                : study.Search,
        };
        if (small.GridSize > MostDesigns)
            return;
        if (small.Search is SearchSetting.Evolutionary)
        {
            // The grid that a whole run compares its front with takes seconds.
            var search = new SearchRun(small, StudyProblem.Model(small), threads: 1);
            foreach (var _ in search.Batches())
            {
            }

            search.RankedFront();
            return;
        }

        // All sources and cases take a second and some hundred megabytes, which is not the file's doing.
        var sources = small.Noise.Sources.Take(NoiseSources).ToList();
        bool IsKept(NoiseSource source) => sources.Exists(pair => pair.Source == source);
        var noise = small.Noise with
        {
            Sources = sources,
            Correlations = [.. small.Noise.Correlations.Where(pair => IsKept(pair.First) && IsKept(pair.Second))],
            Cases = NoiseCases,
        };
        var runner = new StudyRunner(small with { Noise = noise }, threads: 1);
        foreach (var _ in runner.Steps())
        {
        }

        var report = RunReport.Of(runner.Result(), new RunInfo("study.yaml", "test", 0));
        RunAnswer.Of(report.Result);
        RunJson.Write(report, Stream.Null);
    }

    private static IReadOnlyList<double> Few(IReadOnlyList<double> levels) =>
        levels.Count <= Levels ? levels : [levels[0], levels[levels.Count / 2], levels[^1]];
}
