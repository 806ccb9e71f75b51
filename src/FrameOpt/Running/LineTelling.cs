using FrameOpt.Model.Mission;
using FrameOpt.ProductLine;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>Tells a choice: the geometries with their letters, who gets which, what would have suited them, the fitting chart.</summary>
internal sealed class LineTelling
{
    private readonly LineSetting setting;
    private readonly IReadOnlyList<LineRow> rows;
    private readonly LineCandidates candidates;
    private readonly LineSolution solution;
    private readonly int threads;
    private readonly Dictionary<int, int> letterOf;

    public LineTelling(Study study, IReadOnlyList<LineRow> rows, LineCandidates candidates, LineSolution solution, int threads)
    {
        (setting, this.rows, this.candidates, this.solution, this.threads) = (study.Line!, rows, candidates, solution, threads);
        var all = rows.Sum(row => row.Share);
        Geometries =
        [
            .. solution.Chosen.OrderBy(MeanMass).Select((candidate, letter) => new LineGeometry(
                (char)('A' + letter),
                candidate,
                candidates.Designs[candidate],
                Rows(candidate).Sum(row => row.Customers.Count),
                Rows(candidate).Sum(row => row.Share) / all)),
        ];
        letterOf = Geometries.Index().ToDictionary(pair => pair.Item.Candidate, pair => pair.Index);
    }

    public IReadOnlyList<LineGeometry> Geometries { get; }

    public IReadOnlyList<LineServed> Served(LineCostTable table)
    {
        var own = new CustomerRegret[rows.Count];
        var costs = new double[candidates.Count];
        for (var r = 0; r < rows.Count; r++)
        {
            table.Row(r, costs);
            own[r] = CustomerRegret.Of(r, costs, solution.CustomerCosts[r]);
        }

        var served = new LineServed[rows.Count];
        Parallel.For(0, rows.Count, new ParallelOptions { MaxDegreeOfParallelism = threads }, r => served[r] = Served(r, own[r]));
        return served;
    }

    public FittingChart Chart()
    {
        var chosen = candidates.Only(solution.Chosen);
        IReadOnlyList<int> letters = [.. solution.Chosen.Order().Select(candidate => letterOf[candidate])];
        return FittingChart.Of(setting, chosen, letters, setting.Customers.Min(customer => customer.PilotMassKilograms), setting.Customers.Max(customer => customer.PilotMassKilograms), threads);
    }

    private LineServed Served(int r, CustomerRegret regret)
    {
        var assigned = solution.Assigned[r];
        var effort = double.NaN;
        if (assigned >= 0)
        {
            var customer = setting.Outfits[rows[r].Outfit].For(rows[r].PilotMassKilograms);
            effort = StudyProblem.Model(customer).Evaluate(candidates.On(customer.Machine, assigned))[MissionQuantity.EffortWorst];
        }

        return new LineServed(
            rows[r],
            assigned < 0 ? -1 : letterOf[assigned],
            regret.Cost,
            effort,
            regret.OwnCandidate < 0 ? null : candidates.Designs[regret.OwnCandidate],
            regret.OwnCost,
            regret.Regret);
    }

    private IEnumerable<LineRow> Rows(int candidate) => rows.Where((_, r) => solution.Assigned[r] == candidate);

    private double MeanMass(int candidate) => Rows(candidate).Sum(row => row.Share * row.PilotMassKilograms) / Rows(candidate).Sum(row => row.Share);
}
