using FrameOpt.Search;
using FrameOpt.Search.Evolution;
using FrameOpt.Search.Fronts;

namespace FrameOpt.Tests.Search.Evolution;

public sealed class EvolutionTests
{
    [Fact]
    public void Designs_to_begin_with_come_first_moved_to_what_their_factors_allow()
    {
        Factor[] factors = [new Factor.Continuous("a", 0, 1), new Factor.Discrete("b", [1, 2, 4]), new Factor.Discrete("c", [7, 9])];
        var problem = TestProblem.Of(factors, 2, [], (x, f, _) => (f[0], f[1]) = (x[0], -x[0] - x[1]));
        var settings = new EvolutionSettings(6, 1) { Start = [[0.5, 3.4, 7], [-1, 1, 9], [0.5, 4, 7]] };
        var designs = EvaluatedRun.Of(new Nsga2Search(settings), problem, 6).Designs;
        Assert.Equal([0.5, 4, 7], designs[0]);
        Assert.Equal([0, 1, 9], designs[1]);
        Assert.Equal(6, designs.Count);
    }

    [Fact]
    public void More_designs_to_begin_with_than_the_population_are_all_evaluated()
    {
        var start = ContractProblems.Scattered(KnownProblems.Zdt1(5), 150).ToArray();
        var run = EvaluatedRun.Of(new Nsga2Search(new EvolutionSettings(10, 1) { Start = start }), KnownProblems.Zdt1(5), 400);
        Assert.Equal(start, run.Designs[..150]);
    }

    [Fact]
    public void A_design_to_begin_with_of_another_number_of_values_is_refused() =>
        Assert.Throws<ArgumentException>(() => new Nsga2Search(new EvolutionSettings(10, 1) { Start = [[1, 2]] }).Run(
            KnownProblems.Zdt1(5), 1).First());

    [Fact]
    public void Settings_out_of_range_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Nsga2Search(new EvolutionSettings(1, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Nsga3Search(new EvolutionSettings(10, 1) { CrossoverRate = 1.1 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Nsga3Search(new EvolutionSettings(10, 1) { MutationRate = 0 }));
    }

    /// <summary>A search that began where another ended is at once as good.</summary>
    [Fact]
    public void A_warm_start_loses_nothing()
    {
        var problem = KnownProblems.Zdt1(10);
        var first = EvaluatedRun.Of(new Nsga2Search(new EvolutionSettings(50, 1)), problem, 3000);
        var warm = EvaluatedRun.Of(new Nsga2Search(new EvolutionSettings(50, 2) { Start = [.. first.FrontDesigns()] }), problem,
            first.Front.Ids.Length);
        Check.Close(first.Volume(1.1, 1.1), warm.Volume(1.1, 1.1), relative: 1e-12, because: "the same points, rounding only");
    }

    /// <summary>The grid has 4,096 designs of which the front is known by trying all; half of them are enough for a search.</summary>
    [Fact]
    public void A_grid_is_searched_better_than_by_chance()
    {
        Factor[] factors = [.. Enumerable.Range(0, 4).Select(f => new Factor.Discrete(
            $"f{f}", [.. Enumerable.Range(0, 8).Select(i => i / 7.0)]))];
        var problem = TestProblem.Of(factors, 2, [], (x, f, _) =>
        {
            var others = x[1] * x[1] + (x[2] - 0.4) * (x[2] - 0.4) + (1 - x[3]) * (1 - x[3]);
            (f[0], f[1]) = (x[0] + others, 1 - Math.Sqrt(x[0]) + others);
        });
        var all = EvaluatedRun.Of(new ExhaustiveSearch(), problem, int.MaxValue).FrontValues()
            .Select(point => (point[0], point[1])).ToHashSet();
        var some = EvaluatedRun.Of(new Nsga2Search(new EvolutionSettings(20, 1)), problem, 600).FrontValues()
            .Select(point => (point[0], point[1])).ToHashSet();
        Assert.Subset(all, some.Intersect(all).ToHashSet());
        Assert.True(some.Count(all.Contains) >= all.Count - 1, $"{some.Count(all.Contains)} of {all.Count}");
    }

    /// <summary>Das and Dennis 1998: (steps + objectives - 1 choose objectives - 1) directions; 91 of 12 steps for 3 objectives as in Deb
    /// and Jain 2014, table I.</summary>
    [Fact]
    public void The_directions_of_a_hundred_designs_and_three_objectives_are_91()
    {
        var referencePoints = ReferencePoints.DasDennis(3, 100);
        Assert.Equal(91, referencePoints.Length);
        Assert.All(referencePoints, referencePoint => Check.Close(1, referencePoint.Sum(), absolute: 1e-12, because: "rounding"));
        Assert.Equal(100, ReferencePoints.DasDennis(2, 100).Length);
        Assert.InRange(ReferencePoints.DasDennis(5, 100).Length, 50, 100);
    }
}
