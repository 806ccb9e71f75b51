namespace FrameOpt.Tests.Model.Derivation;

/// <summary>The worked balance of one design in one phase from beginning to end: every quantity by name, in the units of the
/// table.</summary>
public static class WorkedDerivation
{
    private const double Degrees = 180 / Math.PI;

    public static IReadOnlyDictionary<string, double> Of(WorkedDesign design, WorkedPhase phase)
    {
        var flight = WorkedFlight.Of(phase, design);
        var body = new SuspendedBody(flight, design);
        var balance = new RiserBalance(body);
        var (right, left) = balance.Tensions;
        var figures = new Dictionary<string, double>
        {
            ["rpm"] = flight.Rpm,
            ["airspeed"] = flight.Airspeed,
            ["thrust"] = flight.Thrust,
            ["torque"] = flight.Torque,
            ["body_pitch"] = Degrees * balance.Pitch,
            ["riser_load"] = balance.Load,
            ["line_lean"] = Degrees * balance.LineLean,
            ["roll_moment"] = balance.Moment.X,
            ["yaw_moment"] = balance.Moment.Z,
            ["body_roll"] = Degrees * balance.Roll,
            ["body_yaw"] = Degrees * balance.Yaw,
            ["wing_bank"] = Degrees * balance.Bank,
            ["wing_roll_moment"] = balance.WingRollMoment,
            ["wing_yaw_moment"] = balance.WingYawMoment,
            ["twist_margin"] = balance.YawStiffness / Math.Abs(balance.WingYawMoment),
            ["load_right"] = right,
            ["load_left"] = left,
        };
        foreach (var (name, value) in StraightFlight.Figures(body))
            figures.Add(name, value);
        return figures;
    }
}
