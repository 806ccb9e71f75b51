namespace FrameOpt.Model;

/// <summary>The propeller and where it pushes.</summary>
/// <param name="DiameterMetres">Above zero.</param>
/// <param name="Rotation">Seen from behind.</param>
/// <param name="Hub">The point on the frame where the thrust acts.</param>
/// <param name="TiltRadians">Thrust-line tilt, upward positive.</param>
/// <param name="PolarInertia">Moment of inertia about the shaft, kg·m²; 0 leaves the gyroscopic term out.</param>
/// <param name="Curve">Thrust and power coefficients against advance ratio.</param>
public sealed record Propeller(
    double DiameterMetres,
    Rotation Rotation,
    FramePoint Hub,
    double TiltRadians,
    double PolarInertia,
    PropellerCurve Curve)
{
    /// <summary>The sign of the reaction torque on the frame: +1 right side down, -1 left side down.</summary>
    public double ReactionSign => Rotation == Rotation.CounterClockwise ? 1 : -1;
}

/// <summary>Which way the propeller turns, seen from behind.</summary>
public enum Rotation
{
    /// <summary>Clockwise seen from behind: the reaction pushes the left side down.</summary>
    Clockwise,

    /// <summary>Counter-clockwise seen from behind: the reaction pushes the right side down.</summary>
    CounterClockwise,
}
