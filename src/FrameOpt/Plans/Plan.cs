using FrameOpt.Numerics;

namespace FrameOpt.Plans;

/// <summary>A set of runs in coded units.</summary>
/// <param name="Kind">Which plan it is, in words.</param>
/// <param name="Factors">The names of the factors.</param>
/// <param name="Runs">The runs in standard order, numbered from 1.</param>
public sealed record Plan(string Kind, IReadOnlyList<string> Factors, IReadOnlyList<PlanRun> Runs)
{
    /// <summary>Number of blocks.</summary>
    public int Blocks => Runs.Select(run => run.Block).Distinct().Count();

    /// <summary>Number of whole plots; 0 when no factor is hard to change.</summary>
    public int WholePlots => Runs.Select(run => run.WholePlot).Where(plot => plot > 0).Distinct().Count();

    /// <summary>The runs in random order: block after block, at random within a block, or whole plot after whole plot at random and at
    /// random within each.</summary>
    /// <param name="seed">Any number; the same seed gives the same order.</param>
    public IReadOnlyList<PlanRun> InRandomOrder(ulong seed)
    {
        var random = new Pcg32(seed);
        return [.. Runs.GroupBy(run => run.Block).OrderBy(block => block.Key).SelectMany(block => WholePlots == 0
            ? random.Shuffled([.. block])
            : random.Shuffled([.. block.GroupBy(run => run.WholePlot)]).SelectMany(plot => random.Shuffled([.. plot])))];
    }

    /// <summary>The plan with its runs sorted into whole plots: within a block, those that set the factors that are hard to change alike.
    /// Runs that are in one already stay there.</summary>
    /// <param name="hard">Indices of those factors; none for no whole plots.</param>
    internal Plan InWholePlots(IReadOnlyList<int> hard)
    {
        if (hard.Count == 0)
            return this;
        var numbers = new Dictionary<string, int>();
        var made = Runs.Max(run => run.WholePlot);
        return this with
        {
            Runs = [.. Runs.Select(run =>
            {
                if (run.WholePlot > 0)
                    return run;
                var setting = string.Join('|', hard.Select(f => Math.Round(run.Coded[f], 9) + 0.0).Prepend(run.Block));
                if (!numbers.TryGetValue(setting, out var number))
                    numbers[setting] = number = made + numbers.Count + 1;
                return run with { WholePlot = number };
            })],
        };
    }

    /// <summary>The plan with centre points of every factor added, in every block, to detect curvature and to estimate the noise.</summary>
    /// <param name="count">Number of runs to add to each block.</param>
    /// <exception cref="ArgumentException">A negative count.</exception>
    public Plan WithCentrePoints(int count)
    {
        PlanArguments.NotNegative(count, "number of centre runs");
        var blocks = Runs.Select(run => run.Block).Distinct().Order();
        return Numbered(Kind, Factors, Runs.Concat(blocks.SelectMany(block => Centres(Factors.Count, count, block))));
    }

    /// <summary>The plan with every run made so many times, in whole plots of their own each time.</summary>
    /// <param name="times">1 or more.</param>
    internal Plan Repeated(int times) => times == 1 ? this
        : Numbered(Kind, Factors, Enumerable.Range(0, times).SelectMany(time => Runs.Select(run =>
            run.WholePlot > 0 ? run with { WholePlot = run.WholePlot + (time * WholePlots) } : run)));

    /// <summary>A plan of some runs, renumbered from 1.</summary>
    internal static Plan Numbered(string kind, IReadOnlyList<string> factors, IEnumerable<PlanRun> runs) =>
        new(kind, factors, [.. runs.Select((run, index) => run with { Number = index + 1 })]);

    /// <summary>Runs of one kind in block 1, not yet numbered.</summary>
    internal static IEnumerable<PlanRun> Points(PointKind kind, IEnumerable<double[]> coded) =>
        coded.Select(point => new PlanRun(0, kind, 1, point));

    /// <summary>Centre points, not yet numbered.</summary>
    internal static IEnumerable<PlanRun> Centres(int factors, int count, int block = 1) =>
        Enumerable.Range(0, count).Select(_ => new PlanRun(0, PointKind.Centre, block, new double[factors]));
}

/// <summary>One run of a plan.</summary>
/// <param name="Number">From 1, in the plan's standard order.</param>
/// <param name="Kind">Kind of the run.</param>
/// <param name="Block">From 1; runs of one block are made under like conditions.</param>
/// <param name="Coded">One value per factor: -1 at the low end, +1 at the high end; axial runs may lie outside.</param>
public sealed record PlanRun(int Number, PointKind Kind, int Block, double[] Coded)
{
    /// <summary>From 1: the runs for which the factors that are hard to change are set once; 0 when none is.</summary>
    public int WholePlot { get; init; }
}

/// <summary>Kinds of runs.</summary>
public enum PointKind
{
    /// <summary>A combination of levels of a factorial, or of its fraction.</summary>
    Factorial,

    /// <summary>On the axis of one factor, all others at their centre.</summary>
    Axial,

    /// <summary>All factors at their centre.</summary>
    Centre,

    /// <summary>Some factors at their ends, the others at their centre.</summary>
    Edge,

    /// <summary>All factors at an end except one, which is at its centre (definitive screening).</summary>
    Screening,

    /// <summary>Chosen by an optimality criterion.</summary>
    Optimal,

    /// <summary>Demanded by the user, or already run.</summary>
    Given,

    /// <summary>A point of a space-filling plan.</summary>
    SpaceFilling,
}

/// <summary>Checks the arguments of plans.</summary>
internal static class PlanArguments
{
    /// <summary>Names must be present, different, and of a number the plan takes.</summary>
    public static void Factors(IReadOnlyList<string> names, string plan, int least, int most)
    {
        if (names.Count < least || names.Count > most)
            throw new ArgumentException($"a {plan} takes {least} to {most} factors, not {names.Count}");
        if (names.Any(string.IsNullOrWhiteSpace))
            throw new ArgumentException("every factor needs a name");
        var twice = names.GroupBy(name => name).FirstOrDefault(group => group.Count() > 1);
        if (twice is not null)
            throw new ArgumentException($"the factor \"{twice.Key}\" is named {twice.Count()} times; each factor belongs in the plan once");
    }

    /// <summary>A count of at least 0.</summary>
    public static void NotNegative(int count, string what)
    {
        if (count < 0)
            throw new ArgumentException($"the {what} cannot be negative, but is {count}");
    }

    /// <summary>A count of at least some number.</summary>
    public static void AtLeast(int least, int count, string what)
    {
        if (count < least)
            throw new ArgumentException($"the {what} must be {least} or more, but is {count}");
    }
}
