using FrameOpt.Analysis;

namespace FrameOpt.Tests.Analysis;

public class RankingTests
{
    // Source: Tzeng and Huang 2011, as in the tests of scikit-criteria (seen); digits recomputed outside this code.
    [Fact]
    public void Topsis_meets_the_worked_example()
    {
        double[][] more = [[5, 8, 4], [7, 6, 8], [8, 8, 6], [7, 4, 6]];
        var designs = more.Select(row => row.Select(value => -value).ToArray()).ToList();
        var ranked = Ranking.ByTopsis(designs, [0.3, 0.4, 0.3]);
        Assert.Equal([2, 1, 0, 3], ranked.Select(design => design.Index));
        double[] closeness = [0.7482486599, 0.6580847720, 0.5037196586, 0.3339974369];
        for (var i = 0; i < 4; i++)
            Check.Close(closeness[i], ranked[i].Score, absolute: 1e-9, because: "ten printed digits");
    }

    // By hand: ideal (0, 0); scaled points (0, 1), (1, 0), (1/4, 1/2); equal weights of a half.
    [Fact]
    public void Distance_to_the_ideal_is_the_weighted_length_of_the_scaled_point()
    {
        var ranked = Ranking.ByDistanceToIdeal([[0, 200], [40, 100], [10, 150]], [1, 1]);
        Assert.Equal([2, 0, 1], ranked.Select(design => design.Index));
        Assert.Equal([1, 2, 2], ranked.Select(design => design.Rank));
        Check.Close(Math.Sqrt(0.125 * 0.125 + 0.25 * 0.25), ranked[0].Score, relative: 1e-14, because: "a hand case in plain arithmetic");
        Check.Close(0.5, ranked[1].Score, relative: 1e-14, because: "a hand case in plain arithmetic");
    }

    // By hand: weights 3 and 1 are shares of 0.75 and 0.25, so (0, 1) scores 0.25, (1, 0) 0.75 and (1/4, 1/2) hypot(0.1875, 0.125).
    [Fact]
    public void Unequal_weights_count_in_their_ratio()
    {
        var ranked = Ranking.ByDistanceToIdeal([[0, 200], [40, 100], [10, 150]], [3, 1]);
        Assert.Equal([2, 0, 1], ranked.Select(design => design.Index));
        double[] scores = [double.Hypot(0.1875, 0.125), 0.25, 0.75];
        for (var i = 0; i < 3; i++)
            Check.Close(scores[i], ranked[i].Score, relative: 1e-14, because: "a hand case in plain arithmetic");
    }

    [Fact]
    public void An_objective_without_range_does_not_count()
    {
        var with = Ranking.ByDistanceToIdeal([[1, 7, 5], [2, 7, 4], [3, 7, 1]], [1, 0, 1]);
        var without = Ranking.ByDistanceToIdeal([[1, 5], [2, 4], [3, 1]], [1, 1]);
        Assert.Equal(without.Select(d => (d.Index, d.Rank)), with.Select(d => (d.Index, d.Rank)));
    }

    [Fact]
    public void Designs_equal_in_all_objectives_share_a_rank_and_keep_their_order()
    {
        var ranked = Ranking.ByDistanceToIdeal([[3, 3], [1, 1], [1, 1], [2, 2]], [1, 2]);
        Assert.Equal([1, 2, 3, 0], ranked.Select(design => design.Index));
        Assert.Equal([1, 1, 3, 4], ranked.Select(design => design.Rank));
    }

    [Fact]
    public void One_design_alone_is_first_by_either_method()
    {
        Assert.Equal(1, Assert.Single(Ranking.ByDistanceToIdeal([[4, 2]], [1, 1])).Rank);
        Assert.Equal(1, Assert.Single(Ranking.ByTopsis([[4, 2]], [1, 1])).Rank);
        Assert.Empty(Ranking.ByDistanceToIdeal([], [1, 1]));
    }

    // Source: Diakoulaki, Mavrotas and Papayannakis 1995, as in the tests of scikit-criteria (seen); digits recomputed outside this code.
    [Fact]
    public void Weights_by_contrast_and_conflict_meet_the_worked_example()
    {
        double[][] more = [[61, 1.08, 4.33], [20.7, 0.26, 4.34], [16.3, 1.98, 2.53], [9, 3.29, 1.65], [5.4, 2.77, 2.33], [4, 4.12, 1.21],
            [-6.1, 3.52, 2.10], [-34.6, 3.31, 0.98]];
        AreNear([0.2022255398, 0.4809017290, 0.3168727312], ObjectiveWeights.ByContrastAndConflict(more)!);
    }

    // Source: Zavadskas and Podvezko 2016, printed 0.1146 0.1981 0.4185 0.2689; digits recomputed outside this code.
    [Fact]
    public void Weights_by_entropy_meet_the_worked_example()
    {
        AreNear([0.1145754499, 0.1980819718, 0.4184612446, 0.2688813337],
            ObjectiveWeights.ByEntropy([[3, 100, 10, 7], [2.5, 80, 8, 5], [1.8, 50, 20, 11], [2.2, 70, 12, 9]])!);
        Assert.Null(ObjectiveWeights.ByEntropy([[3, 100], [-1, 80]]));
    }

    private static void AreNear(double[] expected, double[] actual)
    {
        foreach (var (weight, found) in expected.Zip(actual))
            Check.Close(weight, found, absolute: 1e-9, because: "ten printed digits");
    }
}
