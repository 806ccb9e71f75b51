using FrameOpt.Model.Balance;
using MathNet.Numerics.RootFinding;

namespace FrameOpt.Model.Mission;

/// <summary>How quickly the throttle may be opened before the torque of spinning up the propeller takes the twist margin below a
/// bound.</summary>
/// <remarks>While the propeller spins up over a time t, from standstill at an even rate, the frame feels its steady torque and
/// I_p 2 pi n / t on top, but never more than the engine can give at the propeller. Source: torque is moment of inertia times angular
/// acceleration (Newton). From standstill is the worst: an engine that idles has less to gain.</remarks>
/// <param name="PhaseIndex">The phase it is judged in.</param>
/// <param name="LeastMargin">The bound on the twist margin.</param>
/// <param name="SteadyMargin">Twist margin of the phase as it is.</param>
/// <param name="ToRpm">The propeller's speed there.</param>
/// <param name="EngineTorqueNewtonMetres">The most the engine gives at the propeller; infinite when it is not described.</param>
/// <param name="EngineMargin">Twist margin at that torque; NaN when it is not known.</param>
/// <param name="ExtraNewtonMetres">The torque on top of the steady one at which the margin reaches the bound; infinite when the engine
/// cannot give it or no thumb is that quick, 0 when the steady torque is too much.</param>
/// <param name="ShortestSeconds">0: any time will do. Infinite: none will. NaN: the propeller's inertia is not known.</param>
public sealed record SpinUp(
    int PhaseIndex, double LeastMargin, double SteadyMargin, double ToRpm, double EngineTorqueNewtonMetres, double EngineMargin,
    double ExtraNewtonMetres, double ShortestSeconds)
{
    /// <summary>No thumb opens a throttle more quickly, s (own estimate).</summary>
    private const double QuickestSeconds = 0.1;

    /// <summary>Torques that are tried on the way up: a margin below the bound between two of them only is not seen.</summary>
    private const int Steps = 64;

    /// <summary>The torque is found to this, N·m.</summary>
    private const double Accuracy = 1e-9;

    private const int MaxIterations = 100;

    /// <summary>The phase it is judged in: one that is not settled, else at full throttle, else any; of these the one with the most
    /// torque. Null without a phase under power.</summary>
    public static int? PhaseOf(DesignEvaluation design)
    {
        int[] powered = [.. Enumerable.Range(0, design.Phases.Count).Where(p => design.Phases[p][PhaseQuantity.Torque] > 0)];
        if (powered.Length == 0)
            return null;
        Func<Phase, bool>[] preferred = [phase => !phase.IsSettled, phase => phase.Power is PhasePower.FullThrottle, _ => true];
        var wanted = preferred.First(counts => powered.Any(p => counts(design.Phases[p].Phase)));
        return powered.Where(p => wanted(design.Phases[p].Phase)).MaxBy(p => design.Phases[p][PhaseQuantity.Torque]);
    }

    /// <summary>The shortest time for a design that flies.</summary>
    /// <param name="mission">The model.</param>
    /// <param name="geometry">The design.</param>
    /// <param name="phase">Index of a phase under power.</param>
    /// <param name="leastMargin">The bound on its twist margin.</param>
    public static SpinUp Of(MissionModel mission, FrameGeometry geometry, int phase, double leastMargin)
    {
        var thrust = ThrustDirection.Of(geometry);
        var (machine, point) = (mission.Machine, mission.OperatingPoints[phase].For(thrust));
        double Margin(double extra)
        {
            var body = SuspendedBody.Of(machine, mission.Phases[phase], mission.Conditions[phase],
                point with { TorqueNewtonMetres = point.TorqueNewtonMetres + extra }, geometry, thrust);
            return body.Failure == FailureKind.None ? TwistMargin(mission.Wing, body, geometry) : 0;
        }

        var momentum = machine.Propeller.PolarInertia * 2 * Math.PI * point.Rpm / 60;
        var engine = machine.Engine is { } given
            ? given.AtPropeller(given.CrankTorque.Values.Max(), mission.Conditions[phase].Density)
            : double.PositiveInfinity;
        var spare = Math.Max(0, engine - point.TorqueNewtonMetres);
        var most = momentum > 0 ? Math.Min(spare, momentum / QuickestSeconds) : spare;
        var found = new SpinUp(phase, leastMargin, Margin(0), point.Rpm, engine, double.IsFinite(spare) ? Margin(spare) : double.NaN,
            double.PositiveInfinity, 0);
        if (found.SteadyMargin < leastMargin)
            return found with { ExtraNewtonMetres = 0, ShortestSeconds = double.PositiveInfinity };
        if (double.IsInfinity(most))
            return found with { ExtraNewtonMetres = double.NaN, ShortestSeconds = double.NaN };
        var over = Enumerable.Range(1, Steps).FirstOrDefault(step => Margin(most * step / Steps) < leastMargin);
        if (over == 0)
            return found;
        var (kept, broken) = (most * (over - 1) / Steps, most * over / Steps);
        var extra = Bisection.TryFindRoot(torque => Margin(torque) - leastMargin, kept, broken, Accuracy, MaxIterations, out var root)
            ? root : kept;
        return found with { ExtraNewtonMetres = extra, ShortestSeconds = momentum > 0 ? momentum / extra : double.NaN };
    }

    private static double TwistMargin(Wing wing, in SuspendedBody body, in FrameGeometry geometry)
    {
        var balance = RollYawBalance.Of(body, RiserStiffness.RollMetres(wing, geometry.SpacingMetres),
            RiserStiffness.YawMetres(wing, geometry.SpacingMetres), RestAttitude.Of(geometry, body.Pitch, body.Load));
        return balance.Failure == FailureKind.None
            ? balance.YawStiffness / Math.Abs(balance.WingYawMoment.At(geometry.OffsetMetres)) : 0;
    }
}
