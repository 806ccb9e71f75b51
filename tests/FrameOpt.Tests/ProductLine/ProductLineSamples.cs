using FrameOpt.Numerics;

namespace FrameOpt.Tests.ProductLine;

/// <summary>Made-up lines of any size.</summary>
public static class ProductLineSamples
{
    /// <summary>Customers and candidates at random in a square; the cost is their distance.</summary>
    public static double[][] Plane(int customers, int candidates, ulong seed)
    {
        var random = new Pcg32(seed);
        (double X, double Y)[] Points(int count) => [.. Enumerable.Range(0, count).Select(_ => (random.NextDouble(), random.NextDouble()))];
        var (at, offered) = (Points(customers), Points(candidates));
        return [.. at.Select(a => offered.Select(b => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)))).ToArray())];
    }

    /// <summary>From 0.2 to 1.2, at random.</summary>
    public static double[] Shares(int customers, ulong seed = 99)
    {
        var random = new Pcg32(seed);
        return [.. Enumerable.Range(0, customers).Select(_ => 0.2 + random.NextDouble())];
    }

    /// <summary>Costs like those of a frame: a customer is a mass, a full torque, a full thrust and a yaw leverage; a candidate a lateral
    /// offset (40 of them),
    /// a thrust-line angle (10) and a spacing; the cost is the root mean square over five throttles of a rough residual in N·m.</summary>
    public static void FrameRow(int customer, ulong seed, Span<double> costs)
    {
        ReadOnlySpan<double> throttles = [1, 0.8, 0.45, 0.55, 0];
        var random = new Pcg32(seed, (ulong)customer + 1);
        var weight = 9.81 * (55 + (65 * random.NextDouble()));
        var torque = 30 + (40 * random.NextDouble());
        var thrust = 250 + (300 * random.NextDouble());
        var leverage = 0.2 + (1.2 * random.NextDouble());
        for (var candidate = 0; candidate < costs.Length; candidate++)
        {
            var offset = 0.06 * (candidate % 40) / 39;
            var angle = 3.0 * (candidate / 40 % 10) / 9;
            var spacing = 0.38 + (0.1 * (candidate / 400) / 4);
            var sum = 0.0;
            foreach (var throttle in throttles)
            {
                var roll = (throttle * torque) - (weight * ((0.9 * offset) + (0.2 * (spacing - 0.44))));
                var residual = roll + (leverage * throttle * thrust * ((0.5 * offset) - (0.02 * angle) + 0.01));
                sum += residual * residual;
            }

            costs[candidate] = Math.Sqrt(sum / throttles.Length);
        }
    }

    public static double[][] Frame(int customers, int candidates, ulong seed) => [.. Enumerable.Range(0, customers).Select(customer =>
    {
        var row = new double[candidates];
        FrameRow(customer, seed, row);
        return row;
    })];
}
