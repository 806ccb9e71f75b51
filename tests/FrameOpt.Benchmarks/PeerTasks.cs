using System.Diagnostics;
using System.Globalization;
using FrameOpt.Search.Evolution;
using FrameOpt.Search.Fronts;
using FrameOpt.Tests.Search;

namespace FrameOpt.Benchmarks;

/// <summary>Our side of the comparison with other libraries; peers/compare.sh runs both sides.</summary>
public static class PeerTasks
{
    private const int FewestRuns = 9;
    private const double SecondsEach = 0.5;

    /// <summary>Writes into a folder what the peer needs (tasks.txt and the points), then times every task and writes ours.txt.</summary>
    public static void Run(string folder)
    {
        var tasks = All();
        File.WriteAllLines(Path.Combine(folder, "tasks.txt"), tasks.Select(task => $"{task.Kind} {task.Input}"));
        foreach (var task in tasks.Where(task => task.Points.Length > 0).DistinctBy(task => task.Input))
            WritePoints(Path.Combine(folder, task.Input), task);
        File.WriteAllLines(Path.Combine(folder, "ours.txt"), tasks.Select(task =>
            string.Create(
                CultureInfo.InvariantCulture, $"{task.Kind} {task.Input} {MedianSeconds(task.Run, out var check):E6} {check:E12}")));
    }

    private static List<PeerTask> All()
    {
        var tasks = new List<PeerTask>();
        foreach (var (count, objectives) in new[] { (200, 2), (200, 3), (200, 4), (10_000, 2), (10_000, 3), (10_000, 4) })
            tasks.Add(Sort($"uniform-{count}-{objectives}", FrontSamples.Uniform(objectives, count), objectives));
        foreach (var objectives in new[] { 3, 4, 5 })
            tasks.Add(OnSphere("volume", 1000, objectives, (points, reference) => Hypervolume.Of(points, reference)));
        foreach (var objectives in new[] { 2, 3, 4 })
            tasks.Add(OnSphere("least", 100, objectives, (points, reference) => Hypervolume.LeastContributor(points, reference)));
        foreach (var (name, population, generations) in new[] { ("zdt1", 100, 250), ("zdt3", 100, 250), ("dtlz2", 100, 250),
            ("zdt1", 1000, 100) })
            tasks.Add(Searched(name, population, generations));
        return tasks;
    }

    private static PeerTask Sort(string name, double[] points, int objectives)
    {
        var sort = new NonDominatedSort();
        var ranks = new int[points.Length / objectives];
        return new PeerTask("sort", name, points, objectives, () => sort.Rank(points, objectives, ranks));
    }

    /// <summary>Every run has the next seed; the check is the mean hypervolume so far, of the front of everything evaluated.</summary>
    private static PeerTask Searched(string name, int population, int generations)
    {
        var problem = name switch { "zdt1" => KnownProblems.Zdt1(), "zdt3" => KnownProblems.Zdt3(), _ => KnownProblems.Dtlz2(3, 12) };
        var volumes = new List<double>();
        return new PeerTask("nsga2", $"{name}-{population}-{generations}", [], problem.Objectives.Count, () =>
        {
            var search = new Nsga2Search(new EvolutionSettings(population, (ulong)volumes.Count + 1));
            volumes.Add(Convergence.Volume(Convergence.Front(search, problem, (long)population * generations)));
            return volumes.Average();
        });
    }

    private static PeerTask OnSphere(string kind, int count, int objectives, Func<double[], double[], double> measure)
    {
        var points = FrontSamples.Sphere(objectives, count);
        var reference = FrontSamples.Reference(objectives);
        return new PeerTask(kind, $"sphere-{count}-{objectives}", points, objectives, () => measure(points, reference));
    }

    /// <summary>Number of points and of objectives as 64-bit whole numbers, then the values, all little-endian.</summary>
    private static void WritePoints(string path, PeerTask task)
    {
        using var writer = new BinaryWriter(File.Create(path));
        writer.Write((long)(task.Points.Length / task.Objectives));
        writer.Write((long)task.Objectives);
        foreach (var value in task.Points)
            writer.Write(value);
    }

    /// <summary>The median of runs in half a second, after half a second in which the run-time compiles what is hot.</summary>
    private static double MedianSeconds(Func<double> run, out double check)
    {
        check = run();
        RunFor(SecondsEach, run);
        var times = RunFor(SecondsEach, run);
        times.Sort();
        return times[times.Count / 2];
    }

    private static List<double> RunFor(double seconds, Func<double> run)
    {
        var times = new List<double>();
        for (var total = 0.0; times.Count < FewestRuns || total < seconds; total += times[^1])
        {
            var start = Stopwatch.GetTimestamp();
            run();
            times.Add(Stopwatch.GetElapsedTime(start).TotalSeconds);
        }
        return times;
    }
}
