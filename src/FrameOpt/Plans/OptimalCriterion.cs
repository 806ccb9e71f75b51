namespace FrameOpt.Plans;

/// <summary>What an optimal plan is best at.</summary>
public enum OptimalCriterion
{
    /// <summary>The greatest determinant of the information matrix: coefficients known best, together.</summary>
    D,

    /// <summary>The least mean variance of prediction over the cube.</summary>
    I,
}
