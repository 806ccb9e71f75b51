using FrameOpt.Analysis;
using FrameOpt.Plans;
using FrameOpt.Tests.Plans;
using Xunit.Abstractions;

namespace FrameOpt.Tests.Analysis;

/// <summary>Certified values of the NIST Statistical Reference Datasets (itl.nist.gov/div898/strd), to so many digits (minus the log of the
/// relative error).</summary>
public class CertifiedRegressionTests(ITestOutputHelper output)
{
    [Fact]
    public void Norris_straight_line_keeps_twelve_digits()
    {
        var fit = Fit("nist-norris.csv", "1", "x1");
        Digits(11.5, -0.262323073774029, fit.Coefficients[0].Value, "B0");
        Digits(13, 1.00211681802045, fit.Coefficients[1].Value, "B1");
        Digits(12.5, 0.232818234301152, fit.Coefficients[0].StandardError!.Value, "sd B0");
        Digits(12.5, 0.429796848199937E-03, fit.Coefficients[1].StandardError!.Value, "sd B1");
        Digits(12.5, 0.884796396144373, fit.Anova.ResidualDeviation!.Value, "residual sd");
        Digits(14, 0.999993745883712, fit.Anova.RSquared, "R2");
        Digits(13, 4255954.13232369, fit.Anova.ModelSumOfSquares, "model sum of squares");
        Digits(12.5, 26.6173985294224, fit.Anova.ResidualSumOfSquares, "residual sum of squares");
        Digits(12.5, 5436385.54079785, fit.Anova.F!.Value, "F");
        Assert.Equal(34, fit.Anova.ResidualDegreesOfFreedom);
    }

    [Fact]
    public void Pontius_badly_scaled_parabola_keeps_eleven_digits()
    {
        var fit = Fit("nist-pontius.csv", "1", "x1", "x1^2");
        Digits(11, 0.673565789473684E-03, fit.Coefficients[0].Value, "B0");
        Digits(12.5, 0.732059160401003E-06, fit.Coefficients[1].Value, "B1");
        Digits(11.5, -0.316081871345029E-14, fit.Coefficients[2].Value, "B2");
        Digits(11.5, 0.107938612033077E-03, fit.Coefficients[0].StandardError!.Value, "sd B0");
        Digits(11.5, 0.157817399981659E-09, fit.Coefficients[1].StandardError!.Value, "sd B1");
        Digits(11.5, 0.486652849992036E-16, fit.Coefficients[2].StandardError!.Value, "sd B2");
        Digits(11.5, 0.205177424076185E-03, fit.Anova.ResidualDeviation!.Value, "residual sd");
        Digits(14, 0.999999900178537, fit.Anova.RSquared, "R2");
        Digits(11, 0.155761768796992E-05, fit.Anova.ResidualSumOfSquares, "residual sum of squares");
    }

    [Fact]
    public void Wampler1_exact_fifth_degree_keeps_eight_digits_and_its_F_is_infinite()
    {
        var fit = Fit("nist-wampler1.csv", "1", "x1", "x1^2", "x1^3", "x1^4", "x1^5");
        for (var j = 0; j < 6; j++)
        {
            Digits(8, 1, fit.Coefficients[j].Value, $"B{j}");
            Assert.Equal(0, fit.Coefficients[j].StandardError);
        }

        Assert.Equal(0, fit.Anova.ResidualDeviation);
        Assert.Equal(1, fit.Anova.RSquared);
        Assert.Equal(double.PositiveInfinity, fit.Anova.F);
        Assert.Equal(0, fit.Anova.P);
        Assert.All(fit.Runs, run => Assert.Null(run.InternallyStudentised));
        Assert.Equal(0, fit.Press);
    }

    [Fact]
    public void SiRstv_one_way_analysis_keeps_nine_digits()
    {
        var anova = OneWay("nist-sirstv.csv");
        Digits(9, 5.11462616000000E-02, anova.ModelSumOfSquares, "between");
        Digits(9, 2.16636560000000E-01, anova.ResidualSumOfSquares, "within");
        Digits(9, 1.18046237440255, anova.F!.Value, "F");
        Digits(9, 1.90999039051129E-01, anova.RSquared, "R2");
        Digits(9, 1.04076068334656E-01, anova.ResidualDeviation!.Value, "residual sd");
        Assert.Equal((4, 20), (anova.ModelDegreesOfFreedom, anova.ResidualDegreesOfFreedom));
        Check.Close(0.34945, anova.P!.Value, absolute: 5e-6, because: "five printed digits, recomputed outside this project");
    }

    [Fact]
    public void SmLs01_one_way_analysis_keeps_thirteen_digits()
    {
        var anova = OneWay("nist-smls01.csv");
        Digits(13, 1.68, anova.ModelSumOfSquares, "between");
        Digits(13, 1.80, anova.ResidualSumOfSquares, "within");
        Digits(13, 21, anova.F!.Value, "F");
        Digits(13, 4.82758620689655E-01, anova.RSquared, "R2");
        Digits(13, 0.1, anova.ResidualDeviation!.Value, "residual sd");
        Assert.Equal((8, 180), (anova.ModelDegreesOfFreedom, anova.ResidualDegreesOfFreedom));
    }

    [Fact]
    public void Analysis_of_levels_by_regression_gives_the_certified_one_way_table()
    {
        var table = ReferenceTable.Read("nist-smls01.csv");
        string[][] levels = [.. table.Column("group").Select(group => new[] { $"group {group}" })];
        var anova = FactorialAnova.Of(["group"], levels, table.Column("y"), 1, ErrorKind.Measured);
        Digits(12.5, 1.68, anova.Lines[0].AdjustedSumOfSquares, "between");
        Digits(12.5, 1.80, anova.ResidualSumOfSquares, "within");
        Digits(12.5, 21, anova.Lines[0].F!.Value, "F");
        Assert.Equal((8, 180), (anova.Lines[0].DegreesOfFreedom, anova.ResidualDegreesOfFreedom));
    }

    private static RegressionFit Fit(string file, params string[] terms)
    {
        var table = ReferenceTable.Read(file);
        return Regression.Fit(ModelTerms.Parse(1, terms), table.Columns("x"), table.Column("y"), ErrorKind.Measured);
    }

    private static AnovaTable OneWay(string file) => OneWayAnova.Of(
        "group", [.. ReferenceTable.Read(file).Rows.GroupBy(row => row[0], row => row[1]).Select(group => group.ToArray())],
        ErrorKind.Measured);

    private void Digits(double atLeast, double certified, double actual, string what)
    {
        var digits = actual == certified ? 15 : Math.Min(15, -Math.Log10(Math.Abs(actual - certified) / Math.Abs(certified)));
        output.WriteLine($"{what}: {digits:F1} digits");
        Check.Close(certified, actual, relative: Math.Pow(10, -atLeast), because: $"{what} must keep {atLeast} of the 15 certified digits");
    }
}
