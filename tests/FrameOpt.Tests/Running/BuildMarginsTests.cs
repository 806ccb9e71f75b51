using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Running;
using FrameOpt.Studies;
using FrameOpt.Tests.Model;
using FrameOpt.Tests.Reports;

namespace FrameOpt.Tests.Running;

/// <summary>How far a frame may be built beside its drawing before it breaks a limit.</summary>
public class BuildMarginsTests
{
    private static readonly MissionModel mission = WorkedMachine.Mission;
    private static readonly FrameGeometry design = WorkedMachine.Geometry(440, 25, 150, 0);

    // Law: the residual of a phase is linear in the lateral offset, so the offset that breaks a limit follows from two of its values.
    [Fact]
    public void Offset_that_breaks_a_limit_on_a_residual_is_where_the_straight_line_through_two_offsets_says()
    {
        double Glide(double millimetres) =>
            mission.Evaluate(WorkedMachine.Geometry(440, millimetres, 150, 0)).Phases[4][PhaseQuantity.Residual];
        var perMillimetre = (Glide(35) - Glide(25)) / 10;
        var bound = Math.Abs(Glide(25)) + Math.Abs(3.7 * perMillimetre);
        var limit = new StudyLimit(new Response.OfPhase(PhaseQuantity.Residual, 4, "glide"), true, null, bound);
        var study = ReportFixture.Study() with { Limits = [limit] };
        var margin = Assert.Single(BuildMargins.Of(mission, study, mission.Evaluate(design)), own =>
            own.Factor.Input == GeometryInput.LateralOffset && own.ChangeSi > 0);
        Check.Close(0.0037, margin.ChangeSi, absolute: 2e-6, because: "found to a thousandth of a millimetre");
        Check.Close(3.7, margin.InTolerances, absolute: 2e-3, because: "a drill holds a millimetre");
    }

    // Law: the residual is linear in the height of one hang point over the other, and where body and lines hang straight, as in a glide
    // but for half a degree, a strap longer by as much does the same.
    [Fact]
    public void Hang_points_at_unequal_height_and_unequal_straps_have_a_margin_though_neither_is_a_factor()
    {
        double Glide(double higher) =>
            mission.Evaluate(design with { HangHeightDifferenceMetres = higher }).Phases[4][PhaseQuantity.Residual];
        var perMillimetre = (Glide(0.01) - Glide(0)) / 10;
        var limit = new StudyLimit(new Response.OfPhase(PhaseQuantity.Residual, 4, "glide"), true, null,
            Math.Abs(Glide(0)) + Math.Abs(2.5 * perMillimetre));
        var study = ReportFixture.Study() with { Limits = [limit] };
        Assert.DoesNotContain(study.Factors, factor => factor.Input == GeometryInput.HangHeightDifference);
        var margins = BuildMargins.Of(mission, study, mission.Evaluate(design));
        var side = Math.Sign(Glide(0) * perMillimetre);
        var higher = Assert.Single(margins, own => own.Factor.Input == GeometryInput.HangHeightDifference && own.ChangeSi * side > 0);
        Check.Close(side * 0.0025, higher.ChangeSi, absolute: 2e-6, because: "found to a thousandth of a millimetre");
        var longer = Assert.Single(margins, own => own.Factor.Input == GeometryInput.StrapDifference && own.ChangeSi * side > 0);
        Check.Close(higher.ChangeSi, longer.ChangeSi, relative: 0.03, because: "the body swings and the lines lean by a few degrees");
    }

    [Fact]
    public void Limit_far_away_is_broken_by_no_error_of_building() => Assert.Empty(Margins(1e6));

    // A law of limits: the tighter of two on one response is broken by the smaller error.
    [Fact]
    public void Tighter_limit_is_broken_by_a_smaller_error()
    {
        var loose = Margins(0.5);
        Assert.NotEmpty(loose);
        Assert.All(loose, margin => Assert.Contains(Margins(0.46), own =>
            own.Factor.Input == margin.Factor.Input && own.ChangeSi * margin.ChangeSi > 0
                && Math.Abs(own.ChangeSi) < Math.Abs(margin.ChangeSi)));
    }

    [Fact]
    public void Design_with_that_error_is_at_the_limit()
    {
        var margins = Margins(0.46);
        Assert.NotEmpty(margins);
        Assert.All(margins, margin => Check.Close(
            0.46,
            mission.Evaluate(design.With(margin.Factor.Input, design[margin.Factor.Input] + margin.ChangeSi))[MissionQuantity.EffortWorst],
            absolute: 1e-3, because: "a thousandth of a tolerance moves the effort by less"));
    }

    private static IReadOnlyList<LimitMargin> Margins(double largestEffort) => BuildMargins.Of(
        mission,
        ReportFixture.Study() with
        {
            Limits = [new StudyLimit(new Response.OfMission(MissionQuantity.EffortWorst), false, null, largestEffort)],
        },
        mission.Evaluate(design));
}
