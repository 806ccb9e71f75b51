using FrameOpt.Search.Fronts;

namespace FrameOpt.Tests.Search.Fronts;

/// <summary>The exact front of a list of points in one call.</summary>
internal static class Front
{
    /// <summary>
    /// The indices, ascending, of the points that no other dominates, where all objectives are to be minimised: a point dominates
    /// another if it is nowhere higher and somewhere lower. Points equal in all objectives are all kept. Infinities are ordinary values.
    /// </summary>
    /// <param name="values">The points one after the other, each with all its objectives.</param>
    /// <param name="objectives">How many objectives, 2 to 5.</param>
    /// <exception cref="ArgumentException">The length is no multiple of the number of objectives, or a value is not a number.</exception>
    public static int[] Of(ReadOnlySpan<double> values, int objectives)
    {
        var builder = new FrontBuilder(objectives, threads: 1);
        if (values.Length % objectives != 0)
            throw new ArgumentException($"{values.Length} values are no whole number of points with {objectives} objectives",
                nameof(values));
        var columns = new double[objectives][];
        for (var j = 0; j < objectives; j++)
            columns[j] = Column(values, objectives, j);
        var count = columns[0].Length;
        var feasible = new byte[count];
        Array.Fill(feasible, (byte)1);
        builder.Add(columns, feasible, count, firstId: 0);
        return Array.ConvertAll(builder.Result().Ids, id => (int)id);
    }

    private static double[] Column(ReadOnlySpan<double> values, int objectives, int j)
    {
        var column = new double[values.Length / objectives];
        for (var i = 0; i < column.Length; i++)
            column[i] = values[i * objectives + j];
        return column;
    }
}
