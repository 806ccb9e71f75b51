using System.CommandLine;
using FrameOpt.Reports.Compare;
using FrameOpt.Reports.Files;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>compare: designs of runs side by side, and how their studies differ.</summary>
internal static class CompareCommand
{
    private const int MaxDifferences = 40;

    public static Command Build(Terminal terminal)
    {
        var designs = new Argument<string[]>("folders")
        {
            Description =
                $"Two to {ComparisonReader.MaxDesigns} results folders of run, or of line. A colon and a number select a design "
                    + "other than the best: "
                    + "results/monday:3 is the third in the ranking. With --same-design the first is a results "
                    + "folder, the others are study files; a "
                    + "colon and a name select a variant: study.yaml:'full tank'.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var folder = OutputOptions.Folder(
            "Folder for comparison.html and comparison.csv; without it nothing is written.",
            "--out needs the name of a folder, for example --out results/compared; omit it to show the comparison only.");
        var replace = new Option<bool>("--replace") { Description = "Replace an existing comparison in that folder." };
        var same = new Option<bool>("--same-design")
        {
            Description = "Compare one design, that of the first folder, under several studies: another pilot, another wing.",
        };
        var command = new CommandWithExamples(
            "compare",
            "Compare designs of two or more runs side by side, and describe how their studies differ.",
            "frameopt compare results/monday results/tuesday",
            "frameopt compare results/monday results/monday:2 results/monday:3",
            "frameopt compare results/full results/empty --out results/compared",
            "frameopt compare results/three results/four",
            "frameopt compare --same-design results/full study.yaml:'empty tank' other.yaml")
        {
            designs, folder, replace, same,
        };
        command.SetAction(parsed => Run(parsed.GetValue(designs) ?? [], parsed.GetValue(same),
            parsed.GetValue(folder), parsed.GetValue(replace), terminal));
        return command;
    }

    private static int Run(IReadOnlyList<string> designs, bool isSameDesign, string? folder, bool replace, Terminal terminal)
    {
        if (!isSameDesign && LineComparison.IsOfLines(designs))
            return RunLines(designs, folder, replace, terminal);
        var comparison = isSameDesign ? SameDesignReader.Read(designs, BuildInfo.Version, out var errors)
            : ComparisonReader.Read(designs, BuildInfo.Version, out errors);
        var refused = folder is null ? null
            : comparison is not null && ComparisonReader.Reads(designs, folder)
                ? $"{folder} is one of the runs compared and is not replaced; choose another folder"
                : ResultsFolder.WriteObstacle(folder, replace);
        if (comparison is null || refused is not null)
        {
            foreach (var refusal in errors.Concat(refused is null ? [] : [refused]))
                terminal.Error.WriteLine(refusal);
            return ExitCode.InvalidInput;
        }

        string? written = null;
        if (folder is not null && !OutputOptions.TryWrite(terminal, $"The comparison could not be written to {folder}", () =>
        {
            using var results = ResultsFolder.Begin(folder, replace);
            ComparisonFolder.Write(comparison, results);
            written = results.Complete();
        }))
        {
            return ExitCode.InvalidInput;
        }

        terminal.Out.Write(new Text(comparison.Title, new Style(decoration: Decoration.Bold)));
        terminal.Out.WriteLine();
        ConsoleWriter.WriteSections(terminal.Out, ComparisonSections.Of(comparison, MaxDifferences));
        if (written is not null)
        {
            terminal.Out.WriteLine();
            terminal.Out.WriteLine($"Written to {written}: comparison.html, comparison.csv");
        }

        return ExitCode.Success;
    }

    /// <summary>Lines side by side.</summary>
    private static int RunLines(IReadOnlyList<string> folders, string? folder, bool replace, Terminal terminal)
    {
        var comparison = LineComparison.Read(folders, BuildInfo.Version, out var errors);
        var refused = folder is null ? null : ComparisonReader.Reads(folders, folder)
            ? $"{folder} is one of the lines compared and is not replaced; choose another folder" : ResultsFolder.WriteObstacle(folder,
                replace);
        foreach (var refusal in errors.Concat(refused is null ? [] : [refused]))
            terminal.Error.WriteLine(refusal);
        if (comparison is null || refused is not null)
            return ExitCode.InvalidInput;
        terminal.Out.Write(new Text(comparison.Title, new Style(decoration: Decoration.Bold)));
        terminal.Out.WriteLine();
        ConsoleWriter.WriteSections(terminal.Out, comparison.Sections(MaxDifferences));
        return folder is null || OutputOptions.TryWrite(terminal, $"The comparison could not be written to {folder}", () =>
        {
            using var results = ResultsFolder.Begin(folder, replace);
            results.Write("comparison.html", comparison.WritePage);
            results.Write("comparison.csv", comparison.WriteTable);
            terminal.Out.WriteLine();
            terminal.Out.WriteLine($"Written to {results.Complete()}: comparison.html, comparison.csv");
        }) ? ExitCode.Success : ExitCode.InvalidInput;
    }
}
