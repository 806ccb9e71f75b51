using System.Text;
using static System.FormattableString;

namespace FrameOpt.StudyFile;

/// <summary>A commented study with invented figures, to start from.</summary>
/// <param name="Name">As the command line and the key `template` name it.</param>
/// <param name="Purpose">In a few words.</param>
public sealed record StudyTemplate(string Name, string Purpose)
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<StudyTemplate> All { get; } =
    [
        new("custom-match", "one frame for one engine, one propeller, one pilot and one wing"),
        new("product-line", "frames for several pilots: the average customer, the others as variants, and a line of two for all"),
        new("rationale", "why the holes are where they are: an existing frame against what could be built"),
    ];

    /// <summary>The file beside a study in which a template has its customers, to fill in a spreadsheet.</summary>
    public const string CustomersFile = "customers.csv";

    /// <summary>The text of the study with its customers in a file of their own, and that file; null where it has none.</summary>
    public (string Study, string Customers)? WithCustomersFile()
    {
        using var reader = new StreamReader(Open());
        var text = reader.ReadToEnd().ReplaceLineEndings("\n");
        var begin = text.IndexOf("\n  customers:", StringComparison.Ordinal) + 1;
        if (begin == 0 || StudyReader.Parse(Encoding.UTF8.GetBytes(text), Name).Study?.Line is not { } line)
            return null;
        var end = text.IndexOf("\n\n", begin, StringComparison.Ordinal);
        IEnumerable<string> rows = line.Customers.Select(customer => string.Join(',', line.Configurations[customer.Configuration].Choices
            .Prepend(Invariant($"{customer.Name} (invented),{customer.PilotMassKilograms:0.#}")).Append(Invariant($"{customer.Share:0}"))));
        var headers = string.Join(',', line.Options.Select(option => option.Name).Prepend("name,pilot_mass [kg]").Append("count"));
        return (text[..begin] + $$"""
              # One row for each kind of customer, in a table beside this file: open it in a spreadsheet, fill in your own and save it
              # as CSV (UTF-8). The rows in it are invented. A list would do too: - { name: club, pilot_mass: 74 kg, ... }
              customers: {{CustomersFile}}
            """.ReplaceLineEndings("\n") + text[end..], string.Concat(rows.Prepend(headers).Select(row => $"{row}\n")));
    }

    /// <summary>The text of the study.</summary>
    public Stream Open() => typeof(StudyTemplate).Assembly.GetManifestResourceStream($"{Name}.yaml")!;
}
