using System.Globalization;
using System.Text.Json;
using FrameOpt.Cli;
using FrameOpt.Cli.Screen;
using FrameOpt.Model.Mission;
using FrameOpt.Studies;
using FrameOpt.Tests.StudyFile;

namespace FrameOpt.Tests.Cli;

public class EvaluateCommandTests
{
    private static readonly string fine = Repository.Study("fine-grid");

    // Source: the worked balance, see References/README.md; the fine grid has its machine, wing and mission.
    [Theory]
    [InlineData("worked-balance-440-25-150-0.csv", "440 mm", "25 mm", "150 mm", "0 deg")]
    [InlineData("worked-balance-420-22-230-1.5.csv", "42 cm", "22 mm", "0.23 m", "1.5 deg")]
    public void Json_of_a_design_meets_every_figure_of_the_worked_balance(
        string file, string spacing, string offset, string height, string angle)
    {
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run(
            "evaluate", fine, "--json", "--set", $"hang_point_spacing={spacing}", "--set", $"lateral_offset={offset}",
            "--set", $"suspension_height={height}", "--set", $"thrust_line_angle={angle}"));
        using var json = JsonDocument.Parse(terminal.Output);
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "References", file)).Select(line => line.Split(',')).ToList();
        foreach (var row in lines.Skip(1))
        {
            for (var p = 2; p < row.Length; p++)
            {
                var phase = json.RootElement.GetProperty("phases").GetProperty(lines[0][p]);
                Check.Close(double.Parse(row[p], CultureInfo.InvariantCulture), phase.GetProperty(row[0]).GetProperty("value").GetDouble(),
                    relative: 1e-5, absolute: 1e-4, because: "the tolerance the worked figures name");
            }
        }
    }

    [Fact]
    public void Table_of_a_design_shows_every_phase_and_which_way_it_steers()
    {
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run("evaluate", fine, "--set", "lateral_offset=25 mm"));
        Assert.Matches(@"residual \[N·m\] +28\.3522 +3\.68395 +-0\.434678 +6\.11825 +-18\.6732", terminal.Output);
        Assert.Matches(@"steers +right +right +straight +right +left", terminal.Output);
    }

    [Fact]
    public void An_input_that_is_no_factor_is_echoed_and_every_input_says_where_it_comes_from()
    {
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run("evaluate", fine, "--set", "hub_up=10 cm", "--set", "lateral_offset=25 mm"));
        Assert.Contains("hub 10 cm above the datum", terminal.Output);
        Assert.Matches(@"hub_up +10 cm +as set; not a factor of the study", terminal.Output);
        Assert.Matches(@"lateral_offset +25 mm +as set", terminal.Output);
        Assert.Matches(@"suspension_height +150 mm +baseline", terminal.Output);
        var json = new TestTerminal();
        json.Run("evaluate", fine, "--json", "--set", "hub_up=10 cm");
        using var read = JsonDocument.Parse(json.Output);
        Assert.Equal(10, read.RootElement.GetProperty("design").GetProperty("hub_up").GetProperty("value").GetDouble());
    }

    // Worked balance: at 25 mm the twist margin of the launch is 4.745608 and the lean of the glide 36.21829 of 80 mm.
    [Fact]
    public void Limits_of_the_study_are_told_kept_or_broken()
    {
        string Told(string offset)
        {
            var terminal = new TestTerminal();
            terminal.Run("evaluate", WorkedStudyText.Path, "--set", $"lateral_offset={offset}");
            return terminal.Output;
        }

        Assert.Matches(@"twist_margin_worst at least 3 +4\.74561 +met", Told("25 mm"));
        Assert.Matches(@"effort_worst at most 0\.6 +0\.452729 +met", Told("25 mm"));
        Assert.Matches(@"effort_worst at most 0\.6 +\d\.\d+ +VIOLATED", Told("60 mm"));
    }

    [Fact]
    public void Names_are_whole_on_a_terminal_of_80_columns()
    {
        var text = new StringWriter();
        App.Run(["evaluate", fine], new Terminal(Terminal.Console(text, isPipe: true, width: 80), Terminal.Console(text, isPipe: true),
            Stream.Null, () => false));
        Assert.All(ResponseCatalogue.All, entry => Assert.Contains(entry.Name, text.ToString()));
        Assert.All(text.ToString().Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Theory]
    [InlineData(200)]
    [InlineData(80)]
    [InlineData(60)]
    [InlineData(40)]
    [InlineData(20)]
    [InlineData(400)]
    public void Every_number_is_whole_on_a_terminal_of_any_width(int width)
    {
        string[] design = ["evaluate", fine, "--set", "lateral_offset=25 mm"];
        var text = new StringWriter();
        App.Run(design, new Terminal(Terminal.Console(text, isPipe: true, width), Terminal.Console(text, isPipe: true),
            Stream.Null, () => false));
        var json = new TestTerminal();
        json.Run([.. design, "--json"]);
        using var read = JsonDocument.Parse(json.Output);
        var shown = text.ToString().Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries)
            .Where(word => double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out _))
            .Select(word => double.Parse(word, CultureInfo.InvariantCulture)).ToList();
        var numbers = Numbers(read.RootElement).ToList();
        Assert.NotEmpty(numbers);
        Assert.All(numbers, number => Assert.Contains(shown, word => Math.Abs(word - number) <= 5e-6 * Math.Abs(number) + 5e-10));
    }

    [Fact]
    public void A_setting_without_its_unit_is_told_the_units_and_no_value()
    {
        var terminal = new TestTerminal();
        terminal.Run("evaluate", fine, "--set", "lateral_offset=25");
        Assert.Contains("Write a length and its unit (mm, m, cm, in, ft).", terminal.Error);
        Assert.DoesNotMatch("[0-9] ?mm", terminal.Error);
    }

    [Fact]
    public void An_unusual_setting_is_evaluated_with_a_warning()
    {
        var terminal = new TestTerminal();
        terminal.Run("evaluate", fine, "--set", "hang_point_spacing=44 mm", "--set", "lateral_offset=250 mm", "--set", "hub_forward=40 mm");
        Assert.Contains("Warning: --set: the hang-point spacing is 44 mm; 350 to 600 mm is usual (common practice, no source).",
            terminal.Error);
        Assert.Contains("Warning: --set: the lateral offset is 250 mm; -100 to 100 mm is usual", terminal.Error);
        Assert.Contains("Warning: --set: the distance of the propeller hub behind the pilot's body is -20 mm", terminal.Error);
    }

    [Fact]
    public void A_margin_without_bound_is_null_in_json()
    {
        var terminal = new TestTerminal();
        terminal.Run("evaluate", fine, "--json");
        using var json = JsonDocument.Parse(terminal.Output);
        var margin = json.RootElement.GetProperty("phases").GetProperty("glide").GetProperty("torque_margin");
        Assert.Equal(JsonValueKind.Null, margin.GetProperty("value").ValueKind);
    }

    [Fact]
    public void A_design_that_cannot_fly_says_why()
    {
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.NothingFeasible, terminal.Run("evaluate", fine, "--set", "suspension_height=-200 mm"));
        Assert.Contains("This design cannot fly. launch: ", terminal.Output);
    }

    [Fact]
    public void Every_mistake_of_the_settings_is_told_at_once()
    {
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, terminal.Run(
            "evaluate", fine, "--set", "lateral_ofset=25 mm", "--set", "suspension_height=2 kg", "--set", "hang_point_spacing", "--set",
                "thrust_line_angle=1,5 deg"));
        Assert.Contains("4 errors to correct", terminal.Error);
        Assert.Contains("Did you mean `lateral_offset`?", terminal.Error);
        Assert.Contains("is a mass", terminal.Error);
        Assert.Contains("A setting is a factor's name, =, and a value with its unit.", terminal.Error);
        Assert.Contains("Write 1.5 deg.", terminal.Error);
    }

    [Fact]
    public void Without_a_baseline_every_swept_factor_must_be_set()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllLines(folder["study.yaml"], File.ReadAllLines(fine).Where(line => !line.StartsWith("baseline")));
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, terminal.Run("evaluate", folder["study.yaml"], "--set", "lateral_offset=25 mm"));
        Assert.Contains("3 errors to correct", terminal.Error);
        Assert.Contains("--set suspension_height='", terminal.Error);
    }

    /// <summary>Each "value" that is a number, wherever it stands.</summary>
    private static IEnumerable<double> Numbers(JsonElement element) => element.ValueKind != JsonValueKind.Object ? []
        : element.EnumerateObject().SelectMany(item => item is { Name: "value", Value.ValueKind: JsonValueKind.Number }
            ? [item.Value.GetDouble()] : Numbers(item.Value));
}
