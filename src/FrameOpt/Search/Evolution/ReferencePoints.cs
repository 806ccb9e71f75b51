namespace FrameOpt.Search.Evolution;

/// <summary>Directions spread evenly over the objectives, their parts adding up to 1.</summary>
/// <remarks>Source: I. Das and J. E. Dennis 1998, Normal-boundary intersection, SIAM J. Optim. 8:631-657 (from memory); two layers as in
/// Deb and Jain 2014, section IV.</remarks>
internal static class ReferencePoints
{
    /// <summary>As many as there is a member for, at least one for each objective. With fewer steps than objectives none would lie inside,
    /// so a second layer is drawn half way to the middle.</summary>
    public static double[][] DasDennis(int objectives, int most)
    {
        var steps = MaxSteps(objectives, most);
        if (steps >= objectives || objectives == 2)
            return Layer(objectives, steps, inwards: 0);
        var outer = Layer(objectives, MaxSteps(objectives, most * 2 / 3), inwards: 0);
        var inner = MaxSteps(objectives, most - outer.Length);
        return inner == 0 || outer.Length >= most ? outer : [.. outer, .. Layer(objectives, inner, inwards: 0.5)];
    }

    private static int MaxSteps(int objectives, int most)
    {
        var steps = 1;
        while (Count(objectives, steps + 1) <= most)
            steps++;
        return steps;
    }

    private static double Count(int objectives, int steps)
    {
        var count = 1.0;
        for (var i = 1; i < objectives; i++)
            count *= (double)(steps + i) / i;
        return Math.Round(count);
    }

    private static double[][] Layer(int objectives, int steps, double inwards) =>
        [.. Shares(objectives, steps).Select(shares => Array.ConvertAll(
            shares, share => (1 - inwards) * share / steps + inwards / objectives))];

    private static IEnumerable<int[]> Shares(int parts, int sum) => parts == 1
        ? [[sum]]
        : Enumerable.Range(0, sum + 1).SelectMany(first => Shares(parts - 1, sum - first).Select(rest => (int[])[first, .. rest]));
}
