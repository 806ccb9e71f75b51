namespace FrameOpt.Studies;

/// <summary>What all geometries of a line must have alike.</summary>
public enum LineCommon
{
    /// <summary>Nothing: any may go together.</summary>
    Nothing,

    /// <summary>One hang-point spacing.</summary>
    Spacing,

    /// <summary>One frame: everything but the lateral offset, so that only the holes differ.</summary>
    Frame,
}
