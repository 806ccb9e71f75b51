using static FrameOpt.Model.Mission.PhaseResponses;

namespace FrameOpt.Model.Mission;

#pragma warning disable CS1591 // each row says in its own words what it is
/// <summary>A quantity of one phase: the rows of the catalogue, each with its name, unit, meaning and formula.</summary>
public sealed class PhaseQuantity : ResponseEntry
{
    private static readonly List<PhaseQuantity> rows = [];

    public static readonly PhaseQuantity Rpm = new(
        "rpm", "rpm", "propeller speed", Same((row, p) => row.Points[p].Rpm), "propeller speed");

    public static readonly PhaseQuantity Airspeed = new(
        "airspeed", "m/s", "true airspeed", Same((row, p) => row.Conditions[p].AirspeedMetresPerSecond));

    public static readonly PhaseQuantity Thrust = new("thrust", "N", "propeller thrust", Same((row, p) => row.Points[p].ThrustNewtons));

    public static readonly PhaseQuantity Torque = new(
        "torque", "N·m", "propeller torque, which the frame feels as reaction", Same((row, p) => row.Points[p].TorqueNewtonMetres));

    public static readonly PhaseQuantity BodyPitch = new(
        "body_pitch", "deg", "swing of the body under the hang points, pilot reclining +",
        Same((row, p) => row.Bodies[p].Pitch.Radians))
    { Sign = ResponseSign.Either };

    public static readonly PhaseQuantity RiserLoad = new(
        "riser_load", "N", "total load in both risers", Same((row, p) => row.Bodies[p].Load.Newtons));

    public static readonly PhaseQuantity LineLean = new(
        "line_lean", "deg", "lean of the lines, hang points forward of the wing +",
        Same((row, p) => row.Bodies[p].Load.LeanRadians))
    { Sign = ResponseSign.Either };

    public static readonly PhaseQuantity RollMoment = new(
        "roll_moment", "N·m", "roll moment of everything but the risers about the hang line, right side down +",
        Linear((row, p) => row.Bodies[p].Moments.Roll))
    { Sign = ResponseSign.Side };

    public static readonly PhaseQuantity YawMoment = new(
        "yaw_moment", "N·m", "yaw moment of everything but the risers about the hang line, nose right +",
        Linear((row, p) => row.Bodies[p].Moments.Yaw))
    { Sign = ResponseSign.Side };

    public static readonly PhaseQuantity BodyRoll = new(
        "body_roll", "deg", "roll of the body, right side down +",
        Linear((row, p) => row.Balances[p].BodyRoll))
    { Sign = ResponseSign.Side };

    public static readonly PhaseQuantity BodyYaw = new(
        "body_yaw", "deg", "yaw of the body (crab), nose right +",
        Linear((row, p) => row.Balances[p].BodyYaw))
    { Sign = ResponseSign.Side };

    public static readonly PhaseQuantity WingBank = new(
        "wing_bank", "deg", "bank of the wing under the thrust's side force, right +",
        Linear((row, p) => row.Balances[p].WingBank))
    { Sign = ResponseSign.Side };

    public static readonly PhaseQuantity WingRollMoment = new(
        "wing_roll_moment", "N·m", "roll moment that reaches the wing, to the right +",
        Linear((row, p) => row.Balances[p].WingRollMoment))
    { Sign = ResponseSign.Side };

    public static readonly PhaseQuantity WingYawMoment = new(
        "wing_yaw_moment", "N·m", "yaw moment that reaches the wing, to the right +",
        Linear((row, p) => row.Balances[p].WingYawMoment))
    { Sign = ResponseSign.Side };

    public static readonly PhaseQuantity PendulumShare = new(
        "pendulum_share", "", "change of residual torque per unit of roll moment on the body",
        Same((row, p) => row.Balances[p].PendulumShare))
    { Sign = ResponseSign.Either };

    public static readonly PhaseQuantity TwistMargin = new(
        "twist_margin", "", "yaw stiffness of the risers over the yaw moment in them; below 1 they twist", PhaseResponses.TwistMargin)
    { IsHigherBetter = true };

    public static readonly PhaseQuantity YawLeverage = new(
        "yaw_leverage", "", "roll moment that counts as much as a yaw moment of one",
        Same((row, p) => row.Bodies[p].Wing.Yaw))
    { Sign = ResponseSign.Either };

    public static readonly PhaseQuantity YawPart = new(
        "yaw_part", "N·m", "part of the residual torque from the yaw moment that reaches the wing, turns right +",
        Linear(PhaseResponses.YawPart))
    { Sign = ResponseSign.Side };

    public static readonly PhaseQuantity WingWeightPart = new(
        "wing_weight_part", "N·m", "part of the residual torque from the weight of the banked wing, turns right +",
        Linear(PhaseResponses.WingWeightPart))
    { Sign = ResponseSign.Side };

    public static readonly PhaseQuantity Residual = new(
        "residual", "N·m", "residual torque left to the pilot, turns right +",
        Linear(PhaseResponses.Residual), "residual torque")
    { Sign = ResponseSign.Side };

    public static readonly PhaseQuantity LoadRight = new("load_right", "N", "load in the right riser", Loads((right, _) => right));

    public static readonly PhaseQuantity LoadLeft = new("load_left", "N", "load in the left riser", Loads((_, left) => left));

    public static readonly PhaseQuantity LoadDifference = new(
        "load_difference", "N", "load in the right riser less that in the left",
        Loads((right, left) => right - left))
    { Sign = ResponseSign.Side };

    public static readonly PhaseQuantity Lean = new(
        "lean", "mm", "sideways shift of the pilot's body that cancels the residual torque, to the right +; unbounded where none does",
        Linear(PhaseResponses.Lean))
    { Sign = ResponseSign.Side, LargestRanked = 1000 };

    public static readonly PhaseQuantity Effort = new(
        "effort", "", "that shift over the largest the pilot can hold; above 1 it cannot be held", Magnitude(PhaseResponses.Effort))
    { LargestRanked = 10 };

    public static readonly PhaseQuantity WeightShiftAuthority = new(
        "weight_shift_authority", "N·m", "residual torque the pilot's largest lean can cancel",
        Same(PhaseResponses.WeightShiftAuthority))
    { Sign = ResponseSign.Either, IsHigherBetter = true };

    public static readonly PhaseQuantity TurnRate = new(
        "turn_rate", "deg/s", "turn rate if nothing is done (indicative), to the right +",
        Linear(PhaseResponses.TurnRate))
    { Sign = ResponseSign.Side };

    public static readonly PhaseQuantity TorqueMargin = new(
        "torque_margin", "", "torque the engine can give over the torque needed, at the propeller",
        Same((row, p) => row.Points[p].TorqueMargin))
    { Needs = ResponseNeed.Engine, IsHigherBetter = true };

    private readonly PhaseFormula formula;

    private PhaseQuantity(string name, string unit, string meaning, PhaseFormula formula, string? title = null)
        : base(name, unit, meaning, title, rows.Count)
    {
        this.formula = formula;
        rows.Add(this);
    }

    internal static IReadOnlyList<PhaseQuantity> Rows => rows;

    /// <summary>Its values over a row of lateral offsets, in its unit.</summary>
    /// <param name="row">Prepared, without failure.</param>
    /// <param name="phase">Index in the mission.</param>
    /// <param name="offsets">Lateral offsets in m.</param>
    /// <param name="values">As many as offsets.</param>
    public void Fill(MissionRow row, int phase, ReadOnlySpan<double> offsets, Span<double> values)
    {
        formula(row, phase, offsets, values);
        ToUnit(values);
    }

    /// <summary>Its value for the one design that was prepared, in its unit.</summary>
    public double Of(MissionRow row, int phase)
    {
        Span<double> value = stackalloc double[1];
        Fill(row, phase, [row.Geometry.OffsetMetres], value);
        return value[0];
    }
}
