using FrameOpt.Model.Propulsion;
using FrameOpt.Numerics;

namespace FrameOpt.Model;

/// <summary>
/// A propeller known from a static bench run: its two static coefficients give the level of the curves, its advance
/// ratio at zero thrust stretches them, and a shape fitted to one published propeller does the rest.
/// </summary>
/// <remarks>
/// With x = J/J0: CT/CT0 = (1 - x)(1 + 0.5164 x) and CP/CP0 = 1 - 0.0708 x - 0.0655 x² - 0.6576 x³, least squares over the
/// 19 measured points of DA4002 9 x 4.76 at 5038 rpm. Source of the points: J. B. Brandt, R. W. Deters, G. K. Ananda,
/// O. D. Dantsker, M. S. Selig, UIUC Propeller Database, volume 2; R. W. Deters, G. K. Ananda, M. S. Selig, "Reynolds Number
/// Effects on the Performance of Small-Scale Propellers", AIAA 2014-2151 (2014). The shape is our own.
/// </remarks>
public sealed record BenchPropeller : PropellerCurve
{
    /// <summary>Zero-thrust advance ratio over pitch/diameter: mean of the three published propellers.</summary>
    /// <remarks>
    /// Source: the same tunnel measurements, J0/(p/D) = 0.6966/0.663 (DA4002 9 x 4.76, extrapolated by 0.004 in J), 0.5189/0.438
    /// (DA4002 9 x 2.85, interpolated), 0.6624/0.692 (NR640, extrapolated by 0.03 in J); p/D from the measured blade angle at 0.75 R.
    /// </remarks>
    public const double PitchToZeroThrust = 1.064;

    /// <summary>The lowest of the three values behind <see cref="PitchToZeroThrust"/> (NR640).</summary>
    public const double LowestPitchToZeroThrust = 0.957;

    /// <summary>The highest of the three values behind <see cref="PitchToZeroThrust"/> (DA4002 9 x 2.85).</summary>
    public const double HighestPitchToZeroThrust = 1.185;

    /// <summary>Largest distance of the CT/CT0 shape from the points it is fitted to.</summary>
    public const double LargestThrustShapeError = 0.0062;

    /// <summary>Largest distance of the CP/CP0 shape from the points it is fitted to.</summary>
    public const double LargestPowerShapeError = 0.0080;

    /// <summary>A propeller of the built-in shape.</summary>
    /// <param name="staticThrustCoefficient">CT0 = CT at J = 0, above 0.</param>
    /// <param name="staticPowerCoefficient">CP0 = CP at J = 0, above 0.</param>
    /// <param name="zeroThrustAdvanceRatio">J0, where the thrust ends, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is not above 0.</exception>
    public BenchPropeller(double staticThrustCoefficient, double staticPowerCoefficient, double zeroThrustAdvanceRatio)
    {
        StaticThrustCoefficient = Positive(staticThrustCoefficient, nameof(staticThrustCoefficient));
        StaticPowerCoefficient = Positive(staticPowerCoefficient, nameof(staticPowerCoefficient));
        ZeroThrustAdvanceRatio = Positive(zeroThrustAdvanceRatio, nameof(zeroThrustAdvanceRatio));
    }

    /// <summary>CT0, the thrust coefficient at J = 0.</summary>
    public double StaticThrustCoefficient { get; }

    /// <summary>CP0, the power coefficient at J = 0.</summary>
    public double StaticPowerCoefficient { get; }

    /// <summary>J0, the advance ratio at which the thrust ends.</summary>
    public double ZeroThrustAdvanceRatio { get; }

    /// <inheritdoc/>
    public override double SmallestAdvanceRatio => 0;

    /// <inheritdoc/>
    public override double LargestAdvanceRatio => ZeroThrustAdvanceRatio;

    /// <summary>The propeller of one static bench run.</summary>
    /// <param name="revolutionsPerMinute">Of the propeller [rpm].</param>
    /// <param name="thrustNewtons">Static thrust [N].</param>
    /// <param name="torqueNewtonMetres">Torque at the propeller [N·m]; from power by <see cref="PropellerLoads.TorqueFromPower"/>.</param>
    /// <param name="densityKgPerM3">Air density during the run [kg/m³].</param>
    /// <param name="diameterMetres">Propeller diameter [m].</param>
    /// <param name="zeroThrustAdvanceRatio">J0: as known, or from <see cref="ZeroThrustFromPitch"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is not above 0.</exception>
    /// <remarks>Source: the definitions, CT0 = T/(rho n² D⁴) and CP0 = 2 pi Q/(rho n² D⁵).</remarks>
    public static BenchPropeller FromStaticBench(
        double revolutionsPerMinute, double thrustNewtons, double torqueNewtonMetres,
        double densityKgPerM3, double diameterMetres, double zeroThrustAdvanceRatio)
    {
        var n = Positive(revolutionsPerMinute, nameof(revolutionsPerMinute)) / 60;
        var diameter = Positive(diameterMetres, nameof(diameterMetres));
        var unitForce = Positive(densityKgPerM3, nameof(densityKgPerM3)) * n * n * Elementary.Pow(diameter, 4);
        return new BenchPropeller(
            thrustNewtons / unitForce,
            2 * Math.PI * torqueNewtonMetres / (unitForce * diameter),
            zeroThrustAdvanceRatio);
    }

    /// <summary>Zero-thrust advance ratio guessed from the pitch: good to about -10 % / +11 % (the spread of three propellers).</summary>
    /// <param name="pitchMetres">Geometric pitch at three quarters of the radius [m], above 0.</param>
    /// <param name="diameterMetres">Propeller diameter [m], above 0.</param>
    /// <remarks>Source: <see cref="PitchToZeroThrust"/>.</remarks>
    public static double ZeroThrustFromPitch(double pitchMetres, double diameterMetres) =>
        PitchToZeroThrust * pitchMetres / diameterMetres;

    /// <inheritdoc/>
    public override double ThrustCoefficient(double advanceRatio)
    {
        var x = PartOfZeroThrust(advanceRatio);
        return StaticThrustCoefficient * (1 - x) * (1 + 0.5164 * x);
    }

    /// <inheritdoc/>
    public override double PowerCoefficient(double advanceRatio)
    {
        var x = PartOfZeroThrust(advanceRatio);
        return StaticPowerCoefficient * (1 - x * (0.0708 + x * (0.0655 + x * 0.6576)));
    }

    /// <inheritdoc/>
    /// <remarks>CT0 (1 - x)(1 + 0.5164 x) = k J0² x², a quadratic.</remarks>
    public override double AdvanceRatioForThrust(double k)
    {
        var square = k * ZeroThrustAdvanceRatio * ZeroThrustAdvanceRatio / StaticThrustCoefficient;
        return ZeroThrustAdvanceRatio * Quadratic.FallingRoot(-0.5164 - square, -0.4836, 1);
    }

    /// <inheritdoc/>
    public override PropellerCurve Scaled(double thrust, double torque) =>
        new BenchPropeller(thrust * StaticThrustCoefficient, torque * StaticPowerCoefficient, ZeroThrustAdvanceRatio);

    /// <inheritdoc/>
    public override PropellerCurve Stretched(double factor) =>
        new BenchPropeller(StaticThrustCoefficient, StaticPowerCoefficient, factor * ZeroThrustAdvanceRatio);

    private double PartOfZeroThrust(double advanceRatio) =>
        advanceRatio >= 0 && advanceRatio <= ZeroThrustAdvanceRatio
            ? advanceRatio / ZeroThrustAdvanceRatio
            : throw new ArgumentOutOfRangeException(nameof(advanceRatio), advanceRatio, "outside 0 to zero thrust");

    private static double Positive(double value, string name) =>
        value > 0 && double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(name, value, "must be above 0");
}
