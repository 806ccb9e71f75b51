using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Xml.Linq;
using FrameOpt.Reports.ProductLine;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;
using FrameOpt.StudyFile;
using FrameOpt.Tests.Running;

namespace FrameOpt.Tests.Reports.ProductLine;

public class ProductLineFilesTests
{
    private const string HostileText = "<b>\"x\"</b> & =1+1";

    private static readonly Lazy<ProductLineReport> report = new(() => Report(StudyReader.Read(Repository.Study("product-line")).Study!));

    private static readonly Lazy<ProductLineReport> hostile = new(() =>
    {
        var study = ProductLineStudy.Read();
        var line = study.Line!;
        return Report(study with
        {
            Title = HostileText,
            Line = line with
            {
                Customers = [.. line.Customers.Select(customer => customer with { Name = "=" + HostileText + "\u0001" })],
                Options = [line.Options[0] with { Choices = [HostileText, "big"] }, line.Options[1]],
                Configurations = [.. line.Configurations.Select(configuration =>
                    configuration with { Choices = [configuration.Choices[0] == "light" ? HostileText : "big",
                    configuration.Choices[1]] })],
            },
        });
    });

    [Fact]
    public void The_workbook_read_back_has_the_customers_of_the_csv()
    {
        var book = new WorkbookReader(Bytes(stream => ProductLineWorkbook.Write(report.Value, stream)));
        Assert.Equal(["Summary", "Geometries", "Fitting chart", "Live line", "Customers", "Gain", "Assumptions", "Cautions"],
            book.Sheets.Keys);
        Assert.Empty(book.SchemaErrors());
        var csv = CsvRows(Bytes(stream => CsvTable.Write(CustomerTable.Of(report.Value.Result), stream)));
        var sheet = book.Sheets["Customers"].Skip(2).ToList();
        Assert.Equal(csv.Count - 1, sheet.Count);
        for (var r = 0; r < sheet.Count; r++)
        {
            for (var c = 0; c < csv[0].Length; c++)
            {
                if (sheet[r][c] is double number)
                    Assert.Equal(double.Parse(csv[r + 1][c], CultureInfo.InvariantCulture), number);
                else
                    Assert.Equal(csv[r + 1][c], sheet[r][c] as string ?? "");
            }
        }
    }

    [Fact]
    public void Every_word_of_the_answer_stands_in_the_workbook()
    {
        var words = new WorkbookReader(Bytes(stream => ProductLineWorkbook.Write(report.Value, stream))).AllTexts.ToHashSet();
        var answer = ProductLineAnswer.Of(report.Value.Result);
        Assert.Contains(answer.Headline, words);
        Assert.All(answer.Sections.SelectMany(section => section.Lines), line => Assert.Contains(line, words));
    }

    [Fact]
    public void The_same_line_gives_the_same_bytes_for_any_number_of_threads()
    {
        var study = StudyReader.Read(Repository.Study("product-line")).Study!;
        var (one, three) = (Report(study, 1), Report(study, 3));
        Assert.Equal(Bytes(stream => ProductLineJson.Write(one, stream)), Bytes(stream => ProductLineJson.Write(three, stream)));
        Assert.Equal(
            Bytes(stream => CsvTable.Write(CustomerTable.Of(one.Result), stream)),
            Bytes(stream => CsvTable.Write(CustomerTable.Of(three.Result), stream)));
        Assert.Equal(Bytes(stream => ProductLineWorkbook.Write(one, stream)), Bytes(stream => ProductLineWorkbook.Write(three, stream)));
        Assert.Equal(Bytes(stream => FittingChartDrawing.Write(one.Result, stream)),
            Bytes(stream => FittingChartDrawing.Write(three.Result, stream)));
        Assert.Equal(ProductLinePage.Of(one), ProductLinePage.Of(three));
    }

    [Fact]
    public void The_drawing_is_a_file_of_its_own_with_a_letter_and_a_hole_in_its_cells()
    {
        var drawing = XDocument.Parse(Encoding.UTF8.GetString(Bytes(
            stream => FittingChartDrawing.Write(report.Value.Result, stream)))).Root!;
        XNamespace space = "http://www.w3.org/2000/svg";
        Assert.Equal(space + "svg", drawing.Name);
        var texts = drawing.Descendants(space + "text").Select(text => text.Value).ToList();
        foreach (var geometry in report.Value.Result.Geometries)
        {
            Assert.Contains(geometry.Name, texts);
            Assert.Contains(texts, text => text == ProductLineText.HoleOffset(report.Value.Result.Study, geometry.Design));
        }

        Assert.Contains("custom frame", texts);
        Assert.Contains("wing 24 m²", texts);
        Assert.Contains(texts, text => text.StartsWith("Riser twist and torque", StringComparison.Ordinal));
        Assert.DoesNotContain(drawing.Descendants().Attributes(), attribute => attribute.Name.LocalName is "href" or "style");
    }

    [Fact]
    public void A_user_s_text_stays_text_in_drawing_page_and_tables()
    {
        var drawing = XDocument.Parse(Encoding.UTF8.GetString(Bytes(
            stream => FittingChartDrawing.Write(hostile.Value.Result, stream)))).Root!;
        Assert.Contains(drawing.Descendants(), element => element.Value == HostileText && !element.HasElements);
        var page = new PageText(ProductLinePage.Of(hostile.Value));
        Assert.Equal(HostileText, page.Tree.Descendants("h1").Single().Value);
        Assert.DoesNotContain("<b>", page.Raw);
        var book = new WorkbookReader(Bytes(stream => ProductLineWorkbook.Write(hostile.Value, stream)));
        Assert.All(book.Formulas(), formula => Assert.Equal("Live line", formula.Sheet));
        Assert.DoesNotContain(book.Formulas(), formula => formula.Formula.Contains(HostileText));
        Assert.Contains("=" + HostileText, book.AllTexts);
        Assert.All(CsvRows(Bytes(stream => CsvTable.Write(CustomerTable.Of(hostile.Value.Result), stream))).Skip(1), row =>
            Assert.StartsWith("'=", row[0]));
    }

    [Fact]
    public void The_page_holds_no_script_and_lets_nothing_act_but_its_one_style()
    {
        var page = new PageText(ProductLinePage.Of(report.Value));
        Assert.Empty(page.Scripts);
        var policy = page.Tree.Descendants("meta").Single(meta => meta.Attribute("http-equiv") is not null).Attribute("content")!.Value;
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(page.Style)));
        Assert.Equal($"default-src 'none'; style-src 'sha256-{hash}'; base-uri 'none'; form-action 'none'", policy);
        Assert.All(page.Tree.Descendants().Attributes().Where(attribute => attribute.Name.LocalName is "href" or "src"), link =>
            Assert.StartsWith("#", link.Value));
        var ids = page.Tree.Descendants().Attributes("id").Select(id => id.Value).ToList();
        Assert.Equal(ids.Distinct(), ids);
        Assert.All(page.Tree.Descendants("svg"), picture =>
            Assert.All(picture.Attribute("aria-labelledby")!.Value.Split(' '), id => Assert.Contains(id, ids)));
        var answer = ProductLineAnswer.Of(report.Value.Result);
        foreach (var line in answer.Sections.SelectMany(section => section.Lines).Append(answer.Headline))
            Assert.Contains(line, page.Words);
    }

    private static ProductLineReport Report(Study study, int threads = 2) =>
        new(ProductLineStudy.Solve(study, threads), new RunInfo("study.yaml", "0.1.0", 0));

    private static byte[] Bytes(Action<Stream> write)
    {
        using var stream = new MemoryStream();
        write(stream);
        return stream.ToArray();
    }

    private static List<string[]> CsvRows(byte[] csv)
    {
        using var reader = CsvHelper.CsvReader.Create(csv, CsvHelper.CsvReaderOptions.Default with { HasHeader = false });
        var rows = new List<string[]>();
        while (reader.Read())
            rows.Add([.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetString)]);
        return rows;
    }
}
