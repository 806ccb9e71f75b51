using System.Text;
using System.Text.Json;
using System.Xml.Linq;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Files;
using FrameOpt.Reports.Page;
using FrameOpt.Reports.Text;
using FrameOpt.StudyFile.Syntax;
using static System.FormattableString;

namespace FrameOpt.Reports.Compare;

/// <summary>Product lines side by side, read back from the folders that the command line writes.</summary>
public sealed class LineComparison
{
    private const string JsonName = "line.json";
    private readonly IReadOnlyList<ComparedLine> lines;

    private LineComparison(IReadOnlyList<ComparedLine> lines) => this.lines = lines;

    /// <summary>True when one of the folders is that of a line and not of a run.</summary>
    public static bool IsOfLines(IReadOnlyList<string> folders) =>
        folders.Any(folder => File.Exists(Path.Combine(folder, JsonName)) && !File.Exists(Path.Combine(folder, RunFolder.RunJsonName)));

    /// <summary>Reads every line, or gives every reason why not.</summary>
    /// <param name="folders">Two to six.</param>
    /// <param name="version">Of this program.</param>
    /// <param name="errors">Sentences; empty when all could be read.</param>
    public static LineComparison? Read(IReadOnlyList<string> folders, string version, out IReadOnlyList<string> errors)
    {
        var (read, collected) = (new List<ComparedLine>(), new List<string>());
        if (folders.Count is < 2 or > ComparisonReader.MaxDesigns)
            collected.Add($"compare takes two to {ComparisonReader.MaxDesigns} lines, for example: compare results/three results/four.");
        foreach (var (i, folder) in folders.Take(ComparisonReader.MaxDesigns).Index())
        {
            if (Read(folder, version, Invariant($"line {i + 1}"), out var error) is { } line)
                read.Add(line);
            else
                collected.Add(error);
        }

        errors = collected;
        return collected.Count == 0 ? new LineComparison(read) : null;
    }

    /// <summary>The title, one line.</summary>
    public string Title => $"{lines.Count} product lines side by side";

    /// <summary>What each makes and is worth, who gets which, who is served better, and how the studies differ.</summary>
    /// <param name="maxDifferences">The most lines of differences.</param>
    public IReadOnlyList<AnswerSection> Sections(int maxDifferences = int.MaxValue) =>
    [
        new AnswerSection("The lines",
            [
                .. lines.Select(line => $"{line.Name}: {line.Title} ({line.Folder})."),
                .. lines.Skip(1).SelectMany(line => LineDifferences.NotComparable(lines[0], line)),
            ],
            new AnswerTable(["", .. lines.Select(line => line.Name)],
            [
                Row("geometries", line => Invariant($"{line.Geometries.Count}")),
                Row(lines[0].Objective, line => line.Value),
                Row("proof", line => line.Stop),
                Row("customers", line => line.CustomerCount),
                Row("serves all whom a candidate suits", line => line.ServesAll ? "yes" : "NO"),
            ])),
        .. lines.Select(line => new AnswerSection($"What {line.Name} makes, and who gets which",
            [.. line.Boundaries, .. line.Unserved], new AnswerTable(["geometry", "share", "dimensions"], line.Geometries))),
        .. LineCustomers.Section(lines),
        LineDifferences.Section(lines, maxDifferences),
    ];

    /// <summary>comparison.csv: a row for each figure, customer and difference, a column for each line.</summary>
    /// <param name="stream">UTF-8; left open.</param>
    public void WriteTable(Stream stream) => ComparisonTable.Write(Rows(), stream);

    private IEnumerable<IReadOnlyList<string>> Rows()
    {
        yield return ["part", "what", "unit", .. lines.Select(line => line.Name)];
        IReadOnlyList<string> Cells(string part, string what, string unit, Func<ComparedLine, string> cell) =>
            [part, TextSanitizer.ForCsv(what), unit, .. lines.Select(line => TextSanitizer.ForCsv(cell(line)))];
        yield return Cells("line", "title", "", line => line.Title);
        yield return Cells("line", "folder", "", line => line.Folder);
        yield return Cells("line", "objective", "", line => line.Objective);
        yield return Cells("line", "value", lines[0].Unit, line => line.Amount);
        yield return Cells("line", "proof", "", line => line.Stop);
        foreach (var name in lines.SelectMany(line => line.Geometries).Select(geometry => geometry[0]).Distinct())
        {
            string Of(ComparedLine line, int column) => line.Geometries.FirstOrDefault(one => one[0] == name)?[column] ?? "";
            yield return Cells("geometry", $"{name}: share", "", line => Of(line, 1));
            yield return Cells("geometry", $"{name}: dimensions", "", line => Of(line, 2));
        }

        foreach (var customer in lines.SelectMany(line => line.Customers.All.Keys).Distinct())
        {
            LineCustomer? Of(ComparedLine line) => line.Customers.All.GetValueOrDefault(customer);
            yield return Cells("customer", $"{customer}: geometry", "", line => Of(line)?.Geometry ?? "");
            yield return Cells("customer", $"{customer}: {lines[0].Customers.Cost}", "", line =>
                Of(line) is { Cost: var cost } && double.IsFinite(cost) ? PlainNumber.Text(cost) : "");
        }

        foreach (var (other, one) in lines.Skip(1).SelectMany(line => LineDifferences.Of(lines[0], line).Select(one => (line, one))))
            yield return Cells("difference of the studies", $"{one.Group}: {one.Path}", "", line =>
                line == lines[0] ? one.From ?? "" : line == other ? one.To ?? "" : "");
    }

    /// <summary>comparison.html: one file that needs nothing else.</summary>
    public void WritePage(Stream stream) => stream.Write(Encoding.UTF8.GetBytes(PageTemplate.Of($"{Title} - FrameOpt comparison",
        PageTemplate.ReadResource("page.css"), script: null,
        [
            new XElement("header", Html.Paragraph("kind", "Hang points: product lines"), new XElement("h1", Title)),
            PageTemplate.Main([.. Sections().Index().Select(item =>
                Html.Section(Invariant($"part-{item.Index + 1}"), item.Item.Title, Html.SectionBody(item.Item)))]),
            PageTemplate.Footer(),
        ])));

    private IReadOnlyList<string> Row(string what, Func<ComparedLine, string> cell) => [what, .. lines.Select(cell)];

    private static ComparedLine? Read(string folder, string version, string name, out string error)
    {
        var path = Path.Combine(folder, JsonName);
        error = !File.Exists(path) ? $"{folder} contains no {JsonName}, so it is not the results folder of a line."
            : new FileInfo(path).Length > RunJsonReader.MaxBytes ? $"{path} is too large and was not read." : "";
        if (error.Length > 0)
            return null;
        try
        {
            using var stream = InputFile.Open(path);
            using var document = JsonDocument.Parse(stream);
            var root = new RunJsonElement(document.RootElement, "");
            if (root["version"].Text == version)
                return Line(root, folder, name);
            error = $"{path} was written by FrameOpt {root["version"].Text}, and this is {version}: run the study again.";
        }
        catch (Exception problem) when (problem is JsonException or InvalidRunFileException or InvalidOperationException)
        {
            error = $"{path} is damaged {problem.Message.ReplaceLineEndings(" ").TrimEnd('.')}. Run the study again.";
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            error = $"{path} cannot be read: {problem.Message}";
        }

        return null;
    }

    private static ComparedLine Line(RunJsonElement root, string folder, string name)
    {
        var (line, asked) = (root["line"], root["asked"]);
        return new ComparedLine(
            name, RunJsonElement.SingleLine(folder), root["study"]["title"].Text, root["study_sha256"].Text, asked["objective"].Text,
            asked["cost"].Text, asked["weights"].Text,
            Text(line["value"], 4), line["value"]["unit"].Text,
            line["value"]["value"].NumberOrNaN is var value && double.IsFinite(value) ? PlainNumber.Text(value) : "",
            line["stop"].Text, line["serves_all"].Boolean,
            NumberFormat.Count((long)asked["customers_count"].Number),
            [.. line["geometries"].Items.Select(geometry => (IReadOnlyList<string>)
            [
                geometry["letter"].Text, Invariant($"{100 * geometry["share"].Number:0} %"),
                string.Join(", ", geometry["design"].Properties.Select(part => Dimension(part.Name, part.Part))
                    .Append($"propeller turns {string.Join(" and ", geometry["turns"].Items.Select(turns => turns.Text))}")),
            ])],
            [.. line["who_gets_which"].Items.Select(item => item.Text)], [.. line["unserved"].Items.Select(item => item.Text)],
            StudyTree.Of(root["study"]), StudyTree.Of(asked), [.. root["configurations"].Items.Select(one =>
                StudyTree.Of(one) with { Name = one["name"].Text })],
            LineCustomers.Read(folder));
    }

    /// <summary>A dimension of a geometry, its side in words.</summary>
    private static string Dimension(string key, RunJsonElement quantity)
    {
        var (name, value) = (key.Replace('_', ' '), quantity["value"].NumberOrNaN);
        return key is not ("lateral_offset" or "thrust_line_angle") || !(Math.Abs(value) > 0) ? $"{name} {Text(quantity, 6)}"
            : $"{name} {NumberFormat.SignificantDigits(Math.Abs(value), 6)} {quantity["unit"].Text} {SideText.Side(value)}";
    }

    private static string Text(RunJsonElement quantity, int digits) => double.IsNaN(quantity["value"].NumberOrNaN) ? "-"
        : $"{NumberFormat.SignificantDigits(quantity["value"].Number, digits)} {quantity["unit"].Text}".TrimEnd();
}
