using FrameOpt.Analysis;
using FrameOpt.Numerics;

namespace FrameOpt.Tests.Analysis;

public class GaussianProcessTests(Xunit.Abstractions.ITestOutputHelper output)
{
    // Rasmussen and Williams 2006, 4.17: k(r) = (1 + sqrt(5) r + 5 r²/3) exp(-sqrt(5) r), worked for r = 1/2, 1, 3/2 and 2 with plain
    // arithmetic; the mean of three runs by symmetry.
    [Fact]
    public void Three_runs_are_those_worked_by_hand()
    {
        static double K(double r) => (1 + Math.Sqrt(5) * r + 5 * r * r / 3) * Math.Exp(-Math.Sqrt(5) * r);
        var process = GaussianProcess.With([[-1], [0], [1]], [2, 5, 2], [1], 0);
        // K^-1 y for y = (a, b, a): unknowns (p, q, p) with p (1 + k2) + q k1 = a, 2 p k1 + q = b.
        (double P, double Q) Solve(double a, double b)
        {
            var p = (a - b * K(1)) / (1 + K(2) - 2 * K(1) * K(1));
            return (p, b - 2 * p * K(1));
        }

        var (ones, runs) = (Solve(1, 1), Solve(2, 5));
        var mean = (2 * runs.P + runs.Q) / (2 * ones.P + ones.Q);
        Check.Close(mean, process.Mean, relative: 1e-12, because: "rounding");
        var off = Solve(2 - mean, 5 - mean);
        Check.Close(mean + off.P * (K(0.5) + K(1.5)) + off.Q * K(0.5), process.Predict([0.5]).Mean, relative: 1e-12, because: "rounding");
        Check.Close((2 * (2 - mean) * off.P + (5 - mean) * off.Q) / 3, process.Variance, relative: 1e-12, because: "rounding");
        Check.Close(5, process.Predict([0]).Mean, relative: 1e-10, because: "without error it goes through the runs");
        Check.Close(0, process.Predict([0]).Deviation, absolute: 1e-6, because: "a root of rounding");
    }

    [Fact]
    public void Runs_left_out_by_formula_are_those_left_out_by_fits_without_them()
    {
        double[][] x = [[-1, 0], [-0.4, 1], [0.1, -1], [0.5, 0.2], [1, 0.9], [0.8, -0.7]];
        double[] y = [1.2, 0.3, 2.2, 1.1, -0.4, 0.9];
        double[] lengths = [0.8, 1.5];
        var whole = GaussianProcess.With(x, y, lengths, 0.1);
        var errors = y.Select((value, left) => value - GaussianProcess.With([.. x.Where((_, i) => i != left)],
            [.. y.Where((_, i) => i != left)], lengths, 0.1).Predict(x[left]).Mean);
        // The formula keeps the mean of all runs, the fits find their own: both are close for six runs.
        Check.Close(Math.Sqrt(errors.Average(error => error * error)), whole.LeaveOneOutError, relative: 0.25,
            because: "the mean is estimated without the run");
    }

    // A sine is no polynomial: the process follows it, and nine of ten of its 90 % intervals hold what they should. FRAMEOPT_REPEATS=500
    // takes longer and narrows the bounds to that of 2,000 intervals, four to a fit.
    [Fact]
    public void Intervals_hold_what_they_should()
    {
        var random = new Pcg32(7);
        double Noise() => Enumerable.Range(0, 12).Sum(_ => random.NextDouble()) - 6;
        var (inside, all) = (0, 0);
        var repeats = int.TryParse(Environment.GetEnvironmentVariable("FRAMEOPT_REPEATS"), out var asked) ? asked : 100;
        for (var repeat = 0; repeat < repeats; repeat++)
        {
            var phase = 6 * random.NextDouble();
            double[][] x = [.. Enumerable.Range(0, 14).Select(_ => new[] { (2 * random.NextDouble()) - 1 })];
            double[] y = [.. x.Select(at => Math.Sin((3 * at[0]) + phase) + (0.05 * Noise()))];
            var process = GaussianProcess.Fit(x, y)!;
            foreach (var at in new[] { -0.6, -0.1, 0.3, 0.7 })
            {
                var (mean, deviation) = process.Predict([at]);
                inside += Math.Abs(Math.Sin((3 * at) + phase) - mean) <= 1.645 * deviation ? 1 : 0;
                all++;
            }
        }

        output.WriteLine($"{inside} of {all}");
        Assert.InRange(inside / (double)all, repeats < 500 ? 0.8 : 0.85, repeats < 500 ? 0.98 : 0.95);
    }
}
