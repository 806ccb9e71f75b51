using FrameOpt.Analysis;
using FrameOpt.Model.Mission;
using FrameOpt.Plans;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.Studies;
using FrameOpt.Tests.Reports;
using File = FrameOpt.Tests.StudyFile.WorkedStudyText;

namespace FrameOpt.Tests.Running;

/// <summary>Plans over the worked machine.</summary>
public class StudyPlanTests
{
    private const string Offset = "{ from: 0 mm, to: 60 mm, step: 1 mm }";
    private static readonly Lazy<(Study Study, PlanResult Answer)> composite = new(
        () => Answer("kind: central composite, axial: spherical"));

    [Theory]
    // Runs and terms for 4 factors: docs/plans.md; terms 1 + 4 linear, 6 pairs, 4 squares.
    [InlineData("kind: full factorial", 16, 11)]
    [InlineData("kind: fractional factorial, generators: [D=ABC]", 8, 5)]
    [InlineData("kind: Plackett-Burman", 8, 5)]
    [InlineData("kind: central composite", 25, 15)]
    [InlineData("kind: Box-Behnken", 25, 15)]
    [InlineData("kind: definitive screening", 9, 9)]
    [InlineData("kind: D-optimal, runs: 20", 20, 15)]
    [InlineData("kind: I-optimal, runs: 14, model: interactions", 14, 11)]
    [InlineData("kind: Latin hypercube, runs: 20", 20, 15)]
    [InlineData("kind: Sobol sequence, runs: 12, repeats: 2", 24, 11)]
    [InlineData("kind: Halton sequence, runs: 8", 8, 5)]
    [InlineData("kind: full factorial, centre_runs: 4", 20, 11)]
    public void Each_kind_of_plan_runs_and_has_a_surface_for_each_response(string plan, int runs, int terms)
    {
        var (study, answer) = Answer(plan);
        Assert.Equal(runs, answer.Plan.Plan.Runs.Count);
        Assert.Equal(study.Objectives.Count, answer.Surfaces.Count);
        Assert.All(answer.Surfaces, surface =>
        {
            Assert.Equal(terms, surface.Fit!.Terms.Count);
            Assert.Empty(surface.Fit.Aliased);
            Assert.NotNull(surface.Fit.NoTestsReason);
            Assert.All(surface.Fit.Coefficients, coefficient => Assert.Null(coefficient.P));
            // The smallest grid of four factors that has a million points.
            Assert.Equal(32 * 32 * 32 * 32, surface.Check!.Everywhere.Points);
        });
    }

    [Fact]
    public void No_run_leaves_a_factors_range()
    {
        var (study, answer) = composite.Value;
        foreach (var (factor, design) in answer.Plan.Factors.SelectMany(factor => answer.Plan.Designs.Select(design => (factor, design))))
            Assert.InRange(design[factor.Input], factor.LevelsSi[0] - 1e-12, factor.LevelsSi[^1] + 1e-12);
        Assert.Equal(2, answer.Plan.Plan.Runs.Max(run => run.Coded.Max()), 12); // spherical: the root of 4 factors
    }

    [Fact]
    public void Values_of_the_runs_are_what_the_model_says_of_each_design_alone()
    {
        var (study, answer) = composite.Value;
        var model = StudyProblem.Model(study);
        Assert.All(answer.Surfaces, surface => Assert.Equal(answer.Plan.Designs.Select(design => model.Evaluate(design)[surface.Response]),
            surface.Values));
    }

    [Fact]
    public void The_surface_and_the_residual_of_a_run_make_up_its_value()
    {
        var (_, answer) = composite.Value;
        foreach (var surface in answer.Surfaces)
        {
            for (var i = 0; i < surface.Values.Count; i++)
            {
                var made = surface.Fit!.Predict(answer.Plan.Plan.Runs[i].Coded) + surface.Fit.Runs[i].Residual;
                Check.Close(surface.Values[i], made, relative: 1e-9, absolute: 1e-9, because: "observed = fitted + residual");
            }
        }
    }

    [Fact]
    public void The_largest_error_is_there_at_its_place_and_no_corner_has_a_larger_one()
    {
        var (study, answer) = composite.Value;
        var (plan, model) = (answer.Plan, StudyProblem.Model(study));
        foreach (var surface in answer.Surfaces)
        {
            double Error(IReadOnlyList<double> coded)
            {
                var geometry = plan.Designs[0];
                for (var f = 0; f < plan.Factors.Count; f++)
                    geometry = geometry.With(plan.Factors[f].Input, plan.Scales[f].Natural(coded[f]));
                return Math.Abs(surface.Fit!.Predict(coded) - model.Evaluate(geometry)[surface.Response]);
            }

            var check = surface.Check!;
            Check.Close(check.Everywhere.Largest, Error(check.WorstCoded), relative: 1e-6, absolute: 1e-9,
                because: "the same design by another route");
            foreach (var corner in Enumerable.Range(0, 16))
            {
                double[] coded = [.. Enumerable.Range(0, 4).Select(f => (corner >> f & 1) == 0 ? -1.0 : 1.0)];
                Assert.True(Error(coded) <= check.Everywhere.Largest * (1 + 1e-9));
            }
        }
    }

    [Theory]
    [InlineData("{ from: 0 m, to: 0.0508 m, step: 0.0127 m }")]
    [InlineData("{ from: 0 in, to: 2 in, step: 0.5 in }")]
    public void The_unit_of_a_factor_changes_no_share_and_no_coefficient(string range)
    {
        const string Plan = "kind: D-optimal, runs: 8, model: linear";
        var (_, first) = Answer(Plan, text => text.Replace(Offset, "{ from: 0 mm, to: 50.8 mm, step: 12.7 mm }"));
        var (_, other) = Answer(Plan, text => text.Replace(Offset, range));
        Compare(first, other, (a, b) =>
        {
            Check.Close(a.Coefficient, b.Coefficient, relative: 1e-9, absolute: 1e-9, because: "coded units do not know the factor's unit");
            Check.Close(a.Share ?? 0, b.Share ?? 0, relative: 1e-7, absolute: 1e-7, because: "a share has no unit");
        });
    }

    [Fact]
    public void Factors_in_another_order_give_the_same_terms_under_their_names()
    {
        var (study, first) = Answer("kind: central composite");
        var turned = study with { Factors = [.. study.Factors.Reverse()] };
        var other = PlanRunner.Run(turned, StudyProblem.Model(turned), Environment.ProcessorCount);
        Assert.Equal(first.Plan.Factors.Reverse(), other.Plan.Factors);
        Compare(first, other, (a, b) =>
        {
            Check.Close(a.Coefficient, b.Coefficient, relative: 1e-8, absolute: 1e-8, because: "the plan is the same in every order");
            Check.Close(a.Share ?? 0, b.Share ?? 0, relative: 1e-7, absolute: 1e-7, because: "adjusted sums do not depend on order");
        });
    }

    /// <summary>Two levels of each of the four factors: the grid stays small.</summary>
    internal static string ShortGrid(string text) => text
        .Replace("{ from: 380 mm, to: 480 mm, step: 5 mm }", "{ values: [380 mm, 480 mm] }")
        .Replace(Offset, "{ values: [0 mm, 60 mm] }")
        .Replace("{ from: 100 mm, to: 400 mm, step: 10 mm }", "{ values: [100 mm, 400 mm] }")
        .Replace("values: [-3 deg, -1.5 deg, 0 deg, 1.5 deg, 3 deg]", "values: [-3 deg, 3 deg]");

    private static (Study Study, PlanResult Answer) Answer(string plan, Func<string, string>? change = null)
    {
        var study = File.Right((change?.Invoke(File.Text) ?? File.Text) + $"plan: {{ {plan} }}\n");
        return (study, PlanRunner.Run(study, StudyProblem.Model(study), Environment.ProcessorCount));
    }

    private static void Compare(PlanResult first, PlanResult other, Action<(double Coefficient, double? Share),
        (double Coefficient, double? Share)> compare)
    {
        for (var r = 0; r < first.Surfaces.Count; r++)
        {
            var (a, b) = (Named(first, r), Named(other, r));
            Assert.Equal(a.Keys.Order(StringComparer.Ordinal), b.Keys.Order(StringComparer.Ordinal));
            foreach (var term in a.Keys)
                compare(a[term], b[term]);
        }
    }

    /// <summary>The terms by their factors' names in alphabetical order.</summary>
    private static Dictionary<string, (double Coefficient, double? Share)> Named(PlanResult answer, int response)
    {
        var names = answer.Plan.Factors.Select(factor => factor.Name).ToList();
        return PlanLabels.Terms(answer.Surfaces[response].Fit!).ToDictionary(
            row => string.Join(" × ", row.Term.NamedWith(names).Split(" × ").Order(StringComparer.Ordinal)), row =>
                (row.Coefficient, row.Share));
    }
}
