namespace FrameOpt.Model;

/// <summary>What a phase fixes before any design is chosen.</summary>
/// <param name="Density">Of the air, kg/m³.</param>
/// <param name="AirspeedMetresPerSecond">True airspeed V.</param>
/// <param name="GlideRatio">G at that speed; NaN where none is needed and the polar has none.</param>
/// <param name="AllUpMassKilograms">Suspended mass and wing.</param>
/// <param name="WeightNewtons">W = n c m g, what hangs from the risers.</param>
/// <param name="DragNewtons">D_p, drag of pilot and frame.</param>
/// <param name="TrimMetresPerSecond">V0, true airspeed at trim with the phase's mass, load factor and density.</param>
/// <param name="SideslipLeverage">|Cl_beta|/Cn_beta of the wing.</param>
/// <param name="TwistedWingNewtons">0.34 eta min(q, q0) S b/b_top, which reduces the yaw leverage when divided by the riser
/// load.</param>
/// <param name="WingWeightNewtonMetres">n m_w g L, N·m for each radian of bank.</param>
/// <param name="Failure">Why the phase cannot be flown at all, or none.</param>
public readonly record struct PhaseConditions(
    double Density,
    double AirspeedMetresPerSecond,
    double GlideRatio,
    double AllUpMassKilograms,
    double WeightNewtons,
    double DragNewtons,
    double TrimMetresPerSecond,
    double SideslipLeverage,
    double TwistedWingNewtons,
    double WingWeightNewtonMetres,
    FailureKind Failure)
{
    /// <summary>Airspeed, glide ratio, weight, drag and the wing's share in the balance of a phase.</summary>
    /// <remarks>Source: steady flight at constant lift coefficient, V = V_ref sqrt(n m/m_ref rho_ref/rho).</remarks>
    public static PhaseConditions Of(Phase phase, Machine machine, Wing wing)
    {
        var density = Atmosphere.DensityKgPerM3(phase.AltitudeMetres, phase.TemperatureOffsetKelvin);
        var allUp = machine.MassKilograms + wing.MassKilograms;
        var polar = wing.Polar;
        var speedScale = Math.Sqrt(
            phase.LoadFactor * allUp / polar.ReferenceMassKilograms * polar.ReferenceDensity / density);
        var trim = speedScale * polar.Points[0].AirspeedMetresPerSecond;
        double airspeed, glide;
        switch (phase.Speed)
        {
            case FlightSpeed.AtFraction { Fraction: var fraction } when polar.AirspeedAtFraction.Covers(fraction):
                airspeed = speedScale * polar.AirspeedAtFraction.ValueAt(fraction);
                glide = polar.GlideAtFraction.ValueAt(fraction);
                break;
            case FlightSpeed.AtAirspeed { MetresPerSecond: var given }:
                airspeed = given;
                var atReference = given / speedScale;
                glide = polar.FractionAtAirspeed.Covers(atReference)
                    ? polar.GlideAtFraction.ValueAt(polar.FractionAtAirspeed.ValueAt(atReference))
                    : double.NaN;
                break;
            default:
                airspeed = double.NaN;
                glide = double.NaN;
                break;
        }

        var needsGlide = phase.Power is PhasePower.Level or PhasePower.Climb;
        var failed = double.IsNaN(airspeed) || (needsGlide && double.IsNaN(glide));
        return new PhaseConditions(
            density,
            airspeed,
            glide,
            allUp,
            phase.LoadFactor * phase.CarriedShare * machine.MassKilograms * Constants.StandardGravity,
            density * airspeed * airspeed * machine.Pilot.DragAreaSquareMetres / 2,
            trim,
            StraightFlight.SideslipLeverage(wing.YawLeverage, airspeed),
            StraightFlight.TwistedWingNewtons(wing, density, airspeed, trim),
            phase.LoadFactor * wing.MassKilograms * Constants.StandardGravity * wing.LineLengthMetres,
            failed ? FailureKind.SpeedOutsidePolar : FailureKind.None);
    }
}
