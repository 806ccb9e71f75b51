using FrameOpt.Analysis;

namespace FrameOpt.Tests.Analysis;

public class KneeTests
{
    // By hand: on f2 = 1 - sqrt(f1) the distance from the chord f1 + f2 = 1 is largest at f1 = 1/4 (derivative of sqrt equals 1).
    [Fact]
    public void Knee_of_the_front_with_a_square_root_is_at_a_quarter()
    {
        var designs = Enumerable.Range(0, 401).Select(i => i / 400.0).Select(f => new[] { f, 1 - Math.Sqrt(f) }).ToList();
        Assert.Equal(100, Knee.Of(designs));
    }

    // By symmetry: the quarter circle bends most at 45 degrees.
    [Fact]
    public void Knee_of_the_quarter_circle_is_in_the_middle()
    {
        var designs = Enumerable.Range(0, 91).Select(i => i * Math.PI / 180)
            .Select(t => new[] { 100 * (1 - Math.Cos(t)), 3 * (1 - Math.Sin(t)) }).ToList();
        Assert.Equal(45, Knee.Of(designs));
    }

    // By symmetry: on the part of a sphere's surface nearest the origin, as seen from (1, 1, 1), the middle lies deepest.
    [Fact]
    public void Knee_of_three_objectives_is_the_point_deepest_below_the_plane_of_the_best()
    {
        Assert.Equal(3, Knee.Of([[0, 1, 1], [1, 0, 1], [1, 1, 0], [0.4, 0.4, 0.4], [0.6, 0.5, 0.5]]));
    }

    [Fact]
    public void A_straight_front_has_no_knee() =>
        Assert.Null(Knee.Of([[0, 1], [0.5, 0.5], [1, 0]]));

    [Fact]
    public void One_design_best_in_two_of_three_objectives_spans_no_plane_and_gives_no_knee() =>
        Assert.Null(Knee.Of([[0, 0, 1], [1, 1, 0], [0.5, 0.5, 0.5]]));
}
