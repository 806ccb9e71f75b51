using FrameOpt.Numerics;

namespace FrameOpt.Search.Fronts;

/// <summary>A growing set of points, one contiguous array per objective, each point with its id.</summary>
internal sealed class PointColumns
{
    public PointColumns(int objectives)
    {
        Columns = new double[objectives][];
        Array.Fill(Columns, []);
    }

    public double[][] Columns { get; }

    public long[] Ids { get; private set; } = [];

    public int Count { get; private set; }

    /// <summary>Adds the points of <paramref name="columns"/> at <paramref name="positions"/>; the id of position i is firstId +
    /// i.</summary>
    public void Append(double[][] columns, ReadOnlySpan<int> positions, long firstId)
    {
        Reserve(Count + positions.Length);
        for (var j = 0; j < Columns.Length; j++)
        {
            var from = columns[j];
            var to = Columns[j].AsSpan(Count, positions.Length);
            for (var i = 0; i < to.Length; i++)
            {
                var value = from[positions[i]];
                if (double.IsNaN(value))
                    throw new ArgumentException($"objective {j} of design {firstId + positions[i]} is not a number");
                to[i] = value;
            }
        }
        for (var i = 0; i < positions.Length; i++)
            Ids[Count + i] = firstId + positions[i];
        Count += positions.Length;
    }

    /// <summary>Keeps only the points at <paramref name="positions"/>, which ascend.</summary>
    public void Keep(ReadOnlySpan<int> positions)
    {
        foreach (var column in Columns)
            for (var i = 0; i < positions.Length; i++)
                column[i] = column[positions[i]];
        for (var i = 0; i < positions.Length; i++)
            Ids[i] = Ids[positions[i]];
        Count = positions.Length;
    }

    /// <summary>A copy of the points, in ascending order of their ids.</summary>
    public FrontPoints ById()
    {
        var keys = new ulong[Count];
        var order = new int[Count];
        for (var i = 0; i < Count; i++)
            (keys[i], order[i]) = ((ulong)Ids[i], i);
        RadixSort.Sort(keys, order);
        return new FrontPoints(
            Array.ConvertAll(order, i => Ids[i]),
            Array.ConvertAll(Columns, column => Array.ConvertAll(order, i => column[i])));
    }

    private void Reserve(int count)
    {
        if (count <= Ids.Length)
            return;
        var capacity = Math.Max(count, 2 * Ids.Length);
        for (var j = 0; j < Columns.Length; j++)
            Array.Resize(ref Columns[j], capacity);
        var ids = Ids;
        Array.Resize(ref ids, capacity);
        Ids = ids;
    }
}
