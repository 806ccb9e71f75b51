namespace FrameOpt.Tests.Search;

/// <summary>Two obvious ways to the front, to check the fast one against.</summary>
internal static class SimpleFronts
{
    public static bool Dominates(double[] a, double[] b)
    {
        var lower = false;
        for (var j = 0; j < a.Length; j++)
        {
            if (a[j] > b[j])
                return false;
            lower |= a[j] < b[j];
        }
        return lower;
    }

    /// <summary>Every point against every other.</summary>
    public static int[] EveryPair(double[][] points) =>
        [.. Enumerable.Range(0, points.Length).Where(i => !Array.Exists(points, other => Dominates(other, points[i])))];

    /// <summary>In lexicographic order nothing is dominated by what follows, so each point is compared with the front so far.</summary>
    public static int[] LexicographicArchive(double[][] points)
    {
        var order = Enumerable.Range(0, points.Length).ToArray();
        Array.Sort(order, (a, b) => points[a].AsSpan().SequenceCompareTo(points[b]));
        var front = new List<int>();
        foreach (var i in order)
            if (!front.Exists(kept => Dominates(points[kept], points[i])))
                front.Add(i);
        front.Sort();
        return [.. front];
    }
}
