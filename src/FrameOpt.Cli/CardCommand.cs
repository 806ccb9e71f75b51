using System.CommandLine;
using FrameOpt.Fit;
using FrameOpt.Reports.Files;
using FrameOpt.Reports.ProductLine;
using FrameOpt.Running;
using FrameOpt.Studies;
using FrameOpt.StudyFile;
using FrameOpt.StudyFile.Syntax;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>card: a sheet for a customer of a line: which frame, what it feels like, what the scales must read.</summary>
internal static class CardCommand
{
    public static Command Build(Terminal terminal)
    {
        var study = StudyArgument.Build();
        var variant = StudyArgument.Variant();
        var customer = new Option<string?>("--customer") { Description = "Name of a customer of the line.", HelpName = "name" };
        var pilot = new Option<string?>("--pilot")
        {
            Description = "Pilot's own mass of somebody who need not be a customer of the line; after it a choice of every option of the "
                + "line, each under the option's own name, such as --engine 'big single'.",
            HelpName = "mass",
        };
        var all = new Option<bool>("--all") { Description = "A card for every customer of the line, each on a sheet of its own." };
        var scales = new Option<string?>("--scales")
        {
            Description = "What two scales read of the one customer under the frame of the card, engine off: what it means is then on the "
                + "card.",
            HelpName = "'left load, right load'",
        };
        var file = new Option<string>("--out")
        {
            Description = "File to write, a page to print on A4; it must not exist yet.",
            HelpName = "file",
            DefaultValueFactory = _ => "cards.html",
        };
        OutputOptions.RefuseEmpty(file, "--out needs the name of a file, for example --out cards.html.");
        var threads = OutputOptions.Threads();
        var command = new CommandWithExamples(
            "card",
            "Write a card for a customer of the line: frame, second-best frame, what it feels like, hang check, first tests.",
            "frameopt card study.yaml --customer 'dealer lake, big'",
            "frameopt card study.yaml --pilot '83 kg' --engine 'big single' --wing '24 m²' --scales 'left 46.1 kgf, right 65.2 kgf'",
            "frameopt card study.yaml --all --out cards.html")
        {
            study, variant, customer, pilot, all, scales, file, threads,
        };
        // The options of the line are in the study, which is read later.
        command.TreatUnmatchedTokensAsErrors = false;
        command.Validators.Add(result =>
        {
            if (new[] { result.GetValue(customer) is not null, result.GetValue(pilot) is not null, result.GetValue(all) }
                .Count(given => given) != 1)
                result.AddError("card needs one of --customer, with a name, --pilot, with a mass, or --all.");
            if (result.GetValue(all) && result.GetValue(scales) is not null)
                result.AddError("--scales are of one customer: give --customer or --pilot in place of --all.");
        });
        command.SetAction(parsed => Run(new Request(parsed.GetRequiredValue(study), parsed.GetValue(variant), parsed.GetValue(customer),
            parsed.GetValue(pilot), parsed.GetValue(scales), parsed.GetRequiredValue(file), parsed.GetValue(threads),
            parsed.UnmatchedTokens), terminal));
        return command;
    }

    private static int Run(Request request, Terminal terminal)
    {
        if (LineWork.Open(request.StudyPath, request.Variants, terminal) is not { Line: { } line } study)
            return ExitCode.InvalidInput;
        IReadOnlyList<Diagnostic> ofScales = [];
        var loads = request.Scales is { } typed ? ScaleReadingText.Read(typed, "--scales", out ofScales) : null;
        var customers = Customers(request, line, out var errors);
        if (errors.Count + ofScales.Count > 0)
        {
            ConsoleWriter.WriteDiagnostics(terminal, request.StudyPath, [.. errors, .. ofScales]);
            return ExitCode.InvalidInput;
        }

        var obstacle = customers.Count > CustomerCards.Most
            ? $"The line has {customers.Count} customers; a file holds {CustomerCards.Most} cards. Give --customer or --pilot."
            : NewFile.Obstacle(request.Path);
        if (obstacle is not null)
        {
            terminal.Error.WriteLine($"No card was written: {obstacle}");
            return ExitCode.InvalidInput;
        }

        ConsoleWriter.WriteWarnings(terminal, study.Warnings);
        // The gain of further geometries is on no card.
        var work = LineWork.Of(study with { Line = line with { UpTo = line.Count } }, request.Threads, terminal,
            geometriesOnly: true);
        return work.Result is { } result ? Write(request, result, customers, loads, terminal) : work.CodeWithoutResult;
    }

    private static int Write(Request request, ProductLineResult result, IReadOnlyList<ProductLineCustomer> customers,
        (double LeftNewtons, double RightNewtons)? loads, Terminal terminal)
    {
        IReadOnlyList<CustomerFit> fits = [.. customers.Select(one => CustomerFit.Of(result, one))];
        var scales = loads is { } read && fits[0].Own is { } own
            ? fits[0].Hung(result, own, new ScaleReading(read.LeftNewtons, read.RightNewtons)) : null;
        var cards = new CustomerCards(result, fits, new RunInfo(Path.GetFileName(request.StudyPath), BuildInfo.Version, 0), scales);
        if (!NewFile.TryWrite(request.Path, cards.Write, "The cards", terminal))
            return ExitCode.InvalidInput;
        foreach (var sentence in cards.Summary())
            terminal.Out.WriteLine(sentence);
        terminal.Out.WriteLine($"Written: {VisibleText.Path(request.Path)}, to print on A4.");
        return fits.All(fit => fit.Own is not null) ? ExitCode.Success : ExitCode.NothingFeasible;
    }

    private static IReadOnlyList<ProductLineCustomer> Customers(
        Request request, ProductLineSetting line, out IReadOnlyList<Diagnostic> errors)
    {
        errors = [];
        var (choices, stray) = Choices(request.Further);
        if (request.Pilot is null && request.Further.Count > 0)
            stray = request.Further[0];
        if (stray is not null)
        {
            errors = [new Diagnostic("the customer", 0, 0, stray, "This means nothing here.",
                "After the study and --pilot write a choice of every option of the line, each as --option 'choice'.")];
            return [];
        }

        if (request is { Customer: null, Pilot: null })
            return line.Customers;
        var one = request.Customer is { } name ? ProductLineCustomerChoice.Named(line, name, out errors)
            : ProductLineCustomerChoice.Described(line, request.Pilot!, choices, out errors);
        return one is null ? [] : [one];
    }

    /// <summary>Pairs such as --engine 'big single', or --engine='big single'; and what is neither.</summary>
    private static (IReadOnlyList<(string Option, string Choice)> Choices, string? Stray) Choices(IReadOnlyList<string> tokens)
    {
        var choices = new List<(string, string)>();
        for (var t = 0; t < tokens.Count; t++)
        {
            var parts = tokens[t].Split('=', 2);
            if (!tokens[t].StartsWith("--", StringComparison.Ordinal) || (parts.Length == 1 && t + 1 == tokens.Count))
                return (choices, tokens[t]);
            choices.Add((parts[0][2..], parts.Length == 2 ? parts[1] : tokens[++t]));
        }

        return (choices, null);
    }

    private sealed record Request(string StudyPath, IReadOnlyList<string>? Variants, string? Customer, string? Pilot, string? Scales,
        string Path, int Threads, IReadOnlyList<string> Further);
}
