using FrameOpt.Analysis;

namespace FrameOpt.Tests.Analysis;

public class ThinningTests
{
    private static readonly double[][] designs = [[1.0, 10], [1.1, 10], [1.6, 10], [1.2, 14]];

    [Fact]
    public void Without_a_resolution_every_design_is_shown() =>
        Assert.Equal([0, 1, 2, 3], Thinning.Shown(designs, [0, 0]));

    [Fact]
    public void Of_designs_in_one_box_the_best_ranked_is_shown() =>
        Assert.Equal([0, 2, 3], Thinning.Shown(designs, [0.5, 2]));

    [Fact]
    public void An_objective_without_resolution_is_told_apart_exactly() =>
        Assert.Equal([0, 3], Thinning.Shown(designs, [5, 0]));
}
