using FrameOpt.Search;
using FrameOpt.Search.Evolution;
using FrameOpt.Search.Local;

namespace FrameOpt.Tests.Search.Local;

public sealed class LocalSearchTests
{
    /// <summary>What a short search leaves is improved by a polish of its front; nothing is lost, because the front is of everything
    /// evaluated.</summary>
    [Theory]
    [InlineData("zdt1")]
    [InlineData("dtlz2")]
    public void A_short_search_gains_by_a_polish(string name)
    {
        var problem = name == "zdt1" ? KnownProblems.Zdt1(10) : KnownProblems.Dtlz2(3, 7);
        double[] reference = [.. problem.Objectives.Select(_ => 1.1)];
        var largest = name == "zdt1" ? 0.8766667 : 1.331 - Math.PI / 6;
        var before = EvaluatedRun.Of(new Nsga2Search(new EvolutionSettings(20, 1)), problem, 800);
        var localSearch = EvaluatedRun.Of(new LocalSearch(new LocalSearchSettings([.. before.FrontDesigns()])), problem, int.MaxValue);
        Assert.All(localSearch.FrontValues(), point =>
            Assert.DoesNotContain(before.FrontValues(), other => SimpleFronts.Dominates(other, point)));
        var missingBefore = largest - before.Volume(reference);
        var missingAfter = largest - localSearch.Volume(reference);
        Assert.True(missingAfter < 0.5 * missingBefore,
            $"{missingBefore} before, {missingAfter} after, with {localSearch.Designs.Count} designs");
    }

    [Fact]
    public void The_given_designs_come_first()
    {
        var run = EvaluatedRun.Of(new LocalSearch(new LocalSearchSettings([[0.5, 0.5, 0.5], [0.5, 0.5, 0.5], [0.25, 2, -1]])),
            KnownProblems.Zdt1(3), 2);
        Assert.Equal([0.5, 0.5, 0.5], run.Designs[0]);
        Assert.Equal([0.25, 1, 0], run.Designs[1]);
    }

    /// <summary>Of one variable, f1 = (x - 0.3)² and f2 = (x - 0.3)² + 1 both want 0.3.</summary>
    [Fact]
    public void A_single_best_design_is_met_within_the_last_step()
    {
        var problem = TestProblem.Of(TestProblem.Continuous(1, 0, 1), 2, [], (x, f, _) =>
        {
            f[0] = (x[0] - 0.3) * (x[0] - 0.3);
            f[1] = f[0] + 1;
        });
        var run = EvaluatedRun.Of(new LocalSearch(new LocalSearchSettings([[0.9]]) { LastStep = 0.001 }), problem, int.MaxValue);
        Check.Close(0.3, run.FrontDesigns().First()[0], absolute: 0.001, because: "the last step");
    }

    [Fact]
    public void A_design_outside_its_limits_is_led_inside()
    {
        var problem = TestProblem.Of(TestProblem.Continuous(2, 0, 1), 2, [new Constraint("sum", 1.2, double.PositiveInfinity)], (x, f, g) =>
        {
            f[0] = x[0];
            f[1] = x[1];
            g[0] = x[0] + x[1];
        });
        var run = EvaluatedRun.Of(new LocalSearch(new LocalSearchSettings([[0.1, 0.3]])), problem, int.MaxValue);
        Assert.Contains(run.FrontValues(), point => point.Sum() < 1.21);
    }

    /// <summary>W. Hock and K. Schittkowski 1981, Test Examples for Nonlinear Programming Codes, problems 35 and 76 (from memory): at their
    /// optima oblique limits are met exactly, and no single factor can move along those.</summary>
    [Theory]
    [InlineData(35, 1.0 / 9, 0.005)]
    [InlineData(76, -4.6818182, 0.05)]
    public void Along_a_limit_that_is_met_exactly_the_search_goes_on(int number, double best, double within)
    {
        var (factors, start) = number == 35 ? (3, new[] { 0.1, 0.1, 1.4 }) : (4, [0.5, 0.5, 0.5, 0.5]);
        var problem = TestProblem.Of(TestProblem.Continuous(factors, 0, 3), 2, number == 35
                ? [new Constraint("sum", double.NegativeInfinity, 3)]
                : [new Constraint("one", double.NegativeInfinity, 5), new Constraint("two", double.NegativeInfinity, 4),
                    new Constraint("three", 1.5, double.PositiveInfinity)],
            (x, f, g) =>
            {
                if (number == 35)
                {
                    g[0] = x[0] + x[1] + (2 * x[2]);
                    f[0] = 9 - (8 * x[0]) - (6 * x[1]) - (4 * x[2]) + (2 * x[0] * x[0]) + (2 * x[1] * x[1]) + (x[2] * x[2])
                        + (2 * x[0] * x[1]) + (2 * x[0] * x[2]);
                }
                else
                {
                    g[0] = x[0] + (2 * x[1]) + x[2] + x[3];
                    g[1] = (3 * x[0]) + x[1] + (2 * x[2]) - x[3];
                    g[2] = x[1] + (4 * x[2]);
                    f[0] = (x[0] * x[0]) + (0.5 * x[1] * x[1]) + (x[2] * x[2]) + (0.5 * x[3] * x[3]) - (x[0] * x[2]) + (x[2] * x[3]) - x[0]
                        - (3 * x[1]) + x[2] - x[3];
                }

                f[1] = f[0] + 1;
            });
        var run = EvaluatedRun.Of(new LocalSearch(new LocalSearchSettings([start]) { LastStep = 1e-5 }), problem, int.MaxValue);
        Check.Close(best, run.FrontValues().Min(point => point[0]), absolute: within,
            because: "directions at random; factor by factor it stops 4.2 and 0.2 short");
    }

    [Fact]
    public void Steps_of_a_stepped_factor_are_single_levels()
    {
        Factor[] factors = [new Factor.Discrete("level", [0, 1, 2, 5, 9]), new Factor.Discrete("fixed", [1])];
        var problem = TestProblem.Of(factors, 2, [], (x, f, _) => (f[0], f[1]) = (x[0] + x[1], x[0] - x[1]));
        var run = EvaluatedRun.Of(new LocalSearch(new LocalSearchSettings([[5, 1]])), problem, int.MaxValue);
        Assert.Equal([[5, 1], [2, 1], [9, 1], [1, 1], [0, 1]], run.Designs);
    }

    [Fact]
    public void Nothing_to_polish_is_no_mistake() =>
        Assert.Empty(new LocalSearch(new LocalSearchSettings([])).Run(KnownProblems.Zdt1(3), 1));
}
