using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;
using static System.FormattableString;

namespace FrameOpt.StudyFile;

/// <summary>Reads customers from a CSV file: a line of headers, then a line for each.</summary>
internal sealed class ProductLineCustomerTable
{
    private const int MaxHeaders = 100;
    private const double MaxShare = 1_000_000;
    private const double MinShare = 1e-12;
    private const string MassColumn = "pilot_mass";

    private readonly CsvTable table;
    private readonly Node at;
    private readonly DiagnosticBag diagnostics;
    private readonly int mass;
    private readonly UnitSpelling? massUnit;

    private ProductLineCustomerTable(CsvTable table, Node at, DiagnosticBag diagnostics)
    {
        (this.table, this.at, this.diagnostics) = (table, at, diagnostics);
        mass = table.Headers.ToList().FindIndex(header => header.Split(' ')[0] == MassColumn);
        massUnit = mass < 0 ? null : Dimension.Mass.FindUnit(Unit(table.Headers[mass]));
    }

    /// <summary>The customers, and whether their weights are numbers of pieces; valid only if there are no errors.</summary>
    public static (IReadOnlyList<ProductLineCustomer> Customers, bool InPieces) Read(
        Node.Scalar file, DiagnosticBag diagnostics, IReadOnlyList<ProductLineOption> options)
    {
        if (CsvTable.Read(file, file.Text.Trim(), diagnostics) is not { } table)
            return ([], true);
        if (table.Rows.Count > ProductLineCustomersReader.MaxCustomers)
            diagnostics.Add(
                file, Invariant($"{table.Name} has {table.Rows.Count} customers; {ProductLineCustomersReader.MaxCustomers} is the most."),
                "Put those that are alike on one line with a count.");
        AddWarning(table, file, diagnostics, options);
        // The same table gives the same customers while the choices are the same.
        var choices = options.Select(option => $"{option.Name}:{string.Join(',', option.Choices)}");
        var key = $"customers {table.Name} {string.Join(';', choices)}";
        return (diagnostics.Cache.Get<IReadOnlyList<ProductLineCustomer>>(key, diagnostics, () =>
        {
            var reader = new ProductLineCustomerTable(table, file, diagnostics);
            return reader.HasColumns(options) ? [.. table.Rows.Take(ProductLineCustomersReader.MaxCustomers)
                .Select((row, index) => reader.One(row, index, options))] : [];
        }), table.Column("share") < 0);
    }

    private bool HasColumns(IReadOnlyList<ProductLineOption> options)
    {
        var before = diagnostics.Count;
        if (mass < 0)
            diagnostics.Add(at, $"{table.Name} has no column for the pilot's mass.", "Head a column `pilot_mass [kg]`.");
        else if (massUnit is null)
            diagnostics.Add(at, $"The column `{table.Headers[mass]}` of {table.Name} has no unit of mass.", "Head it `pilot_mass [kg]`.");
        foreach (var option in options.Where(option => table.Column(option.Name) < 0))
            diagnostics.Add(at, $"{table.Name} has no column for the option {option.Name}.",
                $"Head a column `{option.Name}`, with {string.Join(" or ", option.Choices.Take(2))} in it.");
        if (table.Headers.Count > MaxHeaders)
        {
            diagnostics.Add(at, $"{table.Name} has {table.Headers.Count} columns; {MaxHeaders} is the most.", "Keep those that are used.");
            return false;
        }

        foreach (var header in Unknown(table, options))
        {
            if (NearestName.Of(header, Known(options)) is { } near)
                diagnostics.Add(at, $"The column `{header}` of {table.Name} means nothing here.", $"Did you mean `{near}`?");
        }

        ProductLineCustomersReader.CheckShares(table.Column("share") >= 0, table.Column("count") >= 0, at, diagnostics);
        return diagnostics.Count == before;
    }

    private static string[] Known(IReadOnlyList<ProductLineOption> options) =>
        ["name", "share", "count", .. options.Select(option => option.Name)];

    private static IEnumerable<string> Unknown(CsvTable table, IReadOnlyList<ProductLineOption> options) => table.Headers.Where(
        header => header.Length > 0 && header.Split(' ')[0] != MassColumn
            && !Known(options).Contains(header, StringComparer.OrdinalIgnoreCase));

    /// <summary>A maker's table has columns of its own; they are named once, so that none is left out unseen.</summary>
    private static void AddWarning(CsvTable table, Node at, DiagnosticBag diagnostics, IReadOnlyList<ProductLineOption> options)
    {
        var others = Unknown(table, options).Where(header => NearestName.Of(header, Known(options)) is null).ToList();
        if (others.Count is > 0 and <= MaxHeaders)
            diagnostics.AddWarning(at, $"{table.Name} has columns that are not used: {string.Join(", ", others)}. Used are "
                + $"{MassColumn}, {string.Join(", ", Known(options))}.");
    }

    private ProductLineCustomer One((long Line, string[] Cells) row, int index, IReadOnlyList<ProductLineOption> options)
    {
        var where = Invariant($"Line {row.Line} of {table.Name}: ");
        var configuration = 0;
        foreach (var option in options)
            configuration = configuration * option.Choices.Count
                + Math.Max(0, ProductLineCustomersReader.Choice(option, row.Cells[table.Column(option.Name)], at, where, diagnostics));
        var name = table.Column("name") is >= 0 and var column ? row.Cells[column] : "";
        return new ProductLineCustomer(name.Length > 0 ? name : Invariant($"customer {index + 1}"), Mass(row, where), configuration,
            Share(row, where));
    }

    private double Mass((long Line, string[] Cells) row, string where)
    {
        var text = row.Cells[mass];
        var parsed = NumberText.Parse(text);
        if (parsed.Message is not null || parsed.Unit.Length > 0)
        {
            diagnostics.Add(at, $"{where}`{text}` is not a pilot's mass.",
                "A plain number with a decimal point is expected; the unit stands in the header.");
            return double.NaN;
        }

        var kilograms = massUnit!.ToBase(parsed.Value);
        if (!ProductLineCustomersReader.Mass.Contains(kilograms))
            diagnostics.Add(at, $"{where}the pilot's mass {text} is not {ProductLineCustomersReader.Mass.Description}.",
                "Check the unit in the header.");
        return Math.Round(kilograms, ProductLineCustomersReader.MassDecimals);
    }

    private double Share((long Line, string[] Cells) row, string where)
    {
        foreach (var name in new[] { "share", "count" }.Where(name => table.Column(name) >= 0))
        {
            var text = row.Cells[table.Column(name)];
            var parsed = NumberText.Parse(text);
            var isRight = parsed.Message is null && parsed.Value is >= MinShare and <= MaxShare
                && (name == "share" ? Dimension.Share.FindUnit(parsed.Unit) is not null
                : parsed.Unit.Length == 0 && parsed.Value == Math.Floor(parsed.Value));
            if (isRight)
                return name == "share" ? Dimension.Share.FindUnit(parsed.Unit)!.ToBase(parsed.Value) : parsed.Value;
            diagnostics.Add(at, $"{where}`{text}` is not a {name}.", name == "share"
                ? Invariant($"A number above 0 and at most {MaxShare} is wanted, plain or with %.")
                : Invariant($"A whole number from 1 to {MaxShare} is expected; leave out customers of whom there are none."));
            return double.NaN;
        }

        return 1;
    }

    private static string Unit(string header) => header.Split(' ', 2) is [_, var unit] ? unit.Trim('[', ']', ' ') : "";
}
