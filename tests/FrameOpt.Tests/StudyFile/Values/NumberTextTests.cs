using FrameOpt.StudyFile.Values;
using FrameOpt.Tests.Reports;

namespace FrameOpt.Tests.StudyFile.Values;

/// <summary>The one grammar of numbers.</summary>
public class NumberTextTests
{
    [Theory]
    [InlineData("620 mm", 620, "mm")]
    [InlineData("620mm", 620, "mm")]
    [InlineData("-1.5 deg", -1.5, "deg")]
    [InlineData("+3", 3, "")]
    [InlineData("1e-3 m", 0.001, "m")]
    [InlineData("2.5E2 m", 250, "m")]
    [InlineData("007 m", 7, "m")]
    [InlineData("5 °C", 5, "°C")]
    [InlineData("3 eggs", 3, "eggs")]
    public void Right_number_is_read(string text, double value, string unit)
    {
        var parsed = NumberText.Parse(text);
        Assert.Null(parsed.Message);
        Assert.Equal(value, parsed.Value);
        Assert.Equal(unit, parsed.Unit);
    }

    [Theory]
    [InlineData("1,5 m", "Write 1.5 m.")]
    [InlineData("-0,25", "Write -0.25.")]
    [InlineData("1,500 m", "Write 1500 m or 1.500 m, whichever is meant.")]
    [InlineData("1 500 m", "Write 1500 m.")]
    [InlineData("1'500 m", "Write 1500 m.")]
    [InlineData("1_500 m", "Write 1500 m.")]
    [InlineData("1,500,000 g", "Write 1500000 g.")]
    [InlineData("1.500.000 g", "Write 1500000 g.")]
    [InlineData("1,500.5 g", "Write 1500.5 g.")]
    [InlineData(".5 m", "Write 0.5 m.")]
    [InlineData("5. m", "Write 5.0 m.")]
    [InlineData("−5 m", "Write -5 m.")]
    public void Wrong_number_is_refused_with_how_to_write_it(string text, string fix)
    {
        var parsed = NumberText.Parse(text);
        Assert.NotNull(parsed.Message);
        Assert.True(double.IsNaN(parsed.Value));
        Assert.Equal(fix, parsed.Fix);
    }

    [Theory]
    [InlineData("NaN")]
    [InlineData(".nan")]
    [InlineData("inf m")]
    [InlineData("-.inf")]
    [InlineData("Infinity")]
    [InlineData("1e999 m")]
    [InlineData("wide")]
    [InlineData("1.2.3 m")]
    [InlineData("--5 m")]
    [InlineData("1,2,3")]
    [InlineData("")]
    public void What_is_no_number_is_refused(string text)
    {
        var parsed = NumberText.Parse(text);
        Assert.NotNull(parsed.Message);
        Assert.True(double.IsNaN(parsed.Value));
    }

    [Fact]
    public void Arabic_and_other_digits_are_not_taken_for_digits() => Assert.NotNull(NumberText.Parse("٣ mm").Message);

    [Theory]
    [InlineData("mass: 78 kg", "mass: 78,5 kg", "78,5 kg", "Write 78.5 kg.")]
    [InlineData("forward: -60 mm }", "forward: -60,5 mm }", "-60,5 mm", "Write -60.5 mm.")]
    [InlineData("weight: 0.20, power: climb", "weight: 0,20, power: climb", "0,20", "Write 0.20.")]
    [InlineData("carried: 0.8", "carried: 0,8", "0,8", "Write 0.8.")]
    public void Decimal_comma_within_braces_is_told_though_it_ends_the_value(string piece, string slip, string excerpt, string fix)
    {
        var diagnostic = WorkedStudyText.OneDiagnostic(WorkedStudyText.With(piece, slip));
        Assert.Equal((excerpt, fix), (diagnostic.Excerpt, diagnostic.Fix));
    }

    [Theory]
    [InlineData("[0.1, 0.0959, 0.05245]", "[0,1, 0,0959, 0,05245]")]
    [InlineData("[5000 rpm, 18.5 N·m]", "[5000 rpm, 18,5 N·m]")]
    [InlineData("[-3 deg, -1.5 deg,", "[-3 deg, -1,5 deg,")]
    public void Decimal_comma_within_brackets_never_slips_through(string piece, string slip) =>
        Assert.NotEmpty(WorkedStudyText.Read(WorkedStudyText.With(piece, slip)).Diagnostics);
}
