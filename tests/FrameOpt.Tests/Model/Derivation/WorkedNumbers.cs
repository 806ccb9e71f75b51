namespace FrameOpt.Tests.Model.Derivation;

/// <summary>How the throttle of a phase is set.</summary>
public enum Throttle
{
    Full,
    AsNeeded,
    Off,
}

/// <summary>One phase of the worked flight. Its speed is given or follows from the polar's airspeed at the reference mass.</summary>
public sealed record WorkedPhase(
    string Name,
    Throttle Throttle,
    double? GivenAirspeed = null,
    double ReferenceAirspeed = WorkedNumbers.TrimAirspeed,
    double GlideRatio = 6.2,
    double ClimbRate = 0,
    double CarriedShare = 1,
    double PitchRate = 0)
{
    /// <summary>False for full throttle: in its first seconds the wing is still overhead and has not yet banked.</summary>
    public bool Settled => Throttle != Throttle.Full;
}

/// <summary>Middle and spacing of the two hang points, the angle by which the thrust line points to the right, and by how much the right
/// hang point is higher and the right strap longer than the left.</summary>
public sealed record WorkedDesign(double SpacingMillimetres, double OffsetMillimetres, double HeightMillimetres, double AngleDegrees,
    double RightHigherMillimetres = 0, double RightStrapLongerMillimetres = 0)
{
    public double Spacing => SpacingMillimetres / 1000;

    public Vec HangPoint => WorkedNumbers.Place(-60, OffsetMillimetres, HeightMillimetres);

    /// <summary>From the left hang point to the right one.</summary>
    public Vec Across => WorkedNumbers.Place(0, SpacingMillimetres, RightHigherMillimetres);

    /// <summary>Unit vector of the thrust: straight ahead, tilted up by 5 degrees, then turned to the right.</summary>
    public Vec ThrustLine => new Vec(1, 0, 0).AboutY(5 * Math.PI / 180).AboutZ(AngleDegrees * Math.PI / 180);
}

/// <summary>The machine, the wing and the flight of the worked balance as plain numbers in SI units: an invented scenario.</summary>
public static class WorkedNumbers
{
    public const double Gravity = 9.80665;
    public const double SeaLevelDensity = 1.225;
    public const double Altitude = 300;

    // The machine: everything that hangs from the hang points.
    public static readonly (double Mass, Vec Place) Pilot = (78, Place(20, 0, 0));

    public static readonly (double Mass, Vec Place)[] OtherMasses =
    [
        (5, Place(20, 0, 50)),          // clothing
        (24.5, Place(-280, 10, 60)),    // frame and engine
        (5.5, Place(-220, -20, -140)),  // fuel
    ];

    public const double LargestLean = 0.080;
    public const double DragArea = 0.45;
    public static readonly Vec DragCentre = Place(0, 0, 100);

    public static readonly Vec Hub = Place(-420, 0, 120);
    public const double Diameter = 1.30;
    public const double PolarInertia = 0.085;
    public static readonly double[] AdvanceRatio = [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6];
    public static readonly double[] ThrustCoefficient = [0.1050, 0.0959, 0.0856, 0.0741, 0.0614, 0.0475, 0.0324];
    public static readonly double[] PowerCoefficient = [0.05200, 0.05245, 0.05140, 0.04885, 0.04480, 0.03925, 0.03220];

    public const double Reduction = 2.9;
    public const double DriveEfficiency = 0.96;
    public static readonly double[] CrankRpm = [4000, 5000, 6000, 7000, 7800, 8500];
    public static readonly double[] CrankTorque = [14, 18.5, 21.5, 22.5, 21.5, 18];

    // The wing. Its polar is given for 115 kg in all, in air of sea-level density.
    public const double WingMass = 6;
    public const double WingArea = 25;
    public const double WingSpan = 10.8;
    public const double LineLength = 7.0;
    public const double LineSpread = 3.8;
    public const double PolarMass = 115;
    public const double TrimAirspeed = 10.4;
    public const double RiserCouplingLength = 0.33;
    public const double RiserCouplingSpacing = 0.44;
    public const double RollRestoring = 0.05;

    /// <summary>Everything that flies: machine and wing, in kg.</summary>
    public static double AllUpMass => Pilot.Mass + OtherMasses.Sum(item => item.Mass) + WingMass;

    public static IReadOnlyList<WorkedPhase> Phases { get; } =
    [
        new("launch", Throttle.Full, GivenAirspeed: 8.5, CarriedShare: 0.8, PitchRate: 0.3),
        new("climb", Throttle.AsNeeded, ClimbRate: 1.8),
        new("cruise", Throttle.AsNeeded),
        new("accelerated", Throttle.AsNeeded, ReferenceAirspeed: 13.6, GlideRatio: 5.0),
        new("glide", Throttle.Off),
    ];

    /// <summary>A place on the frame, in millimetres from the datum, as a vector in metres: x forward, y right, z down.</summary>
    public static Vec Place(double forward, double right, double up) => 0.001 * new Vec(forward, right, -up);
}
