using FrameOpt.Plans;

namespace FrameOpt.Tests.Plans;

public class PlanTests
{
    [Fact]
    public void Coded_values_become_natural_ones_and_back()
    {
        var scale = new PlanScale(400, 500);
        Assert.Equal([400, 450, 500, 520], new[] { -1, 0, 1, 1.4 }.Select(scale.Natural));
        Check.Close(1.4, scale.Coded(520), absolute: 1e-12, because: "rounding");
        Assert.Contains("above", Assert.Throws<ArgumentException>(() => new PlanScale(5, 5)).Message);
    }

    [Fact]
    public void Scale_within_limits_puts_the_axial_runs_on_the_limits()
    {
        var scale = PlanScale.Within(400, 500, Math.Sqrt(2));
        Check.Close(400, scale.Natural(-Math.Sqrt(2)), absolute: 1e-9, because: "rounding");
        Check.Close(500, scale.Natural(Math.Sqrt(2)), absolute: 1e-9, because: "rounding");
    }

    [Fact]
    public void Random_order_keeps_the_blocks_apart_and_depends_on_the_seed_alone()
    {
        var plan = CentralComposite.Build(["a", "b", "c"], AxialRule.Rotatable, new CentrePoints(4, 2), inBlocks: true);
        var order = plan.InRandomOrder(11);
        Assert.Equal(order.Select(run => run.Block).Order(), order.Select(run => run.Block));
        Assert.Equal(plan.Runs.Select(run => run.Number), order.Select(run => run.Number).Order());
        Assert.Equal(order.Select(run => run.Number), plan.InRandomOrder(11).Select(run => run.Number));
        Assert.NotEqual(order.Select(run => run.Number), plan.InRandomOrder(12).Select(run => run.Number));
    }

    [Fact]
    public void Centre_runs_are_added_to_every_block()
    {
        var plan = CentralComposite.Build(["a", "b"], AxialRule.Rotatable, new CentrePoints(0, 0), inBlocks: true).WithCentrePoints(2);
        Assert.Equal([1, 1, 2, 2], plan.Runs.Where(run => run.Kind == PointKind.Centre).Select(run => run.Block));
        Assert.Equal(Enumerable.Range(1, 12), plan.Runs.Select(run => run.Number));
    }
}
