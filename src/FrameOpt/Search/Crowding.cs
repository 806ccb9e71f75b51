namespace FrameOpt.Search;

internal static class Crowding
{
    public static void Fill(double[][] columns, ReadOnlySpan<int> front, double[] room)
    {
        foreach (var i in front)
            room[i] = 0;
        foreach (var column in columns)
        {
            var order = front.ToArray();
            Array.Sort(Array.ConvertAll(order, i => column[i]), order);
            var range = column[order[^1]] - column[order[0]];
            room[order[0]] = room[order[^1]] = double.PositiveInfinity;
            if (range > 0)
                for (var i = 1; i < order.Length - 1; i++)
                    room[order[i]] += (column[order[i + 1]] - column[order[i - 1]]) / range;
        }
    }
}
