namespace FrameOpt.Analysis;

/// <summary>The corrected Akaike criterion: how well a model fits, less what its terms cost.</summary>
public static class CorrectedAkaike
{
    /// <summary>n ln(S/n) + 2k + 2k(k+1)/(n-k-1), k the terms and the error: less is better.</summary>
    /// <returns>Minus infinity for an exact fit with degrees of freedom left; infinity where the runs are too few to judge.</returns>
    /// <remarks>Source: C. M. Hurvich and C.-L. Tsai 1989, Regression and time series model selection in small samples (from memory). For computed
    /// runs it is a rule for short models, not a likelihood.</remarks>
    public static double Of(int runs, int terms, double residualSumOfSquares)
    {
        var parameters = terms + 1;
        if (runs - parameters - 1 <= 0)
            return double.PositiveInfinity;
        return (runs * Math.Log(residualSumOfSquares / runs)) + (2 * parameters) + (2.0 * parameters * (parameters + 1) / (runs - parameters - 1));
    }
}
