using MathNet.Numerics.LinearAlgebra;

namespace FrameOpt.Analysis;

/// <summary>The knee of a front: where a further loss in one objective brings little gain in the others.</summary>
public static class Knee
{
    /// <summary>The design furthest, towards the ideal, from the plane through the best design of each objective.</summary>
    /// <param name="designs">A front; smaller is better in every objective.</param>
    /// <returns>Its index, or null when those best designs do not span a plane or nothing lies before it.</returns>
    /// <remarks>Source: I. Das 1999, On characterizing the "knee" of the Pareto curve based on normal-boundary intersection (from memory);
    /// objectives scaled to 0..1 first.</remarks>
    public static int? Of(IReadOnlyList<double[]> designs)
    {
        if (designs.Count < 3)
            return null;
        var objectives = designs[0].Length;
        var scale = ObjectiveScale.Of(designs);
        double[] Scaled(int index) => [.. designs[index].Select((value, o) => scale.Scaled(o, value))];
        var corners = Enumerable.Range(0, objectives).Select(o => Scaled(BestIn(designs, o))).ToArray();

        // The plane n x = 1 through the corners.
        var normal = Matrix<double>.Build.DenseOfRowArrays(corners).Solve(Vector<double>.Build.Dense(objectives, 1));
        if (!normal.All(double.IsFinite) || normal.L2Norm() == 0 || !corners.All(c => Math.Abs(Dot(normal, c) - 1) < 1e-9))
            return null;
        int? knee = null;
        var furthest = 1e-12;
        for (var i = 0; i < designs.Count; i++)
        {
            var distance = (1 - Dot(normal, Scaled(i))) / normal.L2Norm();
            if (distance > furthest)
                (knee, furthest) = (i, distance);
        }

        return knee;
    }

    private static double Dot(Vector<double> normal, double[] point) => point.Select((value, o) => normal[o] * value).Sum();

    private static int BestIn(IReadOnlyList<double[]> designs, int objective)
    {
        var best = 0;
        for (var i = 1; i < designs.Count; i++)
        {
            if (designs[i][objective] < designs[best][objective])
                best = i;
        }

        return best;
    }
}

/// <summary>Thins a front for display: of designs closer than a resolution in every objective only the best ranked is shown.</summary>
public static class Thinning
{
    /// <summary>Which designs to show.</summary>
    /// <param name="designs">In rank order.</param>
    /// <param name="resolutions">One for each objective; 0 where no thinning is asked.</param>
    /// <returns>Indices, in rank order. With no resolution at all, every design.</returns>
    public static IReadOnlyList<int> Shown(IReadOnlyList<IReadOnlyList<double>> designs, IReadOnlyList<double> resolutions)
    {
        if (resolutions.All(resolution => resolution <= 0))
            return [.. Enumerable.Range(0, designs.Count)];
        var taken = new HashSet<string>();
        var shown = new List<int>();
        for (var i = 0; i < designs.Count; i++)
        {
            // Designs in one box of the given resolutions; an objective without one is compared exactly.
            var box = string.Join('|', designs[i].Select((value, o) => resolutions[o] > 0
                ? Math.Floor(value / resolutions[o]).ToString("R", System.Globalization.CultureInfo.InvariantCulture)
                : value.ToString("R", System.Globalization.CultureInfo.InvariantCulture)));
            if (taken.Add(box))
                shown.Add(i);
        }

        return shown;
    }
}
