namespace FrameOpt.Tests.Model.Derivation;

/// <summary>Section 5 of docs/model.md: the wing answers a roll and a yaw moment at the hang points by a steady turn. Both add to its
/// rate.</summary>
public static class SteadyTurn
{
    private const double YawDamping = 0.07;

    /// <summary>The quantities of one phase that follow from the wing's answer, by name and in the units of the table.</summary>
    public static IEnumerable<(string Name, double Value)> Figures(SuspendedBody body)
    {
        double Residual(SuspendedBody changed) => ResidualTorque(new RiserBalance(changed), body.Flight);
        var residual = Residual(body);
        yield return ("residual", residual);
        yield return ("pendulum_share", Residual(body with { ExtraRollMoment = 1 }) - residual);
        yield return ("yaw_leverage", TurnByYaw(1, body.Flight) / TurnByRoll(1, body.Flight));
        yield return ("lean", 1000 * Root.Between(-2, 2, lean => Residual(body with { Lean = lean })));
        yield return ("weight_shift_authority", Residual(body with { Lean = WorkedNumbers.LargestLean }) - residual);
        yield return ("turn_rate", 180 / Math.PI * TurnByRoll(residual, body.Flight));
    }

    /// <summary>The roll moment that alone would turn the wing as fast as the roll and the yaw moment together.</summary>
    private static double ResidualTorque(RiserBalance balance, WorkedFlight flight)
    {
        var turn = TurnByRoll(balance.WingRollMoment, flight) + TurnByYaw(balance.WingYawMoment, flight);
        return turn / TurnByRoll(1, flight);
    }

    /// <summary>The wing banks until its restoring moment holds the roll moment. A wing at a small bank turns at g bank/V.</summary>
    private static double TurnByRoll(double moment, WorkedFlight flight)
    {
        var bank = moment / (PressureAreaSpan(flight) * WorkedNumbers.RollRestoring);
        return WorkedNumbers.Gravity * bank / flight.Airspeed;
    }

    /// <summary>The wing yaws until its damping, in proportion to the speed of its tips over the airspeed, holds the yaw moment.</summary>
    private static double TurnByYaw(double moment, WorkedFlight flight)
    {
        var tipSpeedRatio = moment / (PressureAreaSpan(flight) * YawDamping);
        return tipSpeedRatio * flight.Airspeed / (WorkedNumbers.WingSpan / 2);
    }

    private static double PressureAreaSpan(WorkedFlight flight) =>
        flight.Density * flight.Airspeed * flight.Airspeed / 2 * WorkedNumbers.WingArea * WorkedNumbers.WingSpan;
}
