using System.Diagnostics;
using System.Globalization;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Running;
using FrameOpt.Search;
using FrameOpt.Search.Fronts;
using FrameOpt.Tests.Running;
using FrameOpt.Uncertainty;

namespace FrameOpt.Benchmarks;

/// <summary>Fails when something has become twice as slow. Every task is timed in turn with a plain loop, on one thread, and only the ratio
/// of their fastest runs counts: a slower machine slows both, and a busy one lets some run of each through.</summary>
public static class SpeedGuard
{
    private const int Rounds = 15;
    private const double WarmUpSeconds = 0.4;
    private const double MostLost = 2;

    /// <summary>Square roots of a plain loop, a few milliseconds.</summary>
    private const int Loop = 1_000_000;

    /// <summary>Prints the ratios; 0 when none is lost, 1 otherwise.</summary>
    public static int Run()
    {
        var lost = false;
        foreach (var (name, usual, task) in Tasks())
        {
            var ratio = Ratio(task);
            if (ratio > MostLost * usual)
                ratio = Math.Min(ratio, Ratio(task));
            var isLost = ratio > MostLost * usual;
            lost |= isLost;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{name,-45} {ratio,8:F2} times the plain loop, usually {usual:F2}{(isLost ? "  LOST A FACTOR OF TWO" : "")}"));
        }

        return lost ? 1 : 0;
    }

    /// <summary>Each with its usual ratio: of this program when it was last measured (AMD EPYC).</summary>
    private static IEnumerable<(string Name, double Usual, Action Task)> Tasks()
    {
        var study = WorkedStudy.Million();
        var model = StudyProblem.Model(study);
        var problem = new StudyProblem(study, model).Problem;
        var design = study.Baseline ?? FrameGeometry.On(study.Machine, 0.42, 0.01, 0.2, 0);
        var grid = FrontSamples.Grid(3, spread: 0.6);
        var all = new byte[grid[0].Length];
        Array.Fill(all, (byte)1);
        var points = FrontSamples.Uniform(3, 20_000);
        var (sort, ranks) = (new NonDominatedSort(), new int[20_000]);
        var sphere = Front(FrontSamples.Shell(4, 20_000));
        var bands = new BalancedBands(model, 0);
        yield return ("model over a grid of a million designs", 2.0, () =>
        {
            foreach (var _ in new ExhaustiveSearch().Run(problem, threads: 1))
            {
            }
        }
        );
        yield return ("front of a million designs, 3 objectives", 3.5, () =>
        {
            var builder = new FrontBuilder(3, threads: 1);
            builder.Add(grid, all, all.Length, 0);
            builder.Result();
        }
        );
        yield return ("ranks of 20,000 points, 3 objectives", 0.65, () => sort.Rank(points, 3, ranks));
        yield return ("share and regret of a front, 4 objectives", 13.3, () =>
        {
            HypervolumeRatio.Of(sphere, sphere, 4096);
            FrontRegret.Of(sphere, sphere);
        }
        );
        yield return ("5,000 designs with every response", 5.4, () =>
        {
            for (var i = 0; i < 5000; i++)
                model.Evaluate(design);
        }
        );
        yield return ("shares of the spread of a design", 16.5, () => SpreadSharesRun.Of(study.Noise, model, design, threads: 1));
        yield return ("balanced bands of 100 designs", 0.37, () =>
        {
            for (var i = 0; i < 100; i++)
                bands.Find(design, 3);
        }
        );
    }

    private static FrontPoints Front(double[][] columns)
    {
        var builder = new FrontBuilder(columns.Length, threads: 1);
        var all = new byte[columns[0].Length];
        Array.Fill(all, (byte)1);
        builder.Add(columns, all, all.Length, 0);
        return builder.Result();
    }

    private static double Ratio(Action task)
    {
        for (var warm = 0.0; warm < WarmUpSeconds;)
            warm += Seconds(PlainLoop) + Seconds(task);
        var (loop, own) = (double.PositiveInfinity, double.PositiveInfinity);
        for (var round = 0; round < Rounds; round++)
            (loop, own) = (Math.Min(loop, Seconds(PlainLoop)), Math.Min(own, Seconds(task)));
        return own / loop;
    }

    private static void PlainLoop()
    {
        var sum = 0.0;
        for (var i = 0; i < Loop; i++)
            sum += Math.Sqrt(sum + i);
        if (double.IsNaN(sum))
            throw new InvalidOperationException();
    }

    private static double Seconds(Action run)
    {
        var clock = Stopwatch.StartNew();
        run();
        return clock.Elapsed.TotalSeconds;
    }
}
