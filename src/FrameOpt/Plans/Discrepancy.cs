namespace FrameOpt.Plans;

/// <summary>How unevenly runs fill the cube, by four measures; smaller is better. Each is the root mean square, over boxes within the cube,
/// of the difference between the share of the runs and the share of the volume.</summary>
/// <param name="Centred">Boxes from a point to its nearest corner.</param>
/// <param name="WrapAround">Boxes between any two points, also through the sides.</param>
/// <param name="Mixture">Between those two; it also sees few levels.</param>
/// <param name="Star">L2-star: boxes from the lowest corner.</param>
/// <remarks>Sources: F. J. Hickernell 1998, A generalized discrepancy and quadrature error bound; Y.-D. Zhou, K.-T. Fang and J.-H. Ning
/// 2013, Mixture discrepancy for quasi-random point sets; T. T. Warnock 1972 for the star (formulas from memory).</remarks>
public sealed record Discrepancy(double Centred, double WrapAround, double Mixture, double Star)
{
    /// <summary>Of the runs of a plan; runs made more than once count once.</summary>
    /// <param name="plan">Within the cube from -1 to +1.</param>
    public static Discrepancy Of(Plan plan) => Of([.. plan.Runs.Select(run => run.Coded).DistinctBy(coded => string.Join('|', coded))
        .Select(coded => Array.ConvertAll(coded, value => (value + 1) / 2))]);

    /// <summary>Root mean square of as many points drawn at random.</summary>
    /// <param name="points">1 or more.</param>
    /// <param name="factors">1 or more.</param>
    /// <remarks>Mean of the kernel of a point with itself less its mean over all pairs, over the number of points.</remarks>
    public static Discrepancy OfRandom(int points, int factors)
    {
        double Root(double self, double pairs) => Math.Sqrt((Power(self, factors) - Power(pairs, factors)) / points);
        return new Discrepancy(Root(5 / 4.0, 13 / 12.0), Root(3 / 2.0, 4 / 3.0), Root(7 / 4.0, 19 / 12.0), Root(1 / 2.0, 1 / 3.0));
    }

    /// <summary>Of points of the unit cube.</summary>
    internal static Discrepancy Of(double[][] points)
    {
        var factors = points[0].Length;
        double Root(double whole, Func<double, double> one, Func<double, double, double> two)
        {
            var singles = points.Sum(a => a.Aggregate(1.0, (product, x) => product * one(x)));
            var pairs = points.Sum(a => points.Sum(b =>
            {
                var product = 1.0;
                for (var f = 0; f < factors; f++)
                    product *= two(a[f], b[f]);
                return product;
            }));
            return Math.Sqrt(Math.Max(0, Power(whole, factors) - (2 * singles / points.Length)
                + (pairs / points.Length / points.Length)));
        }

        static double Off(double x) => Math.Abs(x - 0.5);
        return new Discrepancy(
            Root(13 / 12.0, x => 1 + (Off(x) / 2) - (Off(x) * Off(x) / 2), (x, y) => 1 + ((Off(x) + Off(y) - Math.Abs(x - y)) / 2)),
            Root(4 / 3.0, _ => 4 / 3.0, (x, y) => 1.5 - (Math.Abs(x - y) * (1 - Math.Abs(x - y)))),
            Root(19 / 12.0, x => (5 / 3.0) - (Off(x) / 4) - (Off(x) * Off(x) / 4), (x, y) => (15 / 8.0) - ((Off(x) + Off(y)) / 4)
                - (0.75 * Math.Abs(x - y)) + (0.5 * (x - y) * (x - y))),
            Root(1 / 3.0, x => (1 - (x * x)) / 2, (x, y) => 1 - Math.Max(x, y)));
    }

    private static double Power(double value, int power) => Enumerable.Repeat(value, power).Aggregate(1.0, (product, one) => product * one);
}
