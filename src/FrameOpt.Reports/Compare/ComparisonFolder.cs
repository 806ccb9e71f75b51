using System.Text;
using CsvHelper;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Files;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Compare;

/// <summary>The folder a comparison writes: all of its files or none.</summary>
public static class ComparisonFolder
{
    /// <summary>Writes comparison.html and comparison.csv.</summary>
    /// <param name="comparison">What is compared.</param>
    /// <param name="folder">Not yet complete.</param>
    public static void Write(Comparison comparison, ResultsFolder folder)
    {
        folder.Write("comparison.html", stream => stream.Write(Encoding.UTF8.GetBytes(ComparisonPage.Of(comparison))));
        folder.Write("comparison.csv", stream => ComparisonTable.Write(comparison, stream));
    }
}

/// <summary>comparison.csv: every figure of a comparison, for any program.</summary>
public static class ComparisonTable
{
    /// <summary>Writes one row for each figure and each difference, UTF-8; numbers as plain decimals with their unit in a column of its
    /// own.</summary>
    /// <param name="comparison">What is compared.</param>
    /// <param name="stream">Left open.</param>
    public static void Write(Comparison comparison, Stream stream) => Write(Rows(comparison), stream);

    /// <summary>Writes rows of cells that are safe in a spreadsheet.</summary>
    internal static void Write(IEnumerable<IReadOnlyList<string>> rows, Stream stream)
    {
        using var csv = CsvWriter.Create(stream, CsvWriterOptions.Default with { NewLine = "\n" }, leaveOpen: true);
        foreach (var row in rows)
        {
            foreach (var cell in row)
                csv.WriteField(cell);
            csv.EndRecord();
        }
    }

    private static IEnumerable<IReadOnlyList<string>> Rows(Comparison comparison)
    {
        var columns = comparison.Columns;
        yield return ["part", "what", "unit", .. columns.Select(column => column.Letter)];
        yield return Text("design", "title", column => column.Run.Title);
        yield return Text("design", "variant", column => column.Run.Variant);
        yield return Text("design", "folder", column => column.Run.Folder);
        yield return Number("design", "rank", "", column => column.Rank);
        foreach (var input in FactorCatalogue.All)
            yield return Number("geometry", input.Name, input.Kind.SiUnit, column => column.Geometry[input]);
        yield return Number("geometry", "drill_left_of_symmetry", "m", column => DrillingDimensions.LeftMetres(column.Geometry));
        yield return Number("geometry", "drill_right_of_symmetry", "m", column => DrillingDimensions.RightMetres(column.Geometry));
        foreach (var phase in ComparisonTables.PhaseNames(comparison))
        {
            double Of(ComparedColumn column, PhaseQuantity quantity) =>
                column.Phases.FirstOrDefault(own => own.Name == phase) is { } found ? found[quantity] : double.NaN;
            foreach (var quantity in FrontTable.PhaseQuantities)
                yield return Number("phase", $"{quantity}[{phase}]", quantity.Unit, column => Of(column, quantity));
        }

        foreach (var response in ResponseCatalogue.OfMissions)
            yield return Number("mission", response.Name, response.Unit, column => column.Mission[response.Index]);
        foreach (var (c, differences) in comparison.Differences.Index())
        {
            foreach (var difference in differences)
                yield return [.. Row("difference of the studies", $"{difference.Group}: {difference.Path}", "", column =>
                    column == columns[0] ? difference.From ?? "" : column == columns[c] ? difference.To ?? "" : "")];
        }

        IReadOnlyList<string> Row(string part, string what, string unit, Func<ComparedColumn, string> cell) =>
            [part, TextSanitizer.ForCsv(what), unit, .. columns.Select(column => TextSanitizer.ForCsv(cell(column)))];
        IReadOnlyList<string> Text(string part, string what, Func<ComparedColumn, string> text) => Row(part, what, "", text);
        IReadOnlyList<string> Number(string part, string what, string unit, Func<ComparedColumn, double> value) =>
            [part, TextSanitizer.ForCsv(what), unit,
                .. columns.Select(column => double.IsFinite(value(column)) ? PlainNumber.Text(value(column)) : "")];
    }
}
