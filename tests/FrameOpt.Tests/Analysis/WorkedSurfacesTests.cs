using FrameOpt.Analysis;
using FrameOpt.Plans;
using static FrameOpt.Tests.Analysis.PublishedFigures;

namespace FrameOpt.Tests.Analysis;

/// <summary>Published sequences of plans that climb to an optimum; figures as in <see cref="WorkedRegressionTests"/>.</summary>
public class WorkedSurfacesTests
{
    private static readonly FactorCoding reactor = new([85, 175], [5, 5]);

    /// <summary>NIST/SEMATECH e-Handbook of Statistical Methods, 5.5.3.1.1: first order with five centre runs.</summary>
    [Fact]
    public void Chemical_yield_first_order_shows_its_curvature_and_its_steepest_ascent()
    {
        var stage = ReferenceTable.Read("plan-chemical-yield.csv").Where("stage", 1);
        var fit = Regression.Fit(ModelTerms.Linear(2), stage.Columns("x1", "x2"), stage.Column("y"), ErrorKind.Measured);
        Are([40.6444444444, -1.2925, 11.1425], fit);
        AreErrors([2.2383963018, 3.3575944528, 3.3575944528], fit);
        Near(270.5625722, fit.Anova.ResidualSumOfSquares);
        Near(224.65108, fit.LackOfFit!.PureErrorSumOfSquares);
        Assert.Equal(4, fit.LackOfFit.PureErrorDegreesOfFreedom);
        var direction = ResponseSurface.Of(fit).SteepestAscent!;
        Check.Close(-0.1159973, direction[0] / direction[1], absolute: 5e-7, because: Printed);

        var curved = Regression.Fit(ModelTerms.Parse(2, Quadratic), stage.Columns("x1", "x2"), stage.Column("y"), ErrorKind.Measured);
        Near(8.2732672222, curved.Anova.Lines.Single(line => line.Source == "x1^2").AdjustedSumOfSquares);
        Assert.Equal(["x2^2"], curved.Aliased.Select(term => term.Name));
    }

    /// <summary>The same source, 5.5.3.1.3 and 5.5.3.1.4: the second plan, then with its star.</summary>
    [Fact]
    public void Chemical_yield_second_order_has_its_maximum_inside()
    {
        var stage = ReferenceTable.Read("plan-chemical-yield.csv").Where("stage", 2);
        double[][] x = stage.Columns("x1", "x2");
        var y = stage.Column("y");
        var first = Regression.Fit(ModelTerms.Linear(2), x[..9], y[..9], ErrorKind.Measured);
        Are([66.53, -11.12, 1.64], first);
        Near(603.4388, first.Anova.ResidualSumOfSquares);
        Near(173.17868, first.LackOfFit!.PureErrorSumOfSquares);
        var curved = Regression.Fit(ModelTerms.Parse(2, "1", "x1", "x2", "x1x2", "x1^2"), x[..9], y[..9], ErrorKind.Measured);
        Near(336.36402, curved.Anova.Lines[^1].AdjustedSumOfSquares);

        var fit = Regression.Fit(ModelTerms.Quadratic(2), x, y, ErrorKind.Measured);
        Are([71.9973962749, -11.7763082225, 0.7405743267, -4.845, -7.2514569753, -7.5490468475], fit);
        AreErrors([2.5803501539, 2.0400999823, 2.0400999823, 2.8849192275, 2.1880723492, 2.1880723492], fit);
        Near(233.0372506, fit.Anova.ResidualSumOfSquares);
        Near(0.8898049138, fit.Anova.RSquared);
        var surface = ResponseSurface.Of(fit);
        AreValues([-0.92785169, 0.3467997928], surface.StationaryPoint!);
        Near(77.58914553, surface.Value(surface.StationaryPoint!));
        AreValues([-4.9731865676, -9.8273172552], surface.Eigenvalues);
        Assert.Equal(SurfaceShape.Maximum, surface.Shape);
    }

    /// <summary>Lenth, J. Statistical Software 32(7), 2009, and Myers, Montgomery and Anderson-Cook 2009, Table 7.6: the first
    /// block.</summary>
    [Fact]
    public void Reactor_first_block_lacks_fit_and_gives_its_direction()
    {
        var block = ReferenceTable.Read("plan-chemreact.csv").Where("block", 1);
        var fit = Regression.Fit(ModelTerms.Linear(2), [.. block.Columns("time", "temperature").Select(reactor.Coded)],
            block.Column("yield"), ErrorKind.Measured);
        AreValues([82.81429, 0.87500, 0.62500], [.. fit.Coefficients.Select(c => c.Value)], 5e-6);
        AreValues([0.54719, 0.72386, 0.72386], [.. fit.Coefficients.Select(c => c.StandardError!.Value)], 5e-6);
        AreValues([4.6250, 8.3836, 8.2969, 0.0867, 95.7335, 0.01034],
            [fit.Anova.ModelSumOfSquares, fit.Anova.ResidualSumOfSquares, fit.LackOfFit!.SumOfSquares, fit.LackOfFit.PureErrorSumOfSquares,
                fit.LackOfFit.F!.Value, fit.LackOfFit.P!.Value], 5.1e-5);
        Assert.Equal((2, 2), (fit.LackOfFit.DegreesOfFreedom, fit.LackOfFit.PureErrorDegreesOfFreedom));
        AreValues([0.8137335, 0.5812382], ResponseSurface.Of(fit).SteepestAscent!, 5e-8);
    }

    /// <summary>The same sources: both blocks.</summary>
    [Fact]
    public void Reactor_in_two_blocks()
    {
        var table = ReferenceTable.Read("plan-chemreact.csv");
        double[][] x = [.. table.Columns("block", "time", "temperature").Select(row => (double[])[row[0] - 1, .. reactor.Coded(row[1..])])];
        var fit = Regression.Fit(ModelTerms.Parse(3, "1", "x1", "x2", "x3", "x2x3", "x2^2", "x3^2"), x, table.Column("yield"),
            ErrorKind.Measured);
        AreValues([84.095427, -4.457530, 0.932541, 0.577712, 0.125000, -1.308555, -0.933442], [.. fit.Coefficients.Select(c => c.Value)],
            5.1e-7);
        AreValues([0.079631, 0.087226, 0.057699, 0.057699, 0.081592, 0.060064, 0.060064],
            [.. fit.Coefficients.Select(c => c.StandardError!.Value)], 5.1e-7);
        Near(0.9980822013, fit.Anova.RSquared);
        AreValues([0.9964], [fit.Anova.AdjustedRSquared!.Value], 5e-5);
        AreValues([607.2], [fit.Anova.F!.Value], 0.05);
        var sequential = fit.Anova.Lines.Select(line => line.SequentialSumOfSquares).ToArray();
        AreValues([69.531, 9.626, 0.063, 17.791],
            [sequential[0], sequential[1] + sequential[2], sequential[3], sequential[4] + sequential[5]], 5.1e-4);
        Near(0.1864045534, fit.Anova.ResidualSumOfSquares);
        Assert.Equal((3, 4), (fit.LackOfFit!.DegreesOfFreedom, fit.LackOfFit.PureErrorDegreesOfFreedom));
        AreValues([0.053, 0.133], [fit.LackOfFit.SumOfSquares, fit.LackOfFit.PureErrorSumOfSquares], 5.1e-4);
        AreValues([0.5307, 0.6851], [fit.LackOfFit.F!.Value, fit.LackOfFit.P!.Value], 5e-5);
        Near(0.7602609, fit.Press, 1e-7);
    }

    /// <summary>The same sources: the surface of the two factors, the block as a shift.</summary>
    [Fact]
    public void Reactor_surface_has_its_maximum_at_the_published_time_and_temperature()
    {
        var table = ReferenceTable.Read("plan-chemreact.csv");

        // Without the block's term the surface is that of the response less the block's published shift.
        double[] y = [.. table.Rows.Select(row => row[3] + (row[0] == 2 ? 4.457530 : 0))];
        var surface = ResponseSurface.Of(Regression.Fit(ModelTerms.Quadratic(2),
            [.. table.Columns("time", "temperature").Select(reactor.Coded)], y, ErrorKind.Measured));
        AreValues([0.3722954, 0.3343802], surface.StationaryPoint!, 1e-6);
        AreValues([86.86148, 176.67190], reactor.Uncoded(surface.StationaryPoint!), 1e-5);
        AreValues([-0.9233027, -1.3186949], surface.Eigenvalues, 1e-6);
        Assert.StartsWith("a maximum", surface.ShapeInWords);
    }
}
