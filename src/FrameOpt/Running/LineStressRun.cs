using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Numerics;
using FrameOpt.ProductLine;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;
using FrameOpt.Uncertainty;

namespace FrameOpt.Running;

/// <summary>Puts a line as built to the test: each customer keeps the geometry, and one number at a time is otherwise.</summary>
internal sealed class LineStressRun(
    ProductLineSetting setting, IReadOnlyList<CustomerSegment> rows, ProductLineCandidates candidates, ProductLineSolution solution)
{
    private const double PilotKilograms = 5;

    /// <summary>So many kinds of customers are looked at, those of the largest share.</summary>
    private const int MostRows = 400;

    /// <summary>The least certain numbers of the wing: from end to end of what they may be (<see cref="WingCase"/>), whatever the noise of
    /// the study says.</summary>
    private static readonly NoiseSource[] ofWing = [NoiseSource.YawLeverageOfWing, NoiseSource.RiserCouplingOfWing];

    private static readonly Response effortWorst = new Response.OfMission(MissionQuantity.EffortWorst);

    /// <summary>The line as the study has it, then with low and high yaw leverage, soft and stiff riser coupling, each further source of
    /// the noise at both ends of its spread, and other pilots.</summary>
    /// <param name="noise">Of the study.</param>
    /// <param name="threads">Worker threads, 1 or more.</param>
    public IReadOnlyList<LineStress> Of(NoiseSetting noise, int threads)
    {
        int[] looked = [.. Enumerable.Range(0, rows.Count).Where(r => solution.Assigned[r] >= 0).OrderByDescending(r => rows[r].Share)
            .Take(MostRows).Order()];
        if (looked.Length == 0)
            return [];
        (NoiseSource? Source, double Deviation)[] worlds =
        [
            (null, 0),
            .. ofWing.SelectMany(source => new[] { -1.0, 1 }, (source, end) => ((NoiseSource?)source, end)),
            .. noise.Sources.Where(pair => !ofWing.Contains(pair.Source))
                .SelectMany(pair => new[] { UncertaintyRun.LowShare, UncertaintyRun.HighShare },
                    (pair, share) => ((NoiseSource?)pair.Source, pair.Spread.Quantile(share))),
            (null, -PilotKilograms), (null, PilotKilograms),
        ];
        var each = InParallel.Select(looked.Length, threads, i =>
        {
            var (customer, model) = Customer(looked[i], 0);
            return Array.ConvertAll(worlds, world =>
            {
                var (one, mission) = world.Source is null && world.Deviation != 0
                    ? Customer(looked[i], world.Deviation) : (customer, model);
                return Of(solution.Assigned[looked[i]], one,
                    NoiseSample.Case(mission, world.Source is null ? [] : [(world.Source, world.Deviation)]));
            });
        });
        return [.. worlds.Select((world, w) => Sum(world, [.. looked.Select((r, i) => (rows[r].Share, each[i][0], each[i][w]))]))];
    }

    /// <summary>A customer, some kilograms heavier.</summary>
    private (Study Study, MissionModel Model) Customer(int r, double kilograms)
    {
        var study = setting.Configurations[rows[r].Configuration].For(rows[r].PilotMassKilograms + kilograms);
        return (study, StudyProblem.Model(study));
    }

    /// <summary>One customer in one world: with the geometry they have, and whether another would be better.</summary>
    private ServedCustomer Of(int assigned, Study customer, SampledCase there)
    {
        var row = new MissionRow(there.Model);
        bool Flies(int candidate) =>
            row.PrepareDesign(candidates.On(customer.Machine, candidate) + there.BuiltOff).Kind == FailureKind.None;
        double Cost(int candidate) => Flies(candidate) && customer.Limits.All(limit => limit.Response.IsOverCases || limit.IsMetBy(row))
            ? setting.CostResponse.OrientedOf(row) : double.NaN;

        var own = Cost(assigned);
        var effort = Flies(assigned) ? effortWorst.Of(row, magnitude: false) : double.NaN;
        var others = solution.Chosen
            .Where(candidate => candidate != assigned && candidates.Suits(customer.Machine, candidate)).Select(Cost);
        return new ServedCustomer(own, effort, others.Any(cost => double.IsNaN(own) ? !double.IsNaN(cost) : cost < own));
    }

    private LineStress Sum((NoiseSource? Source, double Deviation) world,
        IReadOnlyList<(double Share, ServedCustomer AsInStudy, ServedCustomer Served)> customers)
    {
        var (all, within) = (customers.Sum(one => one.Share), customers.Where(one => !double.IsNaN(one.Served.Cost)).ToList());
        var sign = setting.CostResponse.Maximise ? -1 : 1;
        var both = within.Where(one => !double.IsNaN(one.AsInStudy.Cost)).ToList();
        var flying = customers.Where(one => !double.IsNaN(one.Served.Effort)).ToList();
        return new LineStress(
            world.Source,
            world.Deviation,
            flying.Count == 0 ? double.NaN : flying.Max(one => one.Served.Effort),
            within.Count == 0 ? double.NaN : sign * within.Sum(one => one.Share * one.Served.Cost) / within.Sum(one => one.Share),
            within.Count == 0 ? double.NaN : sign * within.Max(one => one.Served.Cost),
            1 - within.Sum(one => one.Share) / all,
            customers.Where(one => one.Served.HasBetter).Sum(one => one.Share) / all,
            both.Sum(one => one.Share * Math.Abs(one.Served.Cost - one.AsInStudy.Cost)) / both.Sum(one => one.Share));
    }

    /// <summary>What a customer has with the geometry they were given.</summary>
    /// <param name="Cost">Not a number where it cannot fly or breaks a limit.</param>
    /// <param name="Effort">Not a number where it cannot fly.</param>
    /// <param name="HasBetter">True when another geometry of the line would serve them better.</param>
    private sealed record ServedCustomer(double Cost, double Effort, bool HasBetter);
}
