using FrameOpt.Tests.Plans;
using FrameOpt.Tests.Reports;

namespace FrameOpt.Tests.StudyFile;

/// <summary>One slip in the worked study each: one mistake, in its line, that names what to do.</summary>
public class RefusalTests
{
    [Theory]
    // Names of keys
    [InlineData("turns: counter", "truns: counter", 15, "Did you mean `turns`?")]
    [InlineData("wing:\n", "wnig:\n", 33, "Did you mean `wing`?")]
    [InlineData("baseline: {", "baselin: {", 70, "Did you mean `baseline`?")]
    [InlineData("minimise: residual_rms", "minimize: residual_rms", 60, "Did you mean `minimise`?")]
    [InlineData("mass: 78 kg", "mass:78 kg", 8, "Put a space after the colon: `mass: 78 kg`.")]
    [InlineData("question: Which", "colour: Which", 4, "Remove it, or use one of")]
    [InlineData("    diameter: 1.30 m\n", "", 13, "Add `diameter:` under machine.propeller, with a length and its unit")]
    [InlineData("diameter: 1.30 m", "diameter:", 14, "Write a length and its unit (mm, m, cm, in, ft).")]
    [InlineData("format: 1\n", "format: 2\n", 2, "Write `format: 1`.")]
    [InlineData("title: One", "title: One\ntitle: One", 4, "Remove one of the two.")]
    // Masses
    [InlineData("name: clothing", "name: pilot", 9, "Give each its own.")]
    [InlineData("up: 0 mm, body: true", "up: 0 mm", 7, "Add `body: true` to the pilot")]
    [InlineData("body: true", "body: yes", 8, "Write `body: true`")]
    [InlineData("mass: 5 kg,", "", 9, "Weigh it and add its mass")]
    [InlineData("mass: 5 kg,", "mass: 5 kg, volume: 5 l,", 9, "Keep `mass`")]
    [InlineData("forward: -280 mm", "forward: -280 ft", 10, "Check the sign and the unit.")]
    [InlineData("mass: 5.5 kg", "mass: 0 kg", 11, "Check the sign and the unit.")]
    // Propeller, engine, pilot
    [InlineData("counter-clockwise", "anticlockwise", 15, "Did you mean `counter-clockwise`?")]
    [InlineData("  hang_line:", "  arms: movin\n  hang_line:", 12, "Did you mean `moving`?")]
    [InlineData("  hang_line:", "  arms: hooks\n  hang_line:", 12, "Write one of rigid, moving.")]
    [InlineData("counter-clockwise", "left", 15, "Write `turns: clockwise`")]
    [InlineData("[0.2, 0.0856, 0.05140]", "[0.2, 0.0514, 0.0086]", 22, "Check the order of the columns")]
    [InlineData("[0.2, 0.0856, 0.05140]", "[0.2, 0.0856]", 22, "advance ratio J, a plain number; thrust coefficient CT")]
    [InlineData("[0.2, 0.0856, 0.05140]", "[0.05, 0.0856, 0.05140]", 22, "Put the rows in order")]
    [InlineData("tilt: 5 deg", "tilt: 5 rad", 17, "Check the sign and the unit.")]
    [InlineData("efficiency: 0.96", "efficiency: 96", 29, "Check the sign and the unit.")]
    [InlineData("[5000 rpm, 18.5 N·m]", "[3000 rpm, 18.5 N·m]", 30, "Put the rows in order")]
    [InlineData("lean: 80 mm", "lean: 80 cm", 31, "Check the sign and the unit.")]
    // Wing
    [InlineData("line_spread: 3.8 m", "line_spread: 13.8 m", 38, "About a third of the span")]
    [InlineData("line_spread: 3.8 m", "line_spread: 10.8 m", 38, "About a third of the span")]
    [InlineData("[[0, 10.4 m/s", "[[0.1, 10.4 m/s", 41, "Let the first row begin with 0")]
    [InlineData("[1, 13.6 m/s", "[1, 9.6 m/s", 41, "Put the rows in order")]
    [InlineData("rows: [[0, 10.4 m/s, 6.2], [1, 13.6 m/s, 5.0]]", "rows: [[0, 10.4 m/s, 6.2]]", 41, "Add a row.")]
    [InlineData("yaw_leverage: { speed_factor: 0.17 s/m,", "yaw_leverage: { speed_factor: 17 s/m,", 44, "Check the sign and the unit.")]
    [InlineData("yaw_leverage: { speed_factor: 0.17 s/m,", "yaw_leverage: { speed_factor: 0.17 m/s,", 44, "s/m")]
    [InlineData("twist_share: 0.5 }", "twist_share: 1.5 }", 44, "Check the sign and the unit.")]
    [InlineData("twist_share: 0.5 }", "twist_shar: 0.5 }", 44, "Did you mean `twist_share`?")]
    [InlineData("yaw_leverage: { speed_factor: 0.17 s/m, twist_share: 0.5 }", "yaw_leverage: -0.6", 44, "Check the sign and the unit.")]
    [InlineData("yaw_leverage: { speed_factor: 0.17 s/m, twist_share: 0.5 }", "yaw_leverage:", 44,
        "Write speed_factor and twist_share under it")]
    [InlineData("yaw_leverage: { speed_factor: 0.17 s/m, twist_share: 0.5 }", "sideslip: { roll: -0.67 }", 44,
        "Add `yaw:` under wing.sideslip, with a plain number.")]
    // Mission
    [InlineData("power: engine off", "power: off", 51, "Write `engine off`.")]
    [InlineData("power: engine off", "power: false", 51, "Write `engine off`.")]
    [InlineData("power: engine off", "power: no", 51, "Write `engine off`.")]
    [InlineData("power: full throttle", "power: full throtle", 47, "Did you mean `full throttle`?")]
    [InlineData("power: full throttle", "power: 1840", 47, "Write a rotational speed and its unit (rpm).")]
    [InlineData("power: full throttle", "power: quick", 47, "Write `level`, `climb` and its rate in m/s")]
    [InlineData("power: climb 1.8 m/s", "power: climb", 48, "Write after it the rate of climb")]
    [InlineData("power: climb 1.8 m/s", "power: climb 1.8 m", 48, "m/s, km/h, kt")]
    [InlineData("power: climb 1.8 m/s", "power: climb -1.8 m/s", 48, "Check the sign")]
    [InlineData("weight: 0.05", "weight: -0.05", 47, "Check the sign")]
    [InlineData("fraction: 1,", "fraction: 1.2,", 50, "Check the sign")]
    [InlineData("fraction: 1,", "fraction: 1, airspeed: 12 m/s,", 50, "Keep one of the two.")]
    [InlineData("carried: 0.8", "carried: 0", 47, "Check the sign")]
    [InlineData("carried: 0.8", "carried: 0.8, settled: no", 47, "Write one of true, false.")]
    [InlineData("  launch: ", "  laun[ch]: ", 47, "Leave the brackets out.")]
    // Factors
    [InlineData("step: 5 mm", "step: 7 mm", 54, "Write `to: 478 mm`, or `step: 6.25 mm`.")]
    [InlineData("step: 5 mm", "step: 0 mm", 54, "Check the sign")]
    [InlineData("step: 5 mm", "step: 0.0001 mm", 54, "Write a larger step")]
    [InlineData("from: 380 mm", "from: 480 mm", 54, "Exchange the two")]
    [InlineData("from: 380 mm", "from: 0 mm", 54, "Check the sign")]
    [InlineData("from: 380 mm, to: 480 mm, step: 5 mm", "from: 380 mm, to: 480 mm", 53, "Add `step: 5 mm`")]
    [InlineData("values: [-3 deg,", "step: 1 deg, values: [-3 deg,", 57, "Keep `values`")]
    [InlineData("values: [-3 deg, -1.5", "values: [-3 deg, -3", 57, "Remove one of the two.")]
    [InlineData("values: [-3 deg, -1.5 deg, 0 deg, 1.5 deg, 3 deg]", "values: []", 57, "Give one or more")]
    [InlineData("lateral_offset:     {", "lateral_ofset:     {", 55, "Did you mean `lateral_offset`?")]
    // Objectives, limits, ranking, the rest
    [InlineData("minimise: residual_rms", "minimise: residual", 60, "`residual[cruise]`")]
    [InlineData("minimise: residual_rms", "minimise: residual_rsm", 60, "Did you mean `residual_rms`?")]
    [InlineData("minimise: residual_rms", "minimise: residual[criuse]", 60, "Did you mean `residual[cruise]`?")]
    [InlineData("minimise: residual_rms", "minimise: residual_rms[cruise]", 60, "Write `residual_rms` without a phase.")]
    [InlineData("minimise: residual_rms", "minimise: residual_rms\n    resolution: 5 N", 61, "N·m, N.m, Nm")]
    [InlineData("minimise: residual_rms", "minimise: residual_rms\n    maximise: residual_worst", 60, "Write one of the two")]
    [InlineData("at_most: 0.6 }", "at_most: 0.6 N }", 66, "Write 0.6.")]
    [InlineData("at_most: 0.6 }", "at_most: 0.6, at_least: 0.7 }", 66, "Exchange the two.")]
    [InlineData(", at_most: 0.6 }", " }", 66, "Add at_least or at_most")]
    [InlineData("response: effort_worst, at_most: 0.6", "response: \"residual[cruise]\", at_most: -1 N·m", 66, "Check the sign")]
    [InlineData("response: effort_worst, at_most: 0.6", "response: hang_point_load, at_most: 3 kN", 66,
        "Add strength with limit_load_factor and overhang under it")]
    [InlineData("method: exhaustive", "method: genetic", 68, "Write one of exhaustive, NSGA-II, NSGA-III.")]
    [InlineData("method: distance to ideal", "method: topsi", 69, "Did you mean `topsis`?")]
    [InlineData("residual_rms: 3,", "", 69, "Add `residual_rms: 1`.")]
    [InlineData("residual_rms: 3,", "residual_rms: -3,", 69, "Check the sign")]
    [InlineData("residual_rms: 3,", "residual_rms: 3, effort_worst: 1,", 69, "Remove it, or make it an objective.")]
    [InlineData("weights: { residual_rms: 3, weight_shift_authority[cruise]: 1, pitch_swing: 1",
        "weights: { residual_rms: 0, weight_shift_authority[cruise]: 0, pitch_swing: 0", 69, "weight above 0")]
    [InlineData("lateral_offset: 0 mm, suspension", "suspension", 70, "Add `lateral_offset:` under baseline, with a length")]
    [InlineData("baseline: { hang_point_spacing: 440 mm", "baseline: { hang_point_spacing: 0 mm", 70, "Check the sign")]
    [InlineData("search: {", "balanced_band: { phase: cruse, within: 5 N·m }\nsearch: {", 68, "Did you mean `cruise`?")]
    public void Slip_is_one_mistake_in_its_line_with_its_mend(string piece, string slip, int line, string fix)
    {
        var diagnostic = WorkedStudyText.OneDiagnostic(WorkedStudyText.With(piece, slip));
        Assert.Equal(line, diagnostic.Line);
        Assert.Contains(fix, diagnostic.Fix);
        Assert.StartsWith($"study.yaml line {line}, column {diagnostic.Column}: ", diagnostic.Text);
    }
}
