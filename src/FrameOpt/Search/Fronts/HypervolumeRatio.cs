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
        var (cellsOfPart, cellsOfWhole) = (new FrontCells(part), new FrontCells(whole));
        int inPart = 0, inWhole = 0, inOne = 0;
        foreach (var point in SobolSequence.Points(corner.Length, samples))
        {
            for (var j = 0; j < point.Length; j++)
                point[j] = ideal[j] + point[j] * (corner[j] - ideal[j]);
            var (dominatedByPart, dominatedByWhole) = (cellsOfPart.Dominates(point), cellsOfWhole.Dominates(point));
            inPart += dominatedByPart ? 1 : 0;
            inWhole += dominatedByWhole ? 1 : 0;
            inOne += dominatedByPart != dominatedByWhole ? 1 : 0;
        }

        // That of a plain random sample, an upper bound for evenly spread points.
        return new HypervolumeRatio((double)inPart / Math.Max(1, inWhole), samples, Math.Sqrt(Math.Max(1, inOne)) / Math.Max(1, inWhole));
    }
}
