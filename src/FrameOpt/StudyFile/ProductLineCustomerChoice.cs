using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile;

/// <summary>Finds the customer of a line that is meant: by the name, or by pilot mass and choices.</summary>
public static class ProductLineCustomerChoice
{
    /// <summary>The customer of this name, however it is capitalised; null after an error.</summary>
    /// <param name="line">With its customers.</param>
    /// <param name="name">As typed.</param>
    /// <param name="errors">Empty when there is exactly one.</param>
    public static ProductLineCustomer? Named(ProductLineSetting line, string name, out IReadOnlyList<Diagnostic> errors)
    {
        var diagnostics = new DiagnosticBag("--customer");
        var found = line.Customers.Where(customer => NameRules.AreAlike(customer.Name, name)).Take(2).ToList();
        if (found.Count == 0)
            diagnostics.Add(0, 0, name, "The line has no customer of this name.",
                NearestName.Of(name, line.Customers.Take(2_000).Select(customer => customer.Name)) is { } near ? $"Did you mean `{near}`?"
                    : "Write a name of the study's customers, or --pilot and a choice of every option.");
        if (found.Count > 1)
            diagnostics.Add(0, 0, name, "Several customers have this name.", "Write --pilot and a choice of every option in its place.");
        errors = diagnostics.Diagnostics();
        return errors.Count == 0 ? found[0] : null;
    }

    /// <summary>The study of one customer: with what that customer flies and weighs; null after errors.</summary>
    /// <param name="study">With its line, where a customer is named.</param>
    /// <param name="customer">Name of a customer of the line; null for the study's own choices.</param>
    /// <param name="pilot">The pilot's own mass with its unit, in place of the customer's or of the study's; null to keep that.</param>
    /// <param name="errors">All of them.</param>
    public static Study? Of(Study study, string? customer, string? pilot, out IReadOnlyList<Diagnostic> errors)
    {
        var diagnostics = new DiagnosticBag("--pilot");
        var mass = pilot is null ? null
            : Quantity.Read(new Node.Scalar(pilot, false, 0, 0), "--pilot", Dimension.Mass, ProductLineCustomersReader.Mass, diagnostics);
        IReadOnlyList<Diagnostic> ofCustomer = [];
        if (customer is not null && study.Line is null)
            diagnostics.AddForFile("The study has no customers: it has no section `line`.", "Leave --customer out.");
        var found = customer is null || study.Line is null ? null : Named(study.Line, customer, out ofCustomer);
        errors = [.. diagnostics.Diagnostics(), .. ofCustomer];
        if (errors.Count > 0)
            return null;
        var own = found is not null ? study.Line!.Configurations[found.Configuration]
            : new ProductLineConfiguration(
                [], study, study.Line?.Configurations[0].Pilot ?? study.Machine.Masses.First(one => one.IsBody).Name);
        if ((mass?.Base ?? found?.PilotMassKilograms) is not { } kilograms)
            return study;
        var who = found?.Name is { } name ? $"{name}{(mass is null ? "" : FormattableString.Invariant($", pilot {kilograms:0.##} kg"))}"
            : FormattableString.Invariant($"pilot {kilograms:0.##} kg");
        return own.For(kilograms) with { Title = $"{study.Title} - {who}", Variant = study.Variant, Variants = study.Variants };
    }

    /// <summary>A customer of any pilot mass, with a choice of every option; null after errors.</summary>
    /// <param name="line">With its options.</param>
    /// <param name="pilot">The pilot's own mass with its unit.</param>
    /// <param name="choices">The name of each option and the choice of it, as typed.</param>
    /// <param name="errors">All of them.</param>
    public static ProductLineCustomer? Described(
        ProductLineSetting line, string pilot, IReadOnlyList<(string Option, string Choice)> choices, out IReadOnlyList<Diagnostic> errors)
    {
        var diagnostics = new DiagnosticBag("the customer");
        var at = new Node.Scalar(pilot, false, 0, 0);
        var mass = Quantity.Read(at, "--pilot", Dimension.Mass, ProductLineCustomersReader.Mass, diagnostics);
        string[] options = [.. line.Options.Select(option => option.Name)];
        foreach (var (option, _) in choices.Where(choice => !options.Any(name => NameRules.AreAlike(name, choice.Option))))
            diagnostics.Add(0, 0, $"--{option}", "The line has no option of this name.", NearestName.Of(option, options) is { } near
                ? $"Did you mean `--{near}`?" : $"Its options are {string.Join(", ", options.DefaultIfEmpty("none"))}.");
        var configuration = 0;
        foreach (var option in line.Options)
        {
            var given = choices.Where(choice => NameRules.AreAlike(choice.Option, option.Name)).ToList();
            if (given.Count != 1)
                diagnostics.AddForFile($"--{option.Name} is {(given.Count == 0 ? "missing" : "given more than once")}.",
                    $"Write it once, with {string.Join(" or ", option.Choices)}.");
            var choice = given.Count == 0 ? 0 : ProductLineCustomersReader.Choice(option, given[0].Choice, at, "", diagnostics);
            configuration = configuration * option.Choices.Count + Math.Max(0, choice);
        }

        errors = diagnostics.Diagnostics();
        if (errors.Count > 0)
            return null;
        var kilograms = Math.Round(mass!.Base, ProductLineCustomersReader.MassDecimals);
        return new ProductLineCustomer(
            string.Join(", ", [FormattableString.Invariant($"pilot {kilograms:0.#} kg"), .. line.Configurations[configuration].Choices]),
            kilograms, configuration, 1);
    }
}
