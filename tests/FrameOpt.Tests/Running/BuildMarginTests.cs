using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Running;
using FrameOpt.Studies;
using FrameOpt.Tests.Model;
using FrameOpt.Tests.Reports;

namespace FrameOpt.Tests.Running;

/// <summary>How far a frame may be built beside its drawing before it breaks a limit.</summary>
public class BuildMarginTests
{
    private static readonly MissionModel mission = WorkedMachine.Mission;
    private static readonly FrameGeometry design = WorkedMachine.Geometry(440, 25, 150, 0);

    // Law: the residual of a phase is linear in the lateral offset, so the offset that breaks a limit follows from two of its values.
    [Fact]
    public void Offset_that_breaks_a_limit_on_a_residual_is_where_the_straight_line_through_two_offsets_says()
    {
        double Glide(double millimetres) => mission.Evaluate(WorkedMachine.Geometry(440, millimetres, 150, 0)).Phases[4][PhaseQuantity.Residual];
        var perMillimetre = (Glide(35) - Glide(25)) / 10;
        var bound = Math.Abs(Glide(25)) + Math.Abs(3.7 * perMillimetre);
        var limit = new StudyLimit(new Response.OfPhase(PhaseQuantity.Residual, 4, "glide"), true, null, bound);
        var margin = BuildMargin.Nearest(mission, limit, design, [ReportFixture.Study().Factor(GeometryInput.LateralOffset)])!;
        Check.Close(0.0037, margin.ChangeSi, absolute: 1e-6, because: "found by halving a millimetre twelve times");
        Check.Close(3.7, margin.InTolerances, absolute: 1e-3, because: "a drill holds a millimetre");
    }

    [Fact]
    public void Limit_far_away_is_broken_by_no_error_of_building() => Assert.Null(BuildMargin.Nearest(
        mission, new StudyLimit(new Response.OfMission(MissionQuantity.EffortWorst), false, null, 1e6), design, ReportFixture.Study().Factors));

    [Fact]
    public void Nearest_factor_is_the_one_whose_own_tolerance_breaks_the_limit_first()
    {
        var limit = new StudyLimit(new Response.OfMission(MissionQuantity.EffortWorst), false, null, 0.46);
        var factors = ReportFixture.Study().Factors;
        var nearest = BuildMargin.Nearest(mission, limit, design, factors)!;
        Assert.All(factors, factor => Assert.True(
            BuildMargin.Nearest(mission, limit, design, [factor]) is not { } own || own.InTolerances >= nearest.InTolerances));
    }
}
