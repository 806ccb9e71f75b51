using FrameOpt.Search;
using FrameOpt.Tests.Analysis;

namespace FrameOpt.Tests.Search;

/// <summary>Problems of every shape a search must take.</summary>
internal static class ContractProblems
{
    private static readonly Factor[] mixedFactors =
    [
        new Factor.Continuous("length", -0.5, 2), new Factor.Discrete("holes", [1, 2, 3, 5, 8, 13, 21]),
            new Factor.Discrete("tube", [10, 20, 30]), new Factor.Discrete("fixed", [4]),
    ];

    private static readonly Factor[] smallFactors =
    [
        new Factor.Discrete("a", [1, 2, 4, 8]), new Factor.Discrete("b", [5, 6, 7]), new Factor.Discrete("c", [0, 0.1, 0.2, 0.3, 0.4]),
    ];

    private static readonly Dictionary<string, Problem> problems = new()
    {
        ["continuous"] = KnownProblems.Zdt1(5),
        ["four objectives"] = KnownProblems.Dtlz2(4, 6),
        ["mixed"] = TestProblem.Of(mixedFactors, 3, [new Constraint("sum", double.NegativeInfinity, 30)], Spread, x =>
            x[0] > 1.5 ? (ushort)3 : (ushort)0),
        ["small grid"] = TestProblem.Of(smallFactors, 2, [new Constraint("sum", 8, 14)], Spread),
        ["one continuous factor"] = TestProblem.Of(TestProblem.Continuous(1, 0, 1), 2, [], Spread),
        ["one stepped factor"] = TestProblem.Of([new Factor.Discrete("a", [1, 2, 3, 4, 5, 6, 7, 8, 9])], 2, [], Spread),
        ["two designs"] = TestProblem.Of([new Factor.Discrete("a", [1, 2])], 2, [], Spread),
        ["one design"] = TestProblem.Of([new Factor.Discrete("a", [1])], 2, [], Spread),
        ["all outside"] = TestProblem.Of(TestProblem.Continuous(3, 0, 1), 2, [new Constraint("sum", 4, 5)], Spread),
        ["limits that are not numbers"] = TestProblem.Of(TestProblem.Continuous(3, 0, 1), 2, [new Constraint("sum", 4, 5)], (x, f, g) =>
        {
            Spread(x, f, g);
            g[0] = double.NaN;
        }),
        ["all failed"] = TestProblem.Of(TestProblem.Continuous(3, 0, 1), 2, [], (_, f, _) => f.Fill(double.NaN), _ => 9),
        ["infinite objectives"] = TestProblem.Of(TestProblem.Continuous(3, 0, 1), 3, [], (x, f, _) =>
            (f[0], f[1], f[2]) = (x[0] > 0.5 ? double.PositiveInfinity : x[0], x[1] > 0.5 ? double.NegativeInfinity : x[1], x[2])),
        ["equal objectives"] = TestProblem.Of(TestProblem.Continuous(3, 0, 1), 2, [], (_, f, _) => f.Fill(1)),
    };

    public static IEnumerable<string> Names => problems.Keys;

    public static Problem Named(string name) => problems[name];

    /// <summary>How many designs a problem has; null for infinitely many.</summary>
    public static int? Count(Problem problem) => problem.Factors.All(factor => factor.Values is not null)
        ? problem.Factors.Aggregate(1, (count, factor) => count * factor.Values!.Count)
        : null;

    /// <summary>Designs anywhere in the space, some equal in a small one.</summary>
    public static IEnumerable<double[]> Scattered(Problem problem, int count)
    {
        var random = new Random(5);
        return Enumerable.Range(0, count).Select(_ => problem.Factors.Select(factor => factor is Factor.Continuous range
            ? range.From + random.NextDouble() * (range.To - range.From)
            : factor.Values![random.Next(factor.Values.Count)]).ToArray());
    }

    /// <summary>Objectives at odds with each other; the limit is on the sum of the values.</summary>
    private static void Spread(ReadOnlySpan<double> x, Span<double> f, Span<double> g)
    {
        var sum = 0.0;
        foreach (var value in x)
            sum += value;
        f[0] = sum;
        f[1] = -sum + x[0] * x[^1];
        if (f.Length > 2)
            f[2] = (x[0] - 1) * (x[0] - 1);
        if (g.Length > 0)
            g[0] = sum;
    }
}
