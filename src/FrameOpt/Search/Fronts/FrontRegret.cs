namespace FrameOpt.Search.Fronts;

/// <summary>How far one front falls short of another, objective by objective.</summary>
public static class FrontRegret
{
    /// <summary>
    /// For every point of the reference front the nearest substitute is the found point whose largest shortfall, each objective in units of
    /// the reference front's range, is least (the point the additive epsilon indicator takes). The regret of an objective is the largest
    /// shortfall in it over all reference points.
    /// </summary>
    /// <param name="found">One point or more, objectives to be minimised.</param>
    /// <param name="reference">One point or more.</param>
    /// <returns>One value for each objective, in its unit, 0 or more.</returns>
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
