using FrameOpt.Search;
using FrameOpt.Search.Evolution;
using FrameOpt.Search.Local;

namespace FrameOpt.Tests.Search;

/// <summary>What every search keeps, whatever the problem.</summary>
public sealed class SearchContractTests
{
    private const int Most = 600;

    private static readonly string[] seeded = ["nsga2", "nsga2 of 2", "nsga2 of 3", "nsga3", "nsga3 of 2", "nsga3 of 3"];

    public static TheoryData<string, string> Pairs()
    {
        var pairs = new TheoryData<string, string>();
        foreach (var problem in ContractProblems.Names)
        {
            foreach (var search in seeded.Append("polish"))
                pairs.Add(search, problem);
            if (ContractProblems.Count(ContractProblems.Named(problem)) is not null)
                pairs.Add("exhaustive", problem);
        }

        return pairs;
    }

    public static TheoryData<string, string> SeededPairs()
    {
        var pairs = new TheoryData<string, string>();
        foreach (var search in seeded)
        {
            pairs.Add(search, "continuous");
            pairs.Add(search, "mixed");
        }

        return pairs;
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Numbers_run_on_from_0_and_every_batch_is_judged(string search, string name)
    {
        var problem = ContractProblems.Named(name);
        long number = 0;
        foreach (var batch in Search(search, problem).Run(problem, 1).TakeWhile(_ => number < Most))
        {
            Assert.Equal(number, batch.Designs.FirstNumber);
            Assert.InRange(batch.Designs.Count, 1, int.MaxValue);
            Assert.Equal(batch.Designs.Count, batch.Counts.Evaluated);
            for (var i = 0; i < batch.Designs.Count; i++)
            {
                var isFeasible = batch.Failures[i] == 0
                    && problem.Constraints.Select((bound, b) => bound.IsSatisfiedBy(batch.ConstraintValues[b][i])).All(kept => kept);
                Assert.Equal(isFeasible ? 1 : 0, batch.Feasible[i]);
            }

            number += batch.Designs.Count;
        }

        Assert.True(number > 0);
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Every_value_is_one_its_factor_allows(string search, string name)
    {
        var problem = ContractProblems.Named(name);
        foreach (var design in EvaluatedRun.Of(Search(search, problem), problem, Most).Designs)
        {
            for (var f = 0; f < design.Length; f++)
            {
                if (problem.Factors[f] is Factor.Continuous range)
                    Assert.InRange(design[f], range.From, range.To);
                else
                    Assert.Contains(design[f], problem.Factors[f].Values!);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void No_design_comes_twice_and_a_finite_space_comes_to_its_end(string search, string name)
    {
        var problem = ContractProblems.Named(name);
        var designs = EvaluatedRun.Of(Search(search, problem), problem, Most).Designs;
        Assert.Equal(designs.Count, designs.Select(design => string.Join(' ', design)).Distinct().Count());
        if (ContractProblems.Count(problem) is { } count && search != "polish")
            Assert.Equal(count, designs.Count);
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Threads_change_nothing(string search, string name)
    {
        var problem = ContractProblems.Named(name);
        var one = EvaluatedRun.Of(Search(search, problem), problem, Most, threads: 1);
        foreach (var threads in new[] { 2, 7 })
        {
            var several = EvaluatedRun.Of(Search(search, problem), problem, Most, threads);
            Assert.Equal(one.Designs, several.Designs);
            Assert.Equal(one.Objectives, several.Objectives);
            Assert.Equal(one.Feasible, several.Feasible);
        }
    }

    [Theory]
    [MemberData(nameof(SeededPairs))]
    public void The_same_seed_gives_the_same_designs_and_another_seed_others(string search, string name)
    {
        var problem = ContractProblems.Named(name);
        var first = EvaluatedRun.Of(Search(search, problem, seed: 1), problem, Most).Designs;
        Assert.Equal(first, EvaluatedRun.Of(Search(search, problem, seed: 1), problem, Most).Designs);
        Assert.NotEqual(first, EvaluatedRun.Of(Search(search, problem, seed: 2), problem, Most).Designs);
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Nothing_is_evaluated_before_it_is_asked_for(string search, string name)
    {
        var problem = ContractProblems.Named(name);
        var evaluated = 0;
        var counting = problem with
        {
            Evaluate = batch =>
            {
                evaluated += batch.Designs.Count;
                problem.Evaluate(batch);
            },
        };
        var batches = Search(search, problem).Run(counting, 1);
        Assert.Equal(0, evaluated);
        var first = batches.First().Designs.Count;
        Assert.InRange(evaluated, first, 4 * first); // a wave of one thread is four batches at most
    }

    private static ISearch Search(string name, Problem problem, ulong seed = 1) => name switch
    {
        "exhaustive" => new ExhaustiveSearch(),
        "polish" => new LocalSearch(new LocalSearchSettings([.. ContractProblems.Scattered(problem, 70)])),
        "nsga2" => new Nsga2Search(new EvolutionSettings(100, seed)),
        "nsga2 of 2" => new Nsga2Search(new EvolutionSettings(2, seed)),
        "nsga2 of 3" => new Nsga2Search(new EvolutionSettings(3, seed)),
        "nsga3" => new Nsga3Search(new EvolutionSettings(100, seed)),
        "nsga3 of 2" => new Nsga3Search(new EvolutionSettings(2, seed)),
        "nsga3 of 3" => new Nsga3Search(new EvolutionSettings(3, seed)),
        _ => throw new ArgumentOutOfRangeException(nameof(name)),
    };
}
