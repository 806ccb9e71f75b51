using System.Text.RegularExpressions;
using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.Tests.Reports;

namespace FrameOpt.Tests.StudyFile.Sections;

/// <summary>A propeller given by one static bench run.</summary>
public class BenchTests
{
    private const string Run = "rpm: 2450 rpm, thrust: 62 kgf, torque: 60 N·m, pitch: 0.85 m, density: 1.2 kg/m³";

    [Fact]
    public void Static_coefficients_are_those_of_the_run()
    {
        var curve = WorkedStudyText.Right(Bench(Run)).Machine.Propeller.Curve;
        // By hand: n = 40.8333/s, rho n² D⁴ = 1.2 x 1667.361 x 2.8561 = 5714.58 N; 62 x 9.80665 N over it; 2 pi 60 N·m over it and 1.3 m.
        Check.Close(0.106397, curve.ThrustCoefficient(0), relative: 1e-4, because: "worked by hand to five or six digits");
        Check.Close(0.050746, curve.PowerCoefficient(0), relative: 1e-4, because: "worked by hand to five or six digits");
    }

    [Fact]
    public void Power_at_that_speed_says_the_same_as_torque()
    {
        // 60 N·m at 2450 rpm: 60 x 2 pi x 40.8333 = 15393.8 W.
        var (torque, power) = (WorkedStudyText.Right(Bench(Run)), WorkedStudyText.Right(
            Bench(Run.Replace("torque: 60 N·m", "power: 15.3938 kW"))));
        Check.Close(torque.Machine.Propeller.Curve.PowerCoefficient(0), power.Machine.Propeller.Curve.PowerCoefficient(0), relative: 1e-5,
            because: "the power is given to six digits");
    }

    [Fact]
    public void Zero_thrust_from_the_pitch_is_an_assumption_and_a_given_one_wins()
    {
        Study Of(string text) => WorkedStudyText.Right(Bench(text));
        const string what = "advance ratio at which the propeller's thrust ends";
        Assert.Contains("UIUC Propeller Database", Assert.Single(Of(Run).Assumptions, a => a.What == what).Source);
        var given = Of(Run + ", zero_thrust_advance_ratio: 0.8");
        Assert.DoesNotContain(given.Assumptions, a => a.What == what);
        Check.Close(0.8, given.Machine.Propeller.Curve.LargestAdvanceRatio, relative: 1e-15, because: "given");
    }

    [Fact]
    public void Density_left_out_is_the_standard_one_and_listed() =>
        Assert.Single(WorkedStudyText.Right(Bench(Run.Replace(", density: 1.2 kg/m³", ""))).Assumptions, a =>
            a.What == "air density of the bench run" && a.Value == "1.225 kg/m³");

    [Theory]
    [InlineData("torque: 60 N·m", "torque: 60 N·m, power: 15 kW", "Remove one of the two.")]
    [InlineData("torque: 60 N·m, ", "", "at the propeller, not at the crank")]
    [InlineData("pitch: 0.85 m, ", "", "Add the pitch that is stamped on the propeller")]
    [InlineData("thrust: 62 kgf", "thrust: 162 kgf", "not of the crank")]
    [InlineData("torque: 60 N·m", "torque: 22 N·m", "not of the crank")]
    [InlineData("thrust: 62 kgf", "thrust: 62 kg", "62 kg", true)]
    public void Slip_in_a_bench_run_is_told(string piece, string slip, string fix, bool inWhat = false)
    {
        Assert.Contains(piece, Run);
        var diagnostic = WorkedStudyText.OneDiagnostic(Bench(Run.Replace(piece, slip)));
        Assert.Equal(19, diagnostic.Line);
        Assert.Contains(fix, inWhat ? diagnostic.Message : diagnostic.Fix);
    }

    [Fact]
    public void Both_ways_or_neither_is_a_mistake()
    {
        Assert.Contains("Remove one", WorkedStudyText.OneDiagnostic(
            WorkedStudyText.With("    coefficients:", $"    bench: {{ {Run} }}\n    coefficients:")).Fix);
        Assert.Contains("Add `bench:` under machine.propeller, with rpm, thrust, torque and pitch",
            WorkedStudyText.OneDiagnostic(Bench(Run).Replace("    bench:", "    #")).Fix);
    }

    private static string Bench(string figures) =>
        Regex.Replace(WorkedStudyText.Text, "    coefficients:[^\n]*\n(      - [^\n]*\n)+", $"    bench: {{ {figures} }}\n");
}
