namespace FrameOpt.Analysis;

/// <summary>Finds the design liked best in a box of fitted surfaces.</summary>
public static class DesirabilitySearch
{
    private const int PointsPerFactor = 200;
    private const int Starts = 5;
    private const int LinesPerFactor = 40;
    private const double SmallestStep = 1e-9;

    /// <summary>The largest overall desirability, from many starts.</summary>
    /// <param name="goals">One or more.</param>
    /// <param name="box">The range of each factor.</param>
    /// <param name="seed">The same seed gives the same answer.</param>
    /// <remarks>A design with a desirability of 0 gives no hint where to go, so random points come first and the best of them are improved,
    /// each along random lines: the surface has kinks, where axes and slopes mislead.</remarks>
    public static DesirabilityOptimum Maximise(IReadOnlyList<DesirabilityGoal> goals, IReadOnlyList<Interval> box, int seed)
    {
        var random = new Random(seed);
        var coding = FactorCoding.OfRanges(box);
        double Overall(double[] coded) => At(goals, coding.Uncoded(coded)).Overall;
        var best = Enumerable.Range(0, PointsPerFactor * box.Count)
            .Select(_ => box.Select(_ => (2 * random.NextDouble()) - 1).ToArray())
            .OrderByDescending(Overall).Take(Starts).ToArray()
            .Select(start => Improved(start, Overall, random))
            .MaxBy(Overall)!;
        return At(goals, coding.Uncoded(best));
    }

    private static DesirabilityOptimum At(IReadOnlyList<DesirabilityGoal> goals, double[] design)
    {
        double[] responses = [.. goals.Select(goal => goal.Response(design))];
        double[] desirabilities = [.. goals.Zip(responses, (goal, value) => goal.Desirability.Of(value))];
        return new DesirabilityOptimum(design, Desirability.Overall(desirabilities), responses, desirabilities);
    }

    /// <summary>Steps along random lines, half as long after a round without a gain.</summary>
    private static double[] Improved(double[] start, Func<double[], double> overall, Random random)
    {
        var (best, value) = (start, overall(start));
        for (var step = 0.25; step > SmallestStep; step /= 2)
        {
            for (var failures = 0; failures < LinesPerFactor * start.Length; failures++)
            {
                double[] line = [.. start.Select(_ => (2 * random.NextDouble()) - 1)];
                var length = Math.Sqrt(line.Sum(part => part * part));
                double[] next = [.. best.Select((at, f) => Math.Clamp(at + (step * line[f] / length), -1, 1))];
                var gained = overall(next);
                if (gained > value)
                    (best, value, failures) = (next, gained, -1);
            }
        }

        return best;
    }
}
