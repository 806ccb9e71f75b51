using FrameOpt.Numerics;

namespace FrameOpt.Search.Fronts;

/// <summary>How much of what one front dominates another dominates too.</summary>
/// <param name="Ratio">Hypervolume of the part as a share of that of the whole; above 1 when it is the better of the two.</param>
/// <param name="SamplePoints">0 when exact; else so many points of the objectives' box were looked at, and the share is an
/// estimate.</param>
/// <param name="StandardError">Of the share; 0 when exact.</param>
public sealed record HypervolumeRatio(double Ratio, int SamplePoints, double StandardError)
{
    /// <summary>Exact up to so many objectives; with more, large fronts would take too long.</summary>
    private const int MaxExactObjectives = 3;

    private const double ReferenceOffset = 0.1;

    /// <summary>Compares two fronts of the same objectives, all to be minimised.</summary>
    /// <param name="part">No points give 0.</param>
    /// <param name="whole">One point or more. Its worst value of each objective, a tenth of its range beyond, is the corner the volumes are
    /// measured from.</param>
    /// <param name="samples">How many points to look at where the exact volume would take too long.</param>
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

        // As of a plain random sample: evenly spread points err less.
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
