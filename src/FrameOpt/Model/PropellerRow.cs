namespace FrameOpt.Model;

/// <summary>One row of a propeller table: coefficients at one advance ratio, all dimensionless.</summary>
/// <param name="AdvanceRatio">J = V/(n D), 0 or more.</param>
/// <param name="ThrustCoefficient">CT = T/(rho n² D⁴); negative where the propeller brakes.</param>
/// <param name="PowerCoefficient">CP = P/(rho n³ D⁵); negative where the air drives the propeller.</param>
public readonly record struct PropellerRow(double AdvanceRatio, double ThrustCoefficient, double PowerCoefficient);
