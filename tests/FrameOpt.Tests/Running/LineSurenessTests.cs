using FrameOpt.ProductLine;
using FrameOpt.Running;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Running;

/// <summary>What stands beside the proof of a line, against every pair of candidates.</summary>
public class LineSurenessTests
{
    private static readonly Lazy<(ProductLineResult Result, ProductLineCandidates Candidates, double[][] Costs,
        double[] Shares)> line = new(() =>
    {
        var study = ProductLineStudy.Read("objective: mean; up_to: 2");
        var candidates = ProductLineCandidates.OfGrid(study);
        var costs = study.Line!.Customers.Select(customer =>
        {
            var own = new double[candidates.Count];
            new ProductLineCosts(study.Line, candidates).Fill(study.Line.Configurations[customer.Configuration],
                customer.PilotMassKilograms, own);
            return own;
        }).ToArray();
        return (ProductLineStudy.Solve(study), candidates, costs, [.. study.Line.Customers.Select(customer => customer.Share)]);
    });

    [Fact]
    public void Each_simpler_line_is_the_best_of_its_kind()
    {
        var sureness = line.Value.Result.Sureness!;
        Assert.NotEmpty(sureness.Simpler);
        foreach (var simpler in sureness.Simpler)
        {
            var (one, round) = (simpler.Kind is SimplerKind.OneFrame or SimplerKind.OneFrameWithRoundHoles,
                simpler.Kind is SimplerKind.RoundHoles or SimplerKind.OneFrameWithRoundHoles);
            Check.Close(Best((a, b) => (!one || a with { OffsetMetres = 0 } == b with { OffsetMetres = 0 })
                    && (simpler.Kind != SimplerKind.OneSpacing || a.SpacingMetres == b.SpacingMetres)
                    && (!round || (IsRound(a) && IsRound(b))), new ProductLineObjective.Mean()),
                simpler.Value, relative: 1e-9, because: "proven to one part in a thousand million");
        }
    }

    [Fact]
    public void Other_weights_have_the_best_line_of_those_weights()
    {
        foreach (var trial in line.Value.Result.Sureness!.Weights)
            Check.Close(Best((_, _) => true, trial.Objective), trial.Best, relative: 1e-9,
                because: "proven to one part in a thousand million");
    }

    [Fact]
    public void In_a_sample_of_the_customers_nothing_beats_its_best_and_the_line_is_measured_against_it()
    {
        var samples = line.Value.Result.Sureness!.Samples;
        Assert.Equal(8, samples.Count);
        Assert.All(samples, trial => Assert.True(trial.Best <= trial.Ours * (1 + 1e-9)));
        Assert.All(samples, trial => Assert.InRange(trial.Designs.Count, 1, 2));
    }

    [Fact]
    public void Leeway_counts_the_candidates_that_keep_the_line_within_two_per_cent()
    {
        var (result, candidates, costs, shares) = line.Value;
        foreach (var leeway in result.Sureness!.Leeway)
        {
            var other = result.Solution.Chosen[1 - leeway.Geometry];
            Assert.Equal(leeway.Count, Enumerable.Range(0, candidates.Count).Count(candidate =>
                ObjectiveValue.Of(new ProductLineObjective.Mean(),
                shares, [.. costs.Select(own => Math.Min(own[other], own[candidate]))]) <= 1.02 * result.Solution.Value));
        }
    }

    private static bool IsRound(FrameOpt.Model.FrameGeometry design) => new[] { design.LeftMetres, design.RightMetres }
        .All(metres => Math.Abs(1000 * metres % 5) is var rest && Math.Min(rest, 5 - rest) < 1e-6);

    private static double Best(Func<FrameOpt.Model.FrameGeometry, FrameOpt.Model.FrameGeometry, bool> allowed,
        ProductLineObjective objective)
    {
        var (_, candidates, costs, shares) = line.Value;
        var best = double.PositiveInfinity;
        for (var a = 0; a < candidates.Count; a++)
        {
            for (var b = a; b < candidates.Count; b++)
            {
                if (allowed(candidates.Designs[a], candidates.Designs[b]))
                    best = Math.Min(best, ObjectiveValue.Of(objective, shares, [.. costs.Select(own => Math.Min(own[a], own[b]))]));
            }
        }

        return best;
    }
}
