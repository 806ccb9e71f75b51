using System.Globalization;
using FrameOpt.ProductLine;
using FrameOpt.ProductLine.PMedian;

namespace FrameOpt.Tests.ProductLine;

public class PublishedLineTests
{
    /// <summary>Source: J. E. Beasley 1990, OR-Library, pmed1: optimum 5819 (References/README.md).</summary>
    [Fact]
    public void Pmed1_is_proven_best_at_5819()
    {
        var solution = ProductLineSolver.Solve(new ProductLineProblem(Pmed1(), Ones(100), 5, new ProductLineObjective.Mean()),
            new ProductLineSolverSettings());
        Check.Close(5819, 100 * solution.Value, absolute: 1e-6, because: "a sum of whole numbers, divided by 100 shares");
        Assert.Equal(ProductLineStopReason.Proven, solution.Stop);
        Assert.Equal(solution.Value, solution.Bound);
    }

    /// <summary>The named solver, CP-SAT, given the whole problem and only a poor start.</summary>
    [Fact]
    public void Cp_sat_alone_proves_pmed1_too()
    {
        var distances = Pmed1();
        var problem = PMedianProblem.From(100, 100, 5, (i, j) => distances[i][j]);
        var incumbent = new Incumbent(problem, [0, 1, 2, 3, 4], double.PositiveInfinity, double.PositiveInfinity);
        var bound = CpSatModel.Solve(problem, [.. Enumerable.Range(0, 100)], incumbent, new SolverClock(new ProductLineSolverSettings()));
        Assert.Equal(5819, incumbent.Value);
        Check.Close(5819, bound, relative: 1e-9, because: "costs are rounded to 2^-45 of the start's value");
    }

    /// <summary>Source: the set {7, 13, 65, 91, 99} (counted from 1), one of the best, found by a separate solver outside this
    /// project.</summary>
    [Fact]
    public void The_known_best_set_of_pmed1_has_its_value()
    {
        int[] set = [6, 12, 64, 90, 98];
        Assert.Equal(5819, Pmed1().Sum(row => set.Min(j => row[j])));
    }

    /// <summary>Source: the tests of the package OperationsResearchModels (test/testpmedian.jl), seen; brute force agrees.</summary>
    [Fact]
    public void Four_nodes_and_two_places_cost_5()
    {
        double[][] distances = [[0, 6, 3, 2], [6, 0, 4, 7], [3, 4, 0, 10], [2, 7, 10, 0]];
        var solution = ProductLineSolver.Solve(new ProductLineProblem(distances, Ones(4), 2, new ProductLineObjective.Mean()),
            new ProductLineSolverSettings());
        Assert.Equal(5, 4 * solution.Value);
        Assert.Equal([0, 1], solution.Chosen);
    }

    /// <summary>Source: as the one before.</summary>
    [Fact]
    public void Five_nodes_and_three_places_cost_3()
    {
        double[][] distances = [[0, 8, 7, 9, 3], [8, 0, 2, 6, 1], [7, 2, 0, 4, 5], [9, 6, 4, 0, 10], [3, 1, 5, 10, 0]];
        var solution = ProductLineSolver.Solve(new ProductLineProblem(distances, Ones(5), 3, new ProductLineObjective.Mean()),
            new ProductLineSolverSettings());
        Check.Close(3, 5 * solution.Value, absolute: 1e-9, because: "a mean of whole numbers");
        Assert.Equal(ProductLineStopReason.Proven, solution.Stop);
    }

    /// <summary>By hand: customers at 0, 1, 2, 10, 11, 12 on a line, candidates at the same places. Two centres in the middle of each three
    /// leave 1;
    /// one centre at 2 or 10 leaves 10.</summary>
    [Fact]
    public void Centres_of_two_clumps_stand_in_their_middles()
    {
        double[] at = [0, 1, 2, 10, 11, 12];
        double[][] distances = [.. at.Select(a => at.Select(b => Math.Abs(a - b)).ToArray())];
        var two = ProductLineSolver.Solve(new ProductLineProblem(distances, Ones(6), 2, new ProductLineObjective.Worst()),
            new ProductLineSolverSettings());
        var one = ProductLineSolver.Solve(new ProductLineProblem(distances, Ones(6), 1, new ProductLineObjective.Worst()),
            new ProductLineSolverSettings());
        Assert.Equal((1, 1, 10), (two.Value, two.Bound, one.Value));
        Assert.Equal([1, 4], two.Chosen);
    }

    private static double[] Ones(int count) => [.. Enumerable.Repeat(1.0, count)];

    /// <summary>All shortest paths (R. W. Floyd 1962); an edge listed twice has its last length.</summary>
    private static double[][] Pmed1()
    {
        int[][] rows = [.. File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "References", "pmed1.txt"))
            .Select(line => line.Split(' ').Select(cell => int.Parse(cell, CultureInfo.InvariantCulture)).ToArray())];
        var n = rows[0][0];
        double[][] distances = [.. Enumerable.Range(0, n).Select(i =>
            Enumerable.Range(0, n).Select(j => i == j ? 0 : double.PositiveInfinity).ToArray())];
        foreach (var edge in rows[1..])
            distances[edge[0] - 1][edge[1] - 1] = distances[edge[1] - 1][edge[0] - 1] = edge[2];
        for (var via = 0; via < n; via++)
        {
            for (var from = 0; from < n; from++)
            {
                for (var to = 0; to < n; to++)
                    distances[from][to] = Math.Min(distances[from][to], distances[from][via] + distances[via][to]);
            }
        }

        return distances;
    }
}
