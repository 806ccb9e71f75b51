namespace FrameOpt.Tests.Model.Derivation;

/// <summary>How the wing answers the moments at the hang points in straight flight: a sideslip holds the yaw moment, and the roll moment
/// left over with that sideslip is the residual torque.</summary>
public static class StraightFlight
{
    // Roll moment over yaw moment of an arched wing in a sideslip, seen from the hang points, for each m/s of airspeed.
    private const double SpeedFactor = 0.17;

    // Share of the twist of the risers that the two half-wings follow in pitch.
    private const double TwistShare = 0.5;

    // Roll moment of an arched wing whose halves are pitched against each other, over q S b, for each radian of one half.
    private const double RollPerPitchOfHalves = 0.17;

    /// <summary>The quantities of one phase that follow from the wing's answer, by name and in the units of the table.</summary>
    public static IEnumerable<(string Name, double Value)> Figures(SuspendedBody body)
    {
        double Residual(SuspendedBody changed)
        {
            var changedBalance = new RiserBalance(changed);
            return changedBalance.WingRollMoment + YawPart(changedBalance, changed.Flight) + WingWeightPart(changedBalance);
        }

        var balance = new RiserBalance(body);
        var residual = Residual(body);
        yield return ("yaw_part", YawPart(balance, body.Flight));
        yield return ("yaw_leverage", YawPart(balance, body.Flight) / balance.WingYawMoment);
        yield return ("wing_weight_part", WingWeightPart(balance));
        yield return ("residual", residual);
        yield return ("pendulum_share", Residual(body with { ExtraRollMoment = 1 }) - residual);
        yield return ("lean", 1000 * Root.Between(-2, 2, lean => Residual(body with { Lean = lean })));
        yield return ("weight_shift_authority", Residual(body with { Lean = WorkedNumbers.LargestLean }) - residual);
        yield return ("turn_rate", 180 / Math.PI * TurnRate(residual, body.Flight));
    }

    /// <summary>The roll moment that comes with the yaw moment: from the sideslip that holds it and from the wing twisted by its
    /// risers.</summary>
    private static double YawPart(RiserBalance balance, WorkedFlight flight)
    {
        // In a sideslip from the right the wing turns its nose to the right and rolls left, by their fixed ratio.
        var yawOfSideslip = -balance.WingYawMoment;
        var rollOfSideslip = -SpeedFactor * flight.Airspeed * yawOfSideslip;

        // A body twisted nose right against the wing carries its right hang point aft: the front lines of the right half-wing tighten and
        // that half pitches nose down. The left half pitches nose up, and the wing rolls left.
        var aft = balance.Twist * balance.Spacing / 2;
        var pitchOfHalves = TwistShare * aft / WorkedNumbers.LineLength;
        var pressure = Math.Min(DynamicPressure(flight, flight.Airspeed), DynamicPressure(flight, flight.TrimAirspeed));
        var rollOfTwistedWing = -RollPerPitchOfHalves * pitchOfHalves * pressure * WorkedNumbers.WingArea * WorkedNumbers.WingSpan;
        return rollOfSideslip + rollOfTwistedWing;
    }

    /// <summary>The wing's own weight, moved to the side of the hang points by a small bank.</summary>
    private static double WingWeightPart(RiserBalance balance) =>
        WorkedNumbers.WingMass * WorkedNumbers.Gravity * (WorkedNumbers.LineLength * balance.Bank);

    /// <summary>Indicative: the wing at trim speed banks until its restoring moment holds the residual, and turns at g bank/V.</summary>
    private static double TurnRate(double residual, WorkedFlight flight)
    {
        var perCoefficient = DynamicPressure(flight, flight.TrimAirspeed) * WorkedNumbers.WingArea * WorkedNumbers.WingSpan;
        var bank = residual / (perCoefficient * WorkedNumbers.RollRestoring);
        return WorkedNumbers.Gravity * bank / flight.TrimAirspeed;
    }

    private static double DynamicPressure(WorkedFlight flight, double airspeed) => flight.Density * airspeed * airspeed / 2;
}
