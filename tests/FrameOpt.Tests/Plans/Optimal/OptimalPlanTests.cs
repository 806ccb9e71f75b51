using FrameOpt.Numerics;
using FrameOpt.Plans;
using MathNet.Numerics.LinearAlgebra;

namespace FrameOpt.Tests.Plans.Optimal;

public class OptimalPlanTests
{
    // P. G. Hoel 1958 and Kiefer and Wolfowitz 1959: for a square in one factor two runs each at -1, 0 and 1; det(X'X) = 32 by hand.
    [Fact]
    public void Six_runs_for_a_square_lie_at_the_ends_and_the_middle()
    {
        var plan = OptimalPlan.Build(Request(1, 6, PlanModel.Quadratic(1), 21));
        Assert.Equal([-1, -1, 0, 0, 1, 1], plan.Column(0).Select(value => Math.Round(value, 12)).Order());
        Check.Close(32, Determinant(plan, PlanModel.Quadratic(1)), relative: 1e-9, because: "rounding");
    }

    // J. Hadamard 1893: det(X'X) of n runs within the cube is at most n^p, reached by orthogonal two-level plans only.
    [Theory]
    [InlineData(3, 8)]
    [InlineData(7, 8)]
    [InlineData(11, 12)]
    public void Main_effects_in_a_multiple_of_four_runs_come_out_orthogonal(int factors, int runs)
    {
        var request = Request(factors, runs, PlanModel.Linear(factors), 2) with { Starts = 100 };
        Check.Close(1, PlanQuality.Of(OptimalPlan.Build(request), request.Model)!.DEfficiency, absolute: 1e-9, because: "rounding");
    }

    // M. J. Box and N. R. Draper 1971, Technometrics 13:731-742: nine runs in two factors on three levels are best as the three by three
    // factorial (from memory).
    [Fact]
    public void Nine_runs_for_a_quadratic_in_two_factors_are_no_worse_than_the_three_by_three_factorial()
    {
        var request = Request(2, 9, PlanModel.Quadratic(2), 3);
        var factorial = Determinant(FullFactorial.Build(request.Factors, [3, 3]), request.Model);
        Assert.True(Determinant(OptimalPlan.Build(request), request.Model) >= factorial * (1 - 1e-9));
    }

    [Fact]
    public void Each_criterion_is_better_than_the_other_at_its_own_aim()
    {
        var request = Request(2, 8, PlanModel.Quadratic(2), 5) with { Starts = 30 };
        var byDeterminant = PlanQuality.Of(OptimalPlan.Build(request), request.Model)!;
        var byVariance = PlanQuality.Of(OptimalPlan.Build(request with { Criterion = OptimalCriterion.I }), request.Model)!;
        Assert.True(byDeterminant.DEfficiency > byVariance.DEfficiency);
        Assert.True(byVariance.AverageVariance < byDeterminant.AverageVariance);
    }

    [Fact]
    public void Chosen_runs_keep_every_limit_and_use_only_the_levels_that_can_be_made()
    {
        var request = Request(3, 14, PlanModel.Quadratic(3), 5) with
        {
            Constraints = [new LinearConstraint([1, 1, 0], 0.5), new LinearConstraint([0, -1, -1], 1)],
            Allowed = point => point[0] > -1 || point[2] < 1,
        };
        Assert.All(OptimalPlan.Build(request).Runs, run =>
        {
            Assert.True(run.Coded[0] + run.Coded[1] <= 0.5 && -run.Coded[1] - run.Coded[2] <= 1);
            Assert.True(run.Coded[0] > -1 || run.Coded[2] < 1);
            Assert.All(run.Coded, value => Assert.Contains(value, CodedLevels.EvenlySpaced(5)));
        });
    }

    [Fact]
    public void Given_runs_stay_and_the_same_seed_gives_the_same_plan()
    {
        var request = Request(2, 6, PlanModel.Quadratic(2), 3) with { Given = [new PlanRun(0, PointKind.Given, 1, [0.3, -0.7])], Seed = 5 };
        var plan = OptimalPlan.Build(request);
        Assert.Equal([0.3, -0.7], plan.Runs[0].Coded);
        Assert.Equal(7, plan.Runs.Count);
        Assert.Equal(plan.Runs.Select(run => string.Join(' ', run.Coded)),
            OptimalPlan.Build(request).Runs.Select(run => string.Join(' ', run.Coded)));
    }

    [Fact]
    public void Factorial_already_run_is_augmented_for_squares_by_a_new_block()
    {
        var made = FullFactorial.TwoLevel(["A", "B"]).WithCentrePoints(2);
        var request = Request(2, 5, PlanModel.Quadratic(2), 3);
        var plan = OptimalPlan.Augment(made, request);
        Assert.Equal(made.Runs.Select(run => run.Coded), plan.Runs.Take(6).Select(run => run.Coded));
        Assert.All(plan.Runs.Skip(6), run => Assert.Equal((PointKind.Optimal, 2), (run.Kind, run.Block)));
        Assert.Null(PlanQuality.Of(made, request.Model));
        Assert.NotNull(PlanQuality.Of(plan, request.Model));
    }

    [Theory]
    [InlineData(OptimalCriterion.D)]
    [InlineData(OptimalCriterion.I)]
    public void Gain_of_an_exchange_is_that_of_computing_all_anew(OptimalCriterion criterion)
    {
        var random = new Pcg32(9);
        var model = PlanModel.Quadratic(2);
        var moments = ModelMatrix.Moments(model, 6);
        var rows = Enumerable.Range(0, 9).Select(_ => model.At([random.NextDouble(), random.NextDouble()])).ToArray();
        var taken = model.At([-0.8, 0.6]);
        var before = new RowExchange(Matrix<double>.Build.DenseOfRowArrays(rows), moments, criterion);
        before.SetRemovedRow(rows[4]);
        var gain = before.Gain(taken);
        var after = new RowExchange(Matrix<double>.Build.DenseOfRowArrays(rows.Select((row, r) => r == 4 ? taken : row)), moments,
            criterion);
        var fromScratch = criterion == OptimalCriterion.D ? Math.Exp(after.CriterionValue - before.CriterionValue) - 1
            : 1 - (after.CriterionValue / before.CriterionValue);
        Check.Close(fromScratch, gain, relative: 1e-4, because: "the information of points in a corner of the cube is nearly singular");
    }

    [Fact]
    public void Requests_that_make_no_plan_are_refused_in_words()
    {
        var request = Request(2, 9, PlanModel.Quadratic(2), 3);
        Assert.Contains("6 terms", Assert.Throws<ArgumentException>(() => OptimalPlan.Build(request with { Runs = 5 })).Message);
        Assert.Contains("no plan was found", Assert.Throws<ArgumentException>(
            () => OptimalPlan.Build(Request(2, 9, PlanModel.Quadratic(2), 2))).Message);
        Assert.Contains("keeps the limits", Assert.Throws<ArgumentException>(
            () => OptimalPlan.Build(request with { Allowed = _ => false })).Message);
        Assert.Contains("2 weights", Assert.Throws<ArgumentException>(
            () => OptimalPlan.Build(request with { Constraints = [new LinearConstraint([1], 1)] })).Message);
    }

    private static OptimalRequest Request(int factors, int runs, PlanModel model, int levels) => new()
    {
        Factors = PlanNames.Letters(factors),
        Model = model,
        Runs = runs,
        Levels = [.. Enumerable.Repeat(CodedLevels.EvenlySpaced(levels), factors)],
    };

    private static double Determinant(Plan plan, PlanModel model)
    {
        var x = ModelMatrix.Of(plan, model);
        return x.TransposeThisAndMultiply(x).Determinant();
    }
}
