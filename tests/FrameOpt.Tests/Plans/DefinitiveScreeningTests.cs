using FrameOpt.Numerics;
using FrameOpt.Plans;

namespace FrameOpt.Tests.Plans;

/// <summary>B. Jones and C. J. Nachtsheim 2011, J. Quality Technol. 43:1-15: the properties every such plan must have.</summary>
public class DefinitiveScreeningTests
{
    // The conference matrices of the R package daewr (J. Lawson), of which the published plans for 4 and 6 factors are made.
    private static readonly int[][] four = [[0, 1, -1, -1], [-1, 0, -1, 1], [-1, -1, 0, -1], [-1, 1, 1, 0]];

    private static readonly int[][] six =
    [
        [0, 1, -1, -1, -1, -1], [1, 0, -1, 1, 1, -1], [-1, -1, 0, 1, -1, -1], [-1, 1, 1, 0, 1, -1], [1, -1, 1, -1, 0, -1],
            [1, 1, 1, 1, -1, 0],
    ];

    public static TheoryData<int> Counts => [4, 5, 6, 7, 8, 9, 10, 11, 12];

    [Theory]
    [MemberData(nameof(Counts))]
    public void Main_effects_are_free_of_each_other_of_interactions_and_of_squares(int factors)
    {
        var order = factors + (factors % 2);
        var plan = DefinitiveScreening.Build(PlanNames.Letters(factors));
        Assert.Equal((2 * order) + 1, plan.Runs.Count);
        for (var i = 0; i < factors; i++)
        {
            for (var j = 0; j < factors; j++)
            {
                Assert.Equal(i == j ? 2 * (order - 1) : 0, PlanNames.Dot(plan.Column(i), plan.Column(j)));
                for (var k = 0; k < factors; k++)
                    Assert.Equal(0, plan.Runs.Sum(run => run.Coded[i] * run.Coded[j] * run.Coded[k]));
            }
        }
    }

    // Correlation of two squares, 1/3 - 1/(m-1): the same paper; 0 for m = 4 and 0.133333 for m = 6.
    [Theory]
    [MemberData(nameof(Counts))]
    public void Squares_correlate_as_published(int factors)
    {
        var order = factors + (factors % 2);
        var plan = DefinitiveScreening.Build(PlanNames.Letters(factors));
        var correlation = PlanCorrelation.Of(plan, new PlanModel([.. ModelTerms.Quadratic(factors).TakeLast(factors)]));
        for (var i = 0; i < factors; i++)
        {
            for (var j = 0; j < i; j++)
                Check.Close((1 / 3.0) - (1 / (order - 1.0)), correlation[i, j], absolute: 1e-12, because: "rounding of sums");
        }
    }

    [Fact]
    public void Plans_for_four_and_six_factors_are_the_published_ones_but_for_order_and_signs()
    {
        Assert.True(AreAlike(four, Rows(4)));
        Assert.True(AreAlike(six, Rows(6)));
    }

    [Fact]
    public void Other_numbers_of_factors_are_refused() =>
        Assert.Contains("4 to 12", Assert.Throws<ArgumentException>(() => DefinitiveScreening.Build(PlanNames.Letters(3))).Message);

    private static int[][] Rows(int factors) =>
        [.. DefinitiveScreening.Build(PlanNames.Letters(factors)).Runs.SkipLast(1).Where((_, r) => r % 2 == 0)
            .Select(run => run.Coded.Select(value => (int)value).ToArray())];

    /// <summary>Whether some order of the factors makes the matrices equal up to the signs of rows and columns.</summary>
    private static bool AreAlike(int[][] left, int[][] right)
    {
        var wanted = WithPlusBorder(left, [.. Enumerable.Range(0, left.Length)]);
        return Orders([.. Enumerable.Range(0, left.Length)]).Select(order => WithPlusBorder(right, order))
            .Any(found => found.SequenceEqual(wanted) || found.Select(value => -value).SequenceEqual(wanted));
    }

    /// <summary>The core left when signs of rows and columns make the first row and column plus.</summary>
    private static int[] WithPlusBorder(int[][] matrix, int[] order) =>
    [
        .. from i in order.Skip(1)
           from j in order.Skip(1)
           select matrix[i][j] * matrix[i][order[0]] * matrix[order[0]][j],
    ];

    private static IEnumerable<int[]> Orders(int[] items) =>
        items.Length == 1 ? [items] : items.SelectMany(first => Orders([.. items.Where(item => item != first)])
            .Select(rest => (int[])[first, .. rest]));
}
