namespace FrameOpt.Benchmarks;

/// <summary>Points to take the front of, one array for each objective.</summary>
public static class FrontSamples
{
    private static readonly double[][] allTargets = [[0, 0, 0, 0.5], [1, 1, 0, 0.4], [1, 0, 1, 0.6], [0, 1, 1, 0.5]];

    /// <summary>A full grid of 21 x 61 x 41 x 21 designs; each objective is the distance to its own target, the targets spread about the
    /// middle.</summary>
    public static double[][] Grid(int objectives, double spread)
    {
        int[] levels = [21, 61, 41, 21];
        var columns = Columns(objectives, levels.Aggregate((a, b) => a * b));
        for (var i = 0; i < columns[0].Length; i++)
            for (var j = 0; j < objectives; j++)
            {
                var rest = i;
                var squares = 0.0;
                for (var k = 0; k < levels.Length; k++)
                {
                    var x = (double)(rest % levels[k]) / (levels[k] - 1);
                    rest /= levels[k];
                    var away = x - 0.5 - spread * (allTargets[j][k] - 0.5);
                    squares += away * away;
                }
                columns[j][i] = Math.Sqrt(squares);
            }
        return columns;
    }

    /// <summary>Points uniform in a cube, one after the other.</summary>
    public static double[] Uniform(int objectives, int count)
    {
        var random = new Random(7);
        var values = new double[objectives * count];
        for (var i = 0; i < values.Length; i++)
            values[i] = random.NextDouble();
        return values;
    }

    /// <summary>Random directions in the positive orthant at distance 1, one point after the other.</summary>
    public static double[] Sphere(int objectives, int count)
    {
        var columns = Shell(objectives, count, thickness: 0);
        var values = new double[objectives * count];
        for (var i = 0; i < values.Length; i++)
            values[i] = columns[i % objectives][i / objectives];
        return values;
    }

    /// <summary>The point 1.1 in every objective.</summary>
    public static double[] Reference(int objectives) => [.. Enumerable.Repeat(1.1, objectives)];

    /// <summary>Random directions in the positive orthant at distances uniform from 1 to 1.1, or to another thickness.</summary>
    public static double[][] Shell(int objectives, int count, double thickness = 0.1)
    {
        var random = new Random(7);
        var columns = Columns(objectives, count);
        var direction = new double[objectives];
        for (var i = 0; i < count; i++)
        {
            for (var j = 0; j < objectives; j++)
                direction[j] = Math.Abs(Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble()));
            var scale = (1 + thickness * random.NextDouble()) / Math.Sqrt(direction.Sum(x => x * x));
            for (var j = 0; j < objectives; j++)
                columns[j][i] = direction[j] * scale;
        }
        return columns;
    }

    private static double[][] Columns(int objectives, int count)
    {
        var columns = new double[objectives][];
        for (var j = 0; j < objectives; j++)
            columns[j] = new double[count];
        return columns;
    }
}
