using FrameOpt.Model.Mission;
using FrameOpt.ProductLine;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>Tells a choice: the geometries with their letters, who gets which, what would have suited them, the fitting chart.</summary>
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
        Geometries =
        [
            .. solution.Chosen.OrderBy(MeanMass).Select((candidate, letter) => new ProductLineGeometry(
                (char)('A' + letter),
                candidate,
                candidates.Designs[candidate],
                Rows(candidate).Sum(row => row.Customers.Count),
                Rows(candidate).Sum(row => row.Share) / all)),
        ];
        letterOf = Geometries.Index().ToDictionary(pair => pair.Item.Candidate, pair => pair.Index);
    }

    public IReadOnlyList<ProductLineGeometry> Geometries { get; }

    public IReadOnlyList<SegmentAssignment> Assignments(ProductLineCostTable table)
    {
        var own = new CustomerRegret[rows.Count];
        var costs = new double[candidates.Count];
        for (var r = 0; r < rows.Count; r++)
        {
            table.Row(r, costs);
            own[r] = CustomerRegret.Of(r, costs, solution.CustomerCosts[r]);
        }

        var served = new SegmentAssignment[rows.Count];
        Parallel.For(0, rows.Count, new ParallelOptions { MaxDegreeOfParallelism = threads }, r => served[r] = Assignments(r, own[r]));
        return served;
    }

    public FittingChart Chart()
    {
        var chosen = candidates.Only(solution.Chosen);
        IReadOnlyList<int> letters = [.. solution.Chosen.Order().Select(candidate => letterOf[candidate])];
        return FittingChartBuilder.Build(setting, chosen, letters, setting.Customers.Min(customer => customer.PilotMassKilograms),
            setting.Customers.Max(customer => customer.PilotMassKilograms), threads);
    }

    private SegmentAssignment Assignments(int r, CustomerRegret regret)
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
            regret.Regret);
    }

    private IEnumerable<CustomerSegment> Rows(int candidate) => rows.Where((_, r) => solution.Assigned[r] == candidate);

    private double MeanMass(int candidate) =>
        Rows(candidate).Sum(row => row.Share * row.PilotMassKilograms) / Rows(candidate).Sum(row => row.Share);
}
