using FrameOpt.Analysis;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;
using static System.FormattableString;

namespace FrameOpt.Forms;

/// <summary>What is asked of a table of measured runs.</summary>
/// <param name="Responses">Names of the columns that were read; none for those that the file has a model's value of, or else the last
/// one.</param>
/// <param name="Factors">Names of the columns that were set; none for all others with numbers.</param>
/// <param name="Ranges">What -1 and +1 stand for: "time 80..90".</param>
public sealed record RunTableRequest(
    IReadOnlyList<string> Responses, IReadOnlyList<string> Factors, IReadOnlyList<string> Ranges);

/// <summary>Reads a table of measured runs: a row of headers, then a row for each run.</summary>
/// <param name="form">Its cells; the first sheet that has any.</param>
/// <param name="request">Which columns.</param>
public sealed class RunTableReader(FilledForm form, RunTableRequest request)
{
    private const string Axial = "axial";
    private const int MostFactors = 20;
    private const int MostLevels = 12;
    private const int MostShown = 12;
    private const double MostCoded = 4;

    private readonly List<Diagnostic> errors = [];
    private readonly FilledSheet sheet = form.Sheets.FirstOrDefault(one => one.Rows.Any(IsFilled)) ?? new FilledSheet("", 1, []);
    private List<int> rows = [];
    private List<RunHeading> headings = [];

    /// <summary>The table, or null with everything there is to correct.</summary>
    public static RunTable? Read(FilledForm form, RunTableRequest request, out IReadOnlyList<Diagnostic> errors)
    {
        var reader = new RunTableReader(form, request);
        var table = reader.Read();
        errors = reader.errors.Count <= MostShown ? reader.errors
            : [.. reader.errors.Take(MostShown), new Diagnostic(form.File, 0, 0, "", $"{reader.errors.Count - MostShown} more like these.",
                "A table with decimal commas throughout: save it with decimal points.")];
        return errors.Count == 0 ? table : null;
    }

    private RunTable? Read()
    {
        var header = Enumerable.Range(0, sheet.Rows.Count).FirstOrDefault(row => IsFilled(sheet.Rows[row]), -1);
        if (header < 0)
            return Refuse<RunTable>("It has no rows.", "Its first row names the columns, and each row after it is a run.");
        headings = [.. Enumerable.Range(0, sheet.Rows[header].Count).Where(c => sheet.Cell(header, c).Length > 0)
            .Select(c => RunHeading.Of(sheet.Cell(header, c), c))];
        if (headings.GroupBy(one => one.Name, StringComparer.OrdinalIgnoreCase).FirstOrDefault(same => same.Count() > 1) is { } twice)
            return Refuse<RunTable>($"Two columns are headed {twice.Key}.", "Keep one of them, or give them different names.");
        rows = [.. Enumerable.Range(header + 1, sheet.Rows.Count - header - 1).Where(row => IsFilled(sheet.Rows[row]))];
        foreach (var row in rows)
        {
            var beyond = Enumerable.Range(0, sheet.Rows[row].Count).FirstOrDefault(c =>
                sheet.Cell(row, c).Length > 0 && (c >= sheet.Rows[header].Count || sheet.Cell(header, c).Length == 0), -1);
            if (beyond >= 0)
                errors.Add(new Diagnostic(sheet.Place(form, row, beyond), 0, 0, VisibleText.Quoted(sheet.Cell(row, beyond)),
                    "This cell stands under no header.", "Write numbers with a decimal point, and head every column."));
        }

        var responses = Responses().ToList();
        if (errors.Count > 0 || responses.Count == 0)
            return null;
        var candidates = request.Factors.Count > 0 ? [.. request.Factors.Select(Find).OfType<RunHeading>()]
            : headings.Where(one => !one.IsOfPlan && !responses.Contains(one) && Model(one) is null
                && (IsOfNumbers(one) || IsOfLevels(one))).ToList();
        var factors = candidates.Where(one => !IsOfLevels(one)).Select(one => Numbers(one, isNeeded: true)).Where(IsSet).ToList();
        List<WordColumn> words = [.. candidates.Where(IsOfLevels)
            .Select(one => new WordColumn(one.Name, [.. rows.Select(row => sheet.Cell(row, one.Column))]))];
        if (errors.Count > 0)
            return null;
        if (factors.Count + words.Count is 0 or > MostFactors)
            return Refuse<RunTable>(factors.Count == 0 ? "No column besides the responses changes from run to run and back."
                    : Invariant($"It has {factors.Count + words.Count} factors; {MostFactors} is the most."),
                "Name the columns that were set with --factor, and those that were read with --response.");
        var measured = responses.Select(one => new MeasuredResponse(Numbers(one, isNeeded: false), Predicted(one))).ToList();
        foreach (var response in measured.Where(one => errors.Count == 0 && one.Measured.Values.Count(double.IsFinite) < 3))
            Refuse<RunTable>($"Fewer than three runs have a reading of {response.Measured.Name}.", "Fill in what was measured.");
        foreach (var response in measured.Where(one =>
            errors.Count == 0 && !one.Measured.Values.Where(double.IsFinite).Distinct().Skip(1).Any()))
            Refuse<RunTable>($"Every reading of {response.Measured.Name} is the same: there is nothing to analyse.",
                "Check the column, or name another one with --response.");
        var used = factors.Select(factor => factor.Header).Concat(words.Select(one => one.Name)).Concat(responses.Select(one => one.Text))
            .ToHashSet();
        var blocks = Texts(RunHeading.Block, _ => "1");
        return new RunTable(Texts(RunHeading.Run, row => Invariant($"{row + 1}")), blocks, factors, Coding(factors), measured,
            [.. headings.Where(one => !one.IsOfPlan && !used.Contains(one.Text)).Select(one => one.Text + WhyNot(one))])
        {
            WholePlots = WholePlots(blocks),
            Words = words,
        };
    }

    private IReadOnlyList<string> WholePlots(IReadOnlyList<string> blocks)
    {
        List<string> plots = [.. Texts(RunHeading.WholePlot, _ => "")
            .Zip(blocks, (plot, block) => plot.Length == 0 ? "" : $"{block}|{plot}")];
        if (plots.Contains("") && plots.Exists(plot => plot.Length > 0))
            Refuse<RunTable>("Some runs have a whole plot and some have none.", "Give every run its whole plot, or remove the column.");
        return plots.Distinct().Count() is var count && (count < 2 || count == plots.Count) ? [] : plots;
    }

    private IEnumerable<RunHeading> Responses()
    {
        if (request.Responses.Count > 0)
            return request.Responses.Select(Find).OfType<RunHeading>();
        var compared = headings.Where(one => Model(one) is not null).ToList();
        var filled = compared.Where(one => rows.Exists(row => sheet.Cell(row, one.Column).Length > 0)).ToList();
        return filled.Count > 0 ? filled : compared.Count > 0 ? compared.Take(1)
            : headings.Where(one => !one.IsOfPlan && IsOfNumbers(one)).TakeLast(1);
    }

    /// <summary>The column of a name, with its unit or without; an error where there is none.</summary>
    private RunHeading? Find(string name)
    {
        if (headings.FirstOrDefault(one => one.Name.Equals(name, StringComparison.OrdinalIgnoreCase) || one.Text == name) is { } found)
            return found;
        return Refuse<RunHeading>($"There is no column {VisibleText.Quoted(name)}.",
            $"Its columns are {string.Join(", ", headings.Select(one => one.Name))}.");
    }

    private RunHeading? Model(RunHeading response) => headings.FirstOrDefault(one =>
        one.Name.Equals(RunHeading.ModelPrefix + response.Name, StringComparison.OrdinalIgnoreCase));

    private RunColumn? Predicted(RunHeading response)
    {
        if (Model(response) is not { } model)
            return null;
        if (model.Unit != response.Unit)
            Refuse<RunColumn>($"{response.Text} and {model.Text} have different units.", "Give both the same unit, and the numbers in it.");
        return Numbers(model, isNeeded: false);
    }

    private string WhyNot(RunHeading heading) => rows.TrueForAll(row => sheet.Cell(row, heading.Column).Length == 0) ? " (empty)"
        : !IsOfNumbers(heading) ? " (words, too many or all alike to be levels)" : Model(heading) is null ? " (alike in every run)" : "";

    private bool IsOfNumbers(RunHeading heading) => rows.Exists(row => NumberText.Parse(sheet.Cell(row, heading.Column)).Message is null);

    /// <summary>Words throughout, a few that come again.</summary>
    private bool IsOfLevels(RunHeading heading) => !IsOfNumbers(heading)
        && rows.TrueForAll(row => sheet.Cell(row, heading.Column).Length > 0)
        && rows.Select(row => sheet.Cell(row, heading.Column)).Distinct().Count() is var levels && levels > 1 && levels <= MostLevels
        && levels < rows.Count;

    private static bool IsSet(RunColumn column) => column.Values.Distinct().Skip(1).Any();

    private RunColumn Numbers(RunHeading heading, bool isNeeded) => new(heading.Name, heading.Unit, [.. rows.Select(row =>
    {
        var text = sheet.Cell(row, heading.Column);
        var parsed = NumberText.Parse(text);
        if (text.Length == 0 && isNeeded)
            Refuse(row, heading, $"{heading.Name} of this run is empty.", "Fill in how it was set, or remove the row.");
        else if (text.Length > 0 && parsed.Message is { } wrong)
            Refuse(row, heading, wrong, parsed.Fix.Length > 0 ? parsed.Fix
                : "Write a number, or clear the cell where nothing was measured.");
        else if (parsed.Unit.Length > 0)
            Refuse(row, heading, "A unit stands behind this number.", "Write numbers only, in the unit of the header.");
        return text.Length == 0 ? double.NaN : parsed.Value;
    })]);

    private IReadOnlyList<string> Texts(string title, Func<int, string> otherwise)
    {
        var heading = headings.FirstOrDefault(one => one.Name.Equals(title, StringComparison.OrdinalIgnoreCase));
        return [.. rows.Select((row, i) => heading is null ? otherwise(i) : sheet.Cell(row, heading.Column))];
    }

    /// <summary>What -1 and +1 stand for: as asked; as they are, for a column of coded numbers; else from end to end of the runs, those on
    /// the axes beyond a plan's cube aside.</summary>
    private FactorCoding Coding(IReadOnlyList<RunColumn> factors)
    {
        var kinds = Texts(RunHeading.Kind, _ => "");
        var asked = request.Ranges.Select(text => RangeText.Read(text, factors)).ToList();
        foreach (var (text, _) in request.Ranges.Zip(asked).Where(pair => pair.Second is null))
            Refuse<RunTable>($"--range {VisibleText.Quoted(text)} is not a factor with its two ends.",
                "Write it as in: 'time 80..90', the lower end first.");
        return FactorCoding.OfRanges([.. factors.Select(factor =>
        {
            if (asked.LastOrDefault(one => one?.Factor == factor) is { } own)
                return new Interval(own.Low, own.High);
            if (factor.Unit.Length == 0 && factor.Values.Contains(-1) && factor.Values.Contains(1)
                && factor.Values.All(value => Math.Abs(value) <= MostCoded))
                return new Interval(-1, 1);
            var within = factor.Values.Where((_, i) => !kinds[i].Equals(Axial, StringComparison.OrdinalIgnoreCase)).ToList();
            var ends = within.Distinct().Skip(1).Any() ? within : factor.Values;
            return new Interval(ends.Min(), ends.Max());
        })]);
    }

    private void Refuse(int row, RunHeading heading, string what, string fix) => errors.Add(new Diagnostic(
        sheet.Place(form, row, heading.Column), 0, 0, VisibleText.Quoted(sheet.Cell(row, heading.Column)), what, fix));

    private T? Refuse<T>(string what, string fix) where T : class
    {
        errors.Add(new Diagnostic(form.File, 0, 0, "", what, fix));
        return null;
    }

    private static bool IsFilled(IReadOnlyList<string> row) => row.Any(cell => cell.Trim().Length > 0);
}
