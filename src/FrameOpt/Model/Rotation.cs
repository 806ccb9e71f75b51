namespace FrameOpt.Model;

/// <summary>Which way the propeller turns, seen from behind.</summary>
public enum Rotation
{
    /// <summary>Clockwise seen from behind: the reaction pushes the left side down.</summary>
    Clockwise,

    /// <summary>Counter-clockwise seen from behind: the reaction pushes the right side down.</summary>
    CounterClockwise,
}
