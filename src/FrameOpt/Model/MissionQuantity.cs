namespace FrameOpt.Model;

#pragma warning disable CS1591 // each member's name, unit and meaning stand in ResponseCatalogue, the one place that words them
/// <summary>What the model says of a whole mission. Names, units and meanings: <see cref="ResponseCatalogue"/>.</summary>
public enum MissionQuantity
{
    ResidualRms,
    ResidualWorst,
    EffortWorst,
    PowerOffResidual,
    PitchSwing,
    TwistMarginWorst,
    BodyYawWorst,
    LoadDifferenceWorst,
    HangPointLoad,
    ArmMoment,
    TorqueMarginWorst,
    DistanceFromBaseline,
}
