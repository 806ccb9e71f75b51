using FrameOpt.Model;
using FrameOpt.Studies;
using FrameOpt.StudyFile;

namespace FrameOpt.Tests.StudyFile;

public sealed class LittleStartTests
{
    private const string Little =
        "power 16 kW, reduction 3, propeller 1.3 m, rpm 2400 rpm, thrust 62 kgf, frame 22 kg, pilot 80 kg, wing 25 m²";

    [Fact]
    public void Eight_figures_give_a_study_that_reads_and_follows_the_documented_relations()
    {
        var text = LittleStart.Write(Little, "--from", out var errors)!;
        Assert.Empty(errors);
        var study = StudyReader.Parse(System.Text.Encoding.UTF8.GetBytes(text), "study.yaml").Study!;
        // By hand: 16 kW at 2400 rpm is 63.66 N·m; times 0.97 61.75 N·m; CP0 = 2 pi Q/(rho n² D⁵) with n = 40 1/s and D⁵ = 3.7129 m⁵.
        var curve = (BenchPropeller)study.Machine.Propeller.Curve;
        var powerCoefficient = 2 * Math.PI * 61.75 / (1.225 * 1600 * 3.7129);
        Check.Close(powerCoefficient, curve.StaticPowerCoefficient, relative: 1e-3, because: "four digits by hand");
        Check.Close(1.064 * 0.62, curve.ZeroThrustAdvanceRatio, relative: 1e-3, because: "pitch 0.62 D, rounded to a millimetre");
        Check.Close(11.18, study.Wing.SpanMetres, absolute: 0.01, because: "sqrt(5 x 25) = 11.18");
        // 117.75 kg under 25 m² at a lift coefficient of 0.65: V² = 2 x 117.75 x 9.80665/(1.225 x 25 x 0.65) = 116.0, V = 10.77 m/s.
        Check.Close(10.77, study.Wing.Polar.Points[0].AirspeedMetresPerSecond, absolute: 0.01, because: "four digits by hand");
        Assert.Contains(new FigureOrigin("machine.propeller.bench.torque", "guess"), study.Origins);
        Assert.Contains(new FigureOrigin("machine.propeller.bench.thrust", "measured"), study.Origins);
    }

    [Theory]
    [InlineData("power 16 kW", "reduction is missing")]
    [InlineData("power 16 kg", "16 kg is a mass; power wants a power")]
    [InlineData("engine 16 kW", "This is none of power, reduction")]
    [InlineData("power 16 kW, power 17 kW", "power is given twice")]
    public void What_is_missing_or_wrong_is_said(string typed, string message)
    {
        Assert.Null(LittleStart.Write(typed, "--from", out var errors));
        Assert.Contains(message, string.Join(' ', errors.Select(error => error.Text)));
    }

    [Fact]
    public void A_thrust_that_no_propeller_gives_for_that_power_is_refused()
    {
        Assert.Null(LittleStart.Write(Little.Replace("62 kgf", "120 kgf"), "--from", out var errors));
        Assert.Contains("gives more thrust than any propeller", string.Join(' ', errors.Select(error => error.Text)));
    }
}
