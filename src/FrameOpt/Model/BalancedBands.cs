namespace FrameOpt.Model;

/// <summary>Where over the propeller's speed range a design leaves little to hold, at the airspeed of one phase.</summary>
/// <remarks>
/// The phase keeps its airspeed, air, load factor and carried share; its pitch rate is taken as 0 and its power as a given rpm. The range is what
/// the propeller's curve covers at that airspeed and, with an engine described, the rpm of its table. Whether the engine could give the torque is
/// not asked: the band is a property of the geometry. Without an upper end the range stops where the tips reach 340 m/s, about the speed of sound.
/// </remarks>
public static class BalancedBands
{
    private const int Steps = 240;
    private const int Halvings = 40;
    private const double TipSpeedMetresPerSecond = 340;

    /// <summary>The ranges of propeller speed in which the residual stays within a limit, from low to high; empty when there are none.</summary>
    /// <param name="mission">The model.</param>
    /// <param name="geometry">The design.</param>
    /// <param name="phaseIndex">The phase, from 0.</param>
    /// <param name="withinNewtonMetres">Largest residual torque either way, N·m, above 0.</param>
    /// <remarks>Found on <see cref="Curve"/> and between two of its points where the residual changes sign, so a band narrower than a step that
    /// touches the limit without crossing zero is missed; ends by halving, far below 0.1 rpm.</remarks>
    public static IReadOnlyList<BalancedBand> Find(MissionModel mission, FrameGeometry geometry, int phaseIndex, double withinNewtonMetres)
    {
        var flight = new FlightAtRpm(mission, geometry, phaseIndex);
        bool Inside(double rpm) => Math.Abs(flight.At(rpm).ResidualNewtonMetres) <= withinNewtonMetres;
        var rpms = WithSignChanges(flight, Scan(flight));
        var bands = new List<BalancedBand>();
        double? from = null;
        for (var i = 0; i < rpms.Count; i++)
        {
            var inside = Inside(rpms[i]);
            if (inside && from is null)
                from = i == 0 ? rpms[0] : Edge(Inside, rpms[i], rpms[i - 1]);
            if (from is { } start && (!inside || i == rpms.Count - 1))
            {
                bands.Add(new BalancedBand(start, inside ? rpms[i] : Edge(Inside, rpms[i - 1], rpms[i])));
                from = null;
            }
        }

        return bands;
    }

    /// <summary>Residual and torque at 241 propeller speeds evenly over the range; empty when the range is.</summary>
    /// <param name="mission">The model.</param>
    /// <param name="geometry">The design.</param>
    /// <param name="phaseIndex">The phase, from 0.</param>
    public static IReadOnlyList<ResidualPoint> Curve(MissionModel mission, FrameGeometry geometry, int phaseIndex) =>
        Scan(new FlightAtRpm(mission, geometry, phaseIndex));

    private static IReadOnlyList<ResidualPoint> Scan(FlightAtRpm flight)
    {
        var (low, high) = flight.Range;
        return low < high
            ? [.. Enumerable.Range(0, Steps + 1).Select(i => flight.At(low + (high - low) * i / Steps))]
            : [];
    }

    /// <summary>The speeds of the scan, and between two of opposite sign the one where the residual is zero: a band may be narrower than a step.</summary>
    private static List<double> WithSignChanges(FlightAtRpm flight, IReadOnlyList<ResidualPoint> scan)
    {
        var rpms = new List<double>();
        for (var i = 0; i < scan.Count; i++)
        {
            if (i > 0 && scan[i - 1].ResidualNewtonMetres * scan[i].ResidualNewtonMetres < 0)
            {
                var sign = Math.Sign(scan[i - 1].ResidualNewtonMetres);
                rpms.Add(Edge(rpm => flight.At(rpm).ResidualNewtonMetres * sign > 0, scan[i - 1].Rpm, scan[i].Rpm));
            }

            rpms.Add(scan[i].Rpm);
        }

        return rpms;
    }

    /// <summary>The last speed on the way from one that meets a condition to one that does not.</summary>
    private static double Edge(Func<double, bool> meets, double yes, double no)
    {
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (yes + no) / 2;
            if (meets(middle))
                yes = middle;
            else
                no = middle;
        }

        return yes;
    }

    /// <summary>The design flown at the phase's airspeed and any propeller speed.</summary>
    private sealed class FlightAtRpm(MissionModel mission, FrameGeometry geometry, int phaseIndex)
    {
        private readonly Machine machine = mission.Machine with { Engine = null };
        private readonly Phase phase = mission.Phases[phaseIndex] with { PitchRateRadiansPerSecond = 0 };

        public (double Low, double High) Range
        {
            get
            {
                var propeller = mission.Machine.Propeller;
                var perRatio = 60 * mission.Conditions[phaseIndex].AirspeedMetresPerSecond / propeller.DiameterMetres;
                var low = perRatio / propeller.Curve.LargestAdvanceRatio;
                var high = Math.Min(
                    perRatio / propeller.Curve.SmallestAdvanceRatio, 60 * TipSpeedMetresPerSecond / (Math.PI * propeller.DiameterMetres));
                return mission.Machine.Engine is { } engine
                    ? (Math.Max(low, engine.CrankTorque.Smallest / engine.Reduction), Math.Min(high, engine.CrankTorque.Largest / engine.Reduction))
                    : (low, high);
            }
        }

        public ResidualPoint At(double rpm)
        {
            var flight = new MissionModel(machine, mission.Wing, [phase with { Power = new PhasePower.AtRpm(rpm) }], ResponseReferences.None);
            var design = flight.Evaluate(geometry);
            return design.Failure is null
                ? new ResidualPoint(rpm, design.Phases[0][PhaseQuantity.Residual], design.Phases[0][PhaseQuantity.Torque])
                : new ResidualPoint(rpm, double.NaN, double.NaN);
        }
    }
}
