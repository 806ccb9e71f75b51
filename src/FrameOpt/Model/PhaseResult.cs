namespace FrameOpt.Model;

/// <summary>Everything the model says of one phase of one design.</summary>
/// <param name="Phase">The phase.</param>
/// <param name="Values">By <see cref="PhaseQuantity"/>, in the unit of its <see cref="ResponseEntry"/>; infinite where a margin has no bound.</param>
public sealed record PhaseResult(Phase Phase, IReadOnlyList<double> Values)
{
    /// <summary>A residual torque of this size or less, in N·m, counts as flying straight.</summary>
    public const double StraightWithinNewtonMetres = 0.5;

    /// <summary>One quantity, in the unit of its <see cref="ResponseEntry"/>.</summary>
    public double this[PhaseQuantity quantity] => Values[(int)quantity];

    /// <summary>Which way it turns: left, right, or straight within <see cref="StraightWithinNewtonMetres"/>.</summary>
    public string Steers => SteersWith(this[PhaseQuantity.Residual]);

    /// <summary>Which way a residual torque turns: left, right, or straight within <see cref="StraightWithinNewtonMetres"/>.</summary>
    public static string SteersWith(double residualNewtonMetres) => Math.Abs(residualNewtonMetres) <= StraightWithinNewtonMetres ? "straight"
        : residualNewtonMetres > 0 ? "right" : "left";
}
