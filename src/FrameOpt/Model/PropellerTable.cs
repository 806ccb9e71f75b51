using FrameOpt.Numerics;

namespace FrameOpt.Model;

/// <summary>A measured propeller: rows of coefficients, linear between rows, no value outside them.</summary>
public sealed record PropellerTable : PropellerCurve
{
    private readonly LinearTable thrust;
    private readonly LinearTable power;

    /// <summary>A table of at least two rows.</summary>
    /// <param name="rows">Finite numbers, advance ratios 0 or more and strictly increasing.</param>
    /// <exception cref="ArgumentException">The rows are fewer than two, not finite, negative in J or not increasing.</exception>
    public PropellerTable(IReadOnlyList<PropellerRow> rows)
    {
        foreach (var row in rows)
        {
            if (!double.IsFinite(row.AdvanceRatio) || !double.IsFinite(row.ThrustCoefficient) || !double.IsFinite(row.PowerCoefficient))
                throw new ArgumentException("a propeller table holds finite numbers only", nameof(rows));
            if (row.AdvanceRatio < 0)
                throw new ArgumentException("an advance ratio is 0 or more", nameof(rows));
        }

        double[] advanceRatios = [.. rows.Select(row => row.AdvanceRatio)];
        thrust = new LinearTable(advanceRatios, [.. rows.Select(row => row.ThrustCoefficient)]);
        power = new LinearTable(advanceRatios, [.. rows.Select(row => row.PowerCoefficient)]);
    }

    private PropellerTable(LinearTable thrust, LinearTable power) => (this.thrust, this.power) = (thrust, power);

    /// <summary>The rows as given.</summary>
    public IReadOnlyList<PropellerRow> Rows =>
        [.. thrust.Arguments.Select((ratio, i) => new PropellerRow(ratio, thrust.Values[i], power.Values[i]))];

    /// <inheritdoc/>
    public override double SmallestAdvanceRatio => thrust.Smallest;

    /// <inheritdoc/>
    public override double LargestAdvanceRatio => thrust.Largest;

    /// <inheritdoc/>
    public override double ThrustCoefficient(double advanceRatio) => thrust.ValueAt(advanceRatio);

    /// <inheritdoc/>
    public override double PowerCoefficient(double advanceRatio) => power.ValueAt(advanceRatio);

    /// <inheritdoc/>
    public override double AdvanceRatioForThrust(double k) => thrust.FallsBelowSquare(k);

    /// <inheritdoc/>
    public override PropellerCurve Scaled(double thrust, double torque) =>
        new PropellerTable(this.thrust.Scaled(thrust), power.Scaled(torque));

    /// <inheritdoc/>
    public override PropellerCurve Stretched(double factor) =>
        new PropellerTable([.. Rows.Select(row => row with { AdvanceRatio = factor * row.AdvanceRatio })]);
}

/// <summary>One row of a propeller table: coefficients at one advance ratio, all dimensionless.</summary>
/// <param name="AdvanceRatio">J = V/(n D), 0 or more.</param>
/// <param name="ThrustCoefficient">CT = T/(rho n² D⁴); negative where the propeller brakes.</param>
/// <param name="PowerCoefficient">CP = P/(rho n³ D⁵); negative where the air drives the propeller.</param>
public readonly record struct PropellerRow(double AdvanceRatio, double ThrustCoefficient, double PowerCoefficient);
