using System.Globalization;
using CsvHelper;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Reports.Workbook;

public class WorkbookTests
{
    private const int FirstDataRow = 2;

    [Fact]
    public void Sheets_stand_in_reading_order_and_none_is_hidden()
    {
        var book = new WorkbookReader(ReportFixture.Report());
        Assert.Equal(
            [
                "Read me", "Summary", "Ranking", "What if", "Charts", "Front", "Phases", "Machine and mission", "Assumptions", "Cautions",
                    "Ranking data", "What if data", "Chart data",
            ], book.Sheets.Keys);
        Assert.All(book.Visibility, state => Assert.Equal("visible", state));
    }

    [Fact]
    public void Looks_have_names_and_headers_repeat_on_every_printed_page()
    {
        var book = new WorkbookReader(ReportFixture.Report());
        Assert.Equal(
            ["Normal", "FrameOpt title", "FrameOpt heading", "FrameOpt table header", "FrameOpt input", "FrameOpt warning"],
            book.StyleNames());
        Assert.Contains("Front!$A:$C,Front!$2:$2", book.PrintTitles());
    }

    [Theory]
    [InlineData(1)]
    [InlineData(500)]
    [InlineData(501)]
    public void The_front_is_the_best_500_and_says_so_when_there_are_more(int designs)
    {
        var book = new WorkbookReader(ReportFixture.Report(designs));
        var shown = Math.Min(designs, 500);
        Assert.Equal(shown, book.Sheets["Front"].Count - FirstDataRow);
        Assert.Equal(shown * 5, book.Sheets["Phases"].Count - FirstDataRow);
        var title = (string)book.Sheets["Front"][0][0]!;
        Assert.Equal(designs > 500, title.Contains("best 500 by rank of the 501", StringComparison.Ordinal));
        Assert.Equal(shown, book.Table("Ranking", "position").Rows.Count);
        Assert.Empty(book.SchemaErrors());
    }

    [Fact]
    public void The_sheet_Front_holds_the_figures_of_the_CSV()
    {
        var report = ReportFixture.Report(40);
        var sheet = new WorkbookReader(report).Sheets["Front"];
        var csv = Csv(report);
        Assert.Equal(40 + 1, csv.Count);
        for (var row = 0; row < 40; row++)
        {
            for (var column = 0; column < csv[0].Length; column++)
            {
                var inCsv = csv[row + 1][column];
                var inSheet = column < sheet[row + FirstDataRow].Length ? sheet[row + FirstDataRow][column] : null;
                if (inCsv.Length == 0)
                    Assert.Null(inSheet);
                else
                    Check.Close(double.Parse(inCsv, CultureInfo.InvariantCulture), (double)inSheet!, relative: 1e-12,
                        because: "both hold all digits of the same number");
            }
        }
    }

    [Fact]
    public void The_CSV_has_units_in_its_header_and_drilling_dimensions_in_the_users_unit()
    {
        var csv = Csv(ReportFixture.Report(2));
        Assert.Contains("lateral_offset [mm]", csv[0]);
        Assert.Contains("thrust_line_angle [deg]", csv[0]);
        Assert.Contains("|residual[cruise]| [N·m]", csv[0]);
        Assert.Equal("195", csv[1][Array.IndexOf(csv[0], "drill_left_of_symmetry [mm]")]);
        Assert.Equal("245", csv[1][Array.IndexOf(csv[0], "drill_right_of_symmetry [mm]")]);
        Assert.Equal(csv[0].Length, csv[0].Distinct().Count());
    }

    [Fact]
    public void The_sheet_Phases_holds_the_worked_balance()
    {
        var rows = new WorkbookReader(ReportFixture.Report(2)).Sheets["Phases"];
        var cruise = rows.First(row => row[2] is "cruise");
        var column = Array.IndexOf(rows[1], "riser load [N]");
        Check.Close(1109.593, (double)cruise[column]!, relative: 1e-5, because: "digits of the worked balance, References/README.md");
        Assert.Equal("straight", cruise[4]);
        Assert.Equal("right", rows.First(row => row[2] is "accelerated")[4]);
    }

    [Theory]
    [InlineData("=1+1")]
    [InlineData("-1")]
    [InlineData("@SUM(A1)")]
    [InlineData("<script>alert(1)</script> & \"x\"")]
    [InlineData("_x0041_ stays")]
    [InlineData("πτήση 飛行 🪂 &A &P")]
    [InlineData("2024-01-01")]
    public void Users_text_stays_the_text_they_wrote(string text)
    {
        var book = new WorkbookReader(ReportFixture.Report(3, ReportFixture.Study(text, text, text)));
        Assert.Equal(text, book.Sheets["Summary"][0][0]);
        Assert.Equal(text, book.Sheets["Phases"][FirstDataRow + 2][2]);
        Assert.Contains(book.Sheets["Machine and mission"], row => text.Equals(row[1]));
        Assert.All(book.Formulas(), formula => Assert.Contains(formula.Sheet,
            (string[])["Ranking", "What if", "Ranking data", "What if data"]));
        Assert.DoesNotContain(book.Formulas(), formula => formula.Formula.Contains(text, StringComparison.Ordinal) && text.Length > 2);
        Assert.Contains(book.Sheets["What if"], row => text.Equals(row[0]));
        Assert.Empty(book.SchemaErrors());
    }

    [Fact]
    public void Names_of_300_characters_and_forbidden_characters_leave_a_valid_workbook()
    {
        var name = "\u0001" + new string('é', 299);
        var book = new WorkbookReader(ReportFixture.Report(3, ReportFixture.Study(name, name, name)));
        Assert.Equal(name[1..], book.Sheets["Phases"][FirstDataRow + 2][2]);
        Assert.Empty(book.SchemaErrors());
    }

    [Fact]
    public void What_is_not_a_number_leaves_its_cell_blank()
    {
        var report = ReportFixture.Report(2);
        var unbounded = report.FrontEvaluations[0].With(0, PhaseQuantity.TwistMargin, double.PositiveInfinity);
        var book = new WorkbookReader(report with { FrontEvaluations = [unbounded, report.FrontEvaluations[1]] });
        var rows = book.Sheets["Phases"];
        Assert.Null(rows[FirstDataRow][Array.IndexOf(rows[1], "twist margin")]);
        Assert.DoesNotContain(book.AllTexts, text => text.Contains("NaN", StringComparison.Ordinal) || text.Contains('∞'));
    }

    [Fact]
    public void A_run_with_nothing_feasible_still_has_a_valid_workbook()
    {
        var book = new WorkbookReader(new RunReport(ReportFixture.NothingFeasible(null), ReportFixture.Info, []));
        Assert.Contains(book.AllTexts, text => text.StartsWith("NO DESIGN CAN FLY", StringComparison.Ordinal));
        Assert.Empty(book.SchemaErrors());
    }

    [Fact]
    public void The_summary_has_the_words_of_the_answer()
    {
        var report = ReportFixture.Report();
        var texts = new WorkbookReader(report).AllTexts.ToHashSet();
        Assert.All(RunAnswer.Of(report.Result).Sections, section => Assert.All(section.Lines, line => Assert.Contains(line, texts)));
    }

    private static List<string[]> Csv(RunReport report)
    {
        using var stream = new MemoryStream();
        CsvTable.Write(FrontTable.Of(report.Result.Study, report.Result.Front, report.FrontEvaluations), stream);
        stream.Position = 0;
        using var reader = CsvReader.Create(stream, CsvReaderOptions.Default with { HasHeader = false });
        var records = new List<string[]>();
        foreach (var record in reader)
            records.Add(record.ToArray());
        return records;
    }
}
