using static FrameOpt.Model.Mission.MissionResponses;

namespace FrameOpt.Model.Mission;

#pragma warning disable CS1591 // each row says in its own words what it is
/// <summary>A response of the whole mission: the rows of the catalogue, each with its name, unit, meaning and formula.</summary>
public sealed class MissionQuantity : ResponseEntry
{
    private static readonly List<MissionQuantity> rows = [];

    public static readonly MissionQuantity ResidualRms = new(
        "residual_rms", "typical residual torque (rms)", "N·m",
        "weighted root mean square of the residual torque over the mission", MissionResponses.ResidualRms);

    public static readonly MissionQuantity ResidualWorst = new(
        "residual_worst", "largest residual torque", "N·m",
        "largest residual torque of the weighted phases, either way", Largest(Weighted, PhaseResponses.Residual));

    public static readonly MissionQuantity EffortWorst = new(
        "effort_worst", "largest effort in any settled phase", "",
        "largest effort of all settled phases, engine off included", Largest(Settled, PhaseResponses.Effort))
    { LargestRanked = 10 };

    public static readonly MissionQuantity PowerOffResidual = new(
        "power_off_residual", "residual torque with the engine off", "N·m",
        "largest residual torque with the engine off, either way: the price of a fixed offset",
        Largest(EngineOff, PhaseResponses.Residual));

    public static readonly MissionQuantity PitchSwing = new(
        "pitch_swing", "pitch swing over the mission", "deg",
        "largest less smallest body pitch of all phases, engine off included", Same(row => row.PitchSwing));

    public static readonly MissionQuantity TwistMarginWorst = new(
        "twist_margin_worst", "smallest twist margin in any phase", "",
        "smallest twist margin of all phases", MissionResponses.TwistMarginWorst)
    { IsHigherBetter = true };

    public static readonly MissionQuantity BodyYawWorst = new(
        "body_yaw_worst", "largest crab angle", "deg", "largest body yaw (crab) of the weighted phases, either way",
        Largest(Weighted, (row, p) => row.Balances[p].BodyYaw));

    public static readonly MissionQuantity LoadDifferenceWorst = new(
        "load_difference_worst", "largest riser load difference", "N", "largest riser load difference of the weighted phases, either way",
        LargestLoad(Weighted, _ => 1, (right, left) => Math.Abs(right - left)));

    public static readonly MissionQuantity HangPointLoad = new(
        "hang_point_load", "largest load on one hang point", "N",
        "largest load in one riser of all phases, weight 0 and engine off included, times the study's limit load factor",
        LargestLoad(Every, references => references.LimitLoadFactor, Math.Max))
    { Needs = ResponseNeed.Strength };

    public static readonly MissionQuantity ArmMoment = new(
        "arm_moment", "largest bending moment of an arm", "N·m", "hang-point load times the study's overhang",
        LargestLoad(Every, references => references.LimitLoadFactor * references.OverhangMetres, Math.Max))
    { Needs = ResponseNeed.Strength };

    public static readonly MissionQuantity TorqueMarginWorst = new(
        "torque_margin_worst", "smallest torque margin", "",
        "smallest torque margin of the weighted phases, full throttle left out (its margin is 1 by definition)",
        Same(MissionResponses.TorqueMarginWorst))
    { Needs = ResponseNeed.Engine, IsHigherBetter = true };

    public static readonly MissionQuantity DistanceFromBaseline = new(
        "distance_from_baseline", "distance from the baseline", "",
        "root sum of squares of the changes from the baseline, each in units of its factor's range",
        MissionResponses.DistanceFromBaseline)
    { Needs = ResponseNeed.Baseline };

    private readonly MissionFormula formula;

    private MissionQuantity(string name, string title, string unit, string meaning, MissionFormula formula)
        : base(name, unit, meaning, title, rows.Count)
    {
        this.formula = formula;
        rows.Add(this);
    }

    internal static IReadOnlyList<MissionQuantity> Rows => rows;

    /// <summary>Its values over a row of lateral offsets, in its unit; NaN when its reference is not given.</summary>
    /// <param name="row">Prepared, without failure.</param>
    /// <param name="offsets">Lateral offsets in m.</param>
    /// <param name="values">As many as offsets.</param>
    public void Fill(MissionRow row, ReadOnlySpan<double> offsets, Span<double> values)
    {
        formula(row, offsets, values);
        ToUnit(values);
    }
}
