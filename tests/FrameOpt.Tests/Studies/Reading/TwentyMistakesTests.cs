using FrameOpt.Studies;

namespace FrameOpt.Tests.Studies.Reading;

/// <summary>A study with twenty planted mistakes: one run tells them all.</summary>
public class TwentyMistakesTests
{
    private const string Text = """
        format: 1
        title: Twenty mistakes
        colour: red
        machine:
          masses:
            - { name: pilot, mass: 78, forward: 20 mm, right: 0 mm, up: 0 mm, body: true }
            - { name: pilot, mass: 5 kg, forward: 20 mm, right: 0 mm, up: 50 mm }
            - { name: fuel, mass: 5,5 kg, forward: -220 mm, right: -20 mm, up: -140 mm }
          hang_line: { forward: -60 kg }
          propeller:
            diameter: 1300 m
            truns: clockwise
            hub: { forward: -420 mm, right: 0 mm }
            coefficients: [[0.0, 0.105, 0.052], [0.6, 0.0324, 0.0322]]
          pilot: { lean: 80 mm, drag_area: 0.45 mm, drag_centre: { forward: 0 mm, right: 0 mm, up: 100 mm } }
        wing:
          mass: NaN kg
          area: 25 m²
          span: 10.8 metre
          lines: 7.0 m
          line_spread: 3.8 m
          polar: { at: { mass: 115 kg, density: 1.225 kg/m³ }, rows: [[0, 10.4 m/s, 6.2], [1, 9.6 m/s, 5.0]] }
        mission:
          cruise: { weight: 0.6, power: levle }
          descent: { weight: 0.4 kg, power: off }
        factors:
          hang_point_spacing: { from: 380 mm, to: 480 mm, step: 7 mm }
          lateral_offset: { from: 60 mm, to: 0 mm, step: 1 mm }
          suspension_height: 150 mm
          thrust_line_angle: 0 deg
        objectives:
          - minimise: residual_rms
          - minimise: residual[criuse]
          - maximise: torque_margin_worst
        limits:
          - { response: effort_worst, at_most: 0.6 N }
        """;

    [Fact]
    public void All_twenty_are_reported_in_one_run_in_the_order_of_lines()
    {
        var reading = WorkedStudy.Read(Text);
        Assert.Null(reading.Study);
        // The comma in a { } ends the value: 5,5 kg is the value 5 and a key `5 kg`, which is told as two mistakes of line 8.
        int[] lines = [3, 6, 7, 8, 8, 9, 11, 12, 13, 15, 17, 19, 22, 24, 25, 25, 27, 28, 33, 34, 36];
        Assert.Equal(lines, reading.Mistakes.Select(mistake => mistake.Line));
    }

    [Fact]
    public void Every_message_says_what_and_how_to_mend_it()
    {
        foreach (var mistake in WorkedStudy.Read(Text).Mistakes)
        {
            Assert.Equal("study.yaml", mistake.File);
            Assert.EndsWith(".", mistake.What);
            Assert.Matches("[.?]$", mistake.Mend);
            Assert.Contains($"`{mistake.Found}`", mistake.Text);
            Assert.True(mistake.Text.Length < 400, mistake.Text);
        }
    }
}
