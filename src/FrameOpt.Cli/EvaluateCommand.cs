using System.CommandLine;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Files;
using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.Studies;
using FrameOpt.StudyFile;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>evaluate: everything the model says of one design.</summary>
internal static class EvaluateCommand
{
    public static Command Build(Terminal terminal)
    {
        var study = StudyArgument.Build();
        var variant = StudyArgument.Variant();
        var set = new Option<string[]>("--set")
        {
            Description =
                "A factor and its value, for example lateral_offset='25 mm'; once for each factor that differs from the study's baseline.",
            HelpName = "factor='value unit'",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var json = new Option<bool>("--json") { Description = "Write JSON instead of tables." };
        var command = new CommandWithExamples(
            "evaluate",
            "Evaluate one design: every quantity of every phase.",
            "frameopt evaluate study.yaml --set lateral_offset='25 mm' --set thrust_line_angle='1 deg'",
            "frameopt evaluate study.yaml --variant 'full tank' --json")
        {
            study, variant, set, json,
        };
        command.SetAction(parsed => Run(
            parsed.GetRequiredValue(study), parsed.GetValue(variant), parsed.GetValue(set) ?? [], parsed.GetValue(json), terminal));
        return command;
    }

    private static int Run(string path, string? variant, IReadOnlyList<string> settings, bool asJson, Terminal terminal)
    {
        if (StudyArgument.Open(path, variant, terminal) is not { } study)
            return ExitCode.InvalidInput;
        var design = DesignReader.Read(study, settings, "--set");
        if (design.Geometry is not { } geometry)
        {
            ConsoleWriter.WriteDiagnostics(terminal, path, design.Diagnostics);
            return ExitCode.InvalidInput;
        }

        ConsoleWriter.WriteWarnings(terminal, [.. study.Warnings, .. design.Warnings]);
        var evaluation = StudyProblem.Model(study).Evaluate(geometry);
        if (asJson)
        {
            EvaluationJson.Write(evaluation, study, design.Values, terminal.OutStream);
            terminal.OutStream.Write("\n"u8);
            terminal.OutStream.Flush();
        }
        else
        {
            Print(evaluation, study, design.Values, terminal.Out);
        }

        return evaluation.Failure is null ? ExitCode.Success : ExitCode.NothingFeasible;
    }

    private static void Print(DesignEvaluation evaluation, Study study, IReadOnlyList<DesignValue> values, IAnsiConsole console)
    {
        console.WriteLine($"{DatumText.MovingArms(study.Machine)}{DatumText.Sentence(study.Machine)}");
        console.WriteLine(string.Join("; ", values.Select(value => GeometryText.Of(value.Factor, value.Si))));
        ConsoleWriter.WriteTable(console, new AnswerTable(
            ["input", "value", "from"],
            [.. values.Select(value => (IReadOnlyList<string>)[value.Factor.Name, value.Factor.Unit.Text(value.Si), value.Origin])]));
        if (evaluation.Failure is { } failure)
        {
            console.WriteLine($"This design cannot fly. {FailureText.Describe(failure)}");
            return;
        }

        var rows = new List<IReadOnlyList<string>>();
        for (var q = 0; q < ResponseCatalogue.OfPhases.Count; q++)
        {
            var entry = ResponseCatalogue.OfPhases[q];
            rows.Add([StudyText.WithUnit(entry), .. evaluation.Phases.Select(phase => Digits(phase.Values[q]))]);
        }

        rows.Add(["steers", .. evaluation.Phases.Select(phase => phase.Steers)]);
        ConsoleWriter.WriteTable(console, new AnswerTable(["quantity [unit]", .. evaluation.Phases.Select(phase => phase.Phase.Name)],
            rows));
        ConsoleWriter.WriteTable(console, new AnswerTable(
            ["response of the mission", "value", "unit"],
            [.. ResponseCatalogue.OfMissions.Select((entry, q) =>
                (IReadOnlyList<string>)[entry.Name, Digits(evaluation.Mission[q]), entry.Unit])]));
        if (study.Limits.Count > 0)
            ConsoleWriter.WriteTable(console, new AnswerTable(["limit of the study", "value", "unit", ""],
                [.. study.Limits.Select(limit => LimitRow(limit, evaluation))]));
    }

    private static string[] LimitRow(StudyLimit limit, DesignEvaluation evaluation)
    {
        var value = limit.ValueOf(evaluation);
        return [StudyText.Limit(limit), Digits(value), limit.Response.Unit, limit.AsConstraint.IsSatisfiedBy(value) ? "met" : "VIOLATED"];
    }

    private static string Digits(double value) => NumberFormat.SignificantDigits(value, 6);
}
