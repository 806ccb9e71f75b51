using FrameOpt.Studies;
using FrameOpt.StudyFile.Sections;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile;

/// <summary>Reads the customers of a line: a list, a table beside the study, or a sample.</summary>
internal static class LineCustomersReader
{
    /// <summary>Largest number of customers.</summary>
    public const int Most = 200_000;

    /// <summary>Decimals of a kilogram to which pilot masses are taken, as a scale reads: many customers are then alike, and those need be worked out once only.</summary>
    public const int MassDecimals = 1;

    /// <summary>Pilots lighter or heavier are slips of a unit.</summary>
    public static readonly Bound Mass = Bound.Between(20, 250, "20 kg", "250 kg");

    /// <summary>The customers and where they are from, in words.</summary>
    public static (IReadOnlyList<LineCustomer> Customers, string Words) Read(Section line, IReadOnlyList<LineOptionsReader.Read> options)
    {
        IReadOnlyList<LineOption> choices = [.. options.Select(option => option.Option)];
        switch (line.Value("customers"))
        {
            case null:
                return ([], "");
            case Node.Scalar file:
                return (LineCustomerTable.Read(file, line.Findings, choices), file.Text.Trim());
            case Node.Map map:
                return LineSampleReader.Read(Section.Open(map, line.KeyAt("customers"), "line.customers", Keys(StudyKeys.LineSample, choices, LineSampleReader.Example), line.Findings)!, choices);
            default:
                return (FromList(line, choices), "listed in the study");
        }
    }

    /// <summary>The keys every customer has, and one for each option.</summary>
    private static SectionKeys Keys(SectionKeys always, IReadOnlyList<LineOption> options, Func<LineOption, string> example) =>
        always with { Keys = [.. always.Keys, .. options.Select(option => Key.Must(option.Name, example(option)))] };

    /// <summary>The number of a choice, or -1 after a mistake.</summary>
    public static int Choice(LineOption option, string text, Node at, string where, Findings findings)
    {
        for (var choice = 0; choice < option.Choices.Count; choice++)
        {
            if (string.Equals(option.Choices[choice], text.Trim(), StringComparison.OrdinalIgnoreCase))
                return choice;
        }

        findings.Mistake(at, $"{where}{option.Name} has no choice `{text.Trim()}`.", NearestName.Of(text, option.Choices) is { } near
            ? $"Did you mean `{near}`?"
            : $"Its choices are {string.Join(", ", option.Choices)}.");
        return -1;
    }

    /// <summary>Reports customers of whom some have a share and others a count: the two cannot be added.</summary>
    public static void CheckShares(bool anyShare, bool anyCount, Node at, Findings findings)
    {
        if (anyShare && anyCount)
            findings.Mistake(at, "Some customers have a share and others a count: the two cannot be added.", "Give all of them one or the other.");
    }

    private static IReadOnlyList<LineCustomer> FromList(Section line, IReadOnlyList<LineOption> options)
    {
        var keys = Keys(StudyKeys.LineCustomer, options, option => option.Choices[0]);
        var nodes = line.List("customers");
        if (nodes.Count == 0)
            line.Findings.Mistake(line.At("customers"), "There are no customers.", "Write for example `customers: [{ name: school, pilot_mass: 70 kg, count: 12 }]`.");
        Section[] sections = [.. nodes.Select((node, c) => Section.Open(node, node, $"line.customers[{c + 1}]", keys, line.Findings)).OfType<Section>()];
        CheckShares(sections.Any(section => section.Has("share")), sections.Any(section => section.Has("count")), line.KeyAt("customers"), line.Findings);
        return [.. sections.Select((section, c) => One(section, c, options))];
    }

    private static LineCustomer One(Section section, int index, IReadOnlyList<LineOption> options)
    {
        var outfit = 0;
        foreach (var option in options)
            outfit = outfit * option.Choices.Count + Math.Max(0, section.Text(option.Name) is { } text ? Choice(option, text, section.At(option.Name), "", section.Findings) : 0);
        return new LineCustomer(
            section.Text("name")?.Trim() ?? FormattableString.Invariant($"customer {index + 1}"),
            Math.Round(section.Number("pilot_mass", Dimension.Mass, Mass), MassDecimals),
            outfit,
            section.Has("count") ? section.Whole("count", 1, 1, 1_000_000) : section.Optional("share", Dimension.Share, Bound.Above0(1_000_000, "1000000")) ?? 1);
    }
}
