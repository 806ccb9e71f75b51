namespace FrameOpt.Analysis;

/// <summary>What the stationary point of a second-order surface is.</summary>
public enum SurfaceShape
{
    /// <summary>The surface falls in every direction.</summary>
    Maximum,

    /// <summary>The surface rises in every direction.</summary>
    Minimum,

    /// <summary>It rises in some directions and falls in others.</summary>
    Saddle,

    /// <summary>It stays level in some direction: there is no single stationary point.</summary>
    Ridge,
}
