using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Running;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Tests.Running;

/// <summary>A line as built when one number is otherwise, against each customer's frame evaluated alone on a machine that was changed by
/// hand.</summary>
public class LineStressTests
{
    private static readonly Lazy<ProductLineResult> line = new(() => ProductLineStudy.Solve(ProductLineStudy.Read("objective: mean")));

    [Fact]
    public void With_nothing_otherwise_it_is_the_line_itself()
    {
        var (result, first) = (line.Value, line.Value.Stress[0]);
        Assert.Null(first.Source);
        Same(result.Solution.Value, first.MeanCost);
        Same(result.Assignments.Where(served => served.Geometry >= 0).Max(served => served.EffortWorst), first.WorstEffort);
        Assert.Equal(0, first.OutsideLimits);
        Assert.Equal(0, first.BetterWithAnother);
    }

    [Fact]
    public void Every_source_of_the_noise_stands_at_both_ends_and_the_pilots_too() =>
        Assert.Equal(1 + 2 * line.Value.Study.Noise.Sources.Count + 2, line.Value.Stress.Count);

    // The noise's ends of yaw leverage and riser coupling are the wing cases that every other answer tells.
    [Theory]
    [InlineData(WingCase.LowLeverage, "yaw_leverage", -1)]
    [InlineData(WingCase.HighLeverage, "yaw_leverage", 1)]
    [InlineData(WingCase.SoftCoupling, "riser_coupling", -1)]
    [InlineData(WingCase.StiffCoupling, "riser_coupling", 1)]
    public void With_another_wing_they_are_the_same_frames_under_it(WingCase wingCase, string source, int end) =>
        IsThatOf(line.Value.Stress.Single(stress => stress.Source?.Name == source && stress.Deviation == end), 0, machine => machine,
            wing => wingCase.Of(wing));

    [Fact]
    public void Heavier_pilots_are_the_same_frames_with_five_kilograms_more() =>
        IsThatOf(line.Value.Stress.Single(stress => stress is { Source: null, Deviation: 5 }), 5, machine => machine);

    // The seat's usual spread is 10 mm; nine of ten cases lie within 1.2816 standard deviations of it (table of the normal distribution).
    [Fact]
    public void A_seat_to_the_right_is_the_same_frames_with_the_body_moved()
    {
        var stress = line.Value.Stress.Single(stress => stress.Source == NoiseSource.SeatRight && stress.Deviation > 0);
        Check.Close(0.012816, stress.Deviation, relative: 1e-4, because: "five digits of the table");
        IsThatOf(stress, 0, machine => machine.With([.. machine.Masses.Select(item => item.IsBody
            ? item with { At = item.At with { RightMetres = item.At.RightMetres + stress.Deviation } } : item)]));
    }

    private static void IsThatOf(
        LineStress stress, double kilogramsMore, Func<Machine, Machine> changed, Func<Wing, Wing>? otherWing = null)
    {
        var result = line.Value;
        var served = result.Assignments.Where(one => one.Geometry >= 0).Select(one =>
        {
            var study = result.Setting.Configurations[one.Row.Configuration].For(one.Row.PilotMassKilograms + kilogramsMore);
            study = study with { Machine = changed(study.Machine), Wing = otherWing?.Invoke(study.Wing) ?? study.Wing };
            var geometry = result.Geometries[one.Geometry].Design;
            var design = StudyProblem.Model(study).Evaluate(FrameGeometry.On(
                study.Machine, geometry.SpacingMetres, geometry.OffsetMetres, geometry.HeightMetres, geometry.AngleRadians));
            return (one.Row.Share, Design: design, Kept: study.Limits.All(limit => limit.IsMetBy(design)));
        }).ToList();
        var within = served.Where(one => one.Kept).ToList();
        Same(served.Where(one => one.Design.Failure is null).Max(one => one.Design[MissionQuantity.EffortWorst]), stress.WorstEffort);
        Same(1 - within.Sum(one => one.Share) / served.Sum(one => one.Share), stress.OutsideLimits);
        Same(within.Sum(one => one.Share * one.Design[MissionQuantity.ResidualRms]) / within.Sum(one => one.Share), stress.MeanCost);
        Same(within.Select(one => one.Design[MissionQuantity.ResidualRms]).DefaultIfEmpty(double.NaN).Max(), stress.WorstCost);
    }

    // Not a number: no customer is within the limits.
    private static void Same(double expected, double actual)
    {
        if (!double.IsNaN(expected) || !double.IsNaN(actual))
            Check.Close(expected, actual, relative: 1e-9, absolute: 1e-12, because: "the same sums in another order");
    }
}
