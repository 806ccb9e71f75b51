using System.Globalization;
using CsvHelper;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.StudyFile.Syntax;
using static System.FormattableString;

namespace FrameOpt.Reports.Compare;

/// <summary>The customers of a line, read back from customers.csv: what each of them gets.</summary>
/// <param name="Cost">Name and unit of the cost.</param>
/// <param name="All">By name, pilot mass and choices; of several alike the first, with the weight of all.</param>
internal sealed record LineCustomers(string Cost, IReadOnlyDictionary<string, LineCustomer> All)
{
    private const string Turns = "propeller_turns";
    private const int Shown = 5;

    /// <summary>The customers in a folder; none where the table is not there or not as it was written.</summary>
    public static LineCustomers Read(string folder)
    {
        var (path, all) = (Path.Combine(folder, "customers.csv"), new Dictionary<string, LineCustomer>());
        var none = new LineCustomers("", all);
        if (!File.Exists(path) || new FileInfo(path).Length > RunJsonReader.MaxBytes)
            return none;
        using var stream = InputFile.Open(path);
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        using var csv = CsvReader.Create(bytes.ToArray(), CsvReaderOptions.Default with { HasHeader = false });
        List<string> headers = [];
        while (csv.Read())
        {
            string[] cells = [.. Enumerable.Range(0, csv.FieldCount).Select(csv.GetString)];
            if (headers.Count == 0)
                headers = [.. cells];
            var turns = headers.IndexOf(Turns);
            if (turns < 0 || cells.Length < turns + 4)
                return none;
            if (!double.TryParse(cells[turns + 1], NumberStyles.Float, CultureInfo.InvariantCulture, out var weight))
                continue;
            // No cost: nobody serves this customer.
            var cost = double.TryParse(cells[turns + 3], NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number
                : double.PositiveInfinity;
            var key = string.Join(", ", cells[..turns].Select((cell, c) => c == 1 ? $"{cell} kg" : RunJsonElement.SingleLine(cell)));
            all[key] = new LineCustomer(RunJsonElement.SingleLine(cells[turns + 2]), cost,
                weight + (all.TryGetValue(key, out var same) ? same.Weight : 0));
        }

        return new LineCustomers(headers.Count > 0 ? RunJsonElement.SingleLine(headers[headers.IndexOf(Turns) + 3]) : "", all);
    }

    /// <summary>Who is served better and who worse than with the first line; nothing where the tables do not tell.</summary>
    public static IEnumerable<AnswerSection> Section(IReadOnlyList<ComparedLine> lines)
    {
        var first = lines[0].Customers;
        if (lines.Any(line => line.Customers.All.Count == 0 || line.Customers.Cost != first.Cost))
            yield break;
        yield return new AnswerSection("Customers one by one",
            [.. lines.Skip(1).SelectMany(line => Sentences(lines[0], line))]);
    }

    private static IEnumerable<string> Sentences(ComparedLine first, ComparedLine line)
    {
        var (ours, theirs) = (first.Customers.All, line.Customers.All);
        var both = ours.Where(one => theirs.ContainsKey(one.Key)).Select(one => (one.Key, From: one.Value, To: theirs[one.Key])).ToList();
        string Weight(Func<(string Key, LineCustomer From, LineCustomer To), bool> which) =>
            NumberFormat.SignificantDigits(both.Where(which).Sum(pair => pair.From.Weight), 4);
        string Cost(double cost) => double.IsFinite(cost) ? NumberFormat.SignificantDigits(cost, 3) : "not served";
        bool IsBetter((string Key, LineCustomer From, LineCustomer To) pair) => pair.To.Cost < pair.From.Cost - Alike(pair.From.Cost);
        bool IsWorse((string Key, LineCustomer From, LineCustomer To) pair) => pair.To.Cost > pair.From.Cost + Alike(pair.To.Cost);
        yield return $"Of {Weight(_ => true)} {line.Weights} in both, {line.Name} serves {Weight(IsBetter)} better than {first.Name} and "
            + $"{Weight(IsWorse)} worse ({first.Cost}).";
        foreach (var word in new[] { "worse", "better" })
        {
            string[] most = [.. both.Where(pair => word == "worse" ? IsWorse(pair) : IsBetter(pair))
                .OrderByDescending(pair => Math.Abs(pair.To.Cost - pair.From.Cost)).Take(Shown)
                .Select(pair =>
                    $"{pair.Key}: {Cost(pair.From.Cost)} ({pair.From.Geometry}) -> {Cost(pair.To.Cost)} ({pair.To.Geometry})")];
            if (most.Length > 0)
                yield return $"Most {word} with {line.Name}: {string.Join("; ", most)}.";
        }

        foreach (var (name, only) in new[] { (first.Name, ours.Keys.Except(theirs.Keys)), (line.Name, theirs.Keys.Except(ours.Keys)) })
        {
            if (only.ToList() is { Count: > 0 } missing)
                yield return Invariant($"Only in {name}: {NumberFormat.Count(missing.Count, "kind")} of customers, ")
                    + $"such as {string.Join("; ", missing.Take(Shown))}.";
        }
    }

    /// <summary>Costs that differ by less are the same: customers.csv has them to the last digit.</summary>
    private static double Alike(double cost) => double.IsFinite(cost) ? 1e-9 * cost : 0;
}

/// <summary>What one kind of customer gets.</summary>
/// <param name="Geometry">Its name.</param>
/// <param name="Cost">With it; infinite where it gets none.</param>
/// <param name="Weight">Pieces or share.</param>
internal sealed record LineCustomer(string Geometry, double Cost, double Weight);
