using FrameOpt.Search.Fronts;

namespace FrameOpt.Search.Evolution;

/// <summary>How much room the points of one front have about them, so that a search may prefer lonely ones.</summary>
/// <remarks>Source: Deb, Pratap, Agarwal and Meyarivan, A fast and elitist multiobjective genetic algorithm: NSGA-II, IEEE Transactions on
/// Evolutionary Computation 6 (2002) 182-197, section III-B (from memory).</remarks>
public static class Crowding
{
    /// <summary>The crowding distance of every point; the points are one front.</summary>
    /// <param name="values">The points one after the other, each with all its objectives.</param>
    /// <param name="objectives">How many objectives, 2 to 6.</param>
    /// <returns>0 or more, without unit; infinite for a point that is first or last in some objective.</returns>
    /// <exception cref="ArgumentException">The length is no multiple of the number of objectives, or a value is not a number.</exception>
    public static double[] Distances(ReadOnlySpan<double> values, int objectives)
    {
        var distances = new double[PointArguments.Count(values, objectives)];
        var front = new int[distances.Length];
        for (var i = 0; i < front.Length; i++)
            front[i] = i;
        Distances(values, objectives, front, new double[front.Length], distances);
        return distances;
    }

    /// <summary>
    /// Writes the crowding distance of every point of one front: the sum over objectives of the distance between the point's two
    /// neighbours, divided by the front's range; the first and the last in an objective are infinite. Of
    /// equals in an objective one is first, the same in every run. An objective without range tells nothing and is left out; two infinite
    /// neighbours that are equal are no distance apart.
    /// </summary>
    /// <param name="values">All points one after the other, each with all its objectives; numbers.</param>
    /// <param name="objectives">How many objectives.</param>
    /// <param name="front">Which points are the front; left in another order.</param>
    /// <param name="workspace">Working room, as long as the front.</param>
    /// <param name="distances">Written at the places of the front's points.</param>
    public static void Distances(ReadOnlySpan<double> values, int objectives, Span<int> front, Span<double> workspace,
        Span<double> distances)
    {
        foreach (var i in front)
            distances[i] = 0;
        for (var j = 0; j < objectives; j++)
        {
            for (var k = 0; k < front.Length; k++)
                workspace[k] = values[front[k] * objectives + j];
            workspace[..front.Length].Sort(front);
            AddGaps(workspace[..front.Length], front, distances);
        }
    }

    private static void AddGaps(ReadOnlySpan<double> sorted, ReadOnlySpan<int> front, Span<double> distances)
    {
        if (sorted.IsEmpty || sorted[0] == sorted[^1])
            return;
        var range = sorted[^1] - sorted[0];
        for (var k = 1; k < sorted.Length - 1; k++)
        {
            var gap = sorted[k + 1] == sorted[k - 1] ? 0 : sorted[k + 1] - sorted[k - 1];
            distances[front[k]] += double.IsFinite(gap) ? gap / range : gap;
        }
        distances[front[0]] = distances[front[^1]] = double.PositiveInfinity;
    }
}
