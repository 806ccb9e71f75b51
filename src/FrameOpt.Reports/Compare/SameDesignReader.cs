using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Files;
using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.Studies;
using FrameOpt.StudyFile;

namespace FrameOpt.Reports.Compare;

/// <summary>Reads one design under several studies: the design of a run, and study files whose model evaluates it too. A run.json holds
/// a study in words and figures, not all that the model needs; the study file does.</summary>
public static class SameDesignReader
{
    /// <summary>Reads the run and evaluates its design under every study, or gives every reason why not.</summary>
    /// <param name="arguments">The folder of a run, with ":" and a place in the ranking for a design other than the first; then study
    /// files, each with ":" and a variant, or several joined as the results name them, where one is meant.</param>
    /// <param name="version">Of this program.</param>
    /// <param name="errors">Sentences; empty when all could be read.</param>
    /// <returns>The comparison, or null.</returns>
    public static Comparison? Read(IReadOnlyList<string> arguments, string version, out IReadOnlyList<string> errors)
    {
        if (arguments.Count is < 2 or > ComparisonReader.MaxDesigns)
        {
            errors = [$"compare --same-design takes the results folder of a run and one to {ComparisonReader.MaxDesigns - 1} study files, "
                + "for example: compare --same-design results/monday study.yaml:'heavy pilot'."];
            return null;
        }

        var of = ComparedArgument.Of(arguments[0]);
        using var run = RunJsonReader.Open(of.Folder, version, out var error);
        if (run?.Column(of.Position, "A", out error) is not { } first)
        {
            errors = [error];
            return null;
        }

        var collected = new List<string>();
        var columns = new List<ComparedColumn> { first };
        foreach (var (i, argument) in arguments.Skip(1).Index())
        {
            if (Column(argument, first, $"{(char)('B' + i)}", version, collected) is { } column)
                columns.Add(column);
        }

        errors = collected;
        return errors.Count == 0 ? new Comparison(columns, IsSameDesign: true) : null;
    }

    private static ComparedColumn? Column(string argument, ComparedColumn first, string letter, string version, List<string> errors)
    {
        if (Directory.Exists(argument))
        {
            errors.Add($"{argument} is a folder; after the run --same-design takes study files, which hold all that the model needs.");
            return null;
        }

        var (path, variants) = Parse(argument);
        var reading = StudyReader.Read(path, variants);
        if (reading.Study is not { } study)
        {
            errors.AddRange(reading.Diagnostics.Select(diagnostic => diagnostic.Text));
            return null;
        }

        var runner = new StudyRunner(study.ForOneFrame(Frame(study, first)), threads: 1);
        foreach (var _ in runner.Steps())
        {
        }

        var result = runner.Result();
        if (result.Chosen is null)
        {
            errors.Add($"{argument}: the design of {first.Letter} cannot fly there. "
                + FailureText.Describe(result.Mission.Evaluate(runner.Geometry(0)).Failure!));
            return null;
        }

        using var stream = new MemoryStream();
        RunJson.Write(RunReport.Of(result, new RunInfo(Path.GetFileName(path), version, 0)), stream);
        using var read = RunJsonReader.Of(stream.ToArray(), argument);
        return read.Column(1, letter, out _)! with
        {
            IsDesignOfFirst = true,
            LimitWarning = AnswerHeadline.LimitWarning(study, result.Chosen),
        };
    }

    /// <summary>The factors of the first design at its levels, in this study's units; a factor that this study fixes and the first does
    /// not have stays.</summary>
    private static IEnumerable<StudyFactor> Frame(Study study, ComparedColumn first)
    {
        foreach (var given in first.Run.Factors)
        {
            var own = study.Factors.FirstOrDefault(factor => factor.Input == given.Input);
            yield return new StudyFactor(given.Input, [first.Geometry[given.Input]], (own ?? given).Unit) { SweptRangeSi = own?.RangeSi };
        }

        foreach (var own in study.Factors.Where(factor => !factor.IsSwept && first.Run.Factors.All(given => given.Input != factor.Input)))
            yield return own;
    }

    /// <summary>A study file, or one with variants after a colon.</summary>
    private static (string Path, IReadOnlyList<string> Variants) Parse(string argument)
    {
        var colon = argument.LastIndexOf(':');
        return colon > 1 && !File.Exists(argument)
            ? (argument[..colon], argument[(colon + 1)..].Split(Study.VariantSeparator, StringSplitOptions.TrimEntries))
            : (argument, []);
    }
}
