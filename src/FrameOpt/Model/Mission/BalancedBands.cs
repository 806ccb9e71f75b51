namespace FrameOpt.Model.Mission;

/// <summary>Where over the propeller's speed range a design leaves little to hold, at the airspeed of one phase.</summary>
/// <remarks>
/// The phase keeps its airspeed, air, load factor and carried share, and whether it has settled; its pitch rate is taken as 0 and its
/// power as a given rpm. The range is what the propeller's curve covers at that airspeed and, with an engine described, the rpm of its
/// table. Whether the engine could give the torque is not asked: the band is a property of the geometry. Without an upper end the range
/// stops where the tips reach 340 m/s, about the speed of sound.
/// </remarks>
public sealed class BalancedBands
{
    private const int Steps = 240;

    /// <summary>A step of the scan, some 10 rpm, halved so often is far below 0.1 rpm.</summary>
    private const int Halvings = 20;

    private const double TipSpeedMetresPerSecond = 340;

    private readonly MissionModel mission;
    private readonly Machine machine;
    private readonly Phase phase;
    private readonly double[] scan;

    /// <summary>For each speed of the scan the row that computes it, one a thread.</summary>
    private readonly ThreadLocal<MissionRow[]> rows;

    /// <summary>Makes the speeds ready; what they need does not depend on the design.</summary>
    /// <param name="mission">The model.</param>
    /// <param name="phaseIndex">The phase, from 0.</param>
    public BalancedBands(MissionModel mission, int phaseIndex)
    {
        this.mission = mission;
        machine = mission.Machine with { Engine = null };
        phase = mission.Phases[phaseIndex] with
        {
            PitchRateRadiansPerSecond = 0,
            Settled = mission.Phases[phaseIndex].IsSettled,
        };
        var (low, high) = Range(mission, phaseIndex);
        scan = low < high ? [.. Enumerable.Range(0, Steps + 1).Select(i => low + (high - low) * i / Steps)] : [];
        var flights = Array.ConvertAll(scan, Flight);
        rows = new(() => Array.ConvertAll(flights, flight => new MissionRow(flight)));
    }

    /// <summary>Residual and torque at 241 propeller speeds evenly over the range; empty when the range is.</summary>
    /// <param name="geometry">The design.</param>
    public IReadOnlyList<ResidualPoint> Curve(FrameGeometry geometry)
    {
        var ofThread = rows.Value!;
        return [.. scan.Select((rpm, i) => At(rpm, ofThread[i], geometry))];
    }

    /// <summary>The ranges of propeller speed in which the residual stays within a limit, from low to high; empty when there are
    /// none.</summary>
    /// <param name="geometry">The design.</param>
    /// <param name="withinNewtonMetres">Largest residual torque either way, N·m, above 0.</param>
    public IReadOnlyList<BalancedBand> Find(FrameGeometry geometry, double withinNewtonMetres) =>
        Find(geometry, Curve(geometry), withinNewtonMetres);

    /// <summary>The same, from a curve at hand.</summary>
    /// <param name="geometry">The design.</param>
    /// <param name="curve">Its <see cref="Curve"/>.</param>
    /// <param name="withinNewtonMetres">Largest residual torque either way, N·m, above 0.</param>
    /// <remarks>Found on the curve and between two of its points where the residual changes sign, so a band narrower than a step that
    /// touches the limit without crossing zero is missed; ends by halving, far below 0.1 rpm.</remarks>
    public IReadOnlyList<BalancedBand> Find(FrameGeometry geometry, IReadOnlyList<ResidualPoint> curve, double withinNewtonMetres)
    {
        double Residual(double rpm) => At(rpm, new MissionRow(Flight(rpm)), geometry).ResidualNewtonMetres;
        bool Inside(double rpm) => Math.Abs(Residual(rpm)) <= withinNewtonMetres;
        var points = WithSignChanges(Residual, curve);
        var bands = new List<BalancedBand>();
        double? from = null;
        for (var i = 0; i < points.Count; i++)
        {
            var inside = Math.Abs(points[i].Residual) <= withinNewtonMetres;
            if (inside && from is null)
                from = i == 0 ? points[0].Rpm : Edge(Inside, points[i].Rpm, points[i - 1].Rpm);
            if (from is { } start && (!inside || i == points.Count - 1))
            {
                bands.Add(new BalancedBand(start, inside ? points[i].Rpm : Edge(Inside, points[i - 1].Rpm, points[i].Rpm)));
                from = null;
            }
        }

        return bands;
    }

    /// <summary>The speeds of the scan, and between two of opposite sign the one where the residual is zero: a band may be narrower than a
    /// step.</summary>
    private static List<(double Rpm, double Residual)> WithSignChanges(Func<double, double> residual, IReadOnlyList<ResidualPoint> curve)
    {
        var points = new List<(double, double)>();
        for (var i = 0; i < curve.Count; i++)
        {
            if (i > 0 && curve[i - 1].ResidualNewtonMetres * curve[i].ResidualNewtonMetres < 0)
            {
                var sign = Math.Sign(curve[i - 1].ResidualNewtonMetres);
                points.Add((Edge(rpm => residual(rpm) * sign > 0, curve[i - 1].Rpm, curve[i].Rpm), 0));
            }

            points.Add((curve[i].Rpm, curve[i].ResidualNewtonMetres));
        }

        return points;
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

    private static (double Low, double High) Range(MissionModel mission, int phaseIndex)
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

    /// <summary>The phase's airspeed at any propeller speed.</summary>
    private MissionModel Flight(double rpm) =>
        new(machine, mission.Wing, [phase with { Power = new PhasePower.AtRpm(rpm) }], ResponseReferences.None);

    private static ResidualPoint At(double rpm, MissionRow row, FrameGeometry geometry) =>
        row.PrepareDesign(geometry).Kind == FailureKind.None
            ? new ResidualPoint(rpm, PhaseQuantity.Residual.Of(row, 0), PhaseQuantity.Torque.Of(row, 0))
            : new ResidualPoint(rpm, double.NaN, double.NaN);
}

/// <summary>A range of propeller speed in which the residual torque stays within a limit.</summary>
/// <param name="FromRpm">Lower end.</param>
/// <param name="ToRpm">Upper end.</param>
public sealed record BalancedBand(double FromRpm, double ToRpm);

/// <summary>What is left to the pilot at one propeller speed.</summary>
/// <param name="Rpm">Of the propeller.</param>
/// <param name="ResidualNewtonMetres">Residual torque, turns right +; NaN where the design cannot fly.</param>
/// <param name="TorqueNewtonMetres">Torque the propeller takes there; NaN where the design cannot fly.</param>
public sealed record ResidualPoint(double Rpm, double ResidualNewtonMetres, double TorqueNewtonMetres);
