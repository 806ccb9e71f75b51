using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.ProductLine;
using FrameOpt.ProductLine.PMedian;
using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.Search;
using FrameOpt.Studies;
using FrameOpt.StudyFile;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.Tests.Running;

public class ProductLineRunTests
{
    private static readonly Lazy<ProductLineResult> shipped = new(
        () => ProductLineStudy.Solve(StudyReader.Read(Repository.Study("product-line")).Study!));

    [Theory]
    [InlineData("objective: mean")]
    [InlineData("objective: worst")]
    [InlineData("objective: percentile 75 %")]
    [InlineData("objective: blend 40 %")]
    [InlineData("objective: mean; common: spacing")]
    [InlineData("objective: worst; common: frame; hole_pitch: 10 mm")]
    [InlineData("objective: mean; response: effort[climb]")]
    public void The_line_of_two_is_the_best_of_all_pairs(string keys)
    {
        var study = ProductLineStudy.Read(keys);
        var line = study.Line!;
        var result = ProductLineStudy.Solve(study);
        var candidates = ProductLineCandidates.OfGrid(OffsetPitch.On(study, line.HolePitchMetres)!);
        var groups = candidates.Groups(line.Common);
        var costs = line.Customers.Select(customer =>
        {
            var own = new double[candidates.Count];
            new ProductLineCosts(line, candidates).Fill(line.Configurations[customer.Configuration], customer.PilotMassKilograms, own);
            return own;
        }).ToList();
        double[] shares = [.. line.Customers.Select(customer => customer.Share)];
        var best = double.PositiveInfinity;
        for (var a = 0; a < candidates.Count; a++)
        {
            for (var b = a; b < candidates.Count; b++)
            {
                if (groups is null || groups[a] == groups[b])
                    best = Math.Min(best, ObjectiveValue.Of(line.Objective, shares, [.. costs.Select(own => Math.Min(own[a], own[b]))]));
            }
        }

        Assert.True(result.Solution.Proven);
        Check.Close(best, result.Solution.Value, relative: 1e-9, because: "proven to one part in 10⁹");
        foreach (var served in result.Assignments)
        {
            var own = costs[served.Row.Customers[0]];
            Assert.Equal(result.Geometries.Min(geometry => own[geometry.Candidate]), served.Cost);
            Assert.Equal(served.Cost, own[result.Geometries[served.Geometry].Candidate]);
            Assert.Equal(own.Min(), served.BestCost);
            Assert.Equal(served.Cost - served.BestCost, served.Regret);
        }
    }

    [Fact]
    public void A_customer_entered_twice_is_one_of_twice_the_count()
    {
        var twice = ProductLineStudy.Customers.Replace(
            "    - { name: club,",
            "    - { name: school again, pilot_mass: 62 kg, engine: light, wing: small, count: 9 }\n    - { name: club,");
        var once = ProductLineStudy.Customers.Replace("wing: small, count: 9", "wing: small, count: 18");
        var (a, b) = (ProductLineStudy.Solve(ProductLineStudy.Read(customers: twice)),
            ProductLineStudy.Solve(ProductLineStudy.Read(customers: once)));
        Assert.Equal(a.Solution.Value, b.Solution.Value);
        Assert.Equal(a.Geometries.Select(geometry => (geometry.Candidate, geometry.Share)),
            b.Geometries.Select(geometry => (geometry.Candidate, geometry.Share)));
        Assert.Equal(6, a.Geometries.Sum(geometry => geometry.Customers));
    }

    [Fact]
    public void A_run_told_to_stop_gives_the_line_asked_for_with_its_gap_and_no_others()
    {
        using var stop = new CancellationTokenSource();
        var run = new ProductLineRun(ProductLineStudy.Read("up_to: 5"), 2, stop.Token);
        foreach (var step in run.Steps())
        {
            if (step.Stage == "the best 2 geometries")
                stop.Cancel();
        }

        var result = run.Result()!;
        Assert.False(result.IsComplete);
        Assert.Equal(2, Assert.Single(result.Curve).Count);
        Assert.Equal(ProductLineStopReason.Cancelled, result.Solution.Stop);
        Assert.InRange(result.Solution.Gap, 0, result.Solution.Value);
        Assert.Null(result.OneMore);
        Assert.All(result.Assignments, served => Assert.True(double.IsFinite(served.Cost)));
    }

    [Fact]
    public void A_run_told_to_stop_before_the_costs_are_known_gives_nothing()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        var run = new ProductLineRun(ProductLineStudy.Read(), 2, stop.Token);
        Assert.Empty(run.Steps());
        Assert.Null(run.Result());
        Assert.Null(run.NoCandidatesReason);
    }

    [Fact]
    public void More_geometries_never_serve_worse_and_gains_add_up()
    {
        var curve = shipped.Value.Curve;
        Assert.Equal([1, 2, 3, 4, 5, 6], curve.Select(point => point.Count));
        Assert.All(curve.Skip(1), point => Assert.True(point.Gain >= 0));
        Check.Close(curve[0].Solution.Value - curve[^1].Solution.Value, curve.Sum(point => point.Gain ?? 0), relative: 1e-12,
            because: "a telescoping sum");
        Assert.Equal(curve[3], shipped.Value.OneMore);
    }

    [Fact]
    public void A_customer_nothing_serves_is_told_with_the_limit_that_rules_most_out()
    {
        Assert.Contains("No candidate is allowed for dealer north, big", shipped.Value.UnservedMessages[0]);
        Assert.Contains(ProductLineText.Unserved(shipped.Value), words => words.StartsWith(
            "dealer north, big: the limit largest effort in any settled phase at most 0.6 rules out 1,395 of 1,395 candidates",
            StringComparison.Ordinal));
        Assert.All(shipped.Value.Assignments.Where(served => served.BestDesign is null), served =>
            Assert.Equal((-1, double.NaN), (served.Geometry, served.Regret)));
        Assert.Equal(1, shipped.Value.Assignments.Count(served => served.BestDesign is null));
    }

    [Fact]
    public void A_line_that_leaves_somebody_out_names_the_nearest_miss()
    {
        var study = ProductLineStudy.Read();
        var limited = study.Line!.Configurations.Select((configuration, o) =>
            configuration with { Study = configuration.Study with { Limits = [OnPitch(o)] } });
        var alone = study with { Line = study.Line with { Count = 1, UpTo = 1, Configurations = [.. limited] } };
        var result = ProductLineStudy.Solve(alone);
        Assert.False(result.Solution.Feasible);
        Assert.Contains("No choice of one candidate serves every customer", result.UnservedMessages[0]);
        Assert.NotEmpty(result.Geometries);
    }

    [Fact]
    public void Many_sampled_customers_are_chosen_for_by_representatives_within_the_bound()
    {
        const string customers =
            "  customers: { sample: 5200, seed: 1, pilot_mass: { mean: 85 kg, sd: 14 kg, from: 55 kg, to: 125 kg }, "
            + "engine: { light: 1, big: 1 }, wing: { small: 1, large: 1 } }\n";
        var study = ProductLineStudy.Read("up_to: 2; time: 5 min", customers);
        var customersOfOwnMass = study.Line!.Customers.Select((customer, c) =>
            customer with { PilotMassKilograms = customer.PilotMassKilograms + c * 1e-7 });
        study = study with { Line = study.Line with { Customers = [.. customersOfOwnMass] } };
        var result = ProductLineStudy.Solve(study);
        Assert.Equal(5200, result.Assignments.Count);
        Assert.NotNull(result.Aggregated);
        Assert.InRange(result.Solution.Value, result.Solution.Bound, double.MaxValue);
        Assert.True(Math.Abs(result.Aggregated.RepresentativesValue - result.Solution.Value) <= result.Aggregated.ErrorBound);
        var served = result.Assignments.Where(customer => customer.Geometry >= 0).ToList();
        Assert.InRange(served.Count, 4300, 5200);
        Check.Close(
            served.Sum(customer => customer.Row.Share * customer.Cost) / served.Sum(customer => customer.Row.Share),
            result.Solution.Value, relative: 1e-12, because: "a mean summed in another order");
    }

    private static StudyLimit OnPitch(int configuration) => new(
        new Response.OfMission(MissionQuantity.DistanceFromBaseline), false, configuration == 0 ? 0 : 1.2, configuration == 0 ? 0.4 : null);
}
