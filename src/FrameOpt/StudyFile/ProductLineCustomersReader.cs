using FrameOpt.Studies;
using FrameOpt.StudyFile.Plausibility;
using FrameOpt.StudyFile.Sections;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile;

/// <summary>Reads the customers of a line: a list, a table beside the study, or a sample.</summary>
internal static class ProductLineCustomersReader
{
    /// <summary>Largest number of customers.</summary>
    public const int MaxCustomers = 200_000;

    private const int MaxListed = 2_000;

    /// <summary>Decimals of pilot masses in kg, as a scale reads: many customers are then identical and are computed only once.</summary>
    public const int MassDecimals = 1;

    /// <summary>Allowed pilot masses; others indicate a wrong unit.</summary>
    public static readonly AllowedRange Mass = AllowedRange.Between(20, 250, "20 kg", "250 kg");

    /// <summary>The customers, where they are from in words, and whether their weights are numbers of pieces.</summary>
    public static (IReadOnlyList<ProductLineCustomer> Customers, string Description, bool InPieces) Read(
        Section line, IReadOnlyList<ProductLineOptionsReader.OptionChanges> options)
    {
        var read = Any(line, [.. options.Select(option => option.Option)]);
        if (!line.DiagnosticBag.HasErrors)
            Warn(line, read.Customers);
        return read;
    }

    private static (IReadOnlyList<ProductLineCustomer> Customers, string Description, bool InPieces) Any(
        Section line, IReadOnlyList<ProductLineOption> choices)
    {
        switch (line.Value("customers"))
        {
            case null:
                return ([], "", true);
            case Node.Scalar file:
                var (customers, inPieces) = ProductLineCustomerTable.Read(file, line.DiagnosticBag, choices);
                return (customers, file.Text.Trim(), inPieces);
            case Node.Map map:
                var (drawn, words) = ProductLineSampleReader.Read(Section.Open(map, line.KeyAt("customers"), "line.customers",
                    Keys(LineKeys.ProductLineSample, choices, "the share of each choice under it: "), line.DiagnosticBag)!, choices);
                return (drawn, words, true);
            default:
                return (FromList(line, choices), "listed in the study", !line.List("customers")
                    .Any(node => node is Node.Map one && one.Entries.Any(entry => entry.Key.Text == "share")));
        }
    }

    /// <summary>The keys every customer has, and one for each option.</summary>
    private static SectionKeys Keys(SectionKeys always, IReadOnlyList<ProductLineOption> options, string wanted) => always with
    {
        Keys = [.. always.Keys, .. options.Select(option =>
            Key.Required(option.Name, option.Choices[0], $"{wanted}{string.Join(" or ", option.Choices)}"))],
    };

    /// <summary>The number of a choice, or -1 after an error.</summary>
    public static int Choice(ProductLineOption option, string text, Node at, string where, DiagnosticBag diagnostics)
    {
        for (var choice = 0; choice < option.Choices.Count; choice++)
        {
            if (string.Equals(option.Choices[choice], text.Trim(), StringComparison.OrdinalIgnoreCase))
                return choice;
        }

        diagnostics.Add(at, $"{where}{option.Name} has no choice `{text.Trim()}`.", NearestName.Of(text, option.Choices) is { } near
            ? $"Did you mean `{near}`?"
            : $"Its choices are {string.Join(", ", option.Choices)}.");
        return -1;
    }

    /// <summary>Reports customers of whom some have a share and others a count: the two cannot be added.</summary>
    public static void CheckShares(bool anyShare, bool anyCount, Node at, DiagnosticBag diagnostics)
    {
        if (anyShare && anyCount)
            diagnostics.Add(at, "Some customers have a share and others a count: the two cannot be added.",
                "Give all of them one or the other.");
    }

    /// <summary>Warns of the lightest and the heaviest pilot where they are unusual, and of names that stand more than once.</summary>
    private static void Warn(Section line, IReadOnlyList<ProductLineCustomer> customers)
    {
        var at = line.KeyAt("customers");
        if (customers.Count == 0)
            return;
        ProductLineCustomer[] ends = [customers.MinBy(one => one.PilotMassKilograms)!, customers.MaxBy(one => one.PilotMassKilograms)!];
        foreach (var one in ends.Distinct())
            UsualRanges.BodyMass.Check(one.PilotMassKilograms, at, line.DiagnosticBag, $" of the customer {one.Name}");
        var shared = customers.GroupBy(one => one.Name.Trim(), StringComparer.OrdinalIgnoreCase).Where(group => group.Count() > 1)
            .Select(group => group.Key).ToList();
        if (shared.Count > 0)
            line.DiagnosticBag.AddWarning(at, $"several customers have the name {string.Join(", ", shared.Take(3))}"
                + $"{(shared.Count > 3 ? FormattableString.Invariant($" and {shared.Count - 3} other names") : "")}: tables and cards do "
                + "not tell them apart. Give each its own.");
    }

    private static IReadOnlyList<ProductLineCustomer> FromList(Section line, IReadOnlyList<ProductLineOption> options)
    {
        var keys = Keys(LineKeys.ProductLineCustomer, options, "the choice ");
        var nodes = line.List("customers");
        if (nodes.Count == 0)
            line.DiagnosticBag.Add(line.At("customers"), "There are no customers.",
                "List them, each with its pilot_mass and a share or a count, or name a CSV file.");
        if (nodes.Count > MaxListed)
        {
            line.DiagnosticBag.Add(line.KeyAt("customers"), $"{nodes.Count} customers are listed; {MaxListed} is the most.",
                "Put them in a CSV file and name that.");
            return [];
        }

        Section[] sections = [.. nodes.Select((node, c) => Section.Open(
            node, node, $"line.customers[{c + 1}]", keys, line.DiagnosticBag)).OfType<Section>()];
        CheckShares(sections.Any(section => section.Has("share")), sections.Any(section => section.Has("count")), line.KeyAt("customers"),
            line.DiagnosticBag);
        return [.. sections.Select((section, c) => One(section, c, options))];
    }

    private static ProductLineCustomer One(Section section, int index, IReadOnlyList<ProductLineOption> options)
    {
        var configuration = 0;
        foreach (var option in options)
            configuration = configuration * option.Choices.Count
                + Math.Max(0, section.Text(option.Name) is { } text ? Choice(
                option, text, section.At(option.Name), "", section.DiagnosticBag) : 0);
        return new ProductLineCustomer(
            section.Text("name")?.Trim() ?? FormattableString.Invariant($"customer {index + 1}"),
            Math.Round(section.Number("pilot_mass", Dimension.Mass, Mass), MassDecimals),
            configuration,
            section.Has("count") ? section.Integer("count", 1, 1, 1_000_000)
                : section.OptionalNumber("share", Dimension.Share, AllowedRange.PositiveUpTo(1_000_000, "1000000")) ?? 1);
    }
}
