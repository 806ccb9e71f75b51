using System.Diagnostics;
using FrameOpt.ProductLine;
using FrameOpt.ProductLine.PMedian;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>Computes the product line of a study: step through <see cref="Steps"/>, then take the <see cref="Result"/>.</summary>
public sealed class ProductLineRun
{
    /// <summary>So many segments, and geometries beside those of the line, have a table of costs.</summary>
    private const int MostLiveRows = 1_000, MostOthers = 12;

    /// <summary>Each further question takes no longer than this.</summary>
    private static readonly TimeSpan longest = TimeSpan.FromSeconds(5);

    private readonly Study study;
    private readonly ProductLineSetting setting;
    private readonly int threads;
    private readonly CancellationToken cancel;
    private readonly IReadOnlyList<CustomerSegment> rows;
    private readonly SortedDictionary<int, ProductLineChoice> choices = [];
    private readonly Stopwatch[] clocks = [new(), new(), new(), new()];
    private ProductLineCandidates? candidates;
    private string candidatesWords = "";
    private ProductLineCostTable? table;
    private LineSureness? sureness;

    /// <summary>Initialises a run for a study.</summary>
    /// <param name="study">A study with a product line.</param>
    /// <param name="threads">Worker threads, at least 1; the answer does not depend on it.</param>
    /// <param name="cancel">Ends the solver with the best solution so far.</param>
    public ProductLineRun(Study study, int threads, CancellationToken cancel = default)
    {
        setting = study.Line ?? throw new ArgumentException("the study asks for no line");
        (this.study, this.threads, this.cancel) = (study, threads, cancel);
        rows = CustomerSegment.Of(setting.Customers);
    }

    /// <summary>True to leave out how sure the line is and what happens when a number is otherwise.</summary>
    public bool GeometriesOnly { get; init; }

    /// <summary>Time taken by the steps so far.</summary>
    public ProductLineStepTimings Timings =>
        new(clocks[0].Elapsed.TotalSeconds, clocks[1].Elapsed.TotalSeconds, clocks[2].Elapsed.TotalSeconds, clocks[3].Elapsed.TotalSeconds);

    /// <summary>The steps. To stop, cancel; the current step then ends with what it has.</summary>
    public IEnumerable<RunProgress> Steps()
    {
        foreach (var step in Timed(0, CandidateSteps()))
            yield return step;
        if (candidates is not { Count: > 0 } || cancel.IsCancellationRequested)
            yield break;
        table = new ProductLineCostTable(setting, rows, candidates, threads);
        foreach (var done in Timed(1, table.Fill()))
        {
            yield return new RunProgress("costs of each customer", done, rows.Count, null);
            if (cancel.IsCancellationRequested)
                yield break;
        }

        var steps = new ProductLineChooser(setting, rows, candidates, table, cancel);
        var counts = Enumerable.Range(setting.LeastCount, setting.UpTo - setting.LeastCount + 1)
            .OrderBy(count => count == setting.Count ? 0 : count).ToList();
        foreach (var (place, count) in counts.Index().Where(_ => !cancel.IsCancellationRequested || choices.Count == 0))
        {
            yield return new RunProgress(count == 1 ? "the best single geometry" : $"the best {count} geometries", place, counts.Count,
                null);
            clocks[2].Start();
            choices[count] = steps.Of(count);
            clocks[2].Stop();
        }

        if (GeometriesOnly || cancel.IsCancellationRequested || table.Kept is not { } costs
            || !LineSurenessRun.Applies(setting, (long)rows.Count * candidates.Count, choices[setting.Count].Solution))
            yield break;
        yield return new RunProgress("how much hangs on it", counts.Count, counts.Count, null);
        clocks[2].Start();
        sureness = new LineSurenessRun(study, rows, candidates, costs, choices[setting.Count].Solution,
            new ProductLineSolverSettings(setting.Time is { } time && time < longest ? time : longest, cancel)).Result();
        clocks[2].Stop();
    }

    /// <summary>The answer, or null when there is none: no candidates, or stopped before a choice.</summary>
    public ProductLineResult? Result()
    {
        if (!choices.TryGetValue(setting.Count, out var choice))
            return null;
        clocks[3].Start();
        var teller = new ProductLineResultBuilder(study, rows, candidates!, choice.Solution, threads);
        var result = new ProductLineResult(
            study,
            candidatesWords,
            candidates!.Geometries,
            choice.Solution,
            choice.Aggregated,
            Curve(),
            teller.Geometries,
            teller.Assignments(table!),
            teller.Chart,
            choice.UnservedMessages,
            choice.Infeasible,
            choices.ContainsKey(setting.UpTo) && choices.Count == setting.UpTo - setting.LeastCount + 1
                && choice.Solution.Stop != ProductLineStopReason.Cancelled)
        {
            Decided = Decided(choice.Solution),
            Costs = Costs(teller.Geometries),
            Sureness = cancel.IsCancellationRequested ? null : sureness,
            Stress = GeometriesOnly ? [] : new LineStressRun(setting, rows, candidates, choice.Solution).Of(study.Noise, threads),
        };
        clocks[3].Stop();
        return result;
    }

    /// <summary>Why there is nothing to choose from, in words; null when there is.</summary>
    public string? NoCandidatesReason => candidates is { Count: 0 }
        ? "No design meets every limit on the study's own machine, so there is no front to choose from. "
            + "Write `candidates: grid`, or loosen the limits."
        : null;

    private IEnumerable<RunProgress> CandidateSteps()
    {
        var onHoles = OffsetPitch.On(study, setting.HolePitchMetres)!;
        if (setting.FromGrid)
        {
            candidates = ProductLineCandidates.OfGrid(onHoles);
            candidatesWords = "every design of the grid";
            yield break;
        }

        var search = new SearchRun(onHoles, StudyProblem.Model(onHoles), threads);
        foreach (var _ in search.Batches())
        {
            yield return new RunProgress("designs, for the front to choose from", search.Counts.Evaluated, search.Planned, null);
            if (cancel.IsCancellationRequested)
                yield break;
        }

        var front = search.RankedFront();
        candidates = ProductLineCandidates.Of(onHoles, front.Take(RunLimits.MaxCandidates).Select(design => design.Geometry));
        candidatesWords = front.Count > RunLimits.MaxCandidates
            ? FormattableString.Invariant($"the best {RunLimits.MaxCandidates} by rank of a front of {front.Count}")
            : "the front of the study's own customer";
    }

    /// <summary>The costs with the geometries of the line, and with others that were best for another number.</summary>
    private LineCosts? Costs(IReadOnlyList<ProductLineGeometry> line)
    {
        if (rows.Count > MostLiveRows)
            return null;
        int[] own = [.. line.Select(geometry => geometry.Candidate)];
        int[] columns = [.. own, .. choices.Values.SelectMany(choice => choice.Solution.Chosen).Except(own).Order().Take(MostOthers)];
        var all = new double[candidates!.Count];
        return new LineCosts([.. columns.Select(candidate => candidates.Designs[candidate])], [.. Enumerable.Range(0, rows.Count)
            .Select(row =>
        {
            table!.Row(row, all);
            return Array.ConvertAll(columns, candidate => all[candidate]);
        })]);
    }

    /// <summary>The geometries of the decision alone, for those whom the line is to serve.</summary>
    private DecidedLine? Decided(ProductLineSolution line)
    {
        if (study.Decision is not { Geometries: { Count: > 0 } names })
            return null;
        int[] decided = [.. Enumerable.Range(0, setting.Fixed.Count).Where(g => names.Contains(setting.Fixed[g].Name))];
        var (costs, shares, own) = (new double[candidates!.Count], new List<double>(), new List<double>());
        foreach (var row in Enumerable.Range(0, rows.Count).Except(line.Unservable).Except(line.SetAside))
        {
            table!.Row(row, costs);
            shares.Add(rows[row].Share);
            own.Add(decided.Min(g => costs[g]));
        }

        return own.Count == 0 ? null : new DecidedLine(ObjectiveValue.Of(setting.Objective, shares, own),
            own.Zip(shares, (cost, share) => double.IsInfinity(cost) ? share : 0).Sum());
    }

    private IReadOnlyList<ProductLineCurvePoint> Curve() =>
    [
        .. choices.Select(pair => new ProductLineCurvePoint(pair.Key, pair.Value.Solution,
            choices.TryGetValue(pair.Key - 1, out var before) && before.Solution.Feasible
            ? before.Solution.Value - pair.Value.Solution.Value
            : null)),
    ];

    private IEnumerable<T> Timed<T>(int part, IEnumerable<T> steps)
    {
        clocks[part].Start();
        foreach (var step in steps)
        {
            clocks[part].Stop();
            yield return step;
            clocks[part].Start();
        }

        clocks[part].Stop();
    }
}
