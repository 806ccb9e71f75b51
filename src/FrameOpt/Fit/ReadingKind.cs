using FrameOpt.Model;

namespace FrameOpt.Fit;

#pragma warning disable CS1591 // each row says in its own words what it is
/// <summary>A quantity that an instrument, a photo or the pilot reads, in SI or degrees, with how good such a reading usually is.</summary>
/// <remarks>Errors: common practice, no source.</remarks>
public sealed class ReadingKind
{
    public static readonly ReadingKind Thrust = new("thrust", "N", 5, 0.015);
    public static readonly ReadingKind Torque = new("torque", "N·m", 0.5, 0.02);
    public static readonly ReadingKind LeftScale = new("left scale", "N", 0.2 * Constants.NewtonsPerKilogramForce, 0);
    public static readonly ReadingKind RightScale = new("right scale", "N", 0.2 * Constants.NewtonsPerKilogramForce, 0);
    public static readonly ReadingKind HangAngle = new("hang angle", "deg", 0.5, 0);
    public static readonly ReadingKind Airspeed = new("airspeed", "m/s", 0.4, 0);
    public static readonly ReadingKind Climb = new("climb", "m/s", 0.15, 0);
    public static readonly ReadingKind Lean = new("lean", "mm", 8, 0.1);
    public static readonly ReadingKind Turn = new("turn", "deg/s", 0.5, 0.1);
    public static readonly ReadingKind BarTilt = new("bar tilt", "deg", 0.7, 0.05);

    private ReadingKind(string name, string unit, double error, double share) => (Name, Unit, Error, Share) = (name, unit, error, share);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<ReadingKind> All { get; } =
        [Thrust, Torque, LeftScale, RightScale, HangAngle, Airspeed, Climb, Lean, Turn, BarTilt];

    /// <summary>In words.</summary>
    public string Name { get; }

    /// <summary>Of its values.</summary>
    public string Unit { get; }

    /// <summary>Standard deviation of a small reading.</summary>
    public double Error { get; }

    /// <summary>Share of a large reading that is added to it.</summary>
    public double Share { get; }

    /// <summary>A reading with its error.</summary>
    public Belief Read(double value) => new(value, double.Hypot(Error, Share * value));

    /// <inheritdoc/>
    public override string ToString() => Name;
}
#pragma warning restore CS1591
