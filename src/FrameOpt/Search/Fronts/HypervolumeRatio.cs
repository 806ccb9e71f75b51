using FrameOpt.Numerics;

namespace FrameOpt.Search.Fronts;

/// <summary>Hypervolume of one front relative to another.</summary>
/// <param name="Ratio">Hypervolume of the first front divided by that of the second; above 1 when the first is better.</param>
/// <param name="SamplePoints">Number of sample points; 0 when the ratio is exact, otherwise it is an estimate.</param>
/// <param name="StandardError">Standard error of the ratio; 0 when exact.</param>
public sealed record HypervolumeRatio(double Ratio, int SamplePoints, double StandardError)
{
    /// <summary>Largest number of objectives for the exact ratio; with more, large fronts would take too long.</summary>
    private const int MaxExactObjectives = 3;

    private const double ReferenceOffset = 0.1;

    /// <summary>Compares two fronts of the same objectives, all to be minimised.</summary>
    /// <param name="part">The first front; an empty one gives 0.</param>
    /// <param name="whole">The second front, at least one point. The reference point is its worst value of each objective plus a tenth of
    /// its range.</param>
    /// <param name="samples">Number of sample points where the exact volume would take too long.</param>
    public static HypervolumeRatio Of(FrontPoints part, FrontPoints whole, int samples = 1 << 14)
    {
        var corner = Array.ConvertAll(whole.Columns, Corner);
        if (part.Ids.Length == 0)
            return new HypervolumeRatio(0, 0, 0);
        return corner.Length <= MaxExactObjectives
            ? new HypervolumeRatio(Volume(part, corner) / Volume(whole, corner), 0, 0)
            : Sampled(part, whole, corner, samples);
    }

    private static double Volume(FrontPoints front, double[] corner)
    {
        var values = new double[front.Ids.Length * corner.Length];
        for (var i = 0; i < values.Length; i++)
            values[i] = front.Columns[i % corner.Length][i / corner.Length];
        return Hypervolume.Of(values, corner);
    }

    private static double Corner(double[] column)
    {
        var (best, worst) = (column.Min(), column.Max());
        return worst + ReferenceOffset * (worst > best ? worst - best : 1);
    }

    private static HypervolumeRatio Sampled(FrontPoints part, FrontPoints whole, double[] corner, int samples)
    {
        var ideal = corner.Select((_, j) => Math.Min(part.Columns[j].Min(), whole.Columns[j].Min())).ToArray();
        int inPart = 0, inWhole = 0, inOne = 0;
        foreach (var point in SobolSequence.Points(corner.Length, samples))
        {
            for (var j = 0; j < point.Length; j++)
                point[j] = ideal[j] + point[j] * (corner[j] - ideal[j]);
            var (dominatedByPart, dominatedByWhole) = (Dominates(part, point), Dominates(whole, point));
            inPart += dominatedByPart ? 1 : 0;
            inWhole += dominatedByWhole ? 1 : 0;
            inOne += dominatedByPart != dominatedByWhole ? 1 : 0;
        }

        // That of a plain random sample, an upper bound for evenly spread points.
        return new HypervolumeRatio((double)inPart / Math.Max(1, inWhole), samples, Math.Sqrt(Math.Max(1, inOne)) / Math.Max(1, inWhole));
    }

    private static bool Dominates(FrontPoints front, double[] point)
    {
        for (var i = 0; i < front.Ids.Length; i++)
        {
            var j = 0;
            while (j < point.Length && front.Columns[j][i] <= point[j])
                j++;
            if (j == point.Length)
                return true;
        }

        return false;
    }
}

/// <summary>Largest shortfall of one front against another in each objective.</summary>
public static class FrontRegret
{
    /// <summary>For every point of the reference front the nearest substitute is the found point whose largest shortfall, each objective in
    /// units of the reference front's range, is smallest (the point of the additive epsilon indicator). The regret of an objective is the
    /// largest shortfall in it over all reference points.</summary>
    /// <param name="found">One point or more, objectives to be minimised.</param>
    /// <param name="reference">One point or more.</param>
    /// <returns>One value for each objective, in its unit, at least 0.</returns>
    /// <remarks>Source: Zitzler, Thiele, Laumanns, Fonseca and Grunert da Fonseca 2003, Performance assessment of multiobjective
    /// optimizers, IEEE Transactions on Evolutionary Computation 7, the additive epsilon indicator (from memory); here by
    /// objective.</remarks>
    public static double[] Of(FrontPoints found, FrontPoints reference)
    {
        var ranges = Array.ConvertAll(reference.Columns, column => column.Max() - column.Min() is > 0 and var range ? range : 1);
        var regrets = new double[ranges.Length];
        for (var p = 0; p < reference.Ids.Length; p++)
        {
            var substitute = Substitute(found, reference, p, ranges);
            for (var j = 0; j < ranges.Length; j++)
                regrets[j] = Math.Max(regrets[j], found.Columns[j][substitute] - reference.Columns[j][p]);
        }

        return regrets;
    }

    private static int Substitute(FrontPoints found, FrontPoints reference, int p, double[] ranges)
    {
        var best = 0;
        var least = double.PositiveInfinity;
        for (var q = 0; q < found.Ids.Length; q++)
        {
            var shortfall = double.NegativeInfinity;
            for (var j = 0; j < ranges.Length && shortfall < least; j++)
                shortfall = Math.Max(shortfall, (found.Columns[j][q] - reference.Columns[j][p]) / ranges[j]);
            if (shortfall < least)
                (least, best) = (shortfall, q);
        }

        return best;
    }
}
