namespace FrameOpt.Plans;

/// <summary>Three-level screening plans whose main effects are free of all two-factor interactions and all quadratic terms: the rows of a
/// conference matrix, their opposites, and the middle.</summary>
/// <remarks>Source: B. Jones and C. J. Nachtsheim 2011, A class of three-level designs for definitive screening in the presence of
/// second-order effects, J. Quality Technol. 43:1-15; from conference matrices: L. Xiao, D. K. J. Lin and F. Bai 2012, J. Quality Technol.
/// 44:2-8 (from memory).</remarks>
public static class DefinitiveScreening
{
    /// <summary>A definitive screening plan: 2k + 1 runs for an even number k of factors, 2k + 3 for an odd one.</summary>
    /// <param name="factors">The names, 4 to 12; an odd number uses the next even plan without its last column.</param>
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

    /// <summary>A row whose zero is in an omitted column is a corner.</summary>
    private static PlanRun Run(double[] point) => new(0, point.Contains(0) ? PointKind.Screening : PointKind.Factorial, 1, point);
}

/// <summary>Square matrices C of even order m with zero on the diagonal, plus or minus one elsewhere, and C'C = (m-1) I.</summary>
internal static class ConferenceMatrix
{
    /// <summary>The matrix of an order.</summary>
    /// <param name="order">4, 6, 8, 10 or 12.</param>
    public static double[,] Of(int order) => order == 10 ? FromTwoBlocks(ResidueMatrix(5)) : Bordered(ResidueMatrix(order - 1));

    /// <summary>Entry (i, j) is +1 where j - i is a square modulo an odd prime, -1 where it is not, 0 on the diagonal.</summary>
    private static double[,] ResidueMatrix(int prime)
    {
        var squares = Enumerable.Range(1, prime - 1).Select(x => x * x % prime).ToHashSet();
        var matrix = new double[prime, prime];
        for (var i = 0; i < prime; i++)
        {
            for (var j = 0; j < prime; j++)
                matrix[i, j] = i == j ? 0 : squares.Contains((j - i + prime) % prime) ? 1 : -1;
        }

        return matrix;
    }

    /// <summary>A residue matrix with a row and a column added.</summary>
    /// <remarks>Source: R. E. A. C. Paley 1933, On orthogonal matrices, J. Math. Phys. 12:311-320 (from memory).</remarks>
    private static double[,] Bordered(double[,] core)
    {
        var prime = core.GetLength(0);
        var matrix = new double[prime + 1, prime + 1];
        for (var i = 0; i < prime; i++)
        {
            (matrix[0, i + 1], matrix[i + 1, 0]) = (1, prime % 4 == 1 ? 1 : -1);
            for (var j = 0; j < prime; j++)
                matrix[i + 1, j + 1] = core[i, j];
        }

        return matrix;
    }

    /// <summary>[Q B; B -Q] with Q the residue matrix of 5 and B = J - 2I: both symmetric, they commute, and QQ + BB = (5I - J) + (4I + J)
    /// = 9I.</summary>
    private static double[,] FromTwoBlocks(double[,] core)
    {
        var half = core.GetLength(0);
        var matrix = new double[2 * half, 2 * half];
        for (var i = 0; i < half; i++)
        {
            for (var j = 0; j < half; j++)
            {
                (matrix[i, j], matrix[half + i, half + j]) = (core[i, j], -core[i, j]);
                matrix[i, half + j] = matrix[half + i, j] = i == j ? -1 : 1;
            }
        }

        return matrix;
    }
}
