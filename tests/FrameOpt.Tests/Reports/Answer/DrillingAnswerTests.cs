using FrameOpt.Model;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Page;
using FrameOpt.Studies;
using FrameOpt.Tests.Model;

namespace FrameOpt.Tests.Reports.Answer;

/// <summary>Where to drill and how to check it. Figures as in <see cref="AnswerTests"/>.</summary>
public class DrillingAnswerTests
{
    private static string Description(StudyResult result, string title) =>
        string.Join("\n", RunAnswer.Of(result).Sections.Single(section => section.Title.StartsWith(title, StringComparison.Ordinal)).Lines);

    [Fact]
    public void Drilling_dimensions_are_measured_from_the_plane_of_symmetry()
    {
        var words = Description(ReportFixture.Report().Result, "Where to drill, seen from behind");
        Assert.Contains("LEFT hang point 195 mm to the left; RIGHT hang point 245 mm to the right", words); // 440/2 - 25 and 440/2 + 25
        Assert.Contains("↺ counter-clockwise", words);
        Assert.Contains("pushes the right side down", words);
    }

    [Fact]
    public void Pivots_of_arms_are_named_as_what_is_drilled()
    {
        const string pivots = "The hang points are the pivots of the arms";
        var study = ReportFixture.Study();
        Assert.DoesNotContain(pivots, Description(ReportFixture.Report(3, study).Result, "Where to drill"));
        study = study with { Machine = study.Machine with { Arms = RiserArms.Moving } };
        var moving = ReportFixture.Report(3, study).Result;
        Assert.Contains(pivots, Description(moving, "Where to drill"));
        Assert.StartsWith("THE ARMS MOVE: every hang point here is the PIVOT of an arm", RunAnswer.Of(moving).Headline);
        Assert.True(RunAnswer.Of(moving).IsWarning);
        Assert.DoesNotContain("THE ARMS MOVE", RunAnswer.Of(ReportFixture.Report().Result).Headline);
    }

    [Fact]
    public void Datum_and_hang_point_are_named_in_the_answer_on_every_drawing_and_on_the_test_card()
    {
        var study = ReportFixture.Study();
        study = study with
        {
            Machine = study.Machine with { Datum = "rear edge of the seat board", HangPoint = "centre of the carabiner hole" },
        };
        var report = ReportFixture.Report(3, study);
        const string both = "Datum: rear edge of the seat board. Hang point: centre of the carabiner hole.";
        Assert.Contains(both, Description(report.Result, "Where to drill"));
        var page = ReportPage.Of(report);
        Assert.Equal(3, page.Split(">Datum: rear edge of the seat board<").Length - 1);
        Assert.Equal(3, page.Split(">Hang point: centre of the carabiner hole<").Length - 1);
        Assert.Contains(both, page[page.IndexOf("Test card for the first flights", StringComparison.Ordinal)..]);
        Assert.Contains("Datum: not named in the study", ReportPage.Of(ReportFixture.Report()));
    }

    [Fact]
    public void An_offset_beyond_half_the_spacing_puts_the_left_hang_point_to_the_right()
    {
        var result = ReportFixture.Report().Result;
        var far = result.Chosen! with { Geometry = WorkedMachine.Geometry(400, 210, 150, 0) };
        Assert.Contains("LEFT hang point 10 mm to the right; RIGHT hang point 410 mm to the right",
            Description(result with { Chosen = far }, "Where to drill"));
    }

    [Fact]
    public void Inches_come_back_as_inches_with_millimetres_beside_them_at_the_drill()
    {
        var study = ReportFixture.Study();
        study = study with { Factors = [study.Factors[0] with { Unit = new DisplayUnit("in", 0.0254) }, .. study.Factors.Skip(1)] };
        var words = Description(ReportFixture.Report(3, study).Result, "Where to drill");
        Assert.Contains("9.6457 in (245.0 mm) to the right", words); // 245 / 25.4
    }

    [Fact]
    public void The_hang_check_names_the_side_that_reads_more_and_warns_of_the_straps()
    {
        // Hand calculation, bar on two supports: W = 113 x 9.80665 = 1108.15 N; 2 W (1.19469 - 25) mm / 440 mm = -119.9 N.
        var words = Description(ReportFixture.Report().Result, "Hang check");
        Assert.Contains(
            "With the engine off the LEFT scale reads more: right 494 N (50.4 kgf), left 614 N (62.6 kgf), difference 120 N (12.2 kgf)",
            words);
        Assert.Contains("440 mm apart at the beam", words);
        Assert.Contains("5 mm of unequal length", words);
    }

    [Fact]
    public void A_turned_thrust_line_is_said_so_that_it_is_not_built_the_wrong_way_round()
    {
        var result = ReportFixture.Report().Result;
        var words = Description(result with { Chosen = result.Chosen! with { Geometry = WorkedMachine.Geometry(440, 25, 150, -2) } },
            "Where to drill");
        Assert.Contains("thrust line, looking forward, points 2 deg to the pilot's left", words);
        Assert.Contains("its front end, on the pilot's side, moves towards the pilot's left", words);
    }

    // 113 kg x 9.80665 = 1108.15 N.
    [Fact]
    public void The_hang_check_says_what_both_scales_add_up_to() =>
        Assert.Contains("Both scales must add up to 1,108 N (113.0 kgf)", Description(ReportFixture.Report().Result, "Hang check"));
}
