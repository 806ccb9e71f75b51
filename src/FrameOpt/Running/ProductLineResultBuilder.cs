using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.ProductLine;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>Builds the result of a product line: lettered geometries, assignments, each segment's own best geometry, the fitting
/// chart.</summary>
internal sealed class ProductLineResultBuilder
{
    private readonly ProductLineSetting setting;
    private readonly IReadOnlyList<CustomerSegment> rows;
    private readonly ProductLineCandidates candidates;
    private readonly ProductLineSolution solution;
    private readonly int threads;
    private readonly Dictionary<int, int> letterOf;

    public ProductLineResultBuilder(Study study, IReadOnlyList<CustomerSegment> rows, ProductLineCandidates candidates,
        ProductLineSolution solution, int threads)
    {
        (setting, this.rows, this.candidates, this.solution, this.threads) = (study.Line!, rows, candidates, solution, threads);
        var all = rows.Sum(row => row.Share);
        // The fixed geometries are the first candidates; the others get the letters that are left, the lightest pilots' first.
        var chosen = solution.Chosen.Where(candidate => candidate >= setting.Fixed.Count).OrderBy(MeanMass);
        letterOf = Enumerable.Range(0, setting.Fixed.Count).Concat(chosen).Index().ToDictionary(pair => pair.Item, pair => pair.Index);
        string[] names = [.. setting.Fixed.Select(one => one.Name), .. setting.FreeLetters];
        Chart = FittingChart();
        Geometries =
        [
            .. letterOf.OrderBy(pair => pair.Value).Select(pair => new ProductLineGeometry(
                names[pair.Value],
                pair.Key,
                candidates.Designs[pair.Key],
                Rows(pair.Key).Sum(row => row.Customers.Count),
                Rows(pair.Key).Sum(row => row.Share) / all,
                Rotations(pair.Key, pair.Value),
                pair.Key < setting.Fixed.Count)),
        ];
    }

    public IReadOnlyList<ProductLineGeometry> Geometries { get; }

    public FittingChart Chart { get; }

    public IReadOnlyList<SegmentAssignment> Assignments(ProductLineCostTable table)
    {
        var (own, next) = (new CustomerRegret[rows.Count], new double[rows.Count]);
        var costs = new double[candidates.Count];
        for (var r = 0; r < rows.Count; r++)
        {
            table.Row(r, costs);
            own[r] = CustomerRegret.Of(r, costs, solution.CustomerCosts[r]);
            next[r] = solution.Chosen.Where(candidate => candidate != solution.Assigned[r]).Select(candidate => costs[candidate])
                .DefaultIfEmpty(double.PositiveInfinity).Min();
        }

        var served = new SegmentAssignment[rows.Count];
        Parallel.For(0, rows.Count, new ParallelOptions { MaxDegreeOfParallelism = threads },
            r => served[r] = Assignments(r, own[r], next[r]));
        return served;
    }

    private FittingChart FittingChart()
    {
        var chosen = candidates.Only(solution.Chosen);
        IReadOnlyList<int> letters = [.. solution.Chosen.Order().Select(candidate => letterOf[candidate])];
        return FittingChartBuilder.Build(setting, chosen, letters, setting.Customers.Min(customer => customer.PilotMassKilograms),
            setting.Customers.Max(customer => customer.PilotMassKilograms), threads);
    }

    private SegmentAssignment Assignments(int r, CustomerRegret regret, double next)
    {
        var assigned = solution.Assigned[r];
        var effort = double.NaN;
        if (assigned >= 0)
        {
            var customer = setting.Configurations[rows[r].Configuration].For(rows[r].PilotMassKilograms);
            effort = StudyProblem.Model(customer).Evaluate(candidates.On(customer.Machine, assigned))[MissionQuantity.EffortWorst];
        }

        return new SegmentAssignment(
            rows[r],
            assigned < 0 ? -1 : letterOf[assigned],
            regret.Cost,
            effort,
            regret.BestCandidate < 0 ? null : candidates.Designs[regret.BestCandidate],
            regret.BestCost,
            regret.Regret,
            next);
    }

    /// <summary>How the propellers turn of all that the geometry is given to, by assignment or by the chart.</summary>
    private IReadOnlyList<Rotation> Rotations(int candidate, int letter)
    {
        IReadOnlyList<Rotation> given =
        [
            .. Rows(candidate).Select(row => setting.Configurations[row.Configuration].Rotation)
                .Concat(Chart.Blocks.SelectMany(block => block.Columns).Where(column => column.Spans.Any(span => span.Geometry == letter))
                    .Select(column => column.Rotation))
                .Distinct().Order(),
        ];
        // A fixed geometry that nobody gets is still for some engines.
        return given.Count > 0 ? given : setting.Fixed[candidate].Turns is { } turns ? [turns] : setting.Rotations;
    }

    private IEnumerable<CustomerSegment> Rows(int candidate) => rows.Where((_, r) => solution.Assigned[r] == candidate);

    private double MeanMass(int candidate) =>
        Rows(candidate).Sum(row => row.Share * row.PilotMassKilograms) / Rows(candidate).Sum(row => row.Share);
}

/// <summary>Computes the fitting chart of a product line.</summary>
internal static class FittingChartBuilder
{
    private const int Band = 5;

    /// <summary>The chart of a line.</summary>
    /// <param name="setting">Its options and outfits.</param>
    /// <param name="chosen">The geometries, ascending by candidate number.</param>
    /// <param name="letters">For each of them its index among the line's geometries.</param>
    /// <param name="lightest">Pilot mass of the lightest or heaviest customer, in kg.</param>
    /// <param name="heaviest">Pilot mass of the lightest or heaviest customer, in kg.</param>
    /// <param name="threads">Worker threads, at least 1.</param>
    public static FittingChart Build(ProductLineSetting setting, ProductLineCandidates chosen, IReadOnlyList<int> letters, double lightest,
        double heaviest, int threads)
    {
        var from = (int)Math.Floor(lightest / Band) * Band;
        var to = ((int)Math.Floor(heaviest / Band) + 1) * Band - 1;
        var columns = new IReadOnlyList<FittingSpan>[setting.Configurations.Count];
        var costs = new ProductLineCosts(setting, chosen);
        // What nobody has is not sold: it would only make the chart wider.
        Parallel.ForEach(setting.Sold, new ParallelOptions { MaxDegreeOfParallelism = threads }, configuration =>
            columns[configuration] = Spans(costs, setting.Configurations[configuration], letters, from, to));
        return new FittingChart(setting.Options.Count > 0 ? setting.Options[0].Name : "", from, to, Band, Arrange(setting, columns));
    }

    private static List<FittingSpan> Spans(ProductLineCosts costs, ProductLineConfiguration configuration, IReadOnlyList<int> letters,
        int from, int to)
    {
        var spans = new List<FittingSpan>();
        var own = new double[letters.Count];
        for (var kilograms = from; kilograms <= to; kilograms++)
        {
            var best = -1;
            if (own.Length > 0)
            {
                costs.Fill(configuration, kilograms, own);
                best = Array.IndexOf(own, own.Min());
            }

            var geometry = best < 0 || double.IsInfinity(own[best]) ? -1 : letters[best];
            if (spans.Count > 0 && spans[^1].Geometry == geometry)
                spans[^1] = spans[^1] with { ToKilograms = kilograms };
            else
                spans.Add(new FittingSpan(kilograms, kilograms, geometry));
        }

        return spans;
    }

    /// <summary>Leaves out the further options that make no difference, and makes a block of each combination of the others.</summary>
    private static List<FittingBlock> Arrange(ProductLineSetting setting, IReadOnlyList<FittingSpan>[] columns)
    {
        var matter = Enumerable.Range(1, Math.Max(0, setting.Options.Count - 1)).Where(option => Matters(setting, columns, option))
            .ToList();
        string Title(int configuration) => string.Join(", ", matter.Select(
            option => $"{setting.Options[option].Name} {setting.Configurations[configuration].Choices[option]}"));
        return
        [
            .. setting.Sold.GroupBy(Title).Select(block => new FittingBlock(block.Key,
            [
                .. block.GroupBy(configuration => setting.Options.Count == 0 ? "every customer"
                    : setting.Configurations[configuration].Choices[0])
                    .Select(column =>
                        new FittingColumn(column.Key, setting.Configurations[column.First()].Rotation, column.First(),
                            columns[column.First()])),
            ])),
        ];
    }

    private static bool Matters(ProductLineSetting setting, IReadOnlyList<FittingSpan>[] columns, int option) =>
        setting.Sold.GroupBy(configuration => string.Join('\n', setting.Configurations[configuration].Choices.Where((_, other) =>
            other != option)))
        .Any(alike => alike.Any(configuration => !columns[configuration].SequenceEqual(columns[alike.First()])
            || setting.Configurations[configuration].Rotation != setting.Configurations[alike.First()].Rotation));
}
