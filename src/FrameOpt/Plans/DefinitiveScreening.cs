namespace FrameOpt.Plans;

/// <summary>Three-level screening plans whose main effects are free of all interactions of two and all quadratic terms: the rows of a conference matrix, their
/// opposites, and the middle.</summary>
/// <remarks>Source: B. Jones and C. J. Nachtsheim 2011, A class of three-level designs for definitive screening in the presence of second-order effects,
/// J. Quality Technol. 43:1-15; from conference matrices: L. Xiao, D. K. J. Lin and F. Bai 2012, J. Quality Technol. 44:2-8 (from memory).</remarks>
public static class DefinitiveScreening
{
    /// <summary>A definitive screening plan: 2k + 1 runs for an even number k of factors, 2k + 3 for an odd one.</summary>
    /// <param name="factors">The names, 4 to 12; an odd number takes the next even plan less a column.</param>
    /// <exception cref="ArgumentException">Another number of factors.</exception>
    public static Plan Build(IReadOnlyList<string> factors)
    {
        PlanArguments.Factors(factors, "definitive screening plan", 4, 12);
        var matrix = ConferenceMatrix.Of(factors.Count + (factors.Count % 2));
        var points = from row in Enumerable.Range(0, matrix.GetLength(0))
                     from sign in (double[])[1, -1]
                     select Enumerable.Range(0, factors.Count).Select(f => (sign * matrix[row, f]) + 0.0).ToArray();
        return Plan.Numbered("definitive screening", factors, [.. points.Select(Run), .. Plan.Centres(factors.Count, 1)]);
    }

    /// <summary>The row that has its middle in a column left out is a corner.</summary>
    private static PlanRun Run(double[] point) => new(0, point.Contains(0) ? PointKind.Screening : PointKind.Factorial, 1, point);
}
