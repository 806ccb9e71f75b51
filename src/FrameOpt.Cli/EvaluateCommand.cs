using System.CommandLine;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Files;
using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.Studies;
using FrameOpt.StudyFile;
using FrameOpt.Uncertainty;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>evaluate: everything the model says of one design.</summary>
internal static class EvaluateCommand
{
    public static Command Build(Terminal terminal)
    {
        var study = StudyArgument.Build();
        var variant = StudyArgument.Variant();
        var set = StudyArgument.Settings("the design");
        var customer = new Option<string?>("--customer")
        {
            Description = "Name of a customer of the study's line: the design is then evaluated with what that customer flies and weighs.",
            HelpName = "name",
        };
        var pilot = new Option<string?>("--pilot")
        {
            Description = "Pilot's own mass, in place of the study's or the customer's; the engine is chosen with --variant.",
            HelpName = "mass",
        };
        var json = new Option<bool>("--json") { Description = "Write JSON instead of tables." };
        var folder = OutputOptions.Folder(
            "Folder for the page with its test card, the workbook and the other files of a run, for this one frame; without it nothing is "
                + "written.",
            "--out needs the name of a folder, for example --out results/as-built; omit it to show the figures only.");
        var replace = OutputOptions.Replace();
        var command = new CommandWithExamples(
            "evaluate",
            "Evaluate one design: every quantity of every phase.",
            "frameopt evaluate study.yaml --set lateral_offset='25 mm' --set thrust_line_angle='1 deg'",
            "frameopt evaluate study.yaml --variant 'full tank' --json",
            "frameopt evaluate study.yaml --customer 'dealer lake, big' --set lateral_offset='25 mm'",
            "frameopt evaluate study.yaml --variant engine='big single' --pilot '83 kg' --set lateral_offset='25 mm'",
            "frameopt evaluate study.yaml --set lateral_offset='25 mm' --out results/as-built")
        {
            study, variant, customer, pilot, set, json, folder, replace,
        };
        command.SetAction(parsed => Run(
            new Request(parsed.GetRequiredValue(study), parsed.GetValue(variant), parsed.GetValue(set) ?? [], parsed.GetValue(json),
                parsed.GetValue(folder), parsed.GetValue(replace), parsed.GetValue(customer), parsed.GetValue(pilot)), terminal));
        return command;
    }

    private static int Run(Request request, Terminal terminal)
    {
        if (StudyArgument.Open(request.StudyPath, request.Variants, terminal) is not { } ofFile)
            return ExitCode.InvalidInput;
        if (ProductLineCustomerChoice.Of(ofFile, request.Customer, request.Pilot, out var unknown) is not { } study)
        {
            ConsoleWriter.WriteDiagnostics(terminal, request.StudyPath, unknown);
            return ExitCode.InvalidInput;
        }

        var design = DesignReader.Read(study, request.Settings, "--set");
        if (design.Geometry is not { } geometry)
        {
            ConsoleWriter.WriteDiagnostics(terminal, request.StudyPath, design.Diagnostics);
            return ExitCode.InvalidInput;
        }

        ConsoleWriter.WriteWarnings(terminal, [.. study.Warnings, .. design.Warnings]);
        using var folder = request.Folder is { } path ? OutputFolder.Begin(path, request.Replace, terminal) : null;
        if (request.Folder is not null && folder is null)
            return ExitCode.InvalidInput;
        var model = StudyProblem.Model(study);
        var evaluation = model.Evaluate(geometry);
        var eachPhase = evaluation.Failure is null ? [] : model.EvaluateEachPhase(geometry);
        var uncertainty = evaluation.Failure is null ? UncertaintyRun.Of(study, model, [], geometry, [], Environment.ProcessorCount) : null;
        var frame = study.ForOneFrame(design.Values.Select(value => value.Factor));
        if (request.AsJson)
        {
            EvaluationJson.Write(evaluation, eachPhase, study, design.Values, uncertainty, terminal.OutStream);
            terminal.OutStream.Write("\n"u8);
            terminal.OutStream.Flush();
        }
        else
        {
            Print(evaluation, eachPhase, study, design.Values, terminal.Out);
            if (uncertainty is not null)
                ConsoleWriter.WriteSections(terminal.Out,
                    [UncertaintySection.Of(frame, uncertainty), .. UncertaintySection.Figures(frame, evaluation, uncertainty)]);
        }

        if (folder is not null && !WriteFolder(study, design, request, folder, terminal))
            return ExitCode.InvalidInput;
        return evaluation.Failure is null ? ExitCode.Success : ExitCode.NothingFeasible;
    }

    /// <summary>Writes what a run writes, for this one frame.</summary>
    private static bool WriteFolder(Study study, DesignReadResult design, Request request, ResultsFolder folder, Terminal terminal)
    {
        var started = DateTime.UtcNow;
        var runner = new StudyRunner(study.ForOneFrame(design.Values.Select(value => value.Factor)), 1);
        foreach (var _ in runner.Steps())
        {
        }

        var info = new RunInfo(Path.GetFileName(request.StudyPath), BuildInfo.Version, 0)
        {
            Settings = request.Settings,
            Customer = [.. new[] { ("--customer", request.Customer), ("--pilot", request.Pilot) }
                .Where(option => option.Item2 is not null).Select(option => (option.Item1, option.Item2!))],
        };
        var report = RunReport.Of(runner.Result(), info);
        var timings = new RunTimings(started, 1, runner.SearchSeconds, runner.ScenarioSeconds, runner.CertificateSeconds,
            BuildInfo.Platform);
        if (OutputFolder.Fill(folder, into => RunFolder.Write(report, timings, into), terminal) is not { } place)
            return false;
        if (!request.AsJson)
            terminal.Out.WriteLine($"Written to {place}: {RunFolder.Names(report)}");
        return true;
    }

    private static void Print(DesignEvaluation evaluation, IReadOnlyList<DesignEvaluation> eachPhase, Study study,
        IReadOnlyList<DesignValue> values, IAnsiConsole console)
    {
        console.WriteLine($"{DatumText.MovingArms(study.Machine)}{DatumText.Sentence(study.Machine)}");
        console.WriteLine(string.Join("; ", values.Select(value => GeometryText.Of(value.Factor, value.Si))));
        ConsoleWriter.WriteTable(console, new AnswerTable(
            ["input", "value", "from"],
            [.. values.Select(value => (IReadOnlyList<string>)[value.Factor.Name, value.Factor.Unit.Text(value.Si), value.Origin])]));
        if (evaluation.Failure is not null)
        {
            PrintEachPhase(study.Machine, eachPhase, console);
            return;
        }

        PrintPhases(study.Machine, evaluation.Phases, console);
        ConsoleWriter.WriteTable(console, new AnswerTable(
            ["response of the mission", "value", "unit"],
            [.. ResponseCatalogue.OfMissions.Select((entry, q) =>
                (IReadOnlyList<string>)[entry.Name, Digits(evaluation.Mission[q]), entry.Unit])]));
        if (study.Limits.Count > 0)
            ConsoleWriter.WriteTable(console, new AnswerTable(["limit of the study", "value", "unit", ""],
                [.. study.Limits.Select(limit => LimitRow(limit, evaluation))]));
    }

    /// <summary>Why it cannot fly, and the phases that it can.</summary>
    private static void PrintEachPhase(Machine machine, IReadOnlyList<DesignEvaluation> eachPhase, IAnsiConsole console)
    {
        var failures = eachPhase.Select(phase => phase.Failure).OfType<DesignFailure>().Select(FailureText.Describe);
        console.WriteLine($"This design cannot fly. {string.Join("; ", failures)}.");
        if (eachPhase.SelectMany(phase => phase.Phases).ToList() is not { Count: > 0 } flown)
            return;
        console.WriteLine("It can fly these phases, each looked at by itself; the whole mission has no figures.");
        PrintPhases(machine, flown, console);
    }

    private static void PrintPhases(Machine machine, IReadOnlyList<PhaseResult> phases, IAnsiConsole console)
    {
        List<IReadOnlyList<string>> rows = [.. ResponseCatalogue.OfPhases.Select((entry, q) =>
            (IReadOnlyList<string>)[StudyText.WithUnit(entry), .. phases.Select(phase => Digits(phase.Values[q]))])];
        if (machine.Engine is { Reduction: not 1 and var reduction })
            rows.Insert(PhaseQuantity.Rpm.Index + 1,
                ["engine rpm [rpm]", .. phases.Select(phase => Digits(reduction * phase[PhaseQuantity.Rpm]))]);
        ConsoleWriter.WriteTable(console, new AnswerTable(["quantity [unit]", .. phases.Select(phase => phase.Phase.Name)],
            [.. rows, ["steers", .. phases.Select(phase => phase.Steers)]]));
    }

    private static string[] LimitRow(StudyLimit limit, DesignEvaluation evaluation)
    {
        var value = limit.ValueOf(evaluation);
        return [StudyText.Limit(limit), Digits(value), limit.Response.Unit, limit.AsConstraint.IsSatisfiedBy(value) ? "met" : "VIOLATED"];
    }

    private sealed record Request(
        string StudyPath, IReadOnlyList<string>? Variants, IReadOnlyList<string> Settings, bool AsJson, string? Folder, bool Replace,
        string? Customer, string? Pilot);

    private static string Digits(double value) => NumberFormat.SignificantDigits(value, 6);
}
