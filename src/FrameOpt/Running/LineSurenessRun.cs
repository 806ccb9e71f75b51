using FrameOpt.Model;
using FrameOpt.Numerics;
using FrameOpt.ProductLine;
using FrameOpt.ProductLine.PMedian;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>Asks the question of a line again in other ways, to see how much its answer depends on them.</summary>
/// <param name="study">The study.</param>
/// <param name="rows">Its customer segments.</param>
/// <param name="candidates">The candidates, the fixed ones first.</param>
/// <param name="costs">Of every segment with every candidate.</param>
/// <param name="solution">The line.</param>
/// <param name="settings">Limits of each further choice.</param>
internal sealed class LineSurenessRun(
    Study study, IReadOnlyList<CustomerSegment> rows, ProductLineCandidates candidates, double[][] costs, ProductLineSolution solution,
    ProductLineSolverSettings settings)
{
    /// <summary>So many samples of the customers are looked at.</summary>
    public const int Samples = 8;

    /// <summary>With more costs than this the question is not asked again: it would take longer than the choice itself.</summary>
    private const long MostCosts = 2_000_000;

    private const int MostDrawn = 20_000;

    private readonly ProductLineSetting setting = study.Line!;
    private readonly int[] served = [.. Enumerable.Range(0, rows.Count).Where(r => solution.Assigned[r] >= 0)];

    /// <summary>True when there is something to ask: a choice was made that serves all, and it is not too large.</summary>
    public static bool Applies(ProductLineSetting setting, long costs, ProductLineSolution solution) =>
        costs <= MostCosts && solution.Feasible && setting.Count > setting.Fixed.Count;

    public LineSureness Result() => new([.. Simpler()], [.. Leeway()], [.. OfSamples()], [.. OfWeights()]);

    private IEnumerable<SimplerLine> Simpler()
    {
        bool IsRound(int candidate) => LineSureness.IsRound(candidates.Designs[candidate]);
        bool Any(int candidate) => true;
        (SimplerKind Kind, ProductLineCommon Common, Func<int, bool> Allowed, bool Differs)[] kinds =
        [
            (SimplerKind.OneFrameWithRoundHoles, ProductLineCommon.Frame, IsRound, true),
            (SimplerKind.OneFrame, ProductLineCommon.Frame, Any, setting.Common != ProductLineCommon.Frame),
            (SimplerKind.OneSpacing, ProductLineCommon.Spacing, Any, setting.Common == ProductLineCommon.Nothing),
            (SimplerKind.RoundHoles, setting.Common, IsRound, true),
        ];
        var chosen = solution.Chosen.Select(candidate => candidates.Designs[candidate]).ToList();
        foreach (var (kind, common, allowed, _) in kinds.Where(kind => kind.Differs && study.Holes is null))
        {
            var groups = candidates.Groups(common);
            // Fixed geometries that differ have nothing in common.
            if (groups is not null && groups.Take(setting.Fixed.Count).Distinct().Count() > 1)
                continue;
            if (Choose(served, Shares(served), setting.Objective, groups, allowed) is { } line && !Same(line, solution.Chosen))
                yield return new SimplerLine(kind, Designs(line), Value(line, served, Shares(served), setting.Objective));
        }
    }

    private IEnumerable<GeometryLeeway> Leeway()
    {
        var (groups, shares) = (candidates.Groups(setting.Common), Shares(served));
        var most = (1 + LineSureness.Nearly) * Value([.. solution.Chosen], served, shares, setting.Objective);
        foreach (var (place, geometry) in solution.Chosen.Index().Where(item => item.Item >= setting.Fixed.Count))
        {
            var others = solution.Chosen.Where(candidate => candidate != geometry).ToArray();
            var rest = Array.ConvertAll(served, r => others.Select(candidate => costs[r][candidate]).Append(double.PositiveInfinity).Min());
            var near = Enumerable.Range(setting.Fixed.Count, candidates.Count - setting.Fixed.Count)
                .Where(candidate => candidates.TurnAlike(candidate, geometry))
                .Where(candidate => groups is null || others.Length == 0 || groups[candidate] == groups[others[0]])
                .Where(candidate => ObjectiveValue.Of(setting.Objective, shares,
                    [.. served.Select((r, i) => Math.Min(rest[i], costs[r][candidate]))]) <= most)
                .Select(candidate => candidates.Designs[candidate]).Distinct().ToList();
            yield return new GeometryLeeway(place, [.. study.Factors.Select(factor => near.Min(design => design[factor.Input]))],
                [.. study.Factors.Select(factor => near.Max(design => design[factor.Input]))], near.Count);
        }
    }

    /// <summary>Customers drawn from those of the study with replacement, as many as there are.</summary>
    /// <remarks>Source: the bootstrap of B. Efron 1979, Annals of Statistics 7, 1-26 (from memory).</remarks>
    private IEnumerable<LineTrial> OfSamples()
    {
        var random = new Pcg32(study.Noise.Seed);
        var shares = Shares(served);
        var number = setting.InPieces ? (int)Math.Min(MostDrawn, Math.Round(shares.Sum())) : served.Sum(r => rows[r].Customers.Count);
        var sums = shares.Select((_, i) => shares.Take(i + 1).Sum()).ToArray();
        for (var sample = 0; sample < Samples; sample++)
        {
            var drawn = new double[served.Length];
            for (var draw = 0; draw < Math.Min(number, MostDrawn); draw++)
            {
                var at = Array.BinarySearch(sums, random.NextDouble() * sums[^1]);
                drawn[Math.Min(at < 0 ? ~at : at, served.Length - 1)]++;
            }

            int[] some = [.. Enumerable.Range(0, served.Length).Where(i => drawn[i] > 0)];
            if (Trial([.. some.Select(i => served[i])], [.. some.Select(i => drawn[i])], setting.Objective) is { } trial)
                yield return trial;
        }
    }

    private IEnumerable<LineTrial> OfWeights() => new ProductLineObjective[]
        {
            new ProductLineObjective.Mean(), new ProductLineObjective.Blend(0.5), new ProductLineObjective.Worst(),
        }.Where(objective => objective != setting.Objective).Select(objective => Trial(served, Shares(served), objective))
        .OfType<LineTrial>();

    private LineTrial? Trial(int[] some, double[] shares, ProductLineObjective objective) =>
        Choose(some, shares, objective, candidates.Groups(setting.Common), _ => true) is { } line
            ? new LineTrial(objective, Designs(line), Value(line, some, shares, objective),
                Value([.. solution.Chosen], some, shares, objective))
            : null;

    /// <summary>The best line for some segments, the fixed geometries in it; null where none serves them.</summary>
    private int[]? Choose(int[] some, double[] shares, ProductLineObjective objective, int[]? groups, Func<int, bool> allowed)
    {
        var (first, free) = (setting.Fixed.Count, setting.Count - setting.Fixed.Count);
        int[] open = [.. Enumerable.Range(first, candidates.Count - first).Where(allowed)];
        if (open.Length == 0)
            return null;
        var beside = first > 0 ? new FixedVariants(first, groups) : null;
        var cut = Array.ConvertAll(some, r =>
        {
            if (beside is null)
                return Array.ConvertAll(open, candidate => costs[r][candidate]);
            var own = new double[candidates.Count - first];
            beside.Cut(costs[r], own);
            return Array.ConvertAll(open, candidate => own[candidate - first]);
        });
        if (cut.Any(row => row.All(double.IsInfinity)))
            return null;
        var line = ProductLineSolver.Solve(new ProductLineProblem(cut, shares, free, objective,
            groups is null || beside is not null ? null : Array.ConvertAll(open, candidate => groups[candidate])), settings);
        return line.Feasible ? [.. Enumerable.Range(0, first), .. line.Chosen.Select(column => open[column])
            .Where(candidate => beside is null || groups is null || groups[candidate] == groups[0])] : null;
    }

    private double Value(int[] line, int[] some, double[] shares, ProductLineObjective objective) =>
        ObjectiveValue.Of(objective, shares, Array.ConvertAll(some, r => line.Min(candidate => costs[r][candidate])));

    private double[] Shares(int[] some) => Array.ConvertAll(some, r => rows[r].Share);

    private IReadOnlyList<FrameGeometry> Designs(int[] line) => [.. line.Select(candidate => candidates.Designs[candidate])];

    private static bool Same(int[] line, IReadOnlyList<int> other) => line.Order().SequenceEqual(other.Order());
}
