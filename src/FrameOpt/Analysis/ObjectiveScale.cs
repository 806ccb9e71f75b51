namespace FrameOpt.Analysis;

/// <summary>Objectives of a front scaled so that 0 is the best and 1 the worst value on it.</summary>
public sealed class ObjectiveScale
{
    private ObjectiveScale(double[] best, double[] range)
    {
        Best = best;
        Range = range;
    }

    /// <summary>The smallest value of each objective.</summary>
    public IReadOnlyList<double> Best { get; }

    /// <summary>Largest less smallest value of each objective; 0 where all are equal.</summary>
    public IReadOnlyList<double> Range { get; }

    /// <summary>The scale of some designs.</summary>
    /// <param name="designs">One or more; less is better in every objective; all finite.</param>
    public static ObjectiveScale Of(IReadOnlyList<double[]> designs)
    {
        var objectives = designs[0].Length;
        var best = new double[objectives];
        var range = new double[objectives];
        for (var o = 0; o < objectives; o++)
        {
            double lowest = double.PositiveInfinity, highest = double.NegativeInfinity;
            foreach (var design in designs)
            {
                lowest = Math.Min(lowest, design[o]);
                highest = Math.Max(highest, design[o]);
            }

            best[o] = lowest;
            range[o] = highest - lowest;
        }

        return new ObjectiveScale(best, range);
    }

    /// <summary>0 at the best, 1 at the worst; 0 for an objective without range.</summary>
    public double Scaled(int objective, double value) =>
        Range[objective] > 0 ? (value - Best[objective]) / Range[objective] : 0;
}
