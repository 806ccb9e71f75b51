using System.Globalization;
using FrameOpt.Running;
using FrameOpt.Search;
using FrameOpt.Search.Evolution;
using FrameOpt.Search.Fronts;
using FrameOpt.Studies;
using FrameOpt.StudyFile;
using FrameOpt.Tests.Search;

namespace FrameOpt.Benchmarks;

/// <summary>How the front of everything evaluated grows with the designs evaluated: problems with known fronts, and a study.</summary>
public static class Convergence
{
    private const int Seeds = 11;
    private static readonly int[] looks = [500, 1_000, 2_500, 5_000, 10_000, 25_000];

    /// <summary>Prints a row for each: the median over the seeds of the share of the largest hypervolume, after so many
    /// evaluations.</summary>
    /// <param name="studyPath">A study with an evolutionary search; its share is of the front of a grid inside its factors.</param>
    public static void Print(string studyPath)
    {
        Console.WriteLine($"{"",-42}{string.Concat(looks.Select(look => $"{look,10:N0}"))}");
        Row("ZDT1, 30 factors, NSGA-II", KnownProblems.Zdt1(), seed => new Nsga2Search(new EvolutionSettings(100, seed)), front =>
            Volume(front) / 0.876666666667);
        Row("ZDT3, 30 factors, NSGA-II", KnownProblems.Zdt3(), seed => new Nsga2Search(new EvolutionSettings(100, seed)), front =>
            Volume(front) / 1.3318);
        var octant = Math.Pow(1.1, 3) - Math.PI / 6;
        Row("DTLZ2, 12 factors, 3 objectives, NSGA-III", KnownProblems.Dtlz2(3, 12), seed =>
            new Nsga3Search(new EvolutionSettings(100, seed)), front => Volume(front) / octant);
        var study = StudyReader.Read(studyPath).Study!;
        var mission = StudyProblem.Model(study);
        var grid = new SearchRun(SubGrid.Of(study, RunLimits.MaxPartialGrid), mission, Environment.ProcessorCount);
        foreach (var _ in grid.Batches())
        {
        }

        var whole = grid.Front();
        var search = (SearchSetting.Evolutionary)study.Search;
        Row($"{study.Title}, {StudySearchName(search)}", new StudyProblem(study, mission).Problem, seed =>
            StudySearch.Of(study, search with { Seed = seed }, new StudyProblem(study, mission).Problem), front =>
            HypervolumeRatio.Of(front, whole, 1 << 12).Ratio);
    }

    private static string StudySearchName(SearchSetting.Evolutionary search) =>
        search.Method == SearchMethod.NsgaII ? "NSGA-II" : "NSGA-III";

    private static void Row(string name, Problem problem, Func<ulong, ISearch> search, Func<FrontPoints, double> share)
    {
        var shares = looks.Select(_ => new List<double>()).ToArray();
        for (var seed = 1UL; seed <= Seeds; seed++)
        {
            var front = new FrontBuilder(problem.Objectives.Count, threads: 1);
            var look = 0;
            foreach (var batch in search(seed).Run(problem, threads: 1))
            {
                front.Add(batch.Objectives, batch.Feasible, batch.Designs.Count, batch.Designs.FirstNumber);
                if (batch.Designs.FirstNumber + batch.Designs.Count >= looks[look])
                    shares[look++].Add(share(front.Result()));
                if (look == looks.Length)
                    break;
            }
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{name,-42}{string.Concat(shares.Select(list => $"{100 * list.Order().ElementAt(Seeds / 2),8:0.00} %"))}"));
    }

    /// <summary>The front of everything a search evaluates up to so many designs, on one thread.</summary>
    public static FrontPoints Front(ISearch search, Problem problem, long evaluations)
    {
        var front = new FrontBuilder(problem.Objectives.Count, threads: 1);
        foreach (var batch in search.Run(problem, threads: 1))
        {
            front.Add(batch.Objectives, batch.Feasible, batch.Designs.Count, batch.Designs.FirstNumber);
            if (batch.Designs.FirstNumber + batch.Designs.Count >= evaluations)
                break;
        }

        return front.Result();
    }

    /// <summary>The hypervolume to 1.1 in every objective.</summary>
    public static double Volume(FrontPoints front)
    {
        var objectives = front.Columns.Length;
        var values = new double[front.Ids.Length * objectives];
        for (var i = 0; i < values.Length; i++)
            values[i] = front.Columns[i % objectives][i / objectives];
        return Hypervolume.Of(values, [.. Enumerable.Repeat(1.1, objectives)]);
    }
}
