using FrameOpt.Search;
using static System.Math;

namespace FrameOpt.Tests.Search;

/// <summary>Problems whose fronts are known.</summary>
/// <remarks>
/// Sources (from memory): Zitzler, Deb and Thiele 2000, Comparison of multiobjective evolutionary algorithms: empirical results, Evol.
/// Comput. 8:173-195 (ZDT); Deb, Thiele, Laumanns and
/// Zitzler 2002, Scalable multi-objective optimization test problems, CEC 2002 (DTLZ); Binh and Korn 1997 (BNH); Srinivas and Deb 1994
/// (SRN); Tanaka et al. 1995 (TNK); Kursawe 1991.
/// </remarks>
internal static class KnownProblems
{
    public static Problem Zdt1(int factors = 30) => Zdt(factors, (share, _) => 1 - Sqrt(share));

    public static Problem Zdt2() => Zdt(30, (share, _) => 1 - share * share);

    public static Problem Zdt3() => Zdt(30, (share, f1) => 1 - Sqrt(share) - share * Sin(10 * PI * f1));

    public static Problem Zdt4(int factors = 10) => TestProblem.Of(
        [new Factor.Continuous("x1", 0, 1), .. TestProblem.Continuous(factors - 1, -5, 5)], 2, [], (x, f, _) =>
        {
            var g = 1 + 10.0 * (x.Length - 1);
            foreach (var value in x[1..])
                g += value * value - 10 * Cos(4 * PI * value);
            f[0] = x[0];
            f[1] = g * (1 - Sqrt(x[0] / g));
        });

    public static Problem Zdt6(int factors = 10) => TestProblem.Of(TestProblem.Continuous(factors, 0, 1), 2, [], (x, f, _) =>
    {
        var g = 1 + 9 * Pow(Sum(x[1..]) / (x.Length - 1), 0.25);
        f[0] = 1 - Exp(-4 * x[0]) * Pow(Sin(6 * PI * x[0]), 6);
        f[1] = g * (1 - f[0] / g * (f[0] / g));
    });

    public static Problem Dtlz1(int objectives, int factors) =>
        TestProblem.Of(TestProblem.Continuous(factors, 0, 1), objectives, [], (x, f, _) =>
    {
        var g = Rugged(x[(f.Length - 1)..]);
        for (var j = 0; j < f.Length; j++)
        {
            f[j] = 0.5 * (1 + g);
            for (var k = 0; k < f.Length - 1 - j; k++)
                f[j] *= x[k];
            if (j > 0)
                f[j] *= 1 - x[f.Length - 1 - j];
        }
    });

    public static Problem Dtlz2(int objectives, int factors) => Sphere(objectives, factors, rest =>
    {
        var g = 0.0;
        foreach (var value in rest)
            g += (value - 0.5) * (value - 0.5);
        return g;
    });

    public static Problem Dtlz3(int objectives, int factors) => Sphere(objectives, factors, Rugged);

    public static Problem Bnh() => TestProblem.Of(
        [new Factor.Continuous("x", 0, 5), new Factor.Continuous("y", 0, 3)],
        2,
        [new Constraint("near (5, 0)", double.NegativeInfinity, 25), new Constraint("far from (8, -3)", 7.7, double.PositiveInfinity)],
        (x, f, g) =>
        {
            f[0] = 4 * x[0] * x[0] + 4 * x[1] * x[1];
            f[1] = (x[0] - 5) * (x[0] - 5) + (x[1] - 5) * (x[1] - 5);
            g[0] = (x[0] - 5) * (x[0] - 5) + x[1] * x[1];
            g[1] = (x[0] - 8) * (x[0] - 8) + (x[1] + 3) * (x[1] + 3);
        });

    public static Problem Srn() => TestProblem.Of(
        TestProblem.Continuous(2, -20, 20),
        2,
        [new Constraint("circle", double.NegativeInfinity, 225), new Constraint("line", double.NegativeInfinity, 0)],
        (x, f, g) =>
        {
            f[0] = 2 + (x[0] - 2) * (x[0] - 2) + (x[1] - 1) * (x[1] - 1);
            f[1] = 9 * x[0] - (x[1] - 1) * (x[1] - 1);
            g[0] = x[0] * x[0] + x[1] * x[1];
            g[1] = x[0] - 3 * x[1] + 10;
        });

    public static Problem Tnk() => TestProblem.Of(
        TestProblem.Continuous(2, 0, PI),
        2,
        [new Constraint("wavy circle", 0, double.PositiveInfinity), new Constraint("disc", double.NegativeInfinity, 0.5)],
        (x, f, g) =>
        {
            f[0] = x[0];
            f[1] = x[1];
            g[0] = x[0] * x[0] + x[1] * x[1] - 1 - 0.1 * Cos(16 * Atan2(x[0], x[1]));
            g[1] = (x[0] - 0.5) * (x[0] - 0.5) + (x[1] - 0.5) * (x[1] - 0.5);
        });

    public static Problem Kursawe() => TestProblem.Of(TestProblem.Continuous(3, -5, 5), 2, [], (x, f, _) =>
    {
        f[0] = -10 * Exp(-0.2 * Sqrt(x[0] * x[0] + x[1] * x[1])) - 10 * Exp(-0.2 * Sqrt(x[1] * x[1] + x[2] * x[2]));
        f[1] = 0;
        foreach (var value in x)
            f[1] += Pow(Abs(value), 0.8) + 5 * Sin(value * value * value);
    });

    private static Problem Zdt(int factors, Func<double, double, double> shape) =>
        TestProblem.Of(TestProblem.Continuous(factors, 0, 1), 2, [], (x, f, _) =>
    {
        var g = 1 + 9 * Sum(x[1..]) / (x.Length - 1);
        f[0] = x[0];
        f[1] = g * shape(x[0] / g, x[0]);
    });

    private static Problem Sphere(int objectives, int factors, Func<double[], double> depth) =>
        TestProblem.Of(TestProblem.Continuous(factors, 0, 1), objectives, [], (x, f, _) =>
    {
        var radius = 1 + depth(x[(f.Length - 1)..].ToArray());
        for (var j = 0; j < f.Length; j++)
        {
            f[j] = radius;
            for (var k = 0; k < f.Length - 1 - j; k++)
                f[j] *= Cos(x[k] * PI / 2);
            if (j > 0)
                f[j] *= Sin(x[f.Length - 1 - j] * PI / 2);
        }
    });

    private static double Rugged(double[] rest) => Rugged(rest.AsSpan());

    private static double Rugged(ReadOnlySpan<double> rest)
    {
        double sum = rest.Length;
        foreach (var value in rest)
            sum += (value - 0.5) * (value - 0.5) - Cos(20 * PI * (value - 0.5));
        return 100 * sum;
    }

    private static double Sum(ReadOnlySpan<double> values)
    {
        var sum = 0.0;
        foreach (var value in values)
            sum += value;
        return sum;
    }
}
