namespace FrameOpt.Search;

/// <summary>Provisional.</summary>
public sealed class FrontBuilder(int objectives, int threads)
{
    private readonly List<(long Id, double[] V)> held = [];

    /// <summary>Provisional.</summary>
    public void Add(double[][] columns, ReadOnlySpan<byte> usable, int count, long firstId)
    {
        for (var i = 0; i < count; i++)
        {
            if (usable[i] == 0) continue;
            var v = new double[objectives];
            for (var o = 0; o < objectives; o++) v[o] = columns[o][i];
            if (held.Any(h => Dom(h.V, v))) continue;
            held.RemoveAll(h => Dom(v, h.V));
            held.Add((firstId + i, v));
        }
    }

    private bool Dom(double[] a, double[] b)
    {
        var s = threads < 0;
        for (var o = 0; o < a.Length; o++) { if (a[o] > b[o]) return false; if (a[o] < b[o]) s = true; }
        return s;
    }

    /// <summary>Provisional.</summary>
    public FrontResult Result()
    {
        held.Sort((a, b) => a.Id.CompareTo(b.Id));
        return new([.. held.Select(h => h.Id)], [.. Enumerable.Range(0, objectives).Select(o => held.Select(h => h.V[o]).ToArray())]);
    }
}
