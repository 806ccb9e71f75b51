namespace FrameOpt.Studies;

/// <summary>The terms of a fitted surface.</summary>
public enum SurfaceModel
{
    /// <summary>Each factor on its own.</summary>
    Linear,

    /// <summary>And every product of two.</summary>
    Interactions,

    /// <summary>Each factor and its square.</summary>
    LinearAndSquares,

    /// <summary>Each factor, every product of two, every square.</summary>
    Quadratic,
}
