namespace FrameOpt.Model;

#pragma warning disable CS1591 // each member's name, unit and meaning stand in ResponseCatalogue, the one place that words them
/// <summary>What the model says of one phase. Names, units and meanings: <see cref="ResponseCatalogue"/>.</summary>
public enum PhaseQuantity
{
    Rpm,
    Airspeed,
    Thrust,
    Torque,
    BodyPitch,
    RiserLoad,
    LineLean,
    RollMoment,
    YawMoment,
    BodyRoll,
    BodyYaw,
    WingBank,
    WingRollMoment,
    WingYawMoment,
    PendulumShare,
    TwistMargin,
    YawLeverage,
    Residual,
    LoadRight,
    LoadLeft,
    LoadDifference,
    Lean,
    Effort,
    WeightShiftAuthority,
    TurnRate,
    TorqueMargin,
}
