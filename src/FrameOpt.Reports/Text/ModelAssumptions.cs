using FrameOpt.Studies;

namespace FrameOpt.Reports.Text;

/// <summary>What the model assumes in every study, with sources; every report takes them from here.</summary>
public static class ModelAssumptions
{
    /// <summary>In the order of the model.</summary>
    public static IReadOnlyList<Assumption> All { get; } =
    [
        new("Air", "standard atmosphere, with the phase's temperature offset at the pressure of the standard day",
            "ISO 2533:1975; US Standard Atmosphere 1976"),
        new("Gravity", "9.80665 m/s²", "ISO 80000-3"),
        new("Airspeed", "proportional to the square root of load factor times all-up mass divided by air density, relative to the "
            + "reference of the polar",
            "steady flight at constant lift coefficient"),
        new("Propeller", "thrust and torque from CT and CP against advance ratio J = V/(nD)",
            "definitions as in the UIUC Propeller Database (Brandt, Deters, Ananda, Dantsker, Selig)"),
        new("Shape of the curves of a bench-tested propeller",
            "CT and CP against J as measured on a small research propeller, scaled to the bench figures",
            "UIUC Propeller Database vol. 2; Deters, Ananda, Selig, AIAA 2014-2151"),
        new("Torque on the frame", "the aerodynamic torque of the propeller, independent of the gearing",
            "statics: internal torques between engine and frame cancel"),
        new("Full throttle at lower air density", "engine torque proportional to air density", "assumption"),
        new("Balance of the suspended body", "forces and moments about the midpoint of the hang points", "statics"),
        new("Yaw stiffness of the risers", "two-line (bifilar) suspension", "statics, small twist"),
        new("Straight flight of the wing", "one sideslip holds the roll moment, the yaw moment and the weight of the banked wing",
            "statics of the wing about the hang points; slopes after Belloc, J. Aircraft 52(2), 2015, doi 10.2514/1.C032513"),
        new("Wing twisted by its risers", "0.17 q S b of roll per radian by which the halves are pitched, no more than at trim speed",
            "estimate from a lifting-line calculation of an arched wing"),
        new("Bench check", "frame and pilot hang from a rigid beam by two equal, parallel straps", "statics of a beam on two supports"),
    ];
}
