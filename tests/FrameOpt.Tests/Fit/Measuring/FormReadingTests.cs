using ClosedXML.Excel;
using FrameOpt.Cli;
using FrameOpt.Reports.Forms;
using FrameOpt.Tests.Cli;

namespace FrameOpt.Tests.Fit.Measuring;

/// <summary>What a builder may do to a form, and what fit says of it: with its cell, and nothing guessed.</summary>
public sealed class FormReadingTests : IDisposable
{
    private static readonly string study = Repository.Study("custom-match");
    private static readonly string filled =
        File.ReadAllText(Path.Combine(Repository.Root, "studies", "custom-match", "measured.csv")).ReplaceLineEndings("\n");

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("H01", 4, "53,8", "A number takes a decimal point, not a comma. Write 53.8")]
    [InlineData("H01", 4, "about 54", "This is not a number")]
    [InlineData("H01", 4, "", "left scale is empty. Fill it in")]
    [InlineData("H01", 4, "53.8 m/s", "is a speed; left scale wants a force")]
    [InlineData("H01", 4, "-3", "left scale must be from 0 to")]
    [InlineData("F01", 14, "", "leans to does not say which way. Say which way: nothing is guessed.")]
    [InlineData("F01", 14, "port", "leans to is none of left, right. Write one of them.")]
    [InlineData("F01", 7, "4800", "The engine is off, and rpm were read.")]
    [InlineData("F02", 7, "", "engine rpm read is empty.")]
    [InlineData("B01", 6, "12", "Torque and power are both filled in.")]
    [InlineData("F02", 3, "off", "a row or a cell was moved")]
    [InlineData("F02", 0, "F99", "This is not the name of a run of this sheet.")]
    [InlineData("H02", 0, "", "Readings stand in a row without the name of a run.")]
    public void A_slip_in_a_cell_is_named_with_its_cell(string run, int column, string typed, string message)
    {
        var error = Refused(Changed(run, cells => cells[column] = typed.Contains(',') ? $"\"{typed}\"" : typed));
        Assert.Contains(message, error);
        var at = message.StartsWith("a row or a cell", StringComparison.Ordinal) ? 'A' : (char)('A' + column);
        Assert.Matches($@"form\.csv line \d+, (Hang check|Flight|Static bench) {at}", error);
    }

    [Fact]
    public void Swapped_columns_are_named_with_their_cells()
    {
        var header = filled.Split('\n').First(line => line.Contains("left scale"));
        var error = Refused(filled.Replace(header, header.Replace("left scale", "x scale").Replace("right scale", "left scale")
            .Replace("x scale", "right scale")));
        Assert.Contains("The column left scale belongs here and stands at", error);
        Assert.Contains("The column right scale belongs here and stands at", error);
    }

    [Fact]
    public void A_header_with_a_unit_of_another_kind_is_refused() =>
        Assert.Contains("The unit of thrust is not a force.", Refused(filled.Replace("thrust [kgf]", "thrust [kW]")));

    [Fact]
    public void A_unit_changed_in_the_header_counts()
    {
        // The same numbers, now said to be newtons: a tenth of what an engine of this size pulls.
        var error = Refused(filled.Replace("thrust [kgf]", "thrust [N]"));
        Assert.Contains("as kgf in a column of N would be", error);
    }

    [Fact]
    public void Rpm_of_the_propeller_in_a_column_of_the_engine_are_noticed() =>
        Assert.Contains("they look like rpm of the propeller", Refused(Changed("B0", cells =>
            cells[3] = (double.Parse(cells[3], System.Globalization.CultureInfo.InvariantCulture) / 2.8).ToString("0",
                System.Globalization.CultureInfo.InvariantCulture))));

    [Fact]
    public void A_removed_row_is_missing_and_a_copied_one_stands_twice()
    {
        Assert.Contains("Run H02 is missing.", Refused(string.Join('\n', filled.Split('\n').Where(line => !line.StartsWith("H02")))));
        Assert.Contains("This run stands here twice.", Refused(string.Join('\n',
            filled.Split('\n').SelectMany(line => line.StartsWith("H02") ? [line, line] : new[] { line }))));
    }

    [Theory]
    [InlineData("F", 14, "left", "right", "left and right of the leans")]
    [InlineData("A", 5, "back", "forward", "forward and back of the hang angle")]
    public void A_wrong_convention_of_sides_is_named_and_nothing_corrected(string runs, int column, string one, string other, string words)
    {
        var error = Refused(Changed(runs, cells => cells[column] = cells[column] == one ? other : cells[column] == other ? one : ""));
        Assert.Contains("A SIGN CONVENTION LOOKS WRONG", error);
        Assert.Contains(words, error);
    }

    [Fact]
    public void Every_left_that_is_right_is_named()
    {
        var error = Refused(Changed("", cells =>
        {
            if (cells[0][0] == 'H')
                (cells[4], cells[5]) = (cells[5], cells[4]);
            foreach (var column in new[] { 14, 15, 18 }.Where(column => cells[0][0] == 'F' && cells[column].Length > 0))
                cells[column] = cells[column] switch { "left" => "right", "right" => "left", var word => word };
        }));
        Assert.Contains("left and right everywhere", error);
    }

    [Fact]
    public void An_outlier_is_named()
    {
        File.WriteAllText(folder["form.csv"], Changed("F03", cells => cells[10] = "4.5"));
        var (code, output, _) = Fit();
        Assert.Equal(ExitCode.Success, code);
        Assert.Contains("LOOK AGAIN AT climb of F03", output.ReplaceLineEndings(" "));
    }

    [Fact]
    public void A_run_of_ones_own_counts_and_one_left_empty_is_told()
    {
        var first = filled.Split('\n').First(line => line.StartsWith("H01")).Split(',');
        string[] empty = [.. first[..4], "", "", ""], own = ["extra", "", "0 mm", "as marked", .. first[4..]];
        File.WriteAllText(folder["form.csv"],
            filled.Replace(string.Join(',', first), $"{string.Join(',', empty)}\n{string.Join(',', own)}"));
        var (code, output, error) = Fit();
        Assert.Equal("", error);
        Assert.Equal(ExitCode.Success, code);
        Assert.Contains("Not measured: H01-", output);
        Assert.Contains("extra", output);
    }

    [Fact]
    public void A_workbook_and_a_text_hold_the_same_cells_and_a_filled_workbook_is_read()
    {
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run("form", study, "--set", "lateral_offset=-20 mm", "--out", folder["form.xlsx"]));
        Assert.Equal(ExitCode.Success, terminal.Run("form", study, "--set", "lateral_offset=-20 mm", "--out", folder["empty.csv"]));
        var (book, text) = (FilledFormFile.Read(folder["form.xlsx"], out _)!, FilledFormFile.Read(folder["empty.csv"], out _)!);
        Assert.Equal(text.Sheets.Select(sheet => sheet.Name), book.Sheets.Select(sheet => sheet.Name));
        static IEnumerable<string> Runs(FrameOpt.Forms.FilledSheet sheet) => sheet.Rows.Where(row => row.Count > 2 && row[2].Length > 0)
            .Select(row => string.Join('|', row.Where(cell => cell.Length > 0)));
        Assert.All(text.Sheets.Zip(book.Sheets), pair => Assert.Equal(Runs(pair.First), Runs(pair.Second)));
        using (var workbook = new XLWorkbook(folder["form.xlsx"]))
        {
            var sheet = workbook.Worksheet("Hang check");
            var row = sheet.RowsUsed().First(used => used.Cell(1).GetString().StartsWith("H01")).RowNumber();
            sheet.Cell(row, 5).SetValue(53.8);
            sheet.Cell(row, 6).SetValue("59.0 kgf");
            workbook.SaveAs(folder["filled.xlsx"]);
        }

        Assert.Equal(ExitCode.Success, terminal.Run("fit", study, "--set", "lateral_offset=-20 mm", "--measured", folder["filled.xlsx"]));
        Assert.Contains("2 readings of 1 runs", terminal.Output);
    }

    [Theory]
    [InlineData("fit", "either --scales, with what two scales read, or --measured")]
    [InlineData("fit --scales 'left 1 kgf, right 1 kgf' --measured form.csv", "either --scales")]
    public void Scales_and_form_are_two_ways(string command, string message)
    {
        var terminal = new TestTerminal();
        var words = command.Contains("--scales") ? new[] { "fit", study, "--scales", "left 1 kgf, right 1 kgf", "--measured", "form.csv" }
            : ["fit", study];
        Assert.Equal(ExitCode.InvalidInput, terminal.Run(words));
        Assert.Contains(message, terminal.Error);
    }

    [Fact]
    public void A_file_that_is_no_form_is_refused()
    {
        File.WriteAllText(folder["form.csv"], "a,b\n1,2\n");
        Assert.Contains("There is no sheet Static bench.", Fit().Error);
        File.WriteAllText(folder["form.csv"], "PK no workbook");
        Assert.Contains("It is neither a workbook (.xlsx) nor a CSV file", Fit().Error);
    }

    /// <summary>The filled form with the cells of some runs changed.</summary>
    private static string Changed(string runs, Action<string[]> change) => string.Join('\n', filled.Split('\n').Select(line =>
    {
        var cells = line.Split(',');
        if (cells[0].Length != 6 || cells[0][3] != '-' || !cells[0].StartsWith(runs))
            return line;
        change(cells);
        return string.Join(',', cells);
    }));

    private string Refused(string form)
    {
        File.WriteAllText(folder["form.csv"], form);
        var (code, output, error) = Fit();
        Assert.Equal(ExitCode.InvalidInput, code);
        Assert.Equal("", output);
        return error.ReplaceLineEndings(" ");
    }

    private (int Code, string Output, string Error) Fit()
    {
        var terminal = new TestTerminal();
        var code = terminal.Run("fit", study, "--set", "lateral_offset=-20 mm", "--measured", folder["form.csv"]);
        return (code, terminal.Output, terminal.Error);
    }
}
