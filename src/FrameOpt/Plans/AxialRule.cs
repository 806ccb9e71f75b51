namespace FrameOpt.Plans;

/// <summary>How far out the axial runs of a central composite plan lie.</summary>
public enum AxialRule
{
    /// <summary>The fourth root of the cube's runs: the variance of prediction depends on the distance from the middle only.</summary>
    Rotatable,

    /// <summary>The root of the number of factors: axial runs as far out as the corners.</summary>
    Spherical,

    /// <summary>One: three levels of each factor, none outside the cube.</summary>
    FaceCentred,

    /// <summary>The estimates of the quadratic terms are uncorrelated.</summary>
    Orthogonal,

    /// <summary>With cube and axial runs in two blocks, the difference of the blocks does not touch the terms of the model.</summary>
    BlockOrthogonal,
}
