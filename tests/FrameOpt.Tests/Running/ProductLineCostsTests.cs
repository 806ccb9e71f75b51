using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Running;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Running;

public class ProductLineCostsTests
{
    [Theory]
    [InlineData("response: residual_rms")]
    [InlineData("response: residual[climb]")]
    [InlineData("response: weight_shift_authority[cruise]; maximise: true")]
    public void A_cost_is_what_the_model_says_of_the_customer_s_own_study(string keys)
    {
        var study = ProductLineStudy.Read(keys);
        var line = study.Line!;
        var candidates = ProductLineCandidates.OfGrid(study);
        Assert.Equal(273, candidates.Count);
        var allowed = 0;
        foreach (var customer in line.Customers)
        {
            var costs = new double[candidates.Count];
            new ProductLineCosts(line, candidates).Fill(line.Configurations[customer.Configuration], customer.PilotMassKilograms, costs);
            var own = OwnStudy(study, line.Configurations[customer.Configuration], customer.PilotMassKilograms);
            double[] expected = [.. Enumerable.Range(0, candidates.Count)
                .Select(c => Value(own, line.CostResponse, candidates.Designs[c]))];
            if (line.CostResponse.Maximise)
            {
                var best = expected.Where(double.IsFinite).Max();
                expected = [.. expected.Select(value => best - value)];
            }

            for (var c = 0; c < costs.Length; c++)
            {
                Assert.Equal(double.IsFinite(expected[c]), double.IsFinite(costs[c]));
                if (!double.IsFinite(expected[c]))
                    continue;
                allowed++;
                Check.Close(expected[c], costs[c], relative: 1e-12, absolute: 1e-12, because: "the same formulas, in a row and alone");
            }
        }

        Assert.InRange(allowed, 1, 5 * 273 - 1);
    }

    [Fact]
    public void Candidates_on_one_hole_pattern_have_offsets_of_its_multiples_only()
    {
        var study = ProductLineStudy.Read("hole_pitch: 15 mm");
        var candidates = ProductLineCandidates.OfGrid(OffsetPitch.On(study, study.Line!.HolePitchMetres)!);
        Assert.Equal(3 * 5 * 7, candidates.Count);
        Assert.All(candidates.Designs, design =>
            Check.Close(0, Math.IEEERemainder(design.OffsetMetres, 0.015), absolute: 1e-12, because: "multiples of 15 mm in binary"));
    }

    [Fact]
    public void Candidates_of_one_group_share_what_is_to_be_common()
    {
        var candidates = ProductLineCandidates.OfGrid(ProductLineStudy.Read());
        Assert.Null(candidates.Groups(ProductLineCommon.Nothing));
        Assert.Equal(3, candidates.Groups(ProductLineCommon.Spacing)!.Distinct().Count());
        var frames = candidates.Groups(ProductLineCommon.Frame)!;
        Assert.Equal(21, frames.Distinct().Count());
        Assert.All(
            candidates.Designs.Zip(frames).GroupBy(pair => pair.Second),
            frame => Assert.Single(frame.Select(pair => pair.First with { OffsetMetres = 0 }).Distinct()));
    }

    /// <summary>Put together here by hand, not by the program: the outfit's study with one mass changed.</summary>
    private static Study OwnStudy(Study study, ProductLineConfiguration configuration, double kilograms)
    {
        var machine = configuration.Study.Machine;
        return study with
        {
            Wing = configuration.Study.Wing,
            Machine = new Machine(
                [.. machine.Masses.Select(item => item.Name == "pilot" ? new MassItem("pilot", kilograms, item.At, true) : item)],
                machine.HangLineForwardMetres, machine.Propeller, machine.Engine, machine.Pilot),
        };
    }

    private static double Value(Study own, StudyObjective goal, FrameGeometry design)
    {
        var evaluation = StudyProblem.Model(own).Evaluate(design);
        if (evaluation.Failure is not null || own.Limits.Any(limit => !limit.AsConstraint.IsSatisfiedBy(limit.ValueOf(evaluation))))
            return goal.Maximise ? double.NegativeInfinity : double.PositiveInfinity;
        return goal.Magnitude ? Math.Abs(evaluation[goal.Response]) : evaluation[goal.Response];
    }
}
