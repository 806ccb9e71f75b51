namespace FrameOpt.Search.Fronts;

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
        var (cells, point) = (new FrontCells(found), new double[ranges.Length]);
        for (var p = 0; p < reference.Ids.Length; p++)
        {
            for (var j = 0; j < ranges.Length; j++)
                point[j] = reference.Columns[j][p];
            var substitute = cells.Substitute(point, ranges);
            for (var j = 0; j < ranges.Length; j++)
                regrets[j] = Math.Max(regrets[j], found.Columns[j][substitute] - point[j]);
        }

        return regrets;
    }
}
