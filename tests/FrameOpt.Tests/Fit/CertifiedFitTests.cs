using FrameOpt.Fit;

namespace FrameOpt.Tests.Fit;

/// <summary>Nonlinear fits with certified answers, each from both published starting points. Source: NIST Statistical Reference
/// Datasets, nonlinear regression (References/README.md).</summary>
public sealed class CertifiedFitTests
{
    private const string Digits = "numerical slopes leave six of the eleven certified digits";

    [Theory]
    [InlineData(500, 0.0001)]
    [InlineData(250, 0.0005)]
    public void Misra1a(double b1, double b2) => Meets("nist-misra1a.csv", [b1, b2],
        (b, x) => b[0] * (1 - Math.Exp(-b[1] * x)),
        [2.3894212918E+02, 5.5015643181E-04], [2.7070075241E+00, 7.2668688436E-06], 1.2455138894E-01);

    [Theory]
    [InlineData(1000, 1000, 400, 40, 0.7, 0.3, 0.03)]
    [InlineData(1300, 1500, 500, 75, 1, 0.4, 0.05)]
    public void Thurber(double b1, double b2, double b3, double b4, double b5, double b6, double b7) => Meets("nist-thurber.csv",
        [b1, b2, b3, b4, b5, b6, b7],
        (b, x) => (b[0] + x * (b[1] + x * (b[2] + x * b[3]))) / (1 + x * (b[4] + x * (b[5] + x * b[6]))),
        [1.2881396800E+03, 1.4910792535E+03, 5.8323836877E+02, 7.5416644291E+01, 9.6629502864E-01, 3.9797285797E-01, 4.9727297349E-02],
        [4.6647963344E+00, 3.9571156086E+01, 2.8698696102E+01, 5.5675370270E+00, 3.1333340687E-02, 1.4984928198E-02, 6.5842344623E-03],
        5.6427082397E+03);

    [Theory]
    [InlineData(25, 39, 41.5, 39)]
    [InlineData(0.25, 0.39, 0.415, 0.39)]
    public void Mgh09(double b1, double b2, double b3, double b4) => Meets("nist-mgh09.csv", [b1, b2, b3, b4],
        (b, x) => b[0] * (x * x + x * b[1]) / (x * x + x * b[2] + b[3]),
        [1.9280693458E-01, 1.9128232873E-01, 1.2305650693E-01, 1.3606233068E-01],
        [1.1435312227E-02, 1.9633220911E-01, 8.0842031232E-02, 9.0025542308E-02], 3.0750560385E-04);

    [Fact]
    public void A_number_stays_within_its_bounds_and_the_fit_says_so()
    {
        var fit = LeastSquares.Of(
            [new Unknown(0.5, double.PositiveInfinity, 0, 1), new Unknown(0, double.PositiveInfinity)], null,
            b => [b[0], b[0] + b[1]], [new Belief(2, 1), new Belief(5, 1)]);
        Check.Close(1, fit.Unknowns[0].Value, absolute: 1e-12, because: "it would be 2, and 1 is the most");
        Check.Close(4, fit.Unknowns[1].Value, relative: 1e-9, because: "5 - 1: the other reading is met by what is free");
        Assert.Equal([true, false], fit.IsAtBound);
    }

    [Fact]
    public void A_sum_alone_leaves_both_its_parts_open()
    {
        var fit = LeastSquares.Of(
            [new Unknown(1, double.PositiveInfinity), new Unknown(1, double.PositiveInfinity), new Unknown(1, double.PositiveInfinity)],
            null, b => [b[0] + b[1], b[0] + b[1], b[2]], [new Belief(5, 1), new Belief(5, 1), new Belief(2, 0.5)]);
        Assert.Equal([double.PositiveInfinity, double.PositiveInfinity],
            fit.Unknowns.Take(2).Select(unknown => unknown.StandardDeviation));
        Check.Close(0.5, fit.Unknowns[2].StandardDeviation, relative: 1e-6, because: "it is read directly");
    }

    [Fact]
    public void A_reading_unlike_the_others_stands_out()
    {
        // The mean of 1, 1, 1, 1 and 9 with errors of 1: by hand the last lies 8 from the mean of the others, whose error is
        // sqrt(1 + 1/4), so 7.155 standard deviations.
        double[] read = [1, 1, 1, 1, 9];
        var fit = LeastSquares.Of([new Unknown(0, double.PositiveInfinity)], null, b => [b[0], b[0], b[0], b[0], b[0]],
            [.. read.Select(value => new Belief(value, 1))]);
        Check.Close(8 / Math.Sqrt(1.25), fit.Readings[4].Strangeness, relative: 1e-6, because: "the arithmetic above");
    }

    [Fact]
    public void A_trial_for_which_the_model_has_no_answer_is_taken_back()
    {
        var fit = LeastSquares.Of([new Unknown(4, double.PositiveInfinity)], null,
            b => [b[0] > 0 ? Math.Log(b[0]) : double.NaN], [new Belief(-2, 1)]);
        Check.Close(Math.Exp(-2), fit.Unknowns[0].Value, relative: 1e-6, because: "the first full step would go below 0");
    }

    private static void Meets(
        string file, double[] start, Func<double[], double, double> model, double[] certified, double[] deviations, double sumOfSquares)
    {
        var rows = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "References", file)).Skip(1)
            .Select(line => line.Split(',').Select(cell => double.Parse(cell, System.Globalization.CultureInfo.InvariantCulture)).ToArray())
            .ToList();
        var fit = LeastSquares.Of([.. start.Select(value => new Unknown(value, double.PositiveInfinity))], null,
            b => [.. rows.Select(row => model(b, row[0]))], [.. rows.Select(row => new Belief(row[1], 1))]);
        Check.Close(sumOfSquares, fit.ChiSquare, relative: 1e-8, because: "the sum of squares is flat at the solution");
        var scatter = Math.Sqrt(fit.ChiSquare / (rows.Count - start.Length));
        for (var i = 0; i < start.Length; i++)
        {
            Check.Close(certified[i], fit.Unknowns[i].Value, relative: 1e-6, because: Digits);
            Check.Close(deviations[i], scatter * fit.Unknowns[i].StandardDeviation, relative: 1e-5, because: Digits);
        }
    }
}
