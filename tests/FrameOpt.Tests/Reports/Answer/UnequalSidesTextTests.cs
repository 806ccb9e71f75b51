using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Graphics;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;
using FrameOpt.Tests.Model;

namespace FrameOpt.Tests.Reports.Answer;

/// <summary>What a builder reads of a frame whose right side is not like its left.</summary>
public class UnequalSidesTextTests
{
    private static readonly FrameGeometry alike = WorkedMachine.Geometry(440, 25, 150, 0);
    private static readonly FrameGeometry unequal = alike with { HangHeightDifferenceMetres = -0.010, StrapDifferenceMetres = 0.004 };

    // By hand: 440/2 -+ 25 = 195 and 245 mm, 150 +- 10/2 = 155 and 145 mm.
    [Fact]
    public void Drilling_gives_the_height_of_each_hang_point_where_they_differ()
    {
        var unit = ReportFixture.Study().LengthUnit;
        Assert.StartsWith(
            "LEFT hang point 195 mm to the left, 155 mm above the datum; RIGHT hang point 245 mm to the right, 145 mm above the datum.",
            DrillingDimensions.Sentence(unequal, unit));
        Assert.StartsWith(
            "LEFT hang point 195 mm to the left; RIGHT hang point 245 mm to the right.", DrillingDimensions.Sentence(alike, unit));
    }

    [Fact]
    public void Rear_view_shows_both_heights_and_the_longer_strap_and_nothing_where_the_sides_are_alike()
    {
        var study = ReportFixture.Study();
        string Drawn(FrameGeometry geometry) =>
            FrameRearView.Of(study, geometry, FrameScale.Of(study.Machine, [geometry])).ToString();
        Assert.Contains(">155 mm<", Drawn(unequal));
        Assert.Contains(">145 mm<", Drawn(unequal));
        Assert.Contains("strap 4 mm longer", Drawn(unequal));
        Assert.DoesNotContain("longer", Drawn(alike));
        Assert.DoesNotContain(">155 mm<", Drawn(alike));
    }

    // By hand: weight 113 kg x 9.80665 = 1108.15 N, its centre 141.593 mm below the hang line (150 - 8.407) and 1.1947 - 25 = -23.805 mm
    // to the side; the sides differ by 4 - 10 = -6 mm, which rolls the frame by -6/440 and moves the centre by 141.593 x 6/440 = 1.931 mm.
    // 2 x 1108.15 x (-23.805 + 1.931)/440 = -110.18 N.
    [Fact]
    public void Scales_read_what_unequal_sides_make_of_it_and_the_frame_keeps_its_own_straps()
    {
        Check.Close(-110.18, HangCheck.Of(WorkedMachine.Machine, unequal).DifferenceNewtons, absolute: 0.05,
            because: "lengths by hand to a thousandth of a millimetre");
        string Lines(FrameGeometry geometry) =>
            string.Concat(GroundChecksSection.HangCheck(ReportFixture.Study(), geometry).Lines);
        Assert.Contains("own straps and carabiners stay on it", Lines(unequal));
        Assert.DoesNotContain("own straps", Lines(alike));
    }

    [Fact]
    public void Table_of_errors_names_the_side_that_is_higher_or_longer()
    {
        var limit = new StudyLimit(new Response.OfMission(MissionQuantity.PowerOffResidual), false, null, 8);
        StudyFactor Both(GeometryInput input) => new(input, [0], ReportFixture.Study().LengthUnit);
        Assert.Equal("3 mm higher on the left",
            BuildErrorsSection.Change(new LimitMargin(limit, Both(GeometryInput.HangHeightDifference), -0.003)));
        Assert.Equal("2.5 mm longer on the right",
            BuildErrorsSection.Change(new LimitMargin(limit, Both(GeometryInput.StrapDifference), 0.0025)));
    }
}
