using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;
using static System.FormattableString;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Reads the designs a search begins from, those of the study's plan or of a file that an earlier run wrote, and those that a
/// plan already has.</summary>
internal static class StartReader
{
    private const int MaxDesigns = 100_000;

    /// <summary>Rounding tolerance at the ends of a range, in m or rad.</summary>
    private const double Tolerance = 1e-9;

    /// <summary>The start, or null when the search starts at random or after an error; the runs of a plan are counted later.</summary>
    public static SearchStart? Read(Section search, IReadOnlyList<StudyFactor> factors)
    {
        if (search.Text("start")?.Trim() is not { } start)
            return null;
        if (start == SearchStart.FromPlan.Keyword)
            return new SearchStart.FromPlan(0);
        return FromFile(search, "start", factors) is { } designs ? new SearchStart.FromFile(start, designs) : null;
    }

    /// <summary>The designs of a file, values in m or rad in the order of the factors; null after an error.</summary>
    /// <param name="search">The group.</param>
    /// <param name="named">Its key that names the file.</param>
    /// <param name="factors">Of the study.</param>
    public static IReadOnlyList<IReadOnlyList<double>>? FromFile(Section search, string named, IReadOnlyList<StudyFactor> factors)
    {
        var name = search.Text(named)?.Trim() ?? "";
        if (CsvTable.Read(search.At(named), name, search.DiagnosticBag) is not { } table)
            return null;
        var key = Invariant($"designs {name} {string.Join(';', factors.Select(factor =>
            Invariant($"{factor.Name} {factor.IsSwept} {factor.LevelsSi[0]:R}")))}");
        var designs = search.DiagnosticBag.Cache.Get(key, search.DiagnosticBag, () => Designs(search, named, table, factors));
        AddWarning(search, named, table, factors, designs);
        return designs;
    }

    /// <summary>Warns of values of the file that are not used as they stand.</summary>
    private static void AddWarning(Section search, string named, CsvTable table, IReadOnlyList<StudyFactor> factors,
        IReadOnlyList<IReadOnlyList<double>> designs)
    {
        var others = FactorCatalogue.All.Select(input => input.Name)
            .Where(name => table.Headers.Any(header => header.Split(' ', 2)[0] == name) && factors.All(factor => factor.Name != name))
            .ToList();
        if (others.Count > 0)
            search.DiagnosticBag.AddWarning(
                search.At(named),
                $"{table.Name} has columns of {string.Join(", ", others)}, which are no factors here: "
                + "they are not used, so its designs are others in this study.");
        var outside = designs.Count(design => design.Zip(factors).Any(
            pair => pair.First < pair.Second.LevelsSi[0] - Tolerance || pair.First > pair.Second.LevelsSi[^1] + Tolerance));
        if (outside > 0)
            search.DiagnosticBag.AddWarning(
                search.At(named),
                $"{outside} of the {designs.Count} designs of {table.Name} lie outside the factors' ranges; "
                + "they are moved to the nearest end.");
    }

    private static IReadOnlyList<IReadOnlyList<double>> Designs(
        Section search, string named, CsvTable table, IReadOnlyList<StudyFactor> factors)
    {
        var at = search.At(named);
        if (table.Rows.Count > MaxDesigns)
            search.DiagnosticBag.Add(
                at, FormattableString.Invariant($"{table.Name} has {table.Rows.Count} designs; {MaxDesigns} is the most to begin from."),
                "Keep the best of them.");
        var columns = factors.Select(factor => Column(search, named, table, factor)).ToList();
        if (columns.Any(column => column is null))
            return [];
        return [.. table.Rows.Take(MaxDesigns).Select(row => (IReadOnlyList<double>)[
            .. columns.Select(column => column!.Value(row, search, named))])];
    }

    private static FactorColumn? Column(Section search, string named, CsvTable table, StudyFactor factor)
    {
        for (var c = 0; c < table.Headers.Count; c++)
        {
            var header = table.Headers[c].Split(' ', 2);
            if (header[0] != factor.Name)
                continue;
            var unit = header.Length > 1 ? header[1].Trim('[', ']') : "";
            if (FactorReader.DimensionOf(factor.Input).FindUnit(unit) is { } spelling)
                return new FactorColumn(c, spelling, factor);
            search.DiagnosticBag.Add(
                search.At(named), $"The column `{table.Headers[c]}` of {table.Name} has no unit this factor is measured in.",
                $"Head it `{factor.Name} [{factor.Unit.Symbol}]`.");
            return null;
        }

        if (!factor.IsSwept)
            return new FactorColumn(-1, null, factor);
        search.DiagnosticBag.Add(search.At(named), $"{table.Name} has no column for {factor.Name}.",
            $"A column `{factor.Name} [{factor.Unit.Symbol}]` is needed, as designs.csv of a run has it.");
        return null;
    }

    private sealed record FactorColumn(int Index, UnitSpelling? Unit, StudyFactor Factor)
    {
        public double Value((long Line, string[] Cells) row, Section search, string named)
        {
            if (Index < 0)
                return Factor.LevelsSi[0];
            var parsed = NumberText.Parse(row.Cells[Index]);
            if (parsed.Message is null && parsed.Unit.Length == 0)
                return Unit!.ToBase(parsed.Value);
            search.DiagnosticBag.Add(
                search.At(named), FormattableString.Invariant($"Line {row.Line} has `{row.Cells[Index]}` for {Factor.Name}."),
                    "A plain number with a decimal point is expected; the unit stands in the header.");
            return double.NaN;
        }
    }
}
