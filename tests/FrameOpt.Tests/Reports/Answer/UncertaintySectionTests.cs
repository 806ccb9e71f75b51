using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Tests.Reports.Answer;

/// <summary>How sure an answer is, in words, on a result made up by hand.</summary>
public class UncertaintySectionTests
{
    private const int Cruise = 2;
    private static readonly StudyResult run = ReportFixture.Report().Result;

    [Fact]
    public void Verdict_says_in_how_many_cases_which_limit_fails_most_and_what_to_measure_first()
    {
        var lines = UncertaintySection.Of(run.Study, MadeUp()).Lines;
        Assert.Equal(
            [
                "This design meets every limit in 21 of 100 cases, least often the largest effort in any settled phase at most 0.455 "
                    + "(41 of 100); the pilot can hold every settled phase in more than 99 of 100 cases.",
                "MEASURE THIS FIRST: the pilot's seat, sideways. Between 12.8 mm to the left and 12.8 mm to the right (8 of 10 cases) the "
                    + "residual torque in cruise goes from 4.7 N·m left to 7.0 N·m right. Then: torque of the propeller (2.0 N·m).",
                "A case is one way in which the numbers of the study may really be: 2,048 were computed, and these shares are good to 2 "
                    + "in 100 (docs/noise.md).",
            ],
            lines);
    }

    [Fact]
    public void Terminal_answer_has_the_verdict_before_anything_else_and_the_bars_before_the_limits()
    {
        var titles = RunAnswer.Of(run with { Uncertainty = MadeUp() }).Sections.Select(section => section.Title).ToList();
        Assert.Equal("How sure is this?", titles[0]);
        Assert.True(titles.IndexOf("What moves it most: each uncertain number alone") < titles.IndexOf("Limits"));
        Assert.Contains("Residual torque and effort over the cases", titles);
    }

    [Fact]
    public void Bars_have_a_row_for_each_end_below_the_design_as_drawn()
    {
        var section = Section("What moves it most", run with { Uncertainty = MadeUp() });
        var rows = section.Table!.Rows;
        Assert.Equal(1 + 2 * 2, rows.Count);
        Assert.Equal(("as drawn", "nothing"), (rows[0][0], rows[0][1]));
        Assert.Equal(("the pilot's seat, sideways", "12.8 mm to the left", "4.7 N·m left"), (rows[1][0], rows[1][1], rows[1][2 + Cruise]));
        Assert.Equal("7.0 N·m right", rows[2][2 + Cruise]);
        // The fixture's second design is 425 mm wide with an offset of 11 mm; height and angle are those of the first.
        Assert.Equal("spacing 425 mm, lateral offset 11 mm right", rows[1][^1]);
        Assert.Equal("the same", rows[3][^1]);
        Assert.Contains("Another design of the front would be the best with one of these off by so much: the pilot's seat, sideways.",
            section.Lines);
    }

    [Fact]
    public void Number_with_which_the_design_cannot_fly_says_so_and_comes_first()
    {
        var uncertainty = MadeUp();
        var failing = uncertainty.Bars[0] with
        {
            Low = ReportFixture.Failing(ReportFixture.WorkedGeometry, FrameOpt.Model.FailureKind.RiserTwist, 0),
        };
        Assert.True(double.IsPositiveInfinity(failing.Moves(Cruise)));
        var answer = RunAnswer.Of(run with { Uncertainty = uncertainty with { Bars = [failing, .. uncertainty.Bars.Skip(1)] } });
        Assert.Contains("from one with which it cannot fly to 7.0 N·m right", answer.Sections[0].Lines[1]);
    }

    [Fact]
    public void Each_limit_says_in_how_many_cases_it_is_met()
    {
        var table = Section("Limits", run with { Uncertainty = MadeUp() }).Table!;
        var column = table.Headers.ToList().IndexOf("met in, of the cases");
        Assert.Equal(["57 of 100", "41 of 100"], table.Rows.Select(row => row[column]));
    }

    [Fact]
    public void Phases_have_10_50_and_90_percent_points_and_no_effort_before_they_have_settled()
    {
        var rows = Section("Residual torque and effort", run with { Uncertainty = MadeUp() }).Table!.Rows;
        Assert.Equal(["cruise", "5.2 N·m left", "1.0 N·m right", "7.3 N·m right", "0.02", "0.10", "0.25"], rows[Cruise]);
        Assert.Equal(["not settled", "not settled", "not settled"], rows[0].Skip(4));
    }

    [Fact]
    public void Limit_met_least_often_names_what_moves_it_most_where_that_is_another_number()
    {
        var uncertainty = MadeUp();
        DesignEvaluation With(double effort)
        {
            var mission = run.Chosen!.Mission.ToArray();
            mission[MissionQuantity.EffortWorst.Index] = effort;
            return run.Chosen with { Mission = mission };
        }

        var torque = uncertainty.Bars[1] with { Low = With(0.3), High = With(double.PositiveInfinity) };
        Assert.EndsWith(" The largest effort in any settled phase depends most on torque of the propeller: 0.30 to unbounded.",
            UncertaintySection.Of(run.Study, uncertainty with { Bars = [uncertainty.Bars[0], torque] }).Lines[1]);
    }

    [Fact]
    public void No_noise_is_said_once()
    {
        var exact = run with { Study = run.Study with { Noise = NoiseSetting.None }, Uncertainty = MadeUp() with { Bars = [] } };
        var lines = RunAnswer.Of(exact).Sections.SelectMany(section => section.Lines).ToList();
        Assert.Single(lines, line => line.Contains("noise: none", StringComparison.Ordinal));
        Assert.DoesNotContain("met in, of the cases", Section("Limits", exact).Table!.Headers);
    }

    [Fact]
    public void Study_without_limits_has_only_what_the_pilot_can_hold() => Assert.StartsWith(
        "The pilot can hold every settled phase in more than 99 of 100 cases.",
        UncertaintySection.Of(run.Study with { Limits = [] }, MadeUp()).Lines[0]);

    [Theory]
    [InlineData(0, "0 of 100")]
    [InlineData(0.0005, "fewer than 1 of 100")]
    [InlineData(0.9995, "more than 99 of 100")]
    [InlineData(1, "100 of 100")]
    public void All_and_none_are_said_only_where_it_is_so(double share, string words) =>
        Assert.Equal(words, NoiseText.OfHundred(share));

    private static AnswerSection Section(string title, StudyResult result) =>
        RunAnswer.Of(result).Sections.First(section => section.Title.StartsWith(title, StringComparison.Ordinal));

    private static UncertaintyResult MadeUp()
    {
        DesignEvaluation Cruising(double residual) => run.Chosen!.With(Cruise, PhaseQuantity.Residual, residual);
        var points = new PhaseSpread(new Percentiles(-5.2, 1.0, 7.3), new Percentiles(0.02, 0.10, 0.25));
        return new UncertaintyResult(
            run.Study.Noise,
            new SampleSummary(2048, new Estimate(0.212, 0.0066), [new Estimate(0.57, 0.006), new Estimate(0.409, 0.005)],
                new Estimate(0.998, 0.001), [.. run.Study.Mission.Select(_ => points)]),
            [
                new NoiseBar(NoiseSource.SeatRight, -0.0128, 0.0128, Cruising(-4.7), Cruising(7.0), run.Front[1], null),
                new NoiseBar(NoiseSource.PropellerTorque, -0.064, 0.064, Cruising(-0.5), Cruising(1.5), null, null),
            ]);
    }
}
