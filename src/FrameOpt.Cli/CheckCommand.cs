using System.CommandLine;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>check: reads a study and says what was understood, without running it.</summary>
internal static class CheckCommand
{
    public static Command Build(Terminal terminal)
    {
        var study = StudyArgument.Build();
        var variant = StudyArgument.Variant();
        var command = new CommandWithExamples(
            "check",
            "Read a study and show how it was understood and what was assumed, or list everything to correct. Runs nothing.",
            "frameopt check study.yaml",
            "frameopt check study.yaml --variant 'full tank'")
        {
            study, variant,
        };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(study), parsed.GetValue(variant), terminal));
        return command;
    }

    private static int Run(string path, IReadOnlyList<string>? variant, Terminal terminal)
    {
        if (StudyArgument.Open(path, variant, terminal) is not { } study)
            return ExitCode.InvalidInput;
        var console = terminal.Out;
        var designs = study.IsOneFrame ? " of one frame"
            : study.Search is SearchSetting.Exhaustive ? $" of {NumberFormat.Count(study.GridSize!.Value)} designs" : "";
        console.WriteLine($"{VisibleText.Path(path)}: a valid study{designs}.");
        foreach (var warning in study.Warnings.Concat(study.VariantWarnings))
            console.WriteLine($"Warning: {warning}");
        foreach (var part in StudyOverview.Of(study, Environment.ProcessorCount).Concat(StudyDescription.Of(study))
            .GroupBy(row => row.Group))
            ConsoleWriter.WriteList(console, part.Key, part.Select(row => (IReadOnlyList<string>)[row.Label, row.Value]));
        ConsoleWriter.WriteList(
            console,
            "Assumed because the study does not give them",
            study.Assumptions.Select(a => (IReadOnlyList<string>)[a.What, a.Value, a.Source]));
        return ExitCode.Success;
    }
}
