using FrameOpt.Numerics;

namespace FrameOpt.Analysis;

/// <summary>The columns of a model made orthonormal one after another, X = Q R, each scaled first; columns that depend on earlier ones are
/// left out.</summary>
/// <remarks>Source: Gram-Schmidt with every column put through twice ("twice is enough", W. Kahan in B. N. Parlett 1980, The Symmetric
/// Eigenvalue Problem, from memory), orthogonal to rounding like Householder's. With the constant first, all others are centred by
/// it.</remarks>
internal sealed class OrthogonalColumns
{
    /// <summary>A column of which less than this part is new counts as dependent.</summary>
    private const double DependenceTolerance = 1e-10;

    /// <summary>2^-52, the spacing of doubles at 1.</summary>
    private const double MachineEpsilon = 2.220446049250313e-16;

    private readonly List<int> kept = [];
    private readonly List<double> scales = [];
    private readonly List<double[]> basis = [];
    private readonly List<double[]> triangle = [];

    public OrthogonalColumns(IEnumerable<double[]> columns)
    {
        var index = 0;
        foreach (var column in columns)
            Add(index++, column);
    }

    /// <summary>Indices of the columns that are not dependent on earlier ones.</summary>
    public IReadOnlyList<int> Kept => kept;

    /// <summary>The kept columns as parts along their own basis, up to their scale: the same directions and angles in as few numbers as
    /// there are columns.</summary>
    public IEnumerable<(int Index, double[] Values)> RColumns =>
        kept.Select((index, j) => (index, (double[])[.. triangle[j], .. new double[kept.Count - 1 - j]]));

    /// <summary>Logarithm of the determinant of X'X of the kept columns.</summary>
    public double LogDeterminant => 2 * kept.Select((_, j) => Elementary.Log(triangle[j][j] / scales[j])).Sum();

    /// <summary>The part of a response along each kept column's own direction, and what is left of it; parts within rounding of the
    /// response are 0.</summary>
    public (double[] Along, double[] Residual) Project(IReadOnlyList<double> response)
    {
        double[] rest = [.. response];
        var rounding = rest.Length * MachineEpsilon * Norm(rest);
        var along = new double[kept.Count];
        RemoveProjections(rest, along);
        RemoveProjections(rest, along);
        if (Norm(rest) <= rounding)
            Array.Clear(rest);
        return ([.. along.Select(part => Math.Abs(part) <= rounding ? 0 : part)], rest);
    }

    /// <summary>The coefficients of the kept columns whose combination has the given parts.</summary>
    public double[] Coefficients(double[] along)
    {
        var coefficients = new double[kept.Count];
        for (var j = kept.Count - 1; j >= 0; j--)
        {
            var sum = along[j];
            for (var k = j + 1; k < kept.Count; k++)
                sum -= triangle[k][j] * coefficients[k];
            coefficients[j] = sum / triangle[j][j];
        }

        return [.. coefficients.Select((value, j) => value * scales[j])];
    }

    /// <summary>r (X'X)^-1 r' for one row of values of the kept columns: variance of its combination, in units of the error
    /// variance.</summary>
    public double VarianceFactor(IReadOnlyList<double> row)
    {
        var solved = new double[kept.Count];
        var spread = 0.0;
        for (var j = 0; j < kept.Count; j++)
        {
            var sum = row[j] * scales[j];
            for (var k = 0; k < j; k++)
                sum -= triangle[j][k] * solved[k];
            solved[j] = sum / triangle[j][j];
            spread += solved[j] * solved[j];
        }

        return spread;
    }

    /// <summary>The leverage of one run, 0 to 1.</summary>
    public double Leverage(int run) => Math.Min(1, basis.Sum(direction => direction[run] * direction[run]));

    private static double Norm(double[] values) => Math.Sqrt(values.Sum(value => value * value));

    private void Add(int index, double[] column)
    {
        var norm = Norm(column);
        if (norm == 0)
            return;

        // By a power of two, so that scaling rounds nothing.
        var scale = Math.ScaleB(1, -Math.ILogB(norm));
        double[] rest = [.. column.Select(value => value * scale)];
        var above = new double[kept.Count + 1];
        RemoveProjections(rest, above);
        RemoveProjections(rest, above);
        var left = Norm(rest);
        if (left < DependenceTolerance)
            return;
        above[^1] = left;
        kept.Add(index);
        scales.Add(scale);
        triangle.Add(above);
        basis.Add([.. rest.Select(value => value / left)]);
    }

    private void RemoveProjections(double[] rest, double[] along)
    {
        for (var j = 0; j < basis.Count; j++)
        {
            var direction = basis[j];
            var part = 0.0;
            for (var i = 0; i < rest.Length; i++)
                part += direction[i] * rest[i];
            for (var i = 0; i < rest.Length; i++)
                rest[i] -= part * direction[i];
            along[j] += part;
        }
    }
}
