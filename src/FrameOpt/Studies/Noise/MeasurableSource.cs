using FrameOpt.Model;

namespace FrameOpt.Studies.Noise;

#pragma warning disable CS1591 // each row says in its own words what it is
/// <summary>Further numbers that measurements correct: exact for a run until a study gives them a spread, uncertain for a fit with the
/// one given here.</summary>
public static class MeasurableSource
{
    public static readonly NoiseSource SeatUp = new(
        "seat_up", "the pilot's seat, up and down", NoiseUnit.Length, ("up", "down"),
        "the pilot's centre of gravity is higher +", new Spread.Normal(0.020), "common practice, no source",
        (state, d) => state.With(item => item.IsBody, item => item with
        {
            At = item.At with { UpMetres = item.At.UpMetres + d },
        }), isUsual: false);

    public static readonly NoiseSource PropellerPitch = new(
        "propeller_pitch", "pitch of the propeller as it acts", NoiseUnit.Share, ("more", "less"),
        "advance ratio at which the thrust ends", new Spread.Normal(0.10),
        "the three propellers of docs/model-propeller.md lie so far apart",
        (state, d) => state with
        {
            Machine = state.Machine with
            {
                Propeller = state.Machine.Propeller with { Curve = state.Machine.Propeller.Curve.Stretched(1 + d) },
            },
        }, isUsual: false);

    public static readonly NoiseSource SpeedFactor = new(
        "speed_factor", "speed factor of the yaw leverage", NoiseUnit.Share, ("more", "less"),
        "the part of the yaw leverage that a sideslip gives", new Spread.Normal(0.25),
        "range of the model (docs/model.md), assumption",
        (state, d) => state with
        {
            Wing = state.Wing with
            {
                YawLeverage = state.Wing.YawLeverage switch
                {
                    YawLeverage.FromSpeed speed => speed with { SpeedFactor = speed.SpeedFactor * (1 + d) },
                    YawLeverage.FromSideslip sideslip => sideslip with { Roll = sideslip.Roll * (1 + d) },
                    YawLeverage.Constant constant => new YawLeverage.Constant(constant.Value * (1 + d)),
                    _ => throw new InvalidOperationException(),
                },
            },
        }, isUsual: false);

    public static readonly NoiseSource TwistShare = new(
        "twist_share", "twist share of the yaw leverage", NoiseUnit.Range, ("towards 1", "towards 0"),
        "from 0 (-1) over the study's (0) to 1 (+1)", new Spread.Triangle(-1, 0, 1),
        "range of the model (docs/model.md), assumption",
        (state, d) => state with
        {
            Wing = state.Wing with
            {
                YawLeverage = state.Wing.YawLeverage switch
                {
                    YawLeverage.FromSpeed speed => speed with { TwistShare = Share(speed.TwistShare, d) },
                    YawLeverage.FromSideslip sideslip => sideslip with { TwistShare = Share(sideslip.TwistShare, d) },
                    var constant => constant,
                },
            },
        }, isUsual: false);

    public static readonly NoiseSource RollRestoring = new(
        "roll_restoring", "roll restoring of the wing", NoiseUnit.Share, ("more", "less"),
        "how little it turns for each N·m; it changes no torque", new Spread.Normal(0.30), "a generic number, own estimate",
        (state, d) => state with { Wing = state.Wing with { RollRestoring = state.Wing.RollRestoring * (1 + d) } }, isUsual: false);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<NoiseSource> All { get; } = [SeatUp, PropellerPitch, SpeedFactor, TwistShare, RollRestoring];

    private static double Share(double here, double towards) =>
        towards < 0 ? here * (1 + towards) : here + towards * (1 - here);
}
#pragma warning restore CS1591
